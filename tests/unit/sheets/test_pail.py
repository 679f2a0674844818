"""pycore.sheets.pail: litres of a frustum against numerical integration and against itself."""

import math

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy.integrate import quad

from pycore.quantity.fault import Fault
from pycore.sheets.pail import from_diameters, from_fills

DIAMETERS = st.floats(80, 500)
HEIGHTS = st.floats(100, 500)


@given(DIAMETERS, DIAMETERS, HEIGHTS, st.floats(0.001, 1))
def test_litres_are_the_area_summed_up(
    floor_mm: float, brim_mm: float, height_mm: float, share: float
) -> None:
    pail = from_diameters(floor_mm, brim_mm, height_mm)

    def area_mm2(h_mm: float) -> float:
        return math.pi * (floor_mm + (brim_mm - floor_mm) * h_mm / height_mm) ** 2 / 4

    wanted, _ = quad(area_mm2, 0, share * height_mm)
    assert pail.volume_l(share * height_mm) == pytest.approx(wanted / 1e6, rel=1e-9, abs=1e-12)


@given(DIAMETERS, DIAMETERS, HEIGHTS, st.floats(0.001, 1))
def test_depth_and_litres_turn_back(
    floor_mm: float, brim_mm: float, height_mm: float, share: float
) -> None:
    pail = from_diameters(floor_mm, brim_mm, height_mm)
    depth_mm = pail.depth_mm(pail.volume_l(share * height_mm))
    assert depth_mm == pytest.approx(share * height_mm, rel=1e-9)


@given(DIAMETERS, DIAMETERS, HEIGHTS, st.floats(0.2, 0.8))
def test_two_fills_give_the_pail_back(
    floor_mm: float, brim_mm: float, height_mm: float, share: float
) -> None:
    assume(0.4 < brim_mm / floor_mm < 2.5)
    pail = from_diameters(floor_mm, brim_mm, height_mm)
    low_mm = share * height_mm
    again = from_fills(low_mm, pail.volume_l(low_mm), height_mm, pail.brim_l, "fills")
    for part in (0.1, 0.35, 0.5, 0.9, 1.0):
        depth_mm = part * height_mm
        assert again.volume_l(depth_mm) == pytest.approx(pail.volume_l(depth_mm), rel=1e-7)
    assert again.slope_share == pytest.approx(pail.slope_share, abs=1e-7)


def test_a_straight_cylinder_by_hand() -> None:
    pail = from_diameters(200, 200, 100)
    # By hand: π·1² dm² times 1 dm.
    assert pail.brim_l == pytest.approx(math.pi)
    assert pail.along_wall_mm(100) == 100


def test_the_wall_is_longer_than_the_pail_is_high() -> None:
    # By hand: 3-4-5 triangle, 75 mm out on 100 mm up.
    assert from_diameters(100, 250, 100).along_wall_mm(100) == pytest.approx(125)


@pytest.mark.parametrize(
    ("fills", "code", "path"),
    [
        ((100, 4, 90, 8), "not_rising", "fills[1].depth"),
        ((100, 4, 200, 4), "not_rising", "fills[1].volume"),
        # A cone on its point holds 8 times as much at twice the depth; more is no pail.
        ((100, 4, 200, 32.1), "out_of_range", "fills[1].volume"),
        ((100, 4, 200, 4.5), "out_of_range", "fills[1].volume"),
    ],
)
def test_fills_that_no_pail_holds(
    fills: tuple[float, float, float, float], code: str, path: str
) -> None:
    with pytest.raises(Fault) as caught:
        from_fills(*fills, "fills")
    assert (caught.value.code, caught.value.path) == (code, path)


def test_limits_of_the_second_fill_by_hand() -> None:
    with pytest.raises(Fault) as caught:
        from_fills(100, 4, 200, 40, "fills")
    # Cone on its point: volume grows with the cube of the depth, 8 × 4 L. Cone that ends at the
    # second fill: 1 − (1/2)³ = 7/8 of it lies below half its height, so 4 L × 8/7.
    assert caught.value.limit["below"] == pytest.approx(32)
    assert caught.value.limit["above"] == pytest.approx(32 / 7)
