"""The least draw-off in small cases, against every set of one to three buckets there is."""

import json
import random
from typing import Any

from tests.properties.asking import answer, ask
from tests.properties.recipe.sumps import sumps
from tests.properties.recipe.test_every_way import by_formula, reaches
from tests.properties.recipe.test_exhaustive import SAME_PCT, every_result

SEED = 7
COUNT = 150
Body = dict[str, Any]


def small(chance: random.Random) -> Body:
    """A full sump of a few litres, lean or rich, that needs a pail or two of fresh mix."""
    volume = chance.uniform(8, 24)
    low = chance.uniform(4, 9)
    lean = chance.random() < 0.5
    strength = low - chance.uniform(0.3, 2) if lean else low + 2 + chance.uniform(0.3, 2)
    return {
        "sump": {
            "volume_l": {"value": volume, "u": 0.5},
            "strength_pct": {"value": strength, "u": 0.2},
        },
        "fill_to_l": volume,
        "target": {"low_pct": low, "aim_pct": low + 1, "high_pct": low + 2},
        "mixing": {
            "strong_pct": chance.choice([20.0, 25.0]),
            "weak_pct": chance.choice([0.0, 1.0]),
            "closeness_pct": chance.choice([0.25, 0.5]),
        },
        "bucket": {
            "usable_l": chance.choice([4.0, 5.0]),
            "water_mark_l": 1.0,
            "jug_mark_l": chance.choice([0.1, 0.2]),
        },
        "draw_off": {"allowed": True, "mark_l": chance.choice([0.5, 1.0])},
    }


def reachable_with(body: Body, taken_l: float) -> bool:
    """Whether any set of buckets that fills the sump lands inside, clear of its edges."""
    volume = body["sump"]["volume_l"]["value"] - taken_l
    state = {**body["sump"], "volume_l": {"value": volume, "u": 0.5}}
    *_, low, high = by_formula(body)
    open_l = body["bucket"]["water_mark_l"] + body["bucket"]["jug_mark_l"]
    return any(
        low + 2 * SAME_PCT <= strength <= high - 2 * SAME_PCT
        for litres, strength in every_result({**body, "sump": state})
        if litres >= body["fill_to_l"] - open_l
    )


def test_one_mark_less_does_not_do_it() -> None:
    chance, drawn = random.Random(SEED), 0
    for _ in range(COUNT):
        body = small(chance)
        plan = ask("plan_recipe", body)
        mark_l, taken_l = body["draw_off"]["mark_l"], plan["draw_off_l"]
        if reaches(body):
            assert taken_l == 0, body
        # Room for more than three pails cannot be tried in full.
        if 0 < taken_l <= 3 * body["bucket"]["usable_l"] - 1:
            drawn += 1
            less = [n * mark_l for n in range(1, round(taken_l / mark_l))]
            assert [out_l for out_l in less if reachable_with(body, out_l)] == [], body
    assert drawn >= COUNT / 2


def shuffled(part: Any, chance: random.Random) -> Any:
    """The same with its keys in another order."""
    if isinstance(part, list):
        return [shuffled(value, chance) for value in part]
    if not isinstance(part, dict):
        return part
    names = list(part)
    chance.shuffle(names)
    return {name: shuffled(part[name], chance) for name in names}


def as_kind(part: Any, kind: type) -> Any:
    """Numbers that are whole as ``kind``, and every other one as it is."""
    if isinstance(part, dict):
        return {name: as_kind(value, kind) for name, value in part.items()}
    if isinstance(part, list):
        return [as_kind(value, kind) for value in part]
    is_whole = isinstance(part, int | float) and not isinstance(part, bool) and part == int(part)
    return kind(part) if is_whole else part


def rounded(part: Any) -> Any:
    """Numbers from 3 on rounded to whole ones."""
    if isinstance(part, dict):
        return {name: rounded(value) for name, value in part.items()}
    return float(round(part)) if isinstance(part, float) and part >= 3 else part


def test_same_answer_for_any_order_of_keys_and_for_2_and_2_0() -> None:
    chance, compared = random.Random(SEED), 0
    for number, body in enumerate(sumps(SEED, COUNT, "litre", draws=True)):
        whole = rounded({**body, "effort": {"most_buckets": 9}})
        whole["target"] = {"low_pct": 6.0, "aim_pct": 7.0 + number % 2, "high_pct": 9.0}
        asked = {"v": 1, "id": "t", "op": "plan_recipe", "body": as_kind(whole, int)}
        first = answer(json.dumps(asked))
        assert answer(json.dumps(shuffled(asked, chance))) == first
        floats = as_kind(whole, float)
        floats["effort"] = whole["effort"]
        texts = json.dumps(asked), json.dumps({**asked, "body": floats})
        assert texts[0] != texts[1]
        assert answer(texts[1]) == first
        compared += first["ok"]
    # A never-above mark that rounding puts below the fill is refused, the same both ways.
    assert compared >= COUNT * 0.8
