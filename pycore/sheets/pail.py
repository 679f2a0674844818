"""Litres in a round pail with straight, slanting walls: a frustum of a cone."""

from __future__ import annotations

import math
from dataclasses import dataclass

from pycore.quantity.fault import Fault

# One halving more would not change a float of this size.
_HALVINGS = 200


@dataclass(frozen=True)
class RoundPail:
    """Inside radius at the floor (mm), growth of the radius for one mm of height, height (mm)."""

    floor_radius_mm: float
    slope_share: float
    height_mm: float

    @property
    def brim_l(self) -> float:
        """Litres at the height."""
        return self.volume_l(self.height_mm)

    def volume_l(self, depth_mm: float) -> float:
        """Litres at a depth of 0 to the height, in mm.

        V = π h (r² + r s h + s² h²/3) with s the slope: the area π (r + s h)² summed up.
        """
        r, s, h = self.floor_radius_mm, self.slope_share, depth_mm
        return math.pi * h * (r * r + r * s * h + s * s * h * h / 3) / 1e6

    def depth_mm(self, volume_l: float) -> float:
        """Depth at which the pail holds 0 litres up to its brim, by halving."""
        low_mm, high_mm = 0.0, self.height_mm
        for _ in range(_HALVINGS):
            middle_mm = 0.5 * (low_mm + high_mm)
            if self.volume_l(middle_mm) < volume_l:
                low_mm = middle_mm
            else:
                high_mm = middle_mm
        return high_mm

    def along_wall_mm(self, depth_mm: float) -> float:
        """Way from the floor up the slanting wall to a depth, in mm: h √(1 + s²)."""
        return depth_mm * math.hypot(1.0, self.slope_share)


def from_diameters(
    floor_diameter_mm: float, brim_diameter_mm: float, height_mm: float
) -> RoundPail:
    """A pail from its inside measures, all above 0.

    >>> round(from_diameters(240, 290, 260).brim_l, 3)
    14.383
    """
    slope = (brim_diameter_mm - floor_diameter_mm) / (2 * height_mm)
    return RoundPail(floor_diameter_mm / 2, slope, height_mm)


def _floor_radius_mm(slope_share: float, depth_mm: float, mean_radius_mm: float) -> float:
    """Floor radius of the pail with this slope that holds as much as a cylinder to this depth.

    r² + r s h + s² h²/3 = m², with m the cylinder's radius, solved for r.
    """
    grown = slope_share * depth_mm
    root = 4 * mean_radius_mm * mean_radius_mm - grown * grown / 3
    return (-grown + math.sqrt(max(0.0, root))) / 2


def from_fills(
    low_mm: float, low_l: float, high_mm: float, high_l: float, path: str
) -> RoundPail:  # fmt: skip
    """A pail from two fills that were measured: their depths (mm) and litres, the low one first.

    Through two fills goes just one pail with straight walls. Its slope lies between a cone that
    stands on its point and one that ends in a point at the second fill; the litres of the second
    fill grow with the slope, so halving finds it. Errors: ``not_rising`` when the second fill is
    not deeper or not more, ``out_of_range`` at ``path[1].volume`` when no such pail holds both.

    >>> pail = from_diameters(240, 290, 260)
    >>> again = from_fills(100, pail.volume_l(100), 220, pail.volume_l(220), "fills")
    >>> round(again.floor_radius_mm, 6), round(again.volume_l(220) / pail.volume_l(220), 9)
    (120.0, 1.0)
    """
    for name, low, high, unit in (("depth", low_mm, high_mm, "mm"), ("volume", low_l, high_l, "L")):
        if high <= low:
            raise Fault("not_rising", f"{path}[1].{name}", high, {"above": low, "unit": unit})
    mean_mm = math.sqrt(low_l * 1e6 / (math.pi * low_mm))
    # r = 0 in the equation of _floor_radius_mm.
    pointed = math.sqrt(3) * mean_mm / low_mm
    narrow = _most_narrowing(mean_mm, low_mm, high_mm)

    def pail(slope_share: float) -> RoundPail:
        return RoundPail(_floor_radius_mm(slope_share, low_mm, mean_mm), slope_share, high_mm)

    least_l, most_l = pail(narrow).brim_l, pail(pointed).brim_l
    if not least_l < high_l < most_l:
        limit = {"above": least_l, "below": most_l, "unit": "L"}
        raise Fault("out_of_range", f"{path}[1].volume", high_l, limit)
    for _ in range(_HALVINGS):
        middle = 0.5 * (narrow + pointed)
        if pail(middle).brim_l < high_l:
            narrow = middle
        else:
            pointed = middle
    return pail(pointed)


def _most_narrowing(mean_radius_mm: float, low_mm: float, high_mm: float) -> float:
    """The slope, below 0, at which the radius becomes 0 just at the second fill."""
    # r = -s·high in the equation of _floor_radius_mm.
    shape = high_mm * high_mm - high_mm * low_mm + low_mm * low_mm / 3
    return -mean_radius_mm / math.sqrt(shape)
