"""pycore.recipe.marks: which buckets may be poured, by hand from parts by volume."""

import math
from dataclasses import replace

import pytest

from pycore.recipe.marks import Group, Space, ceil_marks, floor_marks, nearest_two
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
    # Up to 4 % 9 L take 7 marks: a jug that begins at 0.4 L, which are 8, leaves plain water.
    none = replace(question(strong_pct=4.0, weak_pct=0.0), pail=Pail(jug_first_mark_l=0.4))
    assert space(none).limits.ratios == (0.0, 0.0)
    # 5 L of water and one mark of 2 L, the first, are 28.6 %; 10 L leave no room.
    single = question(strong_pct=35.0, weak_pct=0.0, bucket=(10.0, 5.0, 2.0))
    assert space(single).limits.ratios == (0.0, 1.0)
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


# A pail of 9 L with marks every 2 L, and a jug with marks every 100 mL.
COARSE = (9.0, 2.0, 0.1)


def test_room_is_left_open_by_one_mark_of_each() -> None:
    room = Space.of(question(bucket=COARSE))
    assert (room.room_l, room.least_l) == (44.0, pytest.approx(41.9))


def test_litres_of_coarse_marks() -> None:
    coarse = space(question(bucket=COARSE))
    assert coarse.bucket_l(3, 15) == pytest.approx(7.5)
    assert coarse.amounts((Group(2, 3, 15),)) == [(2, 6.0, pytest.approx(1.5))]
    # (308 + 48)/92 L, by (V·(aim − C) + aim·water)/(100 − aim), in marks of 0.1 L.
    assert coarse.jug_for_aim(3) == pytest.approx(38.696, abs=1e-3)
    # By hand: 9.24 + 6 L of concentrate in 192 L.
    found = space(question()).strength_pct((Group(4, 8, 30),))
    assert found == pytest.approx(1524 / 192)


def test_bucket_between_its_limits() -> None:
    # 6 L carry 1.5 L up to 20 %, and at 1 % 61 mL, which is nearest to one mark of 100 mL.
    assert space(question(bucket=COARSE)).jug_range(3, 0.0, 9.0) == (1, 15)
    # Half and half, and a premix without limit but the pail.
    half = space(question(strong_pct=100.0, weak_pct=50.0, bucket=COARSE))
    assert half.jug_range(3, 0.0, 9.0) == (60, 30)
    ordinary = space(question())
    assert ordinary.jug_range(8, 9.0, 10.0) == (20, 40)
    assert ordinary.jug_range(8, 9.02, 9.98) == (21, 39)
    assert ordinary.jug_range(8, 0.0, 9.0)[1] == 20
    assert ordinary.jug_range(9, 0.0, 50.0)[1] == 20


@pytest.mark.parametrize(
    ("weak_pct", "bucket", "water", "fewest"),
    [
        # 71 mL wanted: 50 mL in 7 L are 0.71 %, 0.29 points too weak at the most.
        (1.0, (10.0, 1.0, 0.05), 7, 1),
        # 49.5 mL are 0.702 %, 49.13 mL 0.697 %: more than 0.3 points below.
        (1.0, (10.0, 1.0, 0.0495), 7, 1), (1.0, (10.0, 1.0, 0.04913), 7, 2),
        # 105 mL wanted: 75 mL in 2 L are 3.6 %.
        (5.0, (9.0, 2.0, 0.075), 1, 2),
    ],
)  # fmt: skip
def test_weakest_mix_may_be_rounded_down_by_three_tenths(
    weak_pct: float, bucket: tuple[float, float, float], water: int, fewest: int
) -> None:
    room = space(question(weak_pct=weak_pct, bucket=bucket))
    assert room.jug_range(water, 0.0, bucket[0])[0] == fewest


def test_first_marks_between_marks() -> None:
    # A pail that starts at 2.5 L shows 3 L first, or 4 L in marks of 2 L; 120 mL are 150 mL.
    pail = Pail(first_mark_l=2.5, jug_first_mark_l=0.12)
    fine = space(replace(question(), pail=pail))
    assert (fine.limits.first_water, fine.limits.first_jug) == (3, 3)
    assert space(replace(question(bucket=COARSE), pail=pail)).limits.first_water == 2
    assert space(question(bucket=(9.5, 0.5, 0.05))).limits.first_water == 1


def test_water_marks_for_a_total() -> None:
    # At most 20 % concentrate: 10 L hold 8 L of water at least, 9 L 7.2 L.
    assert list(space(question()).water_range(10.0, 10.0)) == [8, 9, 10]
    assert list(space(question()).water_range(9.0, 9.9)) == [8, 9]
    coarse = space(question(bucket=COARSE))
    assert list(coarse.water_range(0.0, 9.0)) == [1, 2, 3, 4]
    assert list(coarse.water_range(8.0, 9.0)) == [4]


@pytest.mark.parametrize(
    ("usable_l", "least_l", "tried"),
    [(10.0, 0.0, range(53, 101)), (6.5, 0.0, range(23, 66)), (6.0, 1.25, range(10, 61))],
)
def test_of_many_fine_marks_those_near_the_strength_that_is_wanted(
    usable_l: float, least_l: float, tried: range
) -> None:
    # 15 % is wanted: 8.5 L of water in 10 L, and 32 marks of 0.1 L to either side of it.
    fine = space(question(bucket=(usable_l, 0.1, 0.05)))
    assert fine.water_range(least_l, 44.0) == tried


def test_of_a_thousand_marks_those_within_32_of_the_wanted_one() -> None:
    # 15 % is wanted: 8.5 L of water are 850 marks of 10 mL.
    fine = space(question(bucket=(10.0, 0.01, 0.05)))
    assert fine.water_range(0.0, 44.0) == range(818, 883)


def test_of_many_fine_marks_the_lowest_where_it_has_to_be_strong() -> None:
    # 80 % leave 2 L of water in 10 L.
    strong = question(100.0, 0.0, fill_to_l=110.0, strong_pct=80.0, bucket=(10.0, 0.1, 0.05))
    assert space(strong).water_range(0.0, 10.0) == range(1, 66)


def test_room_for_one_bucket_and_for_none() -> None:
    # One litre of water and one mark of 50 mL; a litre of plain water; half a litre of it.
    assert space(question(196.95)).can_pour()
    assert space(question(197.0, weak_pct=0.0)).can_pour()
    assert space(question(197.4, weak_pct=0.0, bucket=(9.5, 0.5, 0.05))).can_pour()
    assert not space(question(197.5)).can_pour()
    assert not space(question(198.0)).can_pour()
    # Of 44 L some water marks leave no place for concentrate, others do.
    assert space(question()).can_pour()


def test_room_that_no_bucket_fills_is_room_all_the_same() -> None:
    # 1 to 1.5 % cannot be measured with 50 mL in 2 L.
    unmeasurable = question(196.0, strong_pct=1.5)
    assert not space(unmeasurable).can_pour()
    assert space(unmeasurable).has_room()
    # Less than is left open by any plan, and a litre of water fits.
    assert space(question(197.0, weak_pct=0.0)).has_room()
    assert not space(question(197.5)).has_room()
    # As much as every plan may leave open is no room.
    assert not Space(unmeasurable, 1.05, 0.0).has_room()


def test_strength_wanted_of_a_single_litre() -> None:
    # 197 L at 7.99 % lack 1.97 points in one litre.
    assert space(question(197.0, 7.99)).wanted_pct == pytest.approx(9.97)


def test_jug_marks_at_the_ends() -> None:
    real = space(replace(question(), pail=Pail(jug_first_mark_l=0.2)))
    assert real.jugs_near(0.5, 0, 9) == [0, 4]
    assert real.jugs_near(4.0, 0, 9) == [4]
    assert real.jugs_near(2.5, 0, 4) == [0, 4]
    assert space(question()).jugs_near(0.0, 0, 9) == [0]


def test_strengths_of_the_leanest_and_of_the_richest_bucket() -> None:
    # 50 mL in 7 L is 0.7 % and still counts as 1 %; 2 L in 8 L are the 20 % that are allowed.
    assert space(question()).limits.strengths_pct == (
        pytest.approx(100 * 0.05 / 7.05),
        pytest.approx(20.0),
    )
    # 5 L of water and 2 L are too rich for 20 %, and a pail of 9 L holds no more than 7 L beside.
    assert space(question(bucket=(9.0, 1.0, 2.0), weak_pct=0.0)).limits.strengths_pct == (0.0, 0.0)
    assert space(question(bucket=(9.0, 1.0, 2.0))).limits.strengths_pct == (100.0, 0.0)
    # Marks every 2 L and 0.5 L: 0.5 L and 2 L beside 8 L.
    assert space(question(bucket=(10.0, 2.0, 0.5))).limits.strengths_pct == (
        pytest.approx(100 * 0.5 / 8.5),
        pytest.approx(20.0),
    )
    # Neat concentrate in marks too fine to be looked through.
    fine = space(question(bucket=(10.0, 0.1, 0.05), strong_pct=100.0))
    assert fine.limits.strengths_pct[1] == 100.0


@pytest.mark.parametrize(
    ("mark_l", "marks"),
    [
        (1.0, 1), (0.5, 2), (0.25, 4), (0.2, 5), (0.1, 1), (0.4, 1), (2.0, 1),
        # US gallon 3.785411784 L, imperial gallon 4.54609 L: halves, quarts, and two thirds of one.
        (1.892705892, 2), (0.946352946, 4), (2.273045, 2), (1.1365225, 4), (2.5, 1),
        # A fifth of an imperial gallon, which is no whole fifth in floats.
        (0.909218, 5),
    ],
)  # fmt: skip
def test_marks_to_a_whole_litre_or_gallon(mark_l: float, marks: int) -> None:
    assert space(question(bucket=(10.0, mark_l, 0.05))).limits.marks_to_whole == marks
