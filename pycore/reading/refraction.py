"""Refractive index (nD, 20 °C, in air) to the sucrose scale in Brix and back.

Source: ICUMSA scale of 1974, as tabulated in the library ``chemicals`` 1.5.2, whose author says
that the original was not reviewed; the values of 10 to 30 Brix also stand in OIV-MA-AS2-02,
table II. The scale counts against air; indices of water against vacuum (IAPWS) are larger by a
factor of 1.00027, and taking one for the other would be a false zero of 0.25 Brix.
"""

from __future__ import annotations

from bisect import bisect_right

from pycore.quantity.fault import Fault

# nD of 0, 1, 2 … 35 Brix.
_INDEX = (
    1.33299, 1.33442, 1.33586, 1.33732, 1.33879, 1.34026, 1.34175, 1.34325, 1.34477, 1.34629,
    1.34782, 1.34937, 1.35093, 1.35250, 1.35408, 1.35568, 1.35729, 1.35891, 1.36054, 1.36218,
    1.36384, 1.36551, 1.36720, 1.36889, 1.37060, 1.37233, 1.37406, 1.37582, 1.37758, 1.37936,
    1.38115, 1.38296, 1.38478, 1.38661, 1.38846, 1.39032,
)  # fmt: skip

# How many Brix one whole unit of nD is at water. Further up it is less, so that a step of the scale
# is never taken for too small.
BRIX_PER_INDEX = 1 / (_INDEX[1] - _INDEX[0])

# Warm water reads below 0 Brix; the first step's slope is carried on that far and no farther.
LOWEST_BRIX = -5.0
HIGHEST_BRIX = float(len(_INDEX) - 1)


def index_from_brix(brix: float, path: str) -> float:
    """nD of a Brix value, straight lines between whole Brix (error below 0.000 005).

    Valid: −5 to 35 Brix. Error: ``out_of_range`` outside.

    >>> round(index_from_brix(5.8, "reading"), 6)
    1.341452
    """
    if not LOWEST_BRIX <= brix <= HIGHEST_BRIX:
        limit = {"minimum": LOWEST_BRIX, "maximum": HIGHEST_BRIX, "unit": "Brix"}
        raise Fault("out_of_range", path, brix, limit)
    step = min(max(int(brix), 0), len(_INDEX) - 2)
    return _INDEX[step] + (brix - step) * (_INDEX[step + 1] - _INDEX[step])


def brix_from_index(index_nd: float, path: str) -> float:
    """Brix of a refractive index.

    Valid: nD of −5 to 35 Brix, 1.32584 to 1.39032. Error: ``out_of_range`` outside.

    >>> round(brix_from_index(1.34782, "reading"), 9)
    10.0
    """
    lowest, highest = index_from_brix(LOWEST_BRIX, path), _INDEX[-1]
    if not lowest <= index_nd <= highest:
        limit = {"minimum": round(lowest, 5), "maximum": highest, "unit": "nD"}
        raise Fault("out_of_range", path, index_nd, limit)
    step = min(max(bisect_right(_INDEX, index_nd) - 1, 0), len(_INDEX) - 2)
    return step + (index_nd - _INDEX[step]) / (_INDEX[step + 1] - _INDEX[step])
