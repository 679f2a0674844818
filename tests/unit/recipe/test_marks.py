"""pycore.recipe.marks: which buckets may be poured, by hand from parts by volume."""

import math
from dataclasses import replace

import pytest

from pycore.recipe.marks import Group, ceil_marks, floor_marks, nearest_two
from pycore.recipe.request import Pail
from tests.unit.recipe.shop import question, space


def test_marks_are_counted_past_the_last_digit_of_a_float() -> None:
    assert floor_marks(0.3 / 0.1) == 3
    assert ceil_marks(0.1 * 3 / 0.1) == 3
    assert (floor_marks(2.9), ceil_marks(2.1)) == (2, 3)


def test_strongest_bucket_is_four_to_one() -> None:
    # 20 % is four parts of water to one: 8 L and 2 L, which is 40 marks of 50 mL.
    assert space(question()).jug_range(8, 0.0, 10.0)[1] == 40
    # Beside 9 L the pail is full before 20 % is reached: 1 L, 20 marks.
    assert space(question()).jug_range(9, 0.0, 10.0)[1] == 20


def test_weakest_bucket_is_rounded_to_the_nearest_mark() -> None:
    # 1 % beside 9 L is 9/99 L = 90.9 mL, nearest 100 mL; beside 2 L 20.2 mL, nearest 0: too weak.
    assert space(question()).jug_range(9, 0.0, 10.0)[0] == 2
    assert space(question()).jug_range(2, 0.0, 10.0)[0] == 1
    assert space(question(weak_pct=0.0)).jug_range(9, 0.0, 10.0)[0] == 0


def test_no_bucket_of_concentrate_alone() -> None:
    assert 0 not in space(question()).water_range(0.0, 10.0)


def test_fill_that_lands_on_the_aim_is_kept_inside_what_may_be_mixed() -> None:
    # 154 L at 6 % to 198 L at 8 %: 6.6 L in 44 L is 15 %.
    assert space(question()).wanted_pct == pytest.approx(15.0)
    assert space(question(strength_pct=0.0)).wanted_pct == 20.0
    assert space(question(strength_pct=15.0)).wanted_pct == 1.0
    assert space(question(volume_l=198.0)).wanted_pct == 1.0


def test_amounts_are_marks_times_their_size() -> None:
    amounts = space(question()).amounts((Group(4, 8, 30), Group(1, 3, 12)))
    assert amounts == [(4, 8.0, pytest.approx(1.5)), (1, 3.0, pytest.approx(0.6))]


def test_a_pail_and_a_jug_have_a_first_mark() -> None:
    # Marks of 1 L and 50 mL.
    real = space(replace(question(), pail=Pail(first_mark_l=3.0, jug_first_mark_l=0.2)))
    assert (real.limits.first_water, real.limits.first_jug) == (3, 4)
    assert list(real.water_range(0.0, 5.0)) == [3, 4, 5]
    assert real.jugs_near(2.5, 0, 9) == [0, 4]
    assert real.jugs_near(2.5, 1, 9) == [4]
    assert real.jugs_near(5.5, 0, 9) == [5, 6]
    ideal = space(question())
    assert (ideal.limits.first_water, ideal.limits.first_jug) == (1, 1)
    assert ideal.jugs_near(0.5, 0, 9) == [0, 1]


def test_limits_of_single_buckets_by_hand() -> None:
    limits = space(question()).limits
    # 8 L: 1 % is 1.6 marks of 50 mL, 20 % and the brim of 10 L are 40. 10 L: no room for any.
    assert limits.jugs(8) == (2, pytest.approx(40.0))
    assert limits.jugs(10) == (2, 0.0)
    # 1 L: 1 % is 0.2 marks, but none at all would be more than 0.3 points too weak.
    assert limits.jugs(1) == (1, pytest.approx(5.0))


def test_leanest_and_richest_bucket() -> None:
    # 1 mark beside 7 L is 0.71 %, beside 8 L too weak; 20 % is 5 marks beside each litre.
    assert space(question()).limits.ratios == (pytest.approx(1 / 7), 5.0)
    first = replace(question(), pail=Pail(jug_first_mark_l=0.2))
    # From 9 L on 4 marks are the fewest that a jug shows; 10 L leave no room for them.
    assert space(first).limits.ratios == (pytest.approx(4 / 9), 5.0)
    # Nothing fits below the brim.
    full = replace(question(), pail=Pail(first_mark_l=10.0))
    leanest, richest = space(full).limits.ratios
    assert leanest > richest
    # A pail of a thousand marks is not looked through mark by mark: 0.7 % and 20 % of 10 mL.
    fine = space(question(bucket=(10.0, 0.01, 0.05))).limits.ratios
    assert fine == (pytest.approx(0.7 / 99.3 / 5), pytest.approx(0.25 / 5))
    neat = space(question(strong_pct=100.0, bucket=(10.0, 0.01, 0.05))).limits.ratios
    assert neat[1] == math.inf


@pytest.mark.parametrize(
    ("wanted", "low", "high", "found"),
    [(2.5, 0, 9, [2, 3]), (3.0, 0, 9, [3]), (-4.2, 0, 9, [0]), (11.5, 0, 9, [9]), (0.5, 1, 9, [1])],
)
def test_nearest_two(wanted: float, low: int, high: int, found: list[int]) -> None:
    assert nearest_two(wanted, low, high) == found
