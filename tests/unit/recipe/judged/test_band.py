"""pycore.recipe.band: distance from the band and the side where no plan may end; by hand."""

from dataclasses import replace

import pytest

from pycore.recipe.band import (
    inside_pct,
    is_new_charge,
    is_wrong_side,
    near_enough_pct,
    outside_pct,
)
from pycore.recipe.request import Mixing, Target
from tests.unit.recipe.shop import question


def test_outside_the_band_by_hand() -> None:
    ask = question()
    assert [outside_pct(ask, pct) for pct in (6.5, 7.0, 8.0, 9.0, 9.25)] == [0.5, 0, 0, 0, 0.25]


def test_new_charge_is_below_a_fifth_of_the_mark() -> None:
    # A fifth of 198 L are 39.6 L.
    assert [is_new_charge(question(litres)) for litres in (39.5, 39.6)] == [True, False]


@pytest.mark.parametrize(
    ("volume_l", "strength_pct", "after_pct", "is_wrong"),
    [
        (154.0, 6.0, 6.9, False), (154.0, 6.0, 9.0, False), (154.0, 6.0, 9.1, True),
        (154.0, 12.0, 9.1, False), (154.0, 12.0, 7.0, False), (154.0, 12.0, 6.9, True),
        (154.0, 8.0, 6.9, False), (154.0, 8.0, 9.1, False),
        # Both ends belong to the band, so that nothing is past it from there.
        (154.0, 9.0, 6.9, False), (154.0, 9.1, 6.9, True), (154.0, 7.0, 9.1, False),
        (20.0, 6.0, 6.9, True), (20.0, 6.0, 9.1, False), (20.0, 12.0, 6.9, True),
    ],
)  # fmt: skip
def test_wrong_side_is_past_the_band(
    volume_l: float, strength_pct: float, after_pct: float, is_wrong: bool
) -> None:
    assert is_wrong_side(question(volume_l, strength_pct), after_pct) is is_wrong


def test_new_charge_may_be_thin_where_no_mix_is_strong_enough() -> None:
    assert is_wrong_side(question(20.0, 6.0, strong_pct=5.0), 5.0) is False


def test_new_charge_is_thin_where_the_mix_may_just_be_strong_enough() -> None:
    # Nothing but 7 % in an empty sump is 7 %.
    assert is_wrong_side(question(0.0, 0.0, strong_pct=7.0), 6.9) is True
    assert is_wrong_side(question(0.0, 0.0, strong_pct=6.9), 6.9) is False


def test_inside_is_the_band_less_the_closeness_but_never_past_the_aim() -> None:
    assert inside_pct(question()) == (7.5, 8.5)
    wide = replace(question(), mixing=Mixing(20.0, 1.0, 2.0))
    assert inside_pct(wide) == (8.0, 8.0)
    edge = replace(question(), target=Target(7.0, 7.2, 9.0))
    assert inside_pct(edge) == (7.2, 8.5)
    # Nor past the middle, where an aim at an edge would allow that.
    assert inside_pct(replace(wide, target=Target(7.0, 9.0, 9.0))) == (8.0, 9.0)
    assert inside_pct(replace(wide, target=Target(7.0, 7.0, 9.0))) == (7.0, 8.0)


def test_near_enough_is_no_result_that_hardly_stays_in_the_band() -> None:
    def near_pct(target: Target, closeness_pct: float) -> float:
        mixing = Mixing(20.0, 1.0, closeness_pct)
        return near_enough_pct(replace(question(), target=target, mixing=mixing))

    # As near as is asked for, but never past half of the way to an edge, which is one point away.
    assert near_pct(Target(7.0, 8.0, 9.0), 0.3) == 0.3
    assert near_pct(Target(7.0, 8.0, 9.0), 2.0) == 0.5
    # An aim beside an edge: half of the way of 1.6 points to the other one, on either side.
    assert near_pct(Target(7.0, 7.4, 9.0), 2.0) == pytest.approx(0.8)
    assert near_pct(Target(7.0, 8.6, 9.0), 2.0) == pytest.approx(0.8)
    # One strength that is asked for as it is has no edges to stay away from.
    assert near_pct(Target(8.0, 8.0, 8.0), 0.5) == 0.5
