"""pycore.recipe.search beside every set of buckets there is, where marks are coarse."""

import random
from collections.abc import Iterator
from dataclasses import replace
from itertools import combinations_with_replacement

from pycore.recipe.choice import SAME_PCT, weigh
from pycore.recipe.marks import Group, Pours, Space
from pycore.recipe.request import Mixing, Target
from pycore.recipe.search import best_pours
from pycore.recipe.totals import single_buckets
from tests.unit.recipe.shop import question, space

SEED = 47
MOST_BUCKETS = 4


def spaces(chance: random.Random) -> Iterator[Space]:
    """Room for two to four pails with few marks, for a narrow band that few totals reach."""
    while True:
        usable, water, jug = chance.choice([(3.0, 1.0, 0.5), (4.0, 1.0, 0.5), (5.0, 2.0, 0.5)])
        room_l = chance.uniform(1.2 * usable, 3.5 * usable)
        low = chance.uniform(3, 12)
        high = low + chance.uniform(0.3, 3)
        ask = question(
            chance.uniform(5, 40), low + chance.uniform(-4, 6), bucket=(usable, water, jug)
        )
        ask = replace(
            ask,
            fill_to_l=ask.sump.volume_l.value + room_l,
            target=Target(low, chance.uniform(low, high), high),
            mixing=Mixing(chance.choice([35.0, 60.0]), chance.choice([0.0, 5.0]), 0.05),
        )
        yield space(ask)


def every_set(room: Space) -> Iterator[Pours]:
    """Every set of one to three kinds and at most four buckets that fills the room."""
    singles = sorted(single_buckets(room))
    for count in range(1, MOST_BUCKETS + 1):
        for chosen in combinations_with_replacement(singles, count):
            kinds = sorted(set(chosen))
            litres = sum(room.bucket_l(*bucket) for bucket in chosen)
            if len(kinds) <= 3 and room.least_l - 1e-9 <= litres <= room.room_l + 1e-9:
                yield tuple(Group(chosen.count(kind), *kind) for kind in kinds)


def test_nothing_nearer_is_missed() -> None:
    chance, tried = random.Random(SEED), {"near": 0, "inside": 0, "outside": 0}
    for room in spaces(chance):
        every = [weigh(room, pours) for pours in every_set(room)]
        if not every:
            continue
        best = min(every, key=lambda found: (found.outside_pct, found.excess_pct))
        found = best_pours(room)
        assert found.outside_pct <= best.outside_pct + (SAME_PCT if best.outside_pct else 0), room
        if best.outside_pct == 0:
            assert found.excess_pct <= best.excess_pct + (SAME_PCT if best.excess_pct else 0), room
        kind = "outside" if best.outside_pct else "near" if best.is_near else "inside"
        tried[kind] += 1
        if min(tried.values()) >= 40:
            break
