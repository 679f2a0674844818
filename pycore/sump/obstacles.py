"""Things that stand in the liquid: a pump body, a block, a baffle.

Each takes its own area away from the surface between two heights. What a measured table or a figure
for the whole tank says already holds them, so they belong to tanks known by their measures only.
"""

from __future__ import annotations

import itertools
from collections.abc import Sequence
from dataclasses import dataclass

from pycore.quantity.fault import Fault
from pycore.sump.curve import depth_at
from pycore.sump.solids import Edge, Solid

# A float's last digits are no contact between an obstacle and the walls.
_HAIR_SHARE = 1e-9


@dataclass(frozen=True)
class Obstacle:
    """Something upright from one height above the deepest floor to another, mm, with its area."""

    from_mm: float
    to_mm: float
    area_l_per_mm: float


@dataclass(frozen=True)
class Obstructed:
    """A solid less what stands in it."""

    solid: Solid
    obstacles: tuple[Obstacle, ...]

    def volume_l(self, height_mm: float) -> float:
        """Litres up to a height: the solid's own less what is displaced below it."""
        displaced_l = sum(
            thing.area_l_per_mm * max(0.0, min(height_mm, thing.to_mm) - thing.from_mm)
            for thing in self.obstacles
        )
        return self.solid.volume_l(height_mm) - displaced_l

    def litres_per_mm(self, height_mm: float) -> float:
        """Free surface at a height; at an obstacle's own foot it is the one just above it."""
        taken = (t.area_l_per_mm for t in self.obstacles if t.from_mm <= height_mm < t.to_mm)
        return self.solid.litres_per_mm(height_mm) - sum(taken)

    def edges(self, top_mm: float) -> list[Edge]:
        """The walls of the solid."""
        return self.solid.edges(top_mm)


def obstructed(solid: Solid, obstacles: Sequence[Obstacle], top_mm: float) -> Solid:
    """The solid with things standing in it, up to its rim.

    Errors: ``order`` at ``obstacles[i].to_depth`` for a thing whose top is not above its foot;
    ``obstacle_too_large`` where no free surface would be left, at ``obstacles[i].from_depth``
    with the least height in mm where it fits, or at ``obstacles[i]`` with the most litres that
    fit between its two heights.
    """
    for i, thing in enumerate(obstacles):
        if thing.to_mm <= thing.from_mm:
            limit = {"above": thing.from_mm, "unit": "mm"}
            raise Fault("order", f"obstacles[{i}].to_depth", thing.to_mm, limit)
        _refuse_crowded(solid, obstacles[: i + 1], top_mm)
    return Obstructed(solid, tuple(obstacles)) if obstacles else solid


def _refuse_crowded(solid: Solid, things: Sequence[Obstacle], top_mm: float) -> None:
    """Looks at the ends of every stretch: each solid's surface is smallest at one of them."""
    last = things[-1]
    low_mm, high_mm = last.from_mm, min(last.to_mm, top_mm)
    borders = {low_mm, high_mm, *(t.from_mm for t in things), *(t.to_mm for t in things)}
    cuts = sorted(b for b in borders if low_mm <= b <= high_mm)
    for a_mm, b_mm in itertools.pairwise(cuts):
        taken = sum(t.area_l_per_mm for t in things if t.from_mm <= a_mm < t.to_mm)
        needed = taken * (1 + _HAIR_SHARE)
        ends = solid.litres_per_mm(a_mm), solid.litres_per_mm(b_mm)
        if min(ends) > needed:
            continue
        place = f"obstacles[{len(things) - 1}]"
        if a_mm == low_mm and ends[1] > needed:
            least_mm = depth_at(solid.litres_per_mm, needed, a_mm, b_mm)
            limit = {"minimum": least_mm, "unit": "mm"}
            raise Fault("obstacle_too_large", f"{place}.from_depth", low_mm, limit)
        span_mm = high_mm - low_mm
        free = max(0.0, min(ends) - taken + last.area_l_per_mm)
        limit = {"below": free * span_mm, "unit": "L"}
        raise Fault("obstacle_too_large", place, last.area_l_per_mm * span_mm, limit)
