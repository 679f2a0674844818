"""pycore.practice.figures: each step and each slip by hand."""

from dataclasses import replace

import pytest

from pycore.practice.figures import STEPS, Figures

# 340 mm of 440 mm and 198 L are 153 L; 4.0 x 1.5 is 6 %; 45 L of room; 8 + 153 x 2 / 45 is 14.8 %.
LATHE = Figures(
    dipped_l=153.0,
    read_pct=6.0,
    depth_mm=340.0,
    full_depth_mm=440.0,
    full_volume_l=198.0,
    reading_brix=4.0,
    factor=1.5,
    aim_pct=8.0,
    strong_pct=20.0,
    volume_l=153.0,
    strength_pct=6.0,
    room_l=45.0,
)
RIGHT = {"volume": 153.0, "strength": 6.0, "room": 45.0, "top_up": 14.8}


@pytest.mark.parametrize(("step", "number"), RIGHT.items())
def test_right_numbers(step: str, number: float) -> None:
    assert LATHE.at(step) == pytest.approx(number)


def test_what_has_to_come_out_of_a_full_sump_closes_the_balance() -> None:
    full = replace(LATHE, volume_l=198.0, room_l=0.0)
    out_l = full.at("take_out")
    # 198 x 2 / (20 - 6) is 28.3 L; what stays at 6 % and as much at 20 % make 8 %.
    assert out_l == pytest.approx(198 * 2 / 14)
    assert ((198 - out_l) * 6 + out_l * 20) / 198 == pytest.approx(8.0)
    assert full.at("top_up") is None
    assert full.slips("top_up") == {}
    assert replace(full, strength_pct=20.0).at("take_out") is None


SLIPS = {
    "volume": {
        "room_as_volume": 45.0,
        "depth_as_volume": 340.0,
        "share_as_volume": 100 * 340 / 440,
    },
    "strength": {"factor_forgotten": 4.0, "factor_divided": 4 / 1.5},
    "room": {"volume_as_room": 153.0, "depth_as_room": 100.0},
    "take_out": {"goes_out_too": 153 * 2 / 20, "concentrate_alone": 3.06},
    "top_up": {
        "aim_as_top_up": 8.0,
        # 6.8 points below the aim where they belong above it.
        "wrong_way": 1.2,
        "shortfall_as_top_up": 2.0,
        # What lifts the sump alone: 3.06 L in 45 L.
        "sump_only": 6.8,
        # 8 % of the whole 198 L, as if nothing were in it.
        "sump_forgotten": 35.2,
        # 14.8 parts to 85.2 parts of water.
        "of_water": 17.371,
    },
}


@pytest.mark.parametrize("step", STEPS)
def test_slips(step: str) -> None:
    assert LATHE.slips(step) == pytest.approx(SLIPS[step], rel=1e-4)
