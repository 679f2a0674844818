"""pycore.recipe.stock beside every set of buckets that the concentrate at hand allows."""

import random
from collections.abc import Iterator
from dataclasses import replace

from pycore.recipe.band import is_new_charge, outside_pct
from pycore.recipe.choice import SAME_PCT
from pycore.recipe.harm import does_harm
from pycore.recipe.marks import Space
from pycore.recipe.plan import plan_recipe
from pycore.recipe.request import Mixing, PlanRequest, Stock, Target
from tests.unit.recipe.buckets.test_search_counted import every_set
from tests.unit.recipe.shop import question

SEED = 53


def short(chance: random.Random) -> Iterator[PlanRequest]:
    """Small sumps with room for two or three pails, and concentrate for a part of it."""
    while True:
        usable, water, jug = chance.choice([(3.0, 1.0, 0.5), (4.0, 1.0, 0.25), (5.0, 2.0, 0.5)])
        low = chance.uniform(3, 9)
        high = low + chance.uniform(1, 3)
        volume_l = chance.uniform(3, 30)
        ask = question(volume_l, low + chance.uniform(-3, 4), bucket=(usable, water, jug))
        yield replace(
            ask,
            fill_to_l=volume_l + chance.uniform(1.2 * usable, 3.5 * usable),
            target=Target(low, chance.uniform(low, high), high),
            mixing=Mixing(chance.choice([25.0, 40.0]), chance.choice([0.0, 2.0]), 0.25),
            stock=Stock(
                concentrate_l=chance.choice([0.0, chance.uniform(0, 2)]),
                water_l=chance.choice([None, chance.uniform(2, 12)]),
            ),
        )


def affordable(ask: PlanRequest) -> list[tuple[float, float]]:
    """Level and strength after every set that the shelf allows and that does no harm."""
    room_l = ask.fill_to_l - ask.sump.volume_l.value
    space, stock, found = Space(ask, room_l, 0.0), ask.stock or Stock(), []
    for pours in every_set(space):
        water_l = sum(group.count * group.water for group in pours) * ask.bucket.water_mark_l
        jug_l = sum(group.count * group.jug for group in pours) * ask.bucket.jug_mark_l
        is_enough = jug_l <= (stock.concentrate_l or 0.0) + 1e-9
        is_enough &= stock.water_l is None or water_l <= stock.water_l + 1e-9
        strength = space.strength_pct(pours)
        if is_enough and not does_harm(ask, strength):
            found.append((ask.sump.volume_l.value + water_l + jug_l, strength))
    return found


def test_the_band_first_then_the_level_as_every_set_allows() -> None:
    chance, seen = random.Random(SEED), {"inside": 0, "outside": 0}
    for ask in short(chance):
        plan = plan_recipe(ask)
        if not {"stock_short", "water_short"} & set(plan.cautions):
            continue
        sets = affordable(ask)
        inside = [level_l for level_l, pct in sets if outside_pct(ask, pct) == 0]
        after = outside_pct(ask, plan.final.strength_pct.value)
        if inside:
            marks_l = ask.bucket.water_mark_l + ask.bucket.jug_mark_l
            assert after <= 1e-9, ask
            edges = [way for way in plan.alternatives if way.why == "fill_to_edge"]
            highest_l = max(way.final.volume_l for way in (plan, *edges))
            # One mark more is no other way.
            least_l = max(inside) - marks_l - ask.bucket.water_mark_l
            assert highest_l >= least_l - 1e-9, ask
            # Lower only where that lands in the band more likely.
            for edge in edges:
                assert plan.final.chance_in_band > edge.final.chance_in_band, ask
            seen["inside"] += 1
        elif not is_new_charge(ask):
            now = outside_pct(ask, ask.sump.strength_pct.value)
            nearest = min((outside_pct(ask, pct) for _, pct in sets), default=now)
            assert after <= min(nearest, now) + SAME_PCT, ask
            seen["outside"] += 1
        if min(seen.values()) >= 60:
            break
