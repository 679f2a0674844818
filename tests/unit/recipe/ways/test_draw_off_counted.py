"""pycore.recipe.draw_off beside every set of buckets there is, mark by mark taken out."""

import random
from collections.abc import Iterator
from dataclasses import replace
from itertools import combinations_with_replacement

import pytest

from pycore.recipe.band import inside_pct
from pycore.recipe.choice import SAME_PCT
from pycore.recipe.draw_off import draw_off_to_aim, least_draw_off
from pycore.recipe.request import DrawOff, Mixing, PlanRequest, Target
from tests.unit.recipe.shop import question

SEED = 61
COUNT = 60
MOST_BUCKETS = 4
MOST_KINDS = 3
# Litres, and points: what floats round.
HAIR = 1e-9


def full_sumps(chance: random.Random, *, lean: bool) -> Iterator[PlanRequest]:
    """Sumps filled nearly or a little above the mark, outside a narrow band; coarse marks."""
    while True:
        fill_to_l = chance.uniform(15, 40)
        usable, water, jug = chance.choice([(3.0, 1.0, 0.5), (4.0, 1.0, 0.5), (5.0, 1.0, 0.25)])
        low = chance.uniform(4, 10)
        high = low + chance.uniform(0.4, 2)
        away = chance.uniform(0.1, 1.5)
        ask = question(
            fill_to_l + chance.choice([0.0, 0.0, 0.4, -0.7]),
            low - away if lean else high + away,
            fill_to_l=fill_to_l,
            bucket=(usable, water, jug),
        )
        ask = replace(
            ask,
            target=Target(low, chance.uniform(low, high), high),
            mixing=Mixing(
                chance.choice([20.0, 35.0]), chance.choice([0.0, 1.0]), chance.choice([0.1, 0.3])
            ),
            draw_off=DrawOff(True, chance.choice([0.25, 0.5, 1.0])),
        )
        if not reaches(ask):
            yield ask


def reaches(ask: PlanRequest) -> bool:
    """Whether weakest or strongest mix in the room there is leads into the band or past it."""
    volume_l, now = ask.sump.volume_l.value, ask.sump.strength_pct.value
    room_l = max(0.0, ask.fill_to_l - volume_l)
    mixes = ask.mixing.weak_pct, ask.mixing.strong_pct
    weakest, strongest = ((volume_l * now + room_l * mix) / (volume_l + room_l) for mix in mixes)
    return strongest >= ask.target.low_pct and weakest <= ask.target.high_pct


def buckets(ask: PlanRequest) -> list[tuple[int, int]]:
    """Every bucket of whole marks between weakest and strongest mix.

    The weakest is rounded to a jug mark where that is at most 0.3 points weaker.
    """
    bucket, mix = ask.bucket, ask.mixing
    found = []
    for water in range(1, round(bucket.usable_l / bucket.water_mark_l) + 1):
        for jug in range(round(bucket.usable_l / bucket.jug_mark_l) + 1):
            litres = water * bucket.water_mark_l + jug * bucket.jug_mark_l
            strength = 100 * jug * bucket.jug_mark_l / litres
            nearest = mix.weak_pct / (100 - mix.weak_pct) * water * bucket.water_mark_l
            is_weak_enough = jug >= round(nearest / bucket.jug_mark_l)
            if (
                litres <= bucket.usable_l + HAIR
                and mix.weak_pct - 0.3 <= strength <= mix.strong_pct + HAIR
                and is_weak_enough
            ):
                found.append((water, jug))
    return found


def counted_l(ask: PlanRequest) -> float:
    """Up to so many litres out every set is tried: what three buckets hold, and what there is."""
    return min(3 * ask.bucket.usable_l, ask.sump.volume_l.value)


def landings(ask: PlanRequest, low: float, high: float) -> dict[int, list[float]]:
    """Strengths between two that sets of at most four buckets end at, by marks taken out."""
    bucket, volume_l = ask.bucket, ask.sump.volume_l.value
    totals = {
        (sum(water for water, _ in chosen), sum(jug for _, jug in chosen))
        for count in range(1, MOST_BUCKETS + 1)
        for chosen in combinations_with_replacement(buckets(ask), count)
        if len(set(chosen)) <= MOST_KINDS
    }
    found: dict[int, list[float]] = {}
    mark_l = ask.draw_off.mark_l
    for marks in range(1, int(counted_l(ask) / mark_l) + 1):
        left_l = volume_l - marks * mark_l
        room_l = ask.fill_to_l - left_l
        least_l = room_l - bucket.water_mark_l - bucket.jug_mark_l
        for water, jug in totals:
            poured_l = water * bucket.water_mark_l + jug * bucket.jug_mark_l
            held = left_l * ask.sump.strength_pct.value + 100 * jug * bucket.jug_mark_l
            strength = held / (left_l + poured_l)
            is_filled = least_l - HAIR <= poured_l <= room_l + HAIR
            if is_filled and low - HAIR <= strength <= high + HAIR:
                found.setdefault(marks, []).append(strength)
    return found


def looked_to_l(ask: PlanRequest, *, lean: bool) -> float:
    """Litres up to which it is promised to look for the aim.

    At least x by (V − x)·C + (F − V + x)·m = F·aim with m the richest or leanest bucket there is;
    and four marks of bucket and jug, a whole bucket, or twelve marks of the vessel more.
    """
    bucket, volume_l, now = ask.bucket, ask.sump.volume_l.value, ask.sump.strength_pct.value
    ratios = [
        jug * bucket.jug_mark_l / (water * bucket.water_mark_l) for water, jug in buckets(ask)
    ]
    ratio = max(ratios) if lean else min(ratios)
    mix = 100 * ratio / (1 + ratio)
    missing = ask.fill_to_l * (ask.target.aim_pct - mix) + volume_l * (mix - now)
    marks_l = 4 * (bucket.water_mark_l + bucket.jug_mark_l)
    return missing / (mix - now) + max(marks_l, bucket.usable_l, 12 * ask.draw_off.mark_l)


@pytest.mark.parametrize("lean", [True, False])
def test_no_mark_less_lands_well_inside_the_band(*, lean: bool) -> None:
    chance, seen = random.Random(SEED), 0
    for ask in full_sumps(chance, lean=lean):
        plan = least_draw_off(ask)
        inside = inside_pct(ask)
        low, high = (inside[0], ask.target.high_pct) if lean else (ask.target.low_pct, inside[1])
        landed = landings(ask, low, high)
        if not landed:
            assert plan is None or plan.draw_off_l > counted_l(ask), ask
            continue
        assert plan is not None, ask
        assert plan.draw_off_l == min(landed) * ask.draw_off.mark_l, ask
        assert low - HAIR <= plan.final.strength_pct.value <= high + HAIR, ask
        seen += 1
        if seen >= COUNT:
            break


@pytest.mark.parametrize("lean", [True, False])
def test_to_the_aim_as_near_as_any_of_the_first_that_land_near_enough(*, lean: bool) -> None:
    chance, seen = random.Random(SEED + 1), {"least": 0, "more": 0}
    for ask in full_sumps(chance, lean=lean):
        aim, close = ask.target.aim_pct, ask.mixing.closeness_pct
        low, high = max(ask.target.low_pct, aim - close), min(ask.target.high_pct, aim + close)
        landed = landings(ask, low, high)
        most = looked_to_l(ask, lean=lean) / ask.draw_off.mark_l
        firsts = [marks for marks in sorted(landed)[:6] if marks < most]
        if not firsts:
            continue
        plan = draw_off_to_aim(ask)
        assert plan is not None, ask
        taken = round(plan.draw_off_l / ask.draw_off.mark_l)
        off_pct = abs(plan.final.strength_pct.value - aim)
        assert low - HAIR <= plan.final.strength_pct.value <= high + HAIR, ask
        nearest = min(abs(strength - aim) for marks in firsts for strength in landed[marks])
        # Results that differ by SAME_PCT are equal.
        assert off_pct <= nearest + SAME_PCT, ask
        seen["least" if taken <= firsts[0] else "more"] += 1
        if min(seen.values()) >= COUNT / 3:
            break
