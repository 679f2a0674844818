"""Several readings of one sample: their mean, and how well it is known.

With two to ten readings their spread alone says little (with two, a 95 % interval of fourteen
standard deviations), so it is pooled with what such an instrument is known to repeat to. Sources:
JCGM 100:2008 (GUM) 4.2.4 for pooling, G.3 and formula (G.3) for the degrees of freedom of a known
uncertainty, table G.2 for the t-factors.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from pycore.quantity.measured import Measured

# A table value of an instrument's uncertainty is good to a quarter: common practice, no source.
# GUM formula (G.3): ½ · 0.25⁻² = 8 degrees of freedom.
_KNOWN_FREEDOM = 8
# t for 95.45 % at 8 to 17 degrees of freedom (GUM table G.2; 11 to 14, 16 and 17 computed with
# scipy 1.17.1), so that twice the result is an interval of that level.
_T_95 = (2.37, 2.32, 2.28, 2.25, 2.23, 2.21, 2.20, 2.18, 2.17, 2.16)
# Upper 5 % points of chi-squared at 1 to 9 degrees of freedom (NIST/SEMATECH e-Handbook
# 1.3.6.7.4): beyond it the readings scatter more than the instrument explains.
_CHI2_95 = (3.841, 5.991, 7.815, 9.488, 11.070, 12.592, 14.067, 15.507, 16.919)
MOST_READINGS = len(_T_95)


@dataclass(frozen=True)
class Mean:
    """The mean in Brix, the scatter of one reading, and whether it is more than to be expected."""

    brix: Measured
    spread_brix: float
    scatters: bool


def mean_reading(shown_brix: list[float], single_u_brix: float, resolution_brix: float) -> Mean:
    """The mean of one to ten readings with its standard uncertainty.

    Parameters
    ----------
    shown_brix : list of float
        What the instrument showed, Brix.
    single_u_brix : float
        Standard uncertainty of one reading of this kind, Brix, above or at 0.
    resolution_brix : float
        Distance of two marks or digits, Brix; its share is a rectangle's (GUM 4.3.7).

    Error: ``ValueError`` for no reading or more than ten.

    >>> mean_reading([4.0], 0.2, 0.1).brix
    Measured(value=4.0, u=0.2)
    >>> round(mean_reading([4.0, 4.2], 0.2, 0.0).brix.u, 3)
    0.159
    """
    count = len(shown_brix)
    if not 1 <= count <= MOST_READINGS:
        raise ValueError(f"one to {MOST_READINGS} readings, got {count}")
    mean_brix = math.fsum(shown_brix) / count
    marks_u_brix = resolution_brix / math.sqrt(12)
    if count == 1:
        # The table's value was found on usual scales; only coarser marks add to it.
        return Mean(Measured(mean_brix, max(single_u_brix, marks_u_brix)), 0.0, False)
    squares = math.fsum((reading - mean_brix) ** 2 for reading in shown_brix)
    freedom = _KNOWN_FREEDOM + count - 1
    pooled = math.sqrt((_KNOWN_FREEDOM * single_u_brix**2 + squares) / freedom)
    spread_brix = math.sqrt(squares / (count - 1))
    one_u_brix = max(pooled * _T_95[count - 1] / 2, spread_brix)
    u_brix = math.hypot(one_u_brix / math.sqrt(count), marks_u_brix)
    scatters = squares > _CHI2_95[count - 2] * max(single_u_brix, marks_u_brix) ** 2
    return Mean(Measured(mean_brix, u_brix), spread_brix, scatters)
