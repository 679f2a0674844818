"""The true outline of a sump for its drawing, as shares of its own height and width."""

from __future__ import annotations

import itertools
from collections.abc import Sequence
from dataclasses import dataclass

from pycore.sump.curve import RisingCurve
from pycore.sump.obstacles import Obstacle, Obstructed
from pycore.sump.solids import Edge, Solid, Straight
from pycore.sump.sump import Sump


@dataclass(frozen=True)
class Wall:
    """Left and right wall at a height, all as shares; walls are straight between two of these."""

    height_share: float
    left_share: float
    right_share: float


@dataclass(frozen=True)
class Block:
    """Something that stands in the liquid: from one height to another, as wide as its area."""

    from_share: float
    to_share: float
    width_share: float


@dataclass(frozen=True)
class Drawing:
    """Outline from floor (0) to rim (1), in true proportions where aspect_share is known.

    aspect_share is the drawn width over the drawn height; zero_share the height of the stick's
    foot.
    """

    outline: list[Wall]
    blocks: list[Block]
    zero_share: float
    aspect_share: float | None = None


def _by_surface(curve: RisingCurve) -> list[Edge]:
    """Edges of a measured table: as wide as the surface in the middle of each pair of rows."""
    pairs = list(zip(curve.depths_mm, curve.volumes_l, strict=True))
    slopes = [(b[1] - a[1]) / (b[0] - a[0]) for a, b in itertools.pairwise(pairs)]
    middles = [(a[0] + b[0]) / 2 for a, b in itertools.pairwise(pairs)]
    heights = [pairs[0][0], *middles, pairs[-1][0]]
    widths = [slopes[0], *slopes, slopes[-1]]
    widest = max(widths)
    return [
        (height, (widest - width) / 2, (widest + width) / 2)
        for height, width in zip(heights, widths, strict=True)
    ]


def _walls(edges: Sequence[Edge], top_mm: float) -> tuple[list[Wall], float]:
    left_mm = min(edge[1] for edge in edges)
    width_mm = max(edge[2] for edge in edges) - left_mm
    walls = [
        Wall(height / top_mm, (left - left_mm) / width_mm, (right - left_mm) / width_mm)
        for height, left, right in edges
    ]
    return walls, width_mm / top_mm


def drawing_of(sump: Sump) -> Drawing:
    """The outline of a sump and of what stands in it. A table is drawn by its surface."""
    top_mm, curve = sump.rim_depth_mm + sump.zero_mm, sump.curve
    zero_share = sump.zero_mm / top_mm
    if isinstance(curve, RisingCurve):
        walls, _ = _walls(_by_surface(curve), top_mm)
        return Drawing(walls, [], zero_share)
    things: tuple[Obstacle, ...] = ()
    solid: Solid = curve
    if isinstance(curve, Obstructed):
        solid, things = curve.solid, curve.obstacles
    walls, aspect_share = _walls(solid.edges(top_mm), top_mm)
    widest = max(solid.litres_per_mm(wall.height_share * top_mm) for wall in walls)
    blocks = [
        Block(
            min(1.0, thing.from_mm / top_mm),
            min(1.0, thing.to_mm / top_mm),
            thing.area_l_per_mm / widest,
        )
        for thing in things
    ]
    is_measured = not (isinstance(solid, Straight) and solid.width_mm is None)
    return Drawing(walls, blocks, zero_share, aspect_share if is_measured else None)
