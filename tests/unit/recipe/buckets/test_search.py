"""pycore.recipe.search. That no other set is clearly better stands in tests/properties."""

from dataclasses import replace

import pytest

from pycore.recipe.choice import weigh
from pycore.recipe.marks import Group, Pours, Space
from pycore.recipe.request import Mixing, Pail
from pycore.recipe.search import (
    _fitted,
    _parts,
    _split,
    _Whole,
    _whole_buckets,
    _with_part,
    alike_pours,
    best_pours,
    strongest_bucket,
)
from tests.unit.recipe.shop import question, space


def test_distances_of_a_set_of_pours() -> None:
    # By hand: 154 L at 6 % and 4 × (8.5 would not be whole) 4 × (8 + 1.5 L): 15.24 L in 192 L.
    found = weigh(space(question()), (Group(4, 8, 30),))
    strength = (154 * 0.06 + 6) / 192 * 100
    assert found.distance_pct == pytest.approx(abs(strength - 8))
    assert (found.outside_pct, found.buckets, found.is_near) == (0.0, 4, True)


def test_result_below_the_band_is_outside() -> None:
    # By hand: 9.24 L of concentrate in 194 L is 4.76 %, 2.24 points below the band.
    found = weigh(space(question(weak_pct=0.0)), (Group(4, 10, 0),))
    assert found.outside_pct == pytest.approx(7 - 924 / 194)
    assert not found.is_near


def test_nothing_is_poured_when_all_is_well() -> None:
    assert best_pours(space(question(198.0, 8.0))).pours == ()


def test_buckets_alike_come_before_a_closer_set_of_different_ones() -> None:
    found = best_pours(space(question()))
    assert len(found.pours) == 1
    assert found.is_near


@pytest.mark.parametrize("volume_l", [20.0, 1000.0, 150_000.0])
def test_work_does_not_grow_with_the_tank(volume_l: float) -> None:
    ask = question(volume_l, fill_to_l=volume_l * 1.3)
    found = best_pours(space(ask))
    poured_l = sum(count * (water + oil) for count, water, oil in space(ask).amounts(found.pours))
    assert volume_l * 0.3 - 1.05 <= poured_l <= volume_l * 0.3 + 1e-6


def test_split_below_the_first_mark_of_the_jug() -> None:
    # 300 L at 8.6 % to 340 L at 8 %: 1.4 L in 40 L is 0.35 L a pail; the jug starts at 0.5 L.
    ask = replace(
        question(300.0, 8.6, fill_to_l=340.0, weak_pct=0.0),
        mixing=Mixing(20.0, 0.0, 0.05),
        pail=Pail(jug_first_mark_l=0.5),
    )
    found = best_pours(space(ask))
    assert found.pours
    assert all(group.jug == 0 or group.jug >= 10 for group in found.pours)
    assert found.distance_pct <= 0.05


def test_one_kind_is_not_worth_carrying_twice_as_often() -> None:
    # 25 L of plain water into a rich sump: 10, 10 and 5 L, and not five times 5 L.
    found = best_pours(space(question(155.0, 12.0, fill_to_l=180.0, weak_pct=0.0,
                                      bucket=(10.0, 5.0, 0.05))))  # fmt: skip
    assert found.pours == (Group(2, 2, 0), Group(1, 1, 0))


def test_strongest_bucket_is_one_that_can_be_measured() -> None:
    assert strongest_bucket(space(question())) == Group(1, 8, 40)
    # 20 % of a pail of 10 L are 2 L; a jug that starts at 2.5 L cannot show it.
    ask = replace(question(), pail=Pail(jug_first_mark_l=2.5))
    assert strongest_bucket(space(ask)) is None


def test_split_is_one_mark_apart_and_counted_by_the_aim() -> None:
    # Ten pails of 9 L that want 16.3 marks each: three with 17 and seven with 16, 98.15 L.
    room = space(question(0.0, 0.0, fill_to_l=98.2))
    found = list(_split(room, _Whole(9, 16.3, 9.815)))
    assert found[0] == (Group(3, 9, 17), Group(7, 9, 16))
    # Only 2 marks fit beside ten pails of 9.8 L; and nine, where all but one are to be stronger.
    tight = space(question(0.0, 0.0, fill_to_l=98.1))
    assert next(_split(tight, _Whole(9, 16.25, 9.81)))[0] == Group(2, 9, 17)
    wide = space(question(0.0, 0.0, fill_to_l=98.5))
    assert next(_split(wide, _Whole(9, 16.99, 9.8495)))[0] == Group(9, 9, 17)
    # Two pails are enough for it, one is not; and 17 marks may be more than the pail holds.
    two = space(question(0.0, 0.0, fill_to_l=19.7))
    assert next(_split(two, _Whole(9, 16.5, 9.825))) == (Group(1, 9, 17), Group(1, 9, 16))
    assert list(_split(space(question(0.0, 0.0, fill_to_l=10.0)), _Whole(9, 16.5, 9.825))) == []
    assert list(_split(room, _Whole(9, 20.0, 10.0))) == []


def test_strongest_bucket_in_marks_of_two_litres() -> None:
    # 6 L and 1.5 L are 20 %; 8 L leave room for 1 L only.
    found = strongest_bucket(space(question(bucket=(9.0, 2.0, 0.1))))
    assert found == Group(1, 3, 15)


def test_near_the_aim_is_not_enough_outside_the_band() -> None:
    # A closeness of 2 points reaches past a band of one point to either side.
    wide = replace(question(198.0, 6.5), mixing=Mixing(20.0, 1.0, 2.0))
    assert not weigh(space(wide), ()).is_near


def test_of_sets_as_easy_the_nearest() -> None:
    # One bucket for 9.5 L: beside 8 L of water 1.11 L bring 188.5 L at 7.798 % to 8 %.
    found = best_pours(space(question(188.5, 7.798)))
    assert found.pours == (Group(1, 8, 22),)


@pytest.mark.parametrize(
    ("strength_pct", "strong_pct", "water"), [(8.0, 20.0, 0), (9.2, 20.0, 1), (6.0, 5.0, 0)]
)
def test_last_litre_is_filled_only_where_that_helps(
    strength_pct: float, strong_pct: float, water: int
) -> None:
    # 19 L of 20: water brings 9.2 % to 8.74 %, 8 % away from the aim, and 6 % farther away.
    ask = question(19.0, strength_pct, fill_to_l=20.0, weak_pct=0.0, strong_pct=strong_pct)
    assert best_pours(space(ask)).pours == ((Group(1, 1, 0),) if water else ())


def test_two_litres_are_filled_even_at_the_aim() -> None:
    # 196 L at 8 %: a litre of water and two marks of 50 mL, 9.1 %.
    assert best_pours(space(question(196.0, 8.0))).pours == (Group(1, 1, 2),)


@pytest.mark.parametrize(
    ("volume_l", "strength_pct", "pours"),
    [
        # 17.5 L at 20 %: nearest to the band that it cannot reach, 3.6 %.
        (180.0, 2.0, (Group(2, 7, 35),)),
        # 27.5 L at 20 %: in the band, as near to the aim as it gets, and three buckets, not eleven.
        (170.0, 5.3, (Group(2, 8, 40), Group(1, 6, 30))),
    ],
)
def test_nearest_reachable_with_the_fewest_buckets(
    volume_l: float, strength_pct: float, pours: tuple[Group, ...]
) -> None:
    assert best_pours(space(question(volume_l, strength_pct))).pours == pours


def test_more_room_stays_open_where_the_only_mix_leaves_no_other_way() -> None:
    # 9.08 to 9.1 % in marks of 1 L and 0.5 L is 5 L and 0.5 L only: 7 of them in 43 L.
    only = question(155.0, 6.0, strong_pct=9.1, weak_pct=9.08, bucket=(10.0, 1.0, 0.5))
    assert best_pours(space(only)).pours == (Group(7, 5, 1),)


def test_alike_only_inside_the_band_and_as_many_as_it_takes() -> None:
    # 2 L and 0.5 L are the only bucket of 20 % of which whole ones fill 28 L: eleven of them.
    assert alike_pours(space(question(170.0, 5.3))) == (Group(11, 2, 10),)
    # 28 L that want 6.8 %: five of 5 L and 0.4 L.
    assert alike_pours(space(question(170.0, 8.2))) == (Group(5, 5, 8),)
    assert alike_pours(space(question(188.5, 7.798))) == (Group(1, 8, 22),)
    assert alike_pours(space(question(180.0, 2.0))) is None


@pytest.mark.parametrize(
    ("bucket", "strongest"),
    [
        # Less than a litre: 0.6 L and 0.15 L are 20 %.
        ((0.9, 0.1, 0.01), Group(1, 6, 15)),
        # 8 L leave 1.8 L, 18.4 %; 7 L carry 1.75 L, 20 %.
        ((9.8, 1.0, 0.05), Group(1, 7, 35)),
        # 8 L and 1.995 L are 19.96 %, which is as good as 20 %, and fuller.
        ((9.995, 1.0, 0.005), Group(1, 8, 399)),
    ],
)
def test_strongest_bucket_and_the_fuller_one_of_two_that_are_as_strong(
    bucket: tuple[float, float, float], strongest: Group
) -> None:
    assert strongest_bucket(space(question(bucket=bucket))) == strongest


def test_strongest_bucket_at_the_first_mark_of_the_jug() -> None:
    ask = replace(question(), pail=Pail(jug_first_mark_l=2.0))
    assert strongest_bucket(space(ask)) == Group(1, 8, 40)


def litres(room: Space, pours: Pours) -> float:
    """What these pours bring into the sump."""
    return sum(group.count * room.bucket_l(group.water, group.jug) for group in pours)


@pytest.mark.parametrize(
    ("bucket", "wholes"),
    [
        # 15 % is 3 parts in 17 of water; 9 L leave 1 L, and below half a pail nothing is carried.
        ((10.0, 1.0, 0.05),
         [(9, 20), (8, 480 / 17), (7, 420 / 17), (6, 360 / 17), (5, 300 / 17), (4, 240 / 17)]),
        ((9.0, 2.0, 0.1), [(4, 10), (3, 180 / 17), (2, 120 / 17)]),
    ],
)  # fmt: skip
def test_whole_buckets_at_the_wanted_strength_fullest_first(
    bucket: tuple[float, float, float], wholes: list[tuple[int, float]]
) -> None:
    found = _whole_buckets(space(question(bucket=bucket)))
    assert [(whole.water, whole.jug) for whole in found] == [
        (water, pytest.approx(jug)) for water, jug in wholes
    ]
    for whole in found:
        size_l = whole.water * bucket[1] + whole.jug * bucket[2]
        assert whole.total_l == pytest.approx(size_l)


@pytest.mark.parametrize(
    ("volume_l", "strength_pct", "whole_jug", "fitted"),
    [
        # 46 L hold 5 pails of 8 L of water: (152·0.62 + 8·40)/92 L are 9.0 marks each, not 8.9.
        (152.0, 7.38, 8.937, [(4, 414.24 / 46)]),
        # The same marks as for the whole room: nothing new.
        (152.0, 7.5, 8.546, []),
        # 47.5 L: the 3 L that are left take a mark of 2 L more.
        (150.5, 7.38, 8.937, []),
        # One pail is enough for it, none is not.
        (187.6, 7.89, 8.9, [(4, (187.6 * 0.11 + 64) / 9.2)]), (193.0, 7.38, 8.937, []),
    ],
)  # fmt: skip
def test_whole_bucket_fitted_to_the_water_that_really_goes_in(
    volume_l: float, strength_pct: float, whole_jug: float, fitted: list[tuple[int, float]]
) -> None:
    room = space(question(volume_l, strength_pct, bucket=(9.0, 2.0, 0.1)))
    found = _fitted(room, _Whole(4, whole_jug, 8 + whole_jug / 10), 0, 10)
    assert [(whole.water, whole.jug) for whole in found] == [
        (water, pytest.approx(jug)) for water, jug in fitted
    ]
    assert [whole.total_l for whole in found] == [pytest.approx(8 + jug / 10) for _, jug in fitted]


def test_fitted_keeps_to_what_may_be_mixed() -> None:
    room = space(question(152.0, 7.38, bucket=(9.0, 2.0, 0.1)))
    assert _fitted(room, _Whole(4, 8.937, 8.8937), 0, 9)[0].jug == 9
    assert _fitted(room, _Whole(4, 8.9, 8.89), 10, 10)[0].jug == 10


def test_last_bucket_fills_what_is_left() -> None:
    # 44 less 4 × 9.4 L are 6.4 L: 5 L as strong as the rest, 17.5 marks, or for the aim,
    # (308 + 8·37)/92 L less 112 marks; and 6 L with what still fits, 8 marks.
    found = list(_parts(space(question()), (Group(4, 8, 28),), 9.4))
    assert found == [Group(1, 5, jug) for jug in (17, 18, 19, 20)] + [Group(1, 6, 8)]


def test_alike_alone_where_it_fills_the_room() -> None:
    # 5 × (8 + 0.8 L) are 44 L.
    room = space(question())
    assert list(_with_part(room, _Whole(8, 16.0, 8.8))) == [(Group(5, 8, 16),)]
    for pours in _with_part(room, _Whole(8, 28.0, 9.4)):
        assert room.least_l - 1e-9 <= litres(room, pours) <= room.room_l + 1e-9


@pytest.mark.parametrize(
    ("fill_to_l", "whole"),
    [(98.13, _Whole(9, 16.25, 9.813)), (98.1, _Whole(9, 16.25, 9.81)),
     (98.5, _Whole(9, 16.99, 9.8495)), (44.0, _Whole(9, 15.5, 9.775))],
)  # fmt: skip
def test_split_keeps_to_the_room_and_fills_it(fill_to_l: float, whole: _Whole) -> None:
    room = space(question(0.0, 0.0, fill_to_l=fill_to_l))
    found = list(_split(room, whole))
    assert found
    for pours in found:
        assert room.least_l - 1e-9 <= litres(room, pours) <= room.room_l + 1e-9
        assert all(group.count > 0 for group in pours)


def test_split_at_the_ends_of_what_may_be_mixed() -> None:
    # One of ten is stronger at least; 20 marks are all that 9 L leave; 1 mark is too weak for 1 %.
    room = space(question(0.0, 0.0, fill_to_l=99.8))
    assert next(_split(room, _Whole(9, 16.03, 9.8015)))[:2] == (Group(1, 9, 17), Group(9, 9, 16))
    assert next(_split(room, _Whole(9, 19.5, 9.975))) == (Group(5, 9, 20), Group(5, 9, 19))
    assert list(_split(room, _Whole(9, 1.3, 9.065))) == []
    plain = space(question(0.0, 0.0, fill_to_l=91.0, weak_pct=0.0))
    assert next(_split(plain, _Whole(9, 1.3, 9.065))) == (Group(3, 9, 2), Group(7, 9, 1))


def test_split_between_none_and_the_first_mark_of_the_jug() -> None:
    # 3.5 marks of 50 mL in each of ten pails; the jug starts at 0.5 L, ten marks.
    ask = question(0.0, 0.0, fill_to_l=93.0, weak_pct=0.0)
    real = space(replace(ask, pail=Pail(jug_first_mark_l=0.5)))
    assert next(_split(real, _Whole(9, 3.5, 9.175)))[:2] == (Group(3, 9, 10), Group(7, 9, 0))


def test_pails_of_less_than_a_litre() -> None:
    # 0.9 L of room in a sump of 9 L, in pails of 0.5 L with marks of 0.1 L and 10 mL.
    ask = question(8.1, 7.2, fill_to_l=9.0, bucket=(0.5, 0.1, 0.01))
    found = best_pours(space(ask))
    # By hand: (8.1·0.8 + 8·water)/92 L of concentrate.
    assert found.is_near
    assert len(_whole_buckets(space(ask))) > 1
    assert 0.9 - 0.11 <= litres(space(ask), found.pours) <= 0.9 + 1e-9
