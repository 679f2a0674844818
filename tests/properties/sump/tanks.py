"""Random tanks of every kind, each with other people's litres for the same depth.

Cylinders and cones come from ``fluids.geometry``; floors, steps and blocks from the wet area, which
is written down here anew and integrated by ``scipy.integrate``.
"""

import math
import random
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from fluids.geometry import TANK
from scipy.integrate import quad

from pycore.sump import shapes
from pycore.sump.obstacles import Obstacle
from pycore.sump.sump import Sump

U_SHARE = 0.05
Litres = Callable[[float], float]


@dataclass(frozen=True)
class Tank:
    """A sump of ours and the litres of the reference at a depth in mm."""

    kind: str
    sump: Sump
    litres: Litres


def _by_area(area_mm2: Litres, corners: list[float]) -> Litres:
    def litres(depth_mm: float) -> float:
        inside = [corner for corner in corners if 0 < corner < depth_mm]
        volume, _ = quad(area_mm2, 0, depth_mm, points=inside or None, limit=200)
        return volume / 1e6

    return litres


def _by_tank(tank: Any, from_m: float = 0.0) -> Litres:
    def litres(depth_mm: float) -> float:
        below = float(tank.V_from_h(from_m)) if from_m else 0.0
        return 1000 * (float(tank.V_from_h(from_m + depth_mm / 1000)) - below)

    return litres


def box(chance: random.Random) -> Tank:
    """V = length × width × depth."""
    length, width = chance.uniform(200, 3000), chance.uniform(150, 1500)
    sump = shapes.box(length, width, chance.uniform(80, 1000), U_SHARE)
    return Tank("box", sump, lambda depth_mm: length * width * depth_mm / 1e6)


def sloped_box(chance: random.Random) -> Tank:
    """The wet length of the floor grows with depth until the floor is under."""
    length, width = chance.uniform(200, 3000), chance.uniform(150, 1500)
    rise, full = chance.uniform(5, 300), chance.uniform(80, 1000)
    is_deep = chance.random() < 0.5
    sump = shapes.sloped_box(length, width, rise, is_deep, full, U_SHARE)
    foot = 0.0 if is_deep else rise
    above = _by_area(lambda h: width * min(length, length * h / rise), [rise])
    return Tank("sloped_box", sump, lambda depth_mm: above(depth_mm + foot))


def stepped(chance: random.Random) -> Tank:
    """Each box counts from its own floor."""
    full = chance.uniform(150, 1000)
    floors = [0.0, *sorted(chance.uniform(0, full) for _ in range(chance.randint(1, 4)))]
    boxes = [(f, chance.uniform(100, 2000), chance.uniform(100, 1000)) for f in floors]
    sump = shapes.stepped(boxes, full, U_SHARE)
    area = _by_area(lambda h: sum(le * w for f, le, w in boxes if h >= f), floors)
    return Tank("stepped", sump, area)


def upright_cylinder(chance: random.Random) -> Tank:
    """A standing TANK."""
    diameter, full = chance.uniform(150, 3000), chance.uniform(80, 1000)
    sump = shapes.upright_cylinder(diameter, full, U_SHARE)
    tank = TANK(D=diameter / 1000, L=2.0, horizontal=False)
    return Tank("upright_cylinder", sump, _by_tank(tank))


def horizontal_cylinder(chance: random.Random) -> Tank:
    """A lying TANK with flat ends."""
    diameter, length = chance.uniform(150, 3000), chance.uniform(200, 4000)
    sump = shapes.horizontal_cylinder(diameter, length, diameter * 0.95, U_SHARE, diameter)
    tank = TANK(D=diameter / 1000, L=length / 1000, horizontal=True)
    return Tank("horizontal_cylinder", sump, _by_tank(tank))


def frustum(chance: random.Random) -> Tank:
    """The upper part of the conical bottom of a standing TANK; sometimes all of it."""
    top, height = chance.uniform(300, 2500), chance.uniform(100, 1500)
    bottom = chance.choice([0.0, chance.uniform(0.05, 0.95) * top])
    sump = shapes.frustum(bottom, top, height, height * 0.9, U_SHARE, height)
    whole_m = height / 1000 / (1 - bottom / top)
    tank = TANK(D=top / 1000, L=0.1, horizontal=False, sideA="conical", sideA_a=whole_m)
    return Tank("frustum", sump, _by_tank(tank, whole_m * bottom / top))


def obstructed(chance: random.Random) -> Tank:
    """A box with blocks; the area is what none of them takes."""
    length, width, full = chance.uniform(500, 3000), chance.uniform(300, 1500), 500.0
    things = []
    for _ in range(chance.randint(1, 4)):
        foot = chance.uniform(0, 400)
        area = chance.uniform(0.01, 0.2) * length * width / 1e6
        things.append(Obstacle(foot, foot + chance.uniform(20, 600), area))
    sump = shapes.box(length, width, full, U_SHARE, None, things)
    corners = [height for thing in things for height in (thing.from_mm, thing.to_mm)]
    area = _by_area(
        lambda h: (
            length * width - 1e6 * sum(t.area_l_per_mm for t in things if t.from_mm <= h < t.to_mm)
        ),
        corners,
    )
    return Tank("box with blocks", sump, area)


KINDS = (box, sloped_box, stepped, upright_cylinder, horizontal_cylinder, frustum, obstructed)


def difference_share(tank: Tank, depth_mm: float) -> float:
    """How far ours lies from the reference, as a share of the whole tank."""
    ours = tank.sump.volume_from_depth(depth_mm, "depth")
    return abs(ours - tank.litres(depth_mm)) / tank.sump.rim_volume_l


def largest_difference(make: Callable[[random.Random], Tank], count: int, seed: int) -> float:
    """The largest such share over so many random tanks, at a random depth of each."""
    chance = random.Random(seed)
    worst = 0.0
    for _ in range(count):
        tank = make(chance)
        depth_mm = tank.sump.rim_depth_mm * math.sqrt(chance.uniform(1e-6, 1))
        worst = max(worst, difference_share(tank, depth_mm))
    return worst
