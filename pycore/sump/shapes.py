"""The shapes a sump can have: by its full mark, by its measures, or by pairs of depth and litres.

Litres rise strictly with depth in each of them. All measures are inside measures in mm.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from pycore.quantity.fault import Fault
from pycore.sump.curve import RisingCurve
from pycore.sump.obstacles import Obstacle, obstructed
from pycore.sump.solids import Frustum, LyingCylinder, SlopedFloor, Solid, Steps, Straight
from pycore.sump.sump import KnownTo, Sump

# Never-above mark 5 to 10 % over the full mark: common practice, no source.
RIM_OVER_FULL = 1.10

# Relative standard uncertainty of the litres: common practice, no source.
VOLUME_U_SHARE = {"plate": 0.10, "poured": 0.03, "said": 0.15, "measured": 0.05}

# Standard uncertainty of a dip in mm: common practice, no source. Unsure may have been chips.
DIP_U_MM = {
    "hard_floor": 2.0, "through_slot": 3.0, "running": 8.0, "chips": 15.0, "unsure": 15.0,
}  # fmt: skip


def _with_marks(
    solid: Solid,
    full_depth_mm: float,
    u_share: float,
    rim_depth_mm: float | None,
    obstacles: Sequence[Obstacle] = (),
    top_mm: float = math.inf,
    zero_mm: float = 0.0,
) -> Sump:
    """The sump up to its rim; top_mm is the height at which the solid itself ends."""
    most_mm = top_mm - zero_mm
    if full_depth_mm > most_mm:
        raise Fault("order", "full_depth", full_depth_mm, {"maximum": most_mm, "unit": "mm"})
    rim_mm = min(full_depth_mm * RIM_OVER_FULL, most_mm) if rim_depth_mm is None else rim_depth_mm
    if not full_depth_mm <= rim_mm <= most_mm:
        limit = {"minimum": full_depth_mm, "maximum": most_mm, "unit": "mm"}
        if most_mm == math.inf:
            del limit["maximum"]
        raise Fault("order", "rim_depth", rim_mm, limit)
    curve = obstructed(solid, obstacles, rim_mm + zero_mm)
    return Sump(curve, full_depth_mm, rim_mm, u_share, zero_mm)


def proportional(
    full_depth_mm: float, full_volume_l: float, u_share: float, rim_depth_mm: float | None = None
) -> Sump:
    """A sump in which litres grow evenly with depth, fixed by its full mark.

    full_depth_mm and full_volume_l above 0; without a rim the deepest dip is the full mark plus
    10 %. Error: ``order`` when the rim lies below the full mark.

    >>> round(proportional(400, 200, 0.1).volume_from_depth(342, "dip"), 9)
    171.0
    """
    solid = Straight(full_volume_l / full_depth_mm)
    return _with_marks(solid, full_depth_mm, u_share, rim_depth_mm)


def box(
    length_mm: float,
    width_mm: float,
    full_depth_mm: float,
    u_share: float,
    rim_depth_mm: float | None = None,
    obstacles: Sequence[Obstacle] = (),
) -> Sump:
    """A box with a level floor: V = length × width × depth. Errors: those of the obstacles.

    >>> round(box(1200, 600, 400, 0.1).volume_from_depth(250, "dip"), 9)
    180.0
    """
    solid = Straight(length_mm * width_mm / 1e6, length_mm)
    return _with_marks(solid, full_depth_mm, u_share, rim_depth_mm, obstacles)


def sloped_box(
    length_mm: float,
    width_mm: float,
    rise_mm: float,
    is_dipped_deep: bool,
    full_depth_mm: float,
    u_share: float,
    rim_depth_mm: float | None = None,
    obstacles: Sequence[Obstacle] = (),
) -> Sump:
    """A box whose floor rises by ``rise_mm`` along its length, dipped at either end.

    At the shallow end the stick's foot stands ``rise_mm`` above the deepest place.

    >>> round(sloped_box(1200, 600, 60, True, 400, 0.05).volume_from_depth(60, "dip"), 9)
    21.6
    >>> round(sloped_box(1200, 600, 60, False, 340, 0.05).volume_from_depth(10, "dip"), 9)
    28.8
    """
    solid = SlopedFloor(length_mm, width_mm, rise_mm)
    zero_mm = 0.0 if is_dipped_deep else rise_mm
    return _with_marks(solid, full_depth_mm, u_share, rim_depth_mm, obstacles, zero_mm=zero_mm)


def stepped(
    boxes: Sequence[tuple[float, float, float]],
    full_depth_mm: float,
    u_share: float,
    rim_depth_mm: float | None = None,
    obstacles: Sequence[Obstacle] = (),
) -> Sump:
    """Two or more boxes side by side as (floor_mm, length_mm, width_mm), the deepest first.

    floor_mm is the height of that box's floor above the deepest one. Error: ``order`` at
    ``steps[i].floor`` for a first floor that is not 0 and for one below the floor before.

    >>> round(stepped([(0, 400, 600), (120, 800, 600)], 400, 0.05).volume_from_depth(220, "d"), 9)
    100.8
    """
    before_mm = 0.0
    for i, (floor_mm, _, _) in enumerate(boxes):
        if floor_mm < before_mm or (i == 0 and floor_mm > 0):
            limit: dict[str, object] = {"minimum": before_mm, "unit": "mm"}
            if i == 0:
                limit["maximum"] = 0.0
            raise Fault("order", f"steps[{i}].floor", floor_mm, limit)
        before_mm = floor_mm
    return _with_marks(Steps(tuple(boxes)), full_depth_mm, u_share, rim_depth_mm, obstacles)


def upright_cylinder(
    diameter_mm: float,
    full_depth_mm: float,
    u_share: float,
    rim_depth_mm: float | None = None,
    obstacles: Sequence[Obstacle] = (),
) -> Sump:
    """A drum that stands on its flat end: V = π·d²/4 × depth.

    >>> round(upright_cylinder(572, 800, 0.05).volume_from_depth(425, "dip"), 6)
    109.212128
    """
    solid = Straight(math.pi * diameter_mm**2 / 4e6, diameter_mm)
    return _with_marks(solid, full_depth_mm, u_share, rim_depth_mm, obstacles)


def horizontal_cylinder(
    diameter_mm: float,
    length_mm: float,
    full_depth_mm: float,
    u_share: float,
    rim_depth_mm: float | None = None,
    obstacles: Sequence[Obstacle] = (),
) -> Sump:
    """A lying drum with flat ends. Error: ``order`` for a mark above its diameter.

    >>> round(horizontal_cylinder(600, 1000, 540, 0.05).volume_from_depth(150, "dip"), 6)
    55.276636
    """
    solid = LyingCylinder(diameter_mm, length_mm)
    return _with_marks(solid, full_depth_mm, u_share, rim_depth_mm, obstacles, diameter_mm)


def frustum(
    bottom_diameter_mm: float,
    top_diameter_mm: float,
    height_mm: float,
    full_depth_mm: float,
    u_share: float,
    rim_depth_mm: float | None = None,
    obstacles: Sequence[Obstacle] = (),
) -> Sump:
    """A cone cut off below, or pointed (bottom 0). Error: ``order`` for a mark above its height.

    >>> round(frustum(0, 600, 200, 180, 0.05).volume_from_depth(100, "dip"), 6)
    2.356194
    """
    solid = Frustum(bottom_diameter_mm, top_diameter_mm, height_mm)
    return _with_marks(solid, full_depth_mm, u_share, rim_depth_mm, obstacles, height_mm)


def table(
    depths_mm: Sequence[float],
    volumes_l: Sequence[float],
    full_depth_mm: float,
    u_share: float,
    rim_depth_mm: float | None = None,
    us_l: Sequence[float] | None = None,
) -> Sump:
    """A sump known by pairs of depth (mm) and litres, with a rising curve between them.

    The pair (0, 0) is added when the table does not begin at the floor; without a rim the last
    pair is the rim. A rim up to 10 % deeper is reached with the slope between the last two pairs.
    us_l are the pairs' own standard uncertainties in litres, instead of u_share. Errors:
    ``not_rising`` at ``points[i].depth`` or ``points[i].volume`` with what it must lie above,
    ``order`` when the full mark lies above the last pair, or the rim below it or further above.
    """
    _refuse_not_rising(depths_mm, volumes_l)
    if full_depth_mm > depths_mm[-1]:
        limit = {"maximum": depths_mm[-1], "unit": "mm"}
        raise Fault("order", "full_depth", full_depth_mm, limit)
    depths, volumes = list(depths_mm), list(volumes_l)
    us = None if us_l is None else list(us_l)
    if depths[0] > 0 and volumes[0] > 0:
        depths.insert(0, 0.0)
        volumes.insert(0, 0.0)
        if us is not None:
            us.insert(0, 0.0)
    elif depths[0] > 0:
        # A floor that is dry up to the first pair would need a flat piece, which cannot be
        # turned back from litres to depth.
        raise Fault("not_rising", "points[0].volume", volumes[0], {"above": 0.0, "unit": "L"})
    rim_mm = depths[-1] if rim_depth_mm is None else rim_depth_mm
    if not depths[-1] <= rim_mm <= depths[-1] * RIM_OVER_FULL:
        limit = {"minimum": depths[-1], "maximum": depths[-1] * RIM_OVER_FULL, "unit": "mm"}
        raise Fault("order", "rim_depth", rim_mm, limit)
    if rim_mm > depths[-1]:
        _lengthen(depths, volumes, us, rim_mm)
    known_to = None if us is None else KnownTo(tuple(depths), tuple(us))
    curve = RisingCurve.through(depths, volumes)
    return Sump(curve, full_depth_mm, rim_mm, u_share, known_to=known_to)


def _refuse_not_rising(depths_mm: Sequence[float], volumes_l: Sequence[float]) -> None:
    before = (-1.0, -1.0)
    for i, pair in enumerate(zip(depths_mm, volumes_l, strict=True)):
        for column, (name, unit) in enumerate((("depth", "mm"), ("volume", "L"))):
            if pair[column] <= before[column]:
                limit = {"above": before[column], "unit": unit}
                raise Fault("not_rising", f"points[{i}].{name}", pair[column], limit)
        before = pair


def _lengthen(
    depths_mm: list[float], volumes_l: list[float], us_l: list[float] | None, rim_mm: float
) -> None:
    """Adds the rim with the slope of the last two pairs, half of which may be wrong."""
    slope_l_per_mm = (volumes_l[-1] - volumes_l[-2]) / (depths_mm[-1] - depths_mm[-2])
    more_l = slope_l_per_mm * (rim_mm - depths_mm[-1])
    depths_mm.append(rim_mm)
    volumes_l.append(volumes_l[-1] + more_l)
    if us_l is not None:
        us_l.append(math.hypot(us_l[-1], more_l / 2))
