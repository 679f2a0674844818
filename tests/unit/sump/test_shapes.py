"""pycore.sump.shapes. Tank tables stand in shared/checks."""

import math

import pytest

from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured
from pycore.sump.obstacles import Obstacle
from pycore.sump.shapes import (
    box,
    frustum,
    horizontal_cylinder,
    proportional,
    sloped_box,
    stepped,
    table,
    upright_cylinder,
)
from pycore.sump.sump import Sump

TABLE = ([50.0, 100.0, 400.0], [5.0, 60.0, 180.0])
SUMPS = [
    proportional(440, 198, 0.1),
    box(1200, 600, 400, 0.03),
    table(*TABLE, 350, 0.1),
    table(*TABLE, 350, 0.1, 430),
    box(1200, 600, 400, 0.03, None, [Obstacle(0, 300, 0.1)]),
    sloped_box(1200, 600, 60, True, 400, 0.05),
    stepped([(0, 400, 600), (120, 800, 600)], 400, 0.05),
    upright_cylinder(572, 800, 0.05),
    horizontal_cylinder(600, 1000, 540, 0.05),
    frustum(200, 600, 500, 450, 0.05),
    frustum(0, 600, 200, 180, 0.05),
]


@pytest.mark.parametrize("sump", SUMPS)
def test_edges_are_inside(sump: Sump) -> None:
    assert sump.volume_from_depth(0.0, "dip") == 0.0
    assert sump.volume_from_depth(sump.rim_depth_mm, "dip") == pytest.approx(sump.rim_volume_l)
    assert sump.depth_from_volume(sump.full_volume_l, "v") == pytest.approx(sump.full_depth_mm)


@pytest.mark.parametrize("sump", SUMPS)
def test_outside_is_refused_and_never_clamped(sump: Sump) -> None:
    for depth in (-0.001, math.nextafter(sump.rim_depth_mm, 1e9), math.nan, math.inf):
        with pytest.raises(Fault) as caught:
            sump.volume_from_depth(depth, "dip")
        assert caught.value.code == "out_of_range"
        assert caught.value.limit == {"minimum": 0, "maximum": sump.rim_depth_mm, "unit": "mm"}
    for volume in (-0.001, sump.rim_volume_l * 1.001, math.nan):
        with pytest.raises(Fault) as caught:
            sump.depth_from_volume(volume, "v")
        assert caught.value.limit["unit"] == "L"


def test_rim_is_ten_per_cent_over_the_full_mark() -> None:
    # Common practice, no source: the never-above mark lies 5 to 10 % over the full mark.
    assert proportional(440, 198, 0.1).rim_depth_mm == pytest.approx(484)
    assert proportional(440, 198, 0.1, 460).rim_depth_mm == 460
    assert table(*TABLE, 350, 0.1).rim_depth_mm == 400


def test_rim_below_the_full_mark() -> None:
    with pytest.raises(Fault) as caught:
        box(1200, 600, 400, 0.1, 399)
    assert (caught.value.code, caught.value.limit["minimum"]) == ("order", 400)


def test_rim_of_a_closed_tank_is_its_own_top() -> None:
    assert horizontal_cylinder(600, 1000, 400, 0.05).rim_depth_mm == pytest.approx(440)
    assert horizontal_cylinder(600, 1000, 580, 0.05).rim_depth_mm == 600
    for rim_mm in (399, 601):
        with pytest.raises(Fault) as caught:
            horizontal_cylinder(600, 1000, 400, 0.05, rim_mm)
        assert caught.value.limit == {"minimum": 400, "maximum": 600, "unit": "mm"}


def test_rim_of_a_table() -> None:
    # By hand: the last slope is 120 L over 300 mm.
    assert table(*TABLE, 350, 0.1, 430).rim_volume_l == pytest.approx(192)
    for rim_mm in (399, 441):
        with pytest.raises(Fault) as caught:
            table(*TABLE, 350, 0.1, rim_mm)
        assert (caught.value.code, caught.value.path) == ("order", "rim_depth")


@pytest.mark.parametrize("floors", [(1.0, 120.0), (0.0, 120.0, 119.0)])
def test_floors_that_fall(floors: tuple[float, ...]) -> None:
    with pytest.raises(Fault) as caught:
        stepped([(floor, 400, 600) for floor in floors], 400, 0.05)
    assert (caught.value.code, caught.value.path[:6]) == ("order", "steps[")


@pytest.mark.parametrize(
    ("depths", "volumes", "path"),
    [([50, 50], [5, 6], "points[1].depth"), ([50, 60], [5, 5], "points[1].volume"),
     ([50, 40], [5, 6], "points[1].depth"), ([50, 60], [0, 5], "points[0].volume")],
)  # fmt: skip
def test_table_that_does_not_rise(depths: list[float], volumes: list[float], path: str) -> None:
    with pytest.raises(Fault) as caught:
        table(depths, volumes, 50, 0.1)
    assert (caught.value.code, caught.value.path) == ("not_rising", path)
    assert "above" in caught.value.limit


def test_full_mark_above_the_table() -> None:
    with pytest.raises(Fault) as caught:
        table(*TABLE, 401, 0.1)
    assert (caught.value.code, caught.value.limit["maximum"]) == ("order", 400)


def test_uncertainty_of_dip_and_of_scale() -> None:
    # JCGM 100:2008, 5.1.2, by hand: u² = (198·342/440·0.1)² + (0.45·2)².
    volume = proportional(440, 198, 0.1).volume_measured(Measured(342, 2), "dip")
    assert volume.value == pytest.approx(153.9)
    assert volume.u == pytest.approx(math.hypot(15.39, 0.9))
