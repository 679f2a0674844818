"""pycore.sump.shapes. Tank tables stand in shared/checks."""

import math

import pytest

from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured
from pycore.sump.shapes import Sump, box, proportional, table

TABLE = ([50.0, 100.0, 400.0], [5.0, 60.0, 180.0])
SUMPS = [
    proportional(440, 198, 0.1),
    box(1200, 600, 400, 0.03),
    table(*TABLE, 350, 0.1),
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
