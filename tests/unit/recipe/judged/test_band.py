"""pycore.recipe.band: distance from the band and the side where no plan may end; by hand."""

import pytest

from pycore.recipe.band import is_new_charge, is_wrong_side, outside_pct
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
