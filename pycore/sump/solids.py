"""Closed forms of tanks: litres and surface at a height above the deepest floor.

Heights and measures in mm, litres in L, surface as litres per mm (1 L/mm = 1 m²). Valid from the
floor up to the tank's own top. The forms are those of elementary geometry; each is checked against
``fluids.geometry`` or by hand in the tests.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Protocol

# Cubic millimetres in a litre.
_MM3_PER_L = 1e6
# Points of a round outline from floor to crown: a chord then lies within 0.3 % of the circle.
_ROUND_POINTS = 32
# Below this angle the difference of angle and sine is taken from their series.
_SMALL_ANGLE_SHARE = 0.5

# Height, left and right edge, mm.
Edge = tuple[float, float, float]


class Solid(Protocol):
    """A tank without anything standing in it."""

    def volume_l(self, height_mm: float) -> float:
        """Litres up to a height."""

    def litres_per_mm(self, height_mm: float) -> float:
        """Surface at a height: slope of the litres, L/mm."""

    def edges(self, top_mm: float) -> list[Edge]:
        """Left and right edge in mm by height, from floor to top, straight in between."""


@dataclass(frozen=True)
class Straight:
    """Upright walls on a level floor: V = surface × height. width_mm is for the drawing alone."""

    surface_l_per_mm: float
    width_mm: float | None = None

    def volume_l(self, height_mm: float) -> float:
        """Litres up to a height."""
        return self.surface_l_per_mm * height_mm

    def litres_per_mm(self, height_mm: float) -> float:  # noqa: ARG002
        """The same at every height."""
        return self.surface_l_per_mm

    def edges(self, top_mm: float) -> list[Edge]:
        """A rectangle, as wide as high where its width is not known."""
        right_mm = top_mm if self.width_mm is None else self.width_mm
        return [(0.0, 0.0, right_mm), (top_mm, 0.0, right_mm)]


@dataclass(frozen=True)
class SlopedFloor:
    """A box whose floor rises evenly along its length by ``rise_mm``.

    V = W·L·h²/2s up to h = s, then W·L·(h − s/2), with h above the deep end and s the rise.
    """

    length_mm: float
    width_mm: float
    rise_mm: float

    def volume_l(self, height_mm: float) -> float:
        """Litres up to a height above the deep end."""
        floor_mm2, h, s = self.length_mm * self.width_mm, height_mm, self.rise_mm
        return floor_mm2 * (h * h / (2 * s) if h < s else h - s / 2) / _MM3_PER_L

    def litres_per_mm(self, height_mm: float) -> float:
        """Surface at a height above the deep end, L/mm."""
        wet_share = min(1.0, height_mm / self.rise_mm)
        return self.length_mm * self.width_mm * wet_share / _MM3_PER_L

    def edges(self, top_mm: float) -> list[Edge]:
        """The deep end on the left."""
        corner_mm = min(self.rise_mm, top_mm)
        right_mm = self.length_mm * corner_mm / self.rise_mm
        return [(0.0, 0.0, 0.0), (corner_mm, 0.0, right_mm), (top_mm, 0.0, right_mm)]


@dataclass(frozen=True)
class Steps:
    """Boxes side by side whose floors lie at different heights: V = Σ L·W·max(0, h − floor).

    boxes: (floor_mm, length_mm, width_mm), floors never falling, the first at 0.
    """

    boxes: tuple[tuple[float, float, float], ...]

    def volume_l(self, height_mm: float) -> float:
        """Litres up to a height above the lowest floor."""
        parts = (le * w * max(0.0, height_mm - floor) for floor, le, w in self.boxes)
        return math.fsum(parts) / _MM3_PER_L

    def litres_per_mm(self, height_mm: float) -> float:
        """Surface at a height; on a floor it is the one just above it."""
        return math.fsum(le * w for floor, le, w in self.boxes if floor <= height_mm) / _MM3_PER_L

    def edges(self, top_mm: float) -> list[Edge]:
        """The boxes beside each other, the deepest on the left."""
        found, right_mm = [], 0.0
        for floor_mm, length_mm, _ in self.boxes:
            if floor_mm > 0:
                found.append((floor_mm, 0.0, right_mm))
            right_mm += length_mm
            found.append((floor_mm, 0.0, right_mm))
        return [edge for edge in found if edge[0] <= top_mm] + [(top_mm, 0.0, found[-1][2])]


def _angle_less_sine(angle: float) -> float:
    """x − sin x without the loss of digits near 0, by the sine's own series."""
    if angle > _SMALL_ANGLE_SHARE:
        return angle - math.sin(angle)
    total, part, n = 0.0, angle**3 / 6, 3
    while total + part != total:
        total += part
        part *= -angle * angle / ((n + 1) * (n + 2))
        n += 2
    return total


@dataclass(frozen=True)
class LyingCylinder:
    """A horizontal cylinder with flat ends: V = L·r²/2·(x − sin x), x the angle of the wet arc."""

    diameter_mm: float
    length_mm: float

    def volume_l(self, height_mm: float) -> float:
        """Litres up to a height of 0 to the diameter."""
        r = self.diameter_mm / 2
        arc = 4 * math.asin(min(1.0, math.sqrt(height_mm / self.diameter_mm)))
        return self.length_mm * r * r / 2 * _angle_less_sine(arc) / _MM3_PER_L

    def litres_per_mm(self, height_mm: float) -> float:
        """Surface: the chord times the length, 0 at the floor and at the crown."""
        return self.length_mm * self._chord_mm(height_mm) / _MM3_PER_L

    def _chord_mm(self, height_mm: float) -> float:
        return 2 * math.sqrt(max(0.0, height_mm * (self.diameter_mm - height_mm)))

    def edges(self, top_mm: float) -> list[Edge]:
        """The round end."""
        r = self.diameter_mm / 2
        heights = [r * (1 - math.cos(math.pi * i / _ROUND_POINTS)) for i in range(_ROUND_POINTS)]
        return [
            (h, r - self._chord_mm(h) / 2, r + self._chord_mm(h) / 2)
            for h in [*(h for h in heights if h < top_mm), top_mm]
        ]


@dataclass(frozen=True)
class Frustum:
    """An upright cone cut off below: V = π·h/3·(r₁² + r₁·r + r²). A pointed one has bottom 0."""

    bottom_diameter_mm: float
    top_diameter_mm: float
    height_mm: float

    def _diameter_mm(self, height_mm: float) -> float:
        wider_mm = self.top_diameter_mm - self.bottom_diameter_mm
        return self.bottom_diameter_mm + wider_mm * height_mm / self.height_mm

    def volume_l(self, height_mm: float) -> float:
        """Litres up to a height of 0 to the frustum's own."""
        r1, r = self.bottom_diameter_mm / 2, self._diameter_mm(height_mm) / 2
        return math.pi * height_mm / 3 * (r1 * r1 + r1 * r + r * r) / _MM3_PER_L

    def litres_per_mm(self, height_mm: float) -> float:
        """Surface of the circle at a height, L/mm."""
        return math.pi * (self._diameter_mm(height_mm) / 2) ** 2 / _MM3_PER_L

    def edges(self, top_mm: float) -> list[Edge]:
        """Centred on the widest circle."""
        middle_mm = max(self.bottom_diameter_mm, self.top_diameter_mm) / 2
        halves = ((h, self._diameter_mm(h) / 2) for h in (0.0, top_mm))
        return [(h, middle_mm - half, middle_mm + half) for h, half in halves]
