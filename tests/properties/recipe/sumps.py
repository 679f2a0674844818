"""Random sumps with everything a shop may allow, from a seed of their own.

A generator with a fixed seed and not the search of hypothesis: thousands of sumps spread over all
cases, the same ones in every run.
"""

import random
from collections.abc import Iterator
from typing import Any

from tests.properties.recipe.plans import BUCKETS, IMP_GAL_L, US_GAL_L

Body = dict[str, Any]
SYSTEMS = {
    "litre": [bucket for bucket in BUCKETS if bucket[1] in (0.5, 1.0, 2.0)],
    "US": [bucket for bucket in BUCKETS if (bucket[1] / US_GAL_L) in (0.25, 0.5, 1.0)],
    "imperial": [bucket for bucket in BUCKETS if (bucket[1] / IMP_GAL_L) in (0.25, 1.0)],
}


def _bucket(chance: random.Random, system: str) -> Body:
    usable_marks, water_mark_l, jug_mark_l = chance.choice(SYSTEMS[system])
    return {
        "usable_l": usable_marks * water_mark_l,
        "water_mark_l": water_mark_l,
        "jug_mark_l": jug_mark_l,
    }


def _options(chance: random.Random, body: Body) -> Body:
    """What a shop may have beside pail and jug, each in about a third of the sumps."""
    bucket, fill_to_l = body["bucket"], body["fill_to_l"]
    # Neat concentrate, or thinner than any mix: both may stand on the cart.
    strength_pct = chance.choice([chance.uniform(1, 20), chance.uniform(0, 1), 60.0, 100.0])
    mix_l = fill_to_l * chance.choice([1.0, 0.02])
    every: Body = {
        "never_above_l": fill_to_l * chance.choice([1.0, 1.02, 1.1, 1.3]),
        "own_fluid": {"allowed": chance.random() < 0.8},
        "losses": {"carry_out_l_d": chance.uniform(0.1, 20)},
        "unit": {"lowest_pct": chance.choice([0, 1]), "highest_pct": 15, "step_pct": 0.5},
        "effort": {"most_buckets": chance.randint(1, 20)},
        "stock": {
            "concentrate_l": chance.choice([0.0, 0.5, 2.0, 10.0, 1000.0]),
            "ready_mixes": [{"strength_pct": strength_pct, "volume_l": mix_l}],
        },
        "hidden": {
            "volume_l": {"value": chance.uniform(0, fill_to_l / 3), "u": 1.0},
            "strength_pct": {"value": chance.uniform(0, 15), "u": 0.5},
        },
        "pail": {
            "first_mark_l": chance.randint(0, 3) * bucket["water_mark_l"],
            "jug_first_mark_l": chance.randint(0, 4) * bucket["jug_mark_l"],
        },
    }
    every["pail"]["first_mark_l"] = min(every["pail"]["first_mark_l"], bucket["usable_l"])
    return {name: part for name, part in every.items() if chance.random() < 0.35}


def sump(chance: random.Random, system: str, draws: bool, largest_l: float = 2000.0) -> Body:
    """One question; pails and jugs are marked in the system's units."""
    fill_to_l = chance.uniform(20, largest_l)
    low = chance.uniform(2, 10)
    high = low + chance.uniform(0.5, 4)
    bucket = _bucket(chance, system)
    # As often full, above the mark and nearly empty as anything between.
    share = chance.choice([1.0, 1.0, chance.uniform(1, 1.1), chance.uniform(0, 0.2)])
    share = chance.choice([share, chance.random()])
    # What is left in an emptied sump is mostly rinse water.
    strongest_pct = chance.choice([20, 1]) if share < 0.2 else 20
    body: Body = {
        "sump": {
            "volume_l": {"value": fill_to_l * share, "u": chance.uniform(0, 20)},
            "strength_pct": {"value": chance.uniform(0, strongest_pct), "u": chance.uniform(0, 1)},
        },
        "fill_to_l": fill_to_l,
        "target": {"low_pct": low, "aim_pct": chance.uniform(low, high), "high_pct": high},
        "mixing": {
            "strong_pct": chance.choice([10.0, 15.0, 20.0, 25.0, 35.0]),
            "weak_pct": chance.choice([0.0, 0.5, 1.0, 2.0]),
            "closeness_pct": chance.choice([0.1, 0.25, 0.5, 1.0]),
        },
        "bucket": bucket,
        "draw_off": {"allowed": draws, "mark_l": bucket["water_mark_l"] * chance.choice([0.5, 1])},
    }
    return {**body, **_options(chance, body)}


def sumps(seed: int, count: int, system: str, draws: bool) -> Iterator[Body]:
    """So many questions from one seed."""
    chance = random.Random(seed)
    for _ in range(count):
        yield sump(chance, system, draws)


def whole(body: Body) -> Body:
    """The same question about all of the liquid, with what does not show on the stick added."""
    if "hidden" not in body:
        return body
    seen, hidden = body["sump"], body["hidden"]
    volumes = seen["volume_l"]["value"], hidden["volume_l"]["value"]
    volume_l = sum(volumes)
    strengths = seen["strength_pct"]["value"], hidden["strength_pct"]["value"]
    held = sum(v * s for v, s in zip(volumes, strengths, strict=True))
    strength = held / volume_l if volume_l else strengths[0]
    state = {
        "volume_l": {"value": volume_l, "u": 0.0},
        "strength_pct": {"value": strength, "u": 0.0},
    }
    more = {"sump": state, "fill_to_l": body["fill_to_l"] + volumes[1]}
    if "never_above_l" in body:
        more["never_above_l"] = body["never_above_l"] + volumes[1]
    return {**body, **more}
