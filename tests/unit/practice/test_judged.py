"""pycore.practice.judged: right, near, right from one's own numbers, or a slip with a name."""

from dataclasses import replace

import pytest

from pycore.practice.judged import Judged, judge, slip_of
from tests.unit.practice.test_figures import LATHE


def judged(step: str, number: float, own: object = LATHE, allowed: float = 0.5) -> Judged:
    assert isinstance(own, type(LATHE))
    return judge(step, number, LATHE, own, allowed, 0.1)


@pytest.mark.parametrize(
    ("number", "verdict"), [(14.8, "right"), (14.75, "right"), (14.6, "near"), (15.3, "near")]
)
def test_right_to_the_last_digit_and_near_within_what_the_tools_tell(
    number: float, verdict: str
) -> None:
    assert judged("top_up", number) == Judged(verdict)


def test_beyond_that_it_is_off() -> None:
    assert judged("top_up", 15.4) == Judged("off")
    assert judged("volume", 150.0, allowed=0.9) == Judged("off")


@pytest.mark.parametrize(
    ("step", "number", "slip"),
    [
        ("volume", 45.0, "room_as_volume"),
        ("volume", 340.0, "depth_as_volume"),
        ("volume", 77.3, "share_as_volume"),
        ("strength", 4.0, "factor_forgotten"),
        ("strength", 2.7, "factor_divided"),
        ("room", 153.0, "volume_as_room"),
        ("room", 100.0, "depth_as_room"),
        ("top_up", 8.0, "aim_as_top_up"),
        ("top_up", 2.0, "shortfall_as_top_up"),
        ("top_up", 1.2, "wrong_way"),
        ("top_up", 6.8, "sump_only"),
        ("top_up", 35.0, "sump_forgotten"),
        ("top_up", 17.4, "of_water"),
        ("take_out", 15.3, "goes_out_too"),
    ],
)
def test_a_slip_is_named(step: str, number: float, slip: str) -> None:
    assert judged(step, number) == Judged("off", slip)


def test_what_follows_from_ones_own_numbers_is_told_from_a_slip() -> None:
    # With the factor forgotten: 8 + 153 x 4 / 45 is 21.6 %.
    own = replace(LATHE, strength_pct=4.0)
    found = judged("top_up", 21.6, own)
    assert found.verdict == "follows"
    assert found.own == pytest.approx(21.6)


def test_a_slip_upon_ones_own_numbers_is_named_too() -> None:
    own = replace(LATHE, strength_pct=4.0)
    assert judged("top_up", 4.0, own) == Judged("off", "shortfall_as_top_up")


def test_a_slip_that_cannot_be_told_from_right_is_none() -> None:
    assert slip_of(5.2, {"one": 5.3, "two": 5.9}, 5.4, 0.5) is None
    assert slip_of(6.0, {"one": 5.3, "two": 5.9}, 5.3, 0.5) == "two"
    assert slip_of(6.0, {"far": 6.4, "near": 6.1}, 1.0, 0.5) == "near"
