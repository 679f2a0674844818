"""pycore.recipe.totals at its limits: what still fits, what is just reached, what is first."""

import random

import pytest

from pycore.recipe.marks import Group, Space
from pycore.recipe.totals import (
    Total,
    may_end_between,
    pours_between,
    single_buckets,
    taken_apart,
    totals_between,
)
from tests.unit.recipe.buckets.test_totals import apart, half_litre_jug
from tests.unit.recipe.shop import question, space

SEED = 71
# Of coarse marks: a pail of 10 L with marks every 5 L, and a jug with marks every 2 L.
COARSE = Space(
    question(100.0, 6.0, fill_to_l=150.0, strong_pct=35.0, weak_pct=0.0, bucket=(10.0, 5.0, 2.0)),
    50.0,
    43.0,
)
# Of 40 L at 5 %, which hold 2 L: 3 L more and 7 L of water are just 10 % of 50 L.
JUST_TEN = Space(
    question(40.0, 5.0, fill_to_l=50.0, strong_pct=100.0, bucket=(3.0, 1.0, 0.5)), 10.0, 9.0
)


def test_small_buckets_and_those_that_the_room_just_holds() -> None:
    # A pail of 2 L, marks of 0.5 L and 0.25 L, 1.75 L of room, nothing above 35 %: 0.5 L of water
    # and 0.5 L are 50 %, 1.5 L and 0.5 L are 2 L.
    room = Space(question(weak_pct=0.0, strong_pct=35.0, bucket=(2.0, 0.5, 0.25)), 1.75, 1.0)
    assert single_buckets(room) == {(1, 0), (1, 1), (2, 0), (2, 1), (2, 2), (3, 0), (3, 1)}


@pytest.mark.parametrize(("jug_mark_l", "kinds"), [(0.0124, 400), (0.01237, 0)])
def test_four_hundred_kinds_are_looked_through_and_more_are_not(
    jug_mark_l: float, kinds: int
) -> None:
    # Beside 5 L of water 1 % are 4 marks, and 5 L more are 403.2 or 404.2 of them: 400 or 401
    # kinds. 10 L of water leave no room for the marks they need.
    ask = question(strong_pct=100.0, bucket=(10.0, 5.0, jug_mark_l))
    assert len(single_buckets(Space(ask, 20.0, 10.0))) == kinds


def test_totals_of_coarse_marks_by_hand() -> None:
    # 43 L to 50 L: with 3 marks 12 L of 146 L are 8.2 %; with 2 marks 10 L of 144 L are 6.94 %,
    # with 4 marks 14 L of 148 L are 9.5 %.
    singles = single_buckets(COARSE)
    assert singles == {(1, 0), (1, 1), (2, 0)}
    assert list(totals_between(COARSE, singles, 7.0, 9.0)) == [Total(8, 3)]
    assert list(totals_between(COARSE, singles, 6.9, 9.0)) == [Total(8, 2), Total(8, 3)]


def test_both_ends_of_a_window_belong_to_it() -> None:
    singles = single_buckets(JUST_TEN)
    for low_pct, high_pct in ((10.0, 10.0), (9.99, 10.0), (10.0, 10.01)):
        assert list(totals_between(JUST_TEN, singles, low_pct, high_pct)) == [Total(7, 6)]
        assert may_end_between(JUST_TEN, low_pct, high_pct)
    # With no room at all.
    assert may_end_between(space(question(198.0, 8.5)), 7.5, 8.5)
    assert may_end_between(space(question(198.0, 7.5)), 7.5, 8.5)


def test_totals_of_an_empty_sump_however_little_is_poured() -> None:
    # 2 L of water and 0.5 L are 20 %, 1 L and 0.5 L are 33 %; 3 L of water leave no room.
    empty = question(0.0, 0.0, fill_to_l=3.0, strong_pct=100.0, bucket=(3.0, 1.0, 0.5))
    room = Space(empty, 3.0, 0.0)
    assert list(totals_between(room, single_buckets(room), 10.0, 20.0)) == [Total(2, 1)]


def test_only_water_is_poured_where_a_jug_mark_is_too_much() -> None:
    # A jug of 3 L beside 5 L of water is too strong: 100 L at 11 % in 105 L are 10.48 %.
    plain = question(100.0, 11.0, fill_to_l=105.0, weak_pct=0.0, bucket=(10.0, 5.0, 3.0))
    assert list(totals_between(space(plain), frozenset({(1, 0), (2, 0)}), 0.0, 100.0)) == [
        Total(1, 0)
    ]
    assert may_end_between(space(plain), 10.0, 10.5)
    assert not may_end_between(space(plain), 10.0, 10.4)


@pytest.mark.parametrize(
    ("room", "low_pct", "high_pct", "may"),
    [
        # At 15 % a litre takes 3.5 marks at the most: 129 in 37 L, and 15.69 L of 197.45 L.
        (space(question(strong_pct=15.0)), 7.94, 8.0, True),
        (space(question(strong_pct=15.0)), 7.95, 8.0, False),
        # One mark in 7 L is the leanest bucket: 49 L of room take 7 of them, 8.4997 %.
        (space(question(148.5, 11.0886)), 8.4, 8.5, True),
        (space(question(148.5, 11.0886)), 8.4, 8.499, False),
        # One of them brings 148.5 L at 8.6 % to 12.82 L of 155.55 L, 8.24 %.
        (space(question(148.5, 8.6, fill_to_l=165.0)), 8.1, 8.5, True),
        # At 17 % one mark of 0.5 L goes with 3 L: 1.7 L of 23.5 L are 7.23 %.
        (space(question(20.0, 6.0, fill_to_l=23.6, strong_pct=17.0, bucket=(6.5, 1.0, 0.5))),
         7.2, 9.0, True),
        (space(question(20.0, 6.0, fill_to_l=23.6, strong_pct=17.0, bucket=(6.5, 1.0, 0.5))),
         7.3, 9.0, False),
        # 12 L of 146 L.
        (COARSE, 8.2, 8.3, True),
    ],
)  # fmt: skip
def test_the_last_mark_decides(room: Space, low_pct: float, high_pct: float, may: bool) -> None:
    assert may_end_between(room, low_pct, high_pct) is may


def test_many_kinds_are_shared_evenly() -> None:
    # 10 L of water in five pails are 2 L in each; 58 marks are 11 in each, and one more in three.
    fine = [(water, jug) for water in (1, 2) for jug in range(30)]
    assert apart(Total(10, 58), *fine, usable_l=8.0) == (Group(3, 2, 12), Group(2, 2, 11))
    # Where 2 L with 11 marks may not be poured: three with 12 leave 22 for the other two.
    fine.remove((2, 11))
    assert apart(Total(8, 58), *fine, usable_l=8.0) == (Group(3, 2, 12), Group(2, 1, 11))


def test_the_first_set_in_the_order_of_marks_on_every_machine() -> None:
    # Sets keep no order, and another machine has another one.
    chance, tried = random.Random(SEED), 0
    every = [(water, jug) for water in range(1, 5) for jug in range(5)]
    room = Space(question(bucket=(7.0, 1.0, 0.5)), 20.0, 0.0)
    # 5 or 7 L of water make no alike buckets, and at the most 10.5 L need no more than two.
    while tried < 60:
        singles = frozenset(chance.sample(every, 12))
        total = Total(chance.choice([5, 7]), chance.randint(2, 7))
        pairs = [
            sorted((first, second)) for first in singles for second in singles
            if (first[0] + second[0], first[1] + second[1]) == (total.water, total.jug)
        ]  # fmt: skip
        if len(pairs) < 4:
            continue
        pours = taken_apart(room, singles, total)
        assert pours is not None
        assert sorted((group.water, group.jug) for group in pours) == min(pairs)
        tried += 1


def test_even_sets_are_looked_for_where_every_set_is_too_much_work() -> None:
    # 29 L in pails of 5 L are six or more. With eight: 3 · 2 L + 5 · 1 L are 11 L of water, and
    # 3 · 4 + 1 · 4 + 4 · 5 are 36 marks.
    some = [
        (1, 1), (1, 4), (1, 5), (2, 2), (2, 4), (2, 5), (3, 1), (3, 2), (3, 3), (3, 4), (4, 3),
        (5, 0), (5, 2), (5, 4),
    ]  # fmt: skip
    assert apart(Total(11, 36), *some, usable_l=5.0) == (
        Group(3, 2, 4), Group(4, 1, 5), Group(1, 1, 4),
    )  # fmt: skip


def test_eight_full_buckets_are_still_few() -> None:
    # A pail of 3 L: at least 24 L, and at the most 25.5 L in nine of them. 9 L of water and 16.5 L
    # are 17.36 L of 68.502 L with what is there, 25.34 %; one water mark less is 25.72 %, one jug
    # mark less 24.79 %, and both 25.16 %.
    found = pours_between(Space(half_litre_jug(), 25.5, 24.0), 25.3, 25.4, 25.3)
    assert found == [(Group(8, 1, 4), Group(1, 1, 1))]
    assert pours_between(Space(half_litre_jug(), 25.6, 24.1), 25.3, 25.4, 25.3) == []
