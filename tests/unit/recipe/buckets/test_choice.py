"""pycore.recipe.choice: what is worth carrying, and how near is near enough; counted by hand."""

from dataclasses import replace

import pytest

from pycore.recipe.choice import (
    MORE_ALIKE,
    Candidate,
    best_of,
    is_much_more,
    least_effort,
    more_alike,
    weigh,
)
from pycore.recipe.marks import Group, Pours, Space
from pycore.recipe.request import Mixing, Target
from tests.unit.recipe.shop import question, space


def found(buckets: int, excess_pct: float, outside_pct: float = 0.0, kinds: int = 1) -> Candidate:
    """So many buckets of 8 L and 50 mL into 154 L at 8 %: about 8 % and inside the band."""
    groups = [Group(buckets - kinds + 1, 8, 13), *(Group(1, 8, 14 + i) for i in range(kinds - 1))]
    distance_pct = 0.5 + excess_pct if excess_pct else 0.0
    return Candidate(tuple(groups), outside_pct, excess_pct, distance_pct, 0)


def room() -> Space:
    return space(question(154.0, 8.0, fill_to_l=900.0))


@pytest.mark.parametrize(
    ("fewest", "more"), [(1, 1), (4, 1), (5, 2), (9, 2), (54, 11), (55, 12), (500, 12)]
)
def test_one_bucket_in_five_and_one(fewest: int, more: int) -> None:
    assert more_alike(fewest) == more <= MORE_ALIKE
    assert not is_much_more(fewest + more, fewest)
    assert is_much_more(fewest + more + 1, fewest)


def test_fewest_kinds_unless_they_are_many_more_to_carry() -> None:
    two = found(10, 0.0, kinds=2)
    assert least_effort([two, found(13, 0.0)]).buckets == 13
    assert least_effort([two, found(14, 0.0)]) is two


def test_nearest_to_the_aim_of_sets_as_easy_and_whole_marks_before_it() -> None:
    near, far = found(10, 0.0), replace(found(10, 0.0), distance_pct=0.4)
    assert least_effort([far, near]) is near
    half = replace(near, half_marks=1)
    assert least_effort([half, far]) is far


def test_half_marks_are_counted_by_kinds() -> None:
    half = space(question(bucket=(10.0, 0.5, 0.05)))
    pours: Pours = (Group(2, 15, 3), Group(1, 14, 3), Group(1, 13, 3))
    assert weigh(half, pours).half_marks == 2
    assert weigh(space(question()), pours).half_marks == 0


def test_near_the_aim_a_glass_s_worth_is_given_for_a_fifth_less_to_carry() -> None:
    near = found(30, 0.0)
    for excess_pct, buckets, is_taken in (
        (0.1, 24, True), (0.11, 24, False), (0.1, 25, False),
    ):  # fmt: skip
        other = found(buckets, excess_pct)
        assert (best_of(room(), [near, other]) is other) is is_taken


def test_far_from_the_aim_as_much_as_is_near_enough() -> None:
    best = found(30, 0.4)
    for excess_pct, buckets, is_taken in (
        (0.9, 24, True), (0.91, 24, False), (0.9, 25, False),
    ):  # fmt: skip
        other = found(buckets, excess_pct)
        assert (best_of(room(), [best, other]) is other) is is_taken
    # Of two the nearer one, though it is more to carry.
    nearer, farther = found(24, 0.6), found(20, 0.8)
    assert best_of(room(), [best, farther, nearer]) is nearer


def test_well_inside_the_band_only() -> None:
    # 100 L at 7 % and 10 L of 7 % stay at 7 %, the edge itself.
    edge = space(question(100.0, 7.0, fill_to_l=400.0))
    best = found(30, 0.4)
    other = Candidate((Group(20, 8, 12),), 0.0, 0.5, 1.0, 0)
    assert edge.strength_pct(other.pours) < 7.5
    assert best_of(edge, [best, other]) is best


def test_outside_the_band_no_further_than_a_glass_shows() -> None:
    best = found(30, 1.5, outside_pct=1.0)
    for outside_pct, is_taken in ((1.1, True), (1.11, False)):
        other = found(24, 1.6, outside_pct=outside_pct)
        assert (best_of(room(), [best, other]) is other) is is_taken


def test_near_enough_is_no_more_than_half_of_the_way_to_the_edge() -> None:
    # 0.5 of 7 to 9 %; with a closeness of 2 points still half of the point to the edge.
    wide = replace(question(), mixing=Mixing(20.0, 1.0, 2.0))
    pours: Pours = (Group(4, 8, 20),)
    here, there = weigh(space(question()), pours), weigh(space(wide), pours)
    assert here.excess_pct == there.excess_pct > 0
    # An aim at the edge has the whole band on its other side: 2 of the 2 points, half of it.
    aside = replace(wide, target=Target(7.0, 9.0, 9.0))
    far = weigh(space(aside), pours)
    assert far.excess_pct == pytest.approx(far.distance_pct - 1.0)
    # A strength asked for as it is has no edges to keep away from.
    point = replace(wide, target=Target(8.0, 8.0, 8.0))
    assert weigh(space(point), pours).excess_pct == 0.0


def test_near_is_inside_the_band_and_near_the_aim() -> None:
    assert found(3, 0.0).is_near
    assert not found(3, 0.1).is_near
    assert not found(3, 0.0, outside_pct=0.1).is_near


def test_past_the_band_is_behind_everything() -> None:
    # 154 L at 6 % and 20 L of concentrate are 16.6 %; with 1 L they stay below 7 %.
    past = weigh(space(question()), (Group(4, 1, 100),))
    short = weigh(space(question()), (Group(1, 1, 20),))
    assert past.outside_pct == pytest.approx(100 + (924 + 2000) / 178 - 9)
    assert short.outside_pct == pytest.approx(7 - 1024 / 156)


def test_the_band_before_the_aim_and_the_nearest_to_the_band() -> None:
    inside, outside = found(10, 0.8), found(10, 0.1, outside_pct=0.5)
    assert best_of(room(), [outside, inside]) is inside
    hardly = found(10, 0.1, outside_pct=0.04)
    assert best_of(room(), [hardly, inside]) is inside
    far = found(3, 0.1, outside_pct=0.9)
    assert best_of(room(), [outside, far]) is outside
    # What no glass tells apart: the nearer to the aim.
    alike = found(10, 0.4, outside_pct=0.54)
    assert best_of(room(), [found(10, 0.6, outside_pct=0.5), alike]) is alike
    assert best_of(room(), [found(10, 0.0)]).buckets == 10
