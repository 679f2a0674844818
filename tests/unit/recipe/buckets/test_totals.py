"""pycore.recipe.totals. That nothing better is missed stands in tests/properties."""

from collections.abc import Iterator
from dataclasses import replace
from typing import Any

import pytest

from pycore.quantity.measured import Measured
from pycore.recipe.marks import Group, Space
from pycore.recipe.plan import plan_recipe
from pycore.recipe.request import Mixing, Pail, PlanRequest, Target
from pycore.recipe.totals import (
    Total,
    may_end_between,
    pours_between,
    single_buckets,
    taken_apart,
    totals_between,
)
from tests.unit.recipe.shop import question, space


def half_litre_jug() -> PlanRequest:
    """7 L of room, a pail of 3 L with marks every litre, a jug with marks every half litre."""
    ask = question(43.002, 2.0, fill_to_l=50.0, bucket=(3.0, 1.0, 0.5))
    return replace(ask, target=Target(8.0, 8.5, 9.0), mixing=Mixing(100.0, 5.0, 0.1))


def test_plan_that_the_families_of_buckets_miss() -> None:
    # Twice 1 L + 1.5 L and once 1 L + 0.5 L: (0.86 + 3.5)/49.502 is 8.81 %.
    plan = plan_recipe(half_litre_jug())
    # Half a jug mark is 0.5 points here, so that is as near to 8.5 % as anyone can measure.
    assert plan.verdict == "on_target"
    assert plan.final.strength_pct.value == pytest.approx(436.004 / 49.502)
    assert plan.totals.buckets == 3


def test_single_buckets_by_hand() -> None:
    # 5 % of 1 L is 0.05 L: no mark of half a litre, and rounding may not leave less than 4.7 %.
    assert single_buckets(space(half_litre_jug())) == {
        (1, 1), (1, 2), (1, 3), (1, 4), (2, 1), (2, 2),
    }  # fmt: skip
    first = replace(half_litre_jug(), pail=Pail(jug_first_mark_l=1.0))
    assert single_buckets(space(first)) == {(1, 2), (1, 3), (1, 4), (2, 2)}


def test_marks_too_fine_are_not_looked_through() -> None:
    # A pail of 1,000 L with marks of 1 mL would have millions of fills.
    fine = question(100.0, 5.0, fill_to_l=5000.0, bucket=(1000.0, 0.001, 0.001))
    assert single_buckets(space(fine)) == frozenset()


def test_totals_in_the_band_by_hand() -> None:
    # Between 5.498 L and 6.998 L with 3.14 to 3.64 L of concentrate: 3.5 L, and 2 or 3 L of water.
    room = space(half_litre_jug())
    found = list(totals_between(room, single_buckets(room), 8.0, 9.0))
    assert found == [Total(2, 7), Total(3, 7)]


def apart(total: Total, *singles: tuple[int, int], usable_l: float = 3.0) -> object:
    room = Space(question(bucket=(usable_l, 1.0, 0.5)), 20.0, 0.0)
    return taken_apart(room, frozenset(singles), total)


def test_taken_apart_into_the_fewest_kinds() -> None:
    assert apart(Total(4, 4), (1, 1), (2, 2), (1, 2)) == (Group(2, 2, 2),)
    assert apart(Total(3, 7), (1, 3), (1, 1), (1, 4)) == (Group(2, 1, 3), Group(1, 1, 1))
    assert apart(Total(5, 7), (1, 4), (2, 2), (2, 1)) == (
        Group(1, 1, 4), Group(1, 2, 2), Group(1, 2, 1),
    )  # fmt: skip
    assert apart(Total(3, 1), (1, 1), (1, 2)) is None


def test_fine_marks_are_shared_evenly() -> None:
    fine = [(water, jug) for water in (1, 2) for jug in range(30)]
    # 37 L in pails of 8 L are five: three with 2 L of water, two with 1 L. A fifth of 58 marks is
    # 11: three times 11 leave 25 for the other two.
    assert apart(Total(8, 58), *fine, usable_l=8.0) == (
        Group(3, 2, 11), Group(1, 1, 13), Group(1, 1, 12),
    )  # fmt: skip
    # 39.5 L in five of 8 L: four with 2 L and one with 1 L; four times 12 leave 13.
    assert apart(Total(9, 61), *fine, usable_l=8.0) == (Group(4, 2, 12), Group(1, 1, 13))


def test_wide_window_is_searched_as_far_as_eight_buckets_reach(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    # 1,000 L of room, all of it open: 85 L hold 1,701 marks of 50 mL beside 17 of water at most.
    listed: list[Total] = []

    def counted(*given: Any) -> Iterator[Total]:
        for total in totals_between(*given):
            listed.append(total)
            yield total

    monkeypatch.setattr("pycore.recipe.totals.totals_between", counted)
    wide = Space(question(500.0, 2.0, fill_to_l=1500.0, bucket=(10.0, 5.0, 0.05)), 1000.0, 0.0)
    pours_between(wide, 0.0, 100.0, 8.0)
    assert 0 < len(listed) <= 17 * 1701


def test_no_pours_where_they_would_be_many_or_there_is_no_room() -> None:
    ask = half_litre_jug()
    assert pours_between(space(ask), 8.0, 9.0, 8.5)
    assert pours_between(space(ask), 9.0, 8.0, 8.5) == []
    assert pours_between(space(question(198.0)), 7.0, 9.0, 8.0) == []
    many = replace(ask, fill_to_l=43.002 + 8 * 3.0 + 1.6)
    assert pours_between(space(many), 0.0, 100.0, 8.5) == []


@pytest.mark.parametrize(
    ("volume_l", "strength_pct", "may"),
    [
        # 198·7.5 = 164·5 + 34·19.6: 34 L do it and 28 L of 20 % do not.
        (164.0, 5.0, True), (170.0, 5.0, False),
        # 198·8.5 = 148·11 + 50·1.1: 50 L do it and 38 L of 1 % do not.
        (148.0, 11.0, True), (160.0, 11.0, False),
        # Where it is already nothing has to be poured; with no room nothing can be.
        (198.0, 8.0, True), (198.0, 5.0, False),
    ],
)  # fmt: skip
def test_what_no_whole_marks_can_reach(volume_l: float, strength_pct: float, may: bool) -> None:
    assert may_end_between(space(question(volume_l, strength_pct)), 7.5, 8.5) is may


def test_nothing_is_reached_without_a_bucket_or_without_concentrate() -> None:
    brim = replace(question(100.0, 5.0), pail=Pail(first_mark_l=10.0))
    assert not may_end_between(space(brim), 7.5, 8.5)
    # A jug of 3 L and pail marks of 5 L: only plain water may be poured.
    plain = question(100.0, 5.0, weak_pct=0.0, bucket=(10.0, 5.0, 3.0))
    assert not may_end_between(space(plain), 7.5, 8.5)
    rich = question(100.0, 11.0, weak_pct=0.0, bucket=(10.0, 5.0, 3.0))
    assert may_end_between(space(rich), 7.5, 8.5)


def test_marks_too_fine_to_look_through_are_not_called_out_of_reach() -> None:
    fine = question(5000.0, 6.0, fill_to_l=15_000.0, strong_pct=99.0, bucket=(10.0, 0.01, 0.001))
    assert may_end_between(space(fine), 7.5, 8.5)


def test_a_premix_just_as_strong_as_the_low_end_fills_an_empty_sump() -> None:
    # 9.25 L of water and 0.75 L are 7.5 %, the strongest that may be mixed.
    empty = question(0.0, 5.0, fill_to_l=20.0, strong_pct=7.5, bucket=(10.0, 0.25, 0.05))
    empty = replace(empty, sump=replace(empty.sump, strength_pct=Measured(0.0, 0.3)))
    assert may_end_between(space(empty), 7.5, 9.0)
    assert not may_end_between(space(empty), 7.6, 9.0)
