"""pycore.sump.obstacles: what stands in the liquid takes its own volume away, by hand."""

import math

import pytest

from pycore.quantity.fault import Fault
from pycore.sump.obstacles import Obstacle, obstructed
from pycore.sump.solids import LyingCylinder, SlopedFloor, Straight

BOX = Straight(0.72, 1200.0)


def test_each_takes_its_own_volume_away() -> None:
    things = [Obstacle(80, 280, 0.075), Obstacle(0, math.inf, 0.01)]
    held = obstructed(BOX, things, 440)
    # By hand: 0.72·180 − 0.075·100 − 0.01·180.
    assert held.volume_l(180) == pytest.approx(129.6 - 7.5 - 1.8)
    assert held.volume_l(80) == pytest.approx(57.6 - 0.8)
    assert held.volume_l(400) == pytest.approx(288 - 15 - 4)


def test_surface_between_foot_and_top() -> None:
    held = obstructed(BOX, [Obstacle(80, 280, 0.075)], 440)
    surfaces = [held.litres_per_mm(height) for height in (79.9, 80, 279.9, 280)]
    assert surfaces == pytest.approx([0.72, 0.645, 0.645, 0.72])


def test_nothing_in_it_is_the_solid_itself() -> None:
    assert obstructed(BOX, [], 440) is BOX


def test_walls_stay() -> None:
    assert obstructed(BOX, [Obstacle(80, 280, 0.075)], 440).edges(440) == BOX.edges(440)


def _fault(solid: object, things: list[Obstacle], top_mm: float = 440) -> Fault:
    with pytest.raises(Fault) as caught:
        obstructed(solid, things, top_mm)  # type: ignore[arg-type]
    return caught.value


def test_upside_down() -> None:
    fault = _fault(BOX, [Obstacle(80, 80, 0.01)])
    assert (fault.code, fault.path, fault.limit["above"]) == ("order", "obstacles[0].to_depth", 80)


def test_two_together_leave_no_room() -> None:
    fault = _fault(BOX, [Obstacle(0, 200, 0.5), Obstacle(100, 300, 0.3)])
    assert (fault.code, fault.path) == ("obstacle_too_large", "obstacles[1]")
    # By hand: between 100 and 200 mm 0.72 − 0.5 L/mm are free, over 200 mm.
    assert fault.limit["below"] == pytest.approx(0.22 * 200)
    assert fault.got == pytest.approx(60)


def test_foot_where_the_floor_is_too_narrow() -> None:
    fault = _fault(SlopedFloor(1200, 600, 60), [Obstacle(0, 300, 0.075)])
    assert (fault.code, fault.path) == ("obstacle_too_large", "obstacles[0].from_depth")
    # By hand: 0.72·h/60 = 0.075.
    assert fault.limit["minimum"] == pytest.approx(6.25)


def test_top_where_the_crown_is_too_narrow() -> None:
    fault = _fault(LyingCylinder(600, 1000), [Obstacle(300, 700, 0.1)], 600)
    assert (fault.code, fault.path) == ("obstacle_too_large", "obstacles[0]")
