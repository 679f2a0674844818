"""pycore.recipe.totals beside plain counting: every total, and every way to take one apart."""

import math
import random
from dataclasses import replace
from itertools import combinations, product

import pytest

from pycore.recipe.marks import Group, Space
from pycore.recipe.request import Pail
from pycore.recipe.totals import (
    Total,
    may_end_between,
    pours_between,
    single_buckets,
    taken_apart,
    totals_between,
)
from tests.unit.recipe.shop import question, space

SEED = 31
WINDOWS = ((7.0, 9.0), (7.9, 8.1), (0.0, 100.0), (5.0, 6.0), (9.5, 11.0))
Kinds = frozenset[tuple[int, int]]


def spaces() -> list[Space]:
    """Small sumps with coarse marks: lean, in range and rich, with weak and with strong mixes."""
    chance = random.Random(SEED)
    found = []
    for _ in range(120):
        ask = question(
            chance.choice([0.0, 12.2, 17.7, chance.uniform(0, 20)]),
            chance.choice([0.0, 4.0, 7.6, 12.0, chance.uniform(0, 20)]),
            fill_to_l=20.0,
            strong_pct=chance.choice([7.5, 12.0, 20.0, 35.0, 100.0]),
            weak_pct=chance.choice([0.0, 1.0, 3.0]),
            bucket=chance.choice([(6.0, 1.0, 0.25), (9.0, 2.0, 0.5), (5.0, 0.5, 0.1)]),
        )
        # Marks below which pail and jug show nothing.
        pail = Pail(chance.choice([None, 2.0]), chance.choice([None, 0.5]))
        found.append(space(replace(ask, pail=pail)))
    return found


def every_total(
    room: Space, singles: Kinds, least_l: float, low_pct: float, high_pct: float
) -> list[Total]:
    """All whole marks that fit, no leaner or richer than single buckets, between two strengths."""
    ratios = [jug / water for water, jug in singles]
    sump, bucket, found = room.ask.sump, room.ask.bucket, []
    for jug in range(math.floor(room.room_l / bucket.jug_mark_l) + 1):
        for water in range(1, math.floor(room.room_l / bucket.water_mark_l) + 1):
            litres = water * bucket.water_mark_l + jug * bucket.jug_mark_l
            held_l = sump.volume_l.value * sump.strength_pct.value / 100 + jug * bucket.jug_mark_l
            strength = 100 * held_l / (sump.volume_l.value + litres)
            if (
                least_l - 1e-9 <= litres <= room.room_l + 1e-9
                and low_pct - 1e-9 <= strength <= high_pct + 1e-9
                and min(ratios) <= jug / water <= max(ratios)
            ):
                found.append(Total(water, jug))
    return found


@pytest.mark.parametrize("room", spaces())
def test_totals_are_all_that_counting_finds(room: Space) -> None:
    singles = single_buckets(room)
    for low_pct, high_pct in WINDOWS if singles else ():
        found = list(totals_between(room, singles, low_pct, high_pct))
        assert found == every_total(room, singles, room.least_l, low_pct, high_pct)


@pytest.mark.parametrize("room", spaces())
def test_reached_is_what_counting_reaches(room: Space) -> None:
    # Any bucket, also one that is too large for the room: cheap to ask, and no less sure.
    singles = single_buckets(replace(room, room_l=100.0))
    for low_pct, high_pct in WINDOWS:
        is_there = low_pct <= room.ask.sump.strength_pct.value <= high_pct
        counted = bool(singles and every_total(room, singles, 0.0, low_pct, high_pct))
        assert may_end_between(room, low_pct, high_pct) is (is_there or counted)


def every_way(singles: Kinds, total: Total, most: int) -> set[tuple[int, int]]:
    """How many kinds and how many buckets sets of one to three kinds need for a total."""
    found = set()
    for kinds in range(1, 4):
        for chosen in combinations(sorted(singles), kinds):
            for counts in product(range(1, most + 1), repeat=kinds):
                water = sum(n * bucket[0] for n, bucket in zip(counts, chosen, strict=True))
                jug = sum(n * bucket[1] for n, bucket in zip(counts, chosen, strict=True))
                if sum(counts) <= most and (water, jug) == (total.water, total.jug):
                    found.add((kinds, sum(counts)))
    return found


def some_kinds(chance: random.Random) -> Kinds:
    every = [(water, jug) for water in (1, 2, 3) for jug in range(5)]
    return frozenset(chance.sample(every, chance.randint(2, 6)))


def test_taken_apart_as_well_as_every_set_there_is() -> None:
    # Buckets of 5 L, marks of 1 L and 0.5 L: no fewer than hold it, and two more at the most.
    chance, kinds_seen = random.Random(SEED), set[int]()
    room = Space(question(bucket=(5.0, 1.0, 0.5)), 20.0, 0.0)
    for _ in range(400):
        singles = some_kinds(chance)
        total = Total(chance.randint(1, 9), chance.randint(0, 9))
        fewest = math.ceil((total.water + total.jug * 0.5) / 5.0)
        ways = {
            way for way in every_way(singles, total, min(fewest + 2, total.water))
            if way[1] >= fewest
        }  # fmt: skip
        pours = taken_apart(room, singles, total)
        assert (pours is not None) is bool(ways), (singles, total)
        if pours is None:
            continue
        assert_is(pours, singles, total)
        assert (len(pours), sum(group.count for group in pours)) == min(ways), (singles, total)
        kinds_seen.add(len(pours))
    assert kinds_seen == {1, 2, 3}


def assert_is(pours: tuple[Group, ...], singles: Kinds, total: Total) -> None:
    """Buckets that may be poured, each kind once, the fullest first, with just this total."""
    kinds = [(group.water, group.jug) for group in pours]
    assert set(kinds) <= singles
    assert len(set(kinds)) == len(kinds)
    assert all(group.count >= 1 for group in pours)
    sizes = [water + 0.5 * jug for water, jug in kinds]
    assert sizes == sorted(sizes, reverse=True)
    assert sum(group.count * group.water for group in pours) == total.water
    assert sum(group.count * group.jug for group in pours) == total.jug


@pytest.mark.parametrize("aim_pct", [5.0, 8.0, 12.0])
def test_the_nearest_to_the_aim_comes_first(aim_pct: float) -> None:
    tried = 0
    for room in spaces():
        found = pours_between(room, 0.0, 100.0, aim_pct)
        away = [abs(room.strength_pct(pours) - aim_pct) for pours in found]
        assert away == pytest.approx(sorted(away))
        tried += len(found)
    assert tried >= 200
