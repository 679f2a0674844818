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


def direction(slope: Slope, change_pct: float, error_pct: float, spread_pct: float) -> str:
    """Which way the readings go, and how sure that is.

    Parameters
    ----------
    slope : Slope
        Of the readings, points of strength a day.
    change_pct : float
        Last reading less the first, points.
    error_pct : float
        Two standard uncertainties of that change, points: so far two readings can lie apart by
        themselves.
    spread_pct : float
        Highest reading less the lowest, points.

    ``rising`` and ``falling``: the whole interval of the slope lies on one side of 0 and the
    change, on the same side, is more than its error. ``rising_little`` and ``falling_little``: the
    same, but all readings lie within the error. ``level``: no direction, and all readings within
    the error. ``unsure``: no direction, and some further apart.

    >>> direction(Slope(-0.1, -0.2, -0.05), -1.7, 0.8, 1.7)
    'falling'
    >>> direction(Slope(-0.1, -0.2, -0.05), -0.7, 0.8, 0.7)
    'falling_little'
    >>> direction(Slope(0.1, -0.1, 0.2), 1.7, 0.8, 1.7)
    'unsure'
    """
    is_within = spread_pct <= error_pct
    way = "rising" if change_pct > 0 else "falling"
    is_one_way = slope.low > 0 if change_pct > 0 else slope.high < 0 and change_pct < 0
    if is_one_way and abs(change_pct) > error_pct:
        return way
    if not is_within:
        return "unsure"
    return f"{way}_little" if is_one_way else "level"
