"""pycore.recipe.draw_off: a little more is taken out where fuller buckets spare walks for it."""

from collections.abc import Iterator
from dataclasses import replace

import pytest

from pycore.recipe import draw_off
from pycore.recipe.draw_off import drawn_to, least_draw_off, worth_taking_out_l
from pycore.recipe.outcome import Plan, made
from pycore.recipe.pours import Pour
from pycore.recipe.request import DrawOff
from tests.unit.recipe.shop import question

RICH = replace(question(198.0, 14.0), draw_off=DrawOff(allowed=True, mark_l=1.0))


def taking(taken_out_l: float, buckets: int, water_l: float = 6.0) -> Plan:
    """So much out and so many buckets in; where it lands is no matter here."""
    return made(RICH, [Pour(buckets, water_l, 0.5)], taken_out_l)


def chosen(monkeypatch: pytest.MonkeyPatch, least: Plan, *fuller: Plan) -> Plan | None:
    """What is taken where the search finds these plans, of any and of full buckets."""

    def found(*_: object, full: bool = False) -> Iterator[Plan]:
        return iter(fuller if full else [least])

    monkeypatch.setattr(draw_off, "_landings", found)
    return drawn_to(RICH, 8.5, 7.0, 8.5)


@pytest.mark.parametrize(
    ("least_l", "buckets", "fuller_l", "fewer", "is_worth_it"),
    [
        # A pail of 10 L more, or one litre in twenty. Beside 10 buckets 13 are not too many yet.
        (100.0, 14, 110.0, 10, True), (100.0, 14, 111.0, 10, False),
        (400.0, 60, 420.0, 40, True), (400.0, 60, 421.0, 40, False),
        (100.0, 14, 101.0, 11, False), (100.0, 14, 101.0, 14, False),
    ],
)  # fmt: skip
def test_one_pail_or_a_twentieth_more_for_one_bucket_in_five_and_one(
    monkeypatch: pytest.MonkeyPatch,
    least_l: float,
    buckets: int,
    fuller_l: float,
    fewer: int,
    *,
    is_worth_it: bool,
) -> None:
    least, fuller = taking(least_l, buckets), taking(fuller_l, fewer, 9.0)
    assert chosen(monkeypatch, least, fuller) is (fuller if is_worth_it else least)


def test_of_full_buckets_the_first_that_spare_enough(monkeypatch: pytest.MonkeyPatch) -> None:
    least, second = taking(100.0, 14), taking(104.0, 10, 9.0)
    found = chosen(monkeypatch, least, taking(102.0, 13), second, taking(106.0, 9, 9.5))
    assert found is second
    assert chosen(monkeypatch, least) is least


def test_full_buckets_are_not_searched_for_where_they_are_full(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    full = made(RICH, [Pour(14, 8.0, 2.0)], 140.0)

    def found(*_: object, full_ones: Plan = full, full: bool = False) -> Iterator[Plan]:
        assert not full
        return iter([full_ones])

    monkeypatch.setattr(draw_off, "_landings", found)
    assert drawn_to(RICH, 8.5, 7.0, 8.5) is full


def test_two_litres_more_spare_three_buckets_of_twelve() -> None:
    # Weakest of all are 7 L and 50 mL, 0.71 %: 198·(14 − 8.5)/(14 − 0.71) = 81.9 L in 12 buckets.
    # 9.5 L and 100 mL are 1.04 %: 84 L in nine.
    plan = least_draw_off(replace(RICH, bucket=replace(RICH.bucket, water_mark_l=0.5)))
    assert plan is not None
    assert plan.totals.buckets == 9
    assert 84.0 <= plan.draw_off_l <= 86.0
    assert 7.0 <= plan.final.strength_pct.value <= 8.5


def test_where_nothing_has_to_come_out_nothing_is_worth_it() -> None:
    # Else one pail of 10 L more, or a twentieth.
    most_l = [worth_taking_out_l(RICH, least_l) for least_l in (0.0, 0.5, 100.0, 400.0)]
    assert most_l == [0.0, 10.5, 110.0, 420.0]
