"""A straight line through measured points by least squares, weighted where u is known.

Source: NIST/SEMATECH e-Handbook of Statistical Methods, 4.4.3 (least squares, weighted least
squares); the numbers are checked against NIST StRD, data set Norris.
"""

from __future__ import annotations

import math
from dataclasses import dataclass


@dataclass(frozen=True)
class Line:
    """y = offset + slope · x.

    slope_u and offset_u come from the points' own u where that was given, else from their spread
    about the line. spread is the residual standard deviation (weighted where u was given), freedom
    the points left over. Units are those of y and x as they came in.
    """

    slope: float
    offset: float
    slope_u: float
    offset_u: float
    spread: float
    freedom: int
    residuals: list[float]


def fit_line(
    x: list[float], y: list[float], y_u: list[float] | None = None, through_zero: bool = False
) -> Line:
    """The line that misses the points least.

    Parameters
    ----------
    x, y : list of float
        The points; at least two different x, or one x that is not 0 for a line through zero.
    y_u : list of float or None
        Standard uncertainty of each y, above 0; None weighs all points alike.
    through_zero : bool
        Whether the offset is held at 0.

    Error: ``ValueError`` where the points do not determine the line.

    >>> fit_line([1, 2, 3], [2.0, 4.0, 6.0], through_zero=True).slope
    2.0
    """
    weights = [1.0] * len(x) if y_u is None else [1 / u**2 for u in y_u]
    total = math.fsum(weights)
    centre_x = centre_y = 0.0
    if not through_zero:
        # Sums about the centre keep the digits that sums of squares would lose.
        centre_x = math.fsum(w * a for w, a in zip(weights, x, strict=True)) / total
        centre_y = math.fsum(w * b for w, b in zip(weights, y, strict=True)) / total
    across = [a - centre_x for a in x]
    xx = math.fsum(w * a * a for w, a in zip(weights, across, strict=True))
    freedom = len(x) - (1 if through_zero else 2)
    # One point has nothing across its own centre.
    if xx == 0:
        raise ValueError("the points do not determine the line")
    triples = zip(weights, across, y, strict=True)
    slope = math.fsum(w * a * (b - centre_y) for w, a, b in triples) / xx
    offset = centre_y - slope * centre_x
    residuals = [b - offset - slope * a for a, b in zip(x, y, strict=True)]
    squares = math.fsum(w * r * r for w, r in zip(weights, residuals, strict=True))
    spread = math.sqrt(squares / freedom) if freedom else 0.0
    scale = spread if y_u is None else 1.0
    offset_u = 0.0 if through_zero else scale * math.sqrt(1 / total + centre_x**2 / xx)
    return Line(slope, offset, scale / math.sqrt(xx), offset_u, spread, freedom, residuals)
