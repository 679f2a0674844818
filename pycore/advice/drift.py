"""Whether a strength drifts: the slope that outliers do not bend, and how sure it is."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import combinations
from statistics import median

from pycore.advice.losses import LEAST_CHECKS

# Standard normal, two sides of 5 %.
_Z = 1.959963984540054
# A slope for each pair: of more readings the latest count.
MOST_READINGS = 60


@dataclass(frozen=True)
class Slope:
    """Points of strength a day: the median slope and the 95 % interval around it."""

    slope: float
    low: float
    high: float


def theil_sen(days: Sequence[float], values: Sequence[float]) -> Slope:
    """Median of the slopes of all pairs of readings, with Sen's interval.

    Sources: Theil 1950; P. K. Sen, J. Am. Stat. Assoc. 63 (1968) 1379; Helsel and others,
    Statistical Methods in Water Resources (USGS 2020), chapter 10. Readings of the same moment
    make no slope. Valid: three readings or more at two moments or more; ``ValueError`` else.

    >>> theil_sen([1, 2, 3, 4, 5, 6, 7], [1, 2, 3, 4, 5, 16, 7])
    Slope(slope=1.0, low=1.0, high=3.5)
    """
    pairs = combinations(zip(days, values, strict=True), 2)
    slopes = sorted((b - a) / (t - s) for (s, a), (t, b) in pairs if t != s)
    n, most = len(values), len(slopes) - 1
    if n < LEAST_CHECKS or most < 0:
        raise ValueError(f"a slope needs {LEAST_CHECKS} readings at two moments, got {n}")
    width = _Z * math.sqrt(n * (n - 1) * (2 * n + 5) / 18)
    low = max(round((len(slopes) - width) / 2) - 1, 0)
    high = min(round((len(slopes) + width) / 2), most)
    return Slope(median(slopes), slopes[low], slopes[high])


def direction(slope: Slope, change_pct: float, change_u_pct: float) -> str:
    """``rising``, ``falling`` or ``steady``.

    It moves where the whole interval of the slope lies on one side of 0 and the change from first
    to last reading, on the same side, is more than two of its standard uncertainties.

    >>> direction(Slope(-0.1, -0.2, -0.05), -1.7, 0.4), direction(Slope(0.1, -0.1, 0.2), 1.7, 0.4)
    ('falling', 'steady')
    """
    if abs(change_pct) <= 2 * change_u_pct:
        return "steady"
    if slope.low > 0 and change_pct > 0:
        return "rising"
    return "falling" if slope.high < 0 and change_pct < 0 else "steady"
