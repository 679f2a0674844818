"""pycore.recipe.search: sets that only a look at the totals finds, beside easier ones."""

from dataclasses import replace

import pytest

from pycore.recipe.choice import SAME_PCT
from pycore.recipe.marks import Group, Pours, Space
from pycore.recipe.request import Pail, PlanRequest, Target
from pycore.recipe.search import best_pours
from tests.unit.recipe.buckets.test_search_choices import COARSE, asked, ease
from tests.unit.recipe.shop import space

# Pails that hold one mark of water and one of concentrate, and such of four by a half.
ONE_MARK = (5.0, 4.0, 1.0)
HALVES = (4.0, 1.0, 0.5)


def outside_pct(ask: PlanRequest, pours: Pours) -> float:
    """Points that a result lies outside the band, by C2·V2 = C1·V1 + 100·concentrate."""
    bucket, sump, target = ask.bucket, ask.sump, ask.target
    concentrate_l = sum(group.count * group.jug * bucket.jug_mark_l for group in pours)
    water_l = sum(group.count * group.water * bucket.water_mark_l for group in pours)
    held = sump.volume_l.value * sump.strength_pct.value + 100 * concentrate_l
    strength = held / (sump.volume_l.value + water_l + concentrate_l)
    return max(target.low_pct - strength, strength - target.high_pct, 0.0)


@pytest.mark.parametrize(
    ("ask", "target", "taken", "left"),
    [
        # Both below the band, and both above and below it.
        (asked((485.9, 5.6, 500.0), (20.0, 3.0, 0.05), HALVES), (7.0, 7.5, 8.0),
         (Group(1, 3, 1), Group(4, 2, 1)), (Group(4, 3, 1),)),
        (asked((19.4, 4.6, 40.0), (60.0, 0.0, 0.5), ONE_MARK), (3.0, 3.2, 5.0),
         (Group(1, 1, 1), Group(3, 1, 0)), (Group(4, 1, 0),)),
        (asked((1.1, 4.0, 60.0), (35.0, 3.0, 2.0), (9.0, 1.0, 2.0)), (7.0, 8.0, 9.0),
         (Group(2, 7, 1), Group(5, 6, 1)), (Group(7, 6, 1),)),
    ],
)  # fmt: skip
def test_nearer_to_a_band_that_nothing_reaches(
    ask: PlanRequest, target: tuple[float, float, float], taken: Pours, left: Pours
) -> None:
    ask = replace(ask, target=Target(*target))
    assert 0 < outside_pct(ask, taken) < outside_pct(ask, left) - SAME_PCT
    assert best_pours(space(ask)).pours == taken


@pytest.mark.parametrize(
    ("ask", "marks_open", "taken", "left"),
    [
        # Near enough to the aim, and nearly.
        (asked((133.1, 11.2, 198.0), (12.0, 0.5, 0.05), COARSE), 1,
         (Group(7, 4, 1), Group(1, 4, 2)), (Group(8, 4, 1),)),
        # With four marks of room that may stay open: above the aim and below it.
        (asked((7.9, 10.8, 40.0), (60.0, 0.0, 0.05), ONE_MARK), 4,
         (Group(2, 1, 1), Group(4, 1, 0)), (Group(2, 1, 1), Group(5, 1, 0))),
        (asked((39.0, 7.1, 60.0), (20.0, 0.0, 0.1), ONE_MARK), 4,
         (Group(1, 1, 1), Group(1, 1, 0)), (Group(2, 1, 1), Group(2, 1, 0))),
    ],
)  # fmt: skip
def test_nearer_to_the_aim_in_a_band_that_is_reached(
    ask: PlanRequest, marks_open: int, taken: Pours, left: Pours
) -> None:
    chosen, other = ease(ask, taken)[0], ease(ask, left)[0]
    assert chosen < other - SAME_PCT or chosen == 0 < other
    room = space(ask)
    open_l = room.room_l - room.least_l + (marks_open - 1) * ask.bucket.water_mark_l
    found = best_pours(Space(ask, room.room_l, room.room_l - open_l)).pours
    assert sorted(found, key=repr) == sorted(taken, key=repr)


def test_twice_as_much_room_stays_open_where_nothing_fills_it() -> None:
    # 4 L and 0.5 L are the only bucket from 1 to 12 %: four are 18 L, and at first 18.1 L are
    # asked for. Three leave more room open than it takes.
    ask = asked((19.4, 10.8, 40.0), (12.0, 1.0, 0.05), (5.0, 2.0, 0.5))
    ask = replace(ask, target=Target(7.0, 7.5, 10.0))
    assert best_pours(space(ask)).pours == (Group(4, 2, 1),)


def test_water_for_water_counts_as_any_other_set() -> None:
    # Water in a rinsed sump and a fluid that no mark of 0.5 L suits: 3 L and twice 2 L into 7.9 L.
    ask = asked((52.1, 0.0, 60.0), (12.0, 0.0, 0.05), (3.0, 1.0, 0.5))
    ask = replace(ask, pail=Pail(first_mark_l=2.0), target=Target(3.0, 3.5, 4.0))
    assert best_pours(space(ask)).pours == (Group(1, 3, 0), Group(2, 2, 0))
