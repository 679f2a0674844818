"""A rising curve through (depth, litres) pairs that never falls between them.

Piecewise cubic Hermite interpolation with Fritsch and Butland's slopes ("PCHIP"; F. N. Fritsch
and J. Butland, A method for constructing local monotone piecewise cubic interpolants, SIAM J.
Sci. Stat. Comput. 5 (1984) 300-304; end slopes by the three-point formula of F. N. Fritsch and
R. E. Carlson, SIAM J. Numer. Anal. 17 (1980) 238-246). Own code because the libraries that hold
it are C extensions, which the phone's start-up cannot carry; checked against one in the tests.
"""

from __future__ import annotations

import itertools
from bisect import bisect_right
from collections.abc import Callable, Sequence
from dataclasses import dataclass


def _end_slope(h0: float, h1: float, d0: float, d1: float) -> float:
    slope = ((2 * h0 + h1) * d0 - h0 * d1) / (h0 + h1)
    if slope * d0 <= 0:
        return 0.0
    if d0 * d1 < 0 and abs(slope) > 3 * abs(d0):
        return 3 * d0
    return slope


def _slopes(x: Sequence[float], y: Sequence[float]) -> tuple[float, ...]:
    h = [b - a for a, b in itertools.pairwise(x)]
    d = [(b - a) / step for a, b, step in zip(y, y[1:], h, strict=False)]
    if len(d) == 1:
        return (d[0], d[0])
    inner = []
    for i in range(1, len(d)):
        w0, w1 = 2 * h[i] + h[i - 1], h[i] + 2 * h[i - 1]
        inner.append((w0 + w1) / (w0 / d[i - 1] + w1 / d[i]))
    return (_end_slope(h[0], h[1], d[0], d[1]), *inner, _end_slope(h[-1], h[-2], d[-1], d[-2]))


@dataclass(frozen=True)
class RisingCurve:
    """Depths in mm, litres and slopes in L/mm at the knots; depths and litres rise strictly."""

    depths_mm: tuple[float, ...]
    volumes_l: tuple[float, ...]
    slopes_l_per_mm: tuple[float, ...]

    @classmethod
    def through(cls, depths_mm: Sequence[float], volumes_l: Sequence[float]) -> RisingCurve:
        """The curve through at least two pairs that both rise strictly.

        Error: ``ValueError`` when there are fewer or they do not rise.
        """
        pairs = list(zip(depths_mm, volumes_l, strict=True))
        rises = all(b[0] > a[0] and b[1] > a[1] for a, b in itertools.pairwise(pairs))
        if len(pairs) < 2 or not rises:
            raise ValueError("a curve needs two or more pairs whose depth and litres both rise")
        return cls(tuple(depths_mm), tuple(volumes_l), _slopes(depths_mm, volumes_l))

    def _piece(self, depth_mm: float) -> tuple[int, float, float]:
        i = min(max(bisect_right(self.depths_mm, depth_mm) - 1, 0), len(self.depths_mm) - 2)
        h = self.depths_mm[i + 1] - self.depths_mm[i]
        return i, h, (depth_mm - self.depths_mm[i]) / h

    def volume_l(self, depth_mm: float) -> float:
        """Litres at a depth between the first and the last knot (mm)."""
        i, h, t = self._piece(depth_mm)
        y0, y1 = self.volumes_l[i], self.volumes_l[i + 1]
        m0, m1 = self.slopes_l_per_mm[i] * h, self.slopes_l_per_mm[i + 1] * h
        rise = y1 - y0
        return y0 + t * (m0 + t * (3 * rise - 2 * m0 - m1 + t * (m0 + m1 - 2 * rise)))

    def litres_per_mm(self, depth_mm: float) -> float:
        """Slope of the curve at a depth between the first and the last knot, L/mm."""
        i, h, t = self._piece(depth_mm)
        rise = self.volumes_l[i + 1] - self.volumes_l[i]
        m0, m1 = self.slopes_l_per_mm[i] * h, self.slopes_l_per_mm[i + 1] * h
        return (m0 + t * (2 * (3 * rise - 2 * m0 - m1) + t * 3 * (m0 + m1 - 2 * rise))) / h


def depth_at(
    volume_at: Callable[[float], float], volume_l: float, low_mm: float, high_mm: float
) -> float:
    """Depth in mm, between two bounds, at which a rising ``volume_at`` gives these litres.

    By halving to the last digit of a float: the slope may be 0 at the floor or at the crown of a
    lying tank, where a step by the slope would run away.
    """
    low, high = low_mm, high_mm
    for _ in range(200):
        middle = 0.5 * (low + high)
        if middle in (low, high):
            break
        if volume_at(middle) < volume_l:
            low = middle
        else:
            high = middle
    nearer_low = abs(volume_at(low) - volume_l) <= abs(volume_at(high) - volume_l)
    return low if nearer_low else high
