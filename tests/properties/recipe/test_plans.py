"""Laws of every recipe (architecture, plan_recipe; the amounts: C1·V1 = C2·V2)."""

import json
from typing import Any

from hypothesis import event, example, given, settings
from hypothesis import strategies as st

from tests.properties.asking import answer, ask
from tests.properties.recipe.plans import (
    broken_laws,
    does_harm,
    fill_gap_l,
    questions,
    smallest_bucket_l,
)


@settings(max_examples=400, deadline=None)
@given(questions())
def test_laws(body: dict[str, Any]) -> None:
    plan = ask("plan_recipe", body)
    event(plan["verdict"])
    assert broken_laws(body, plan) == []


# Found by the search: full pails of one kind alone fill the room, and no smaller one is needed.
PLAIN_PAILS = {
    "sump": {"volume_l": {"value": 400.0, "u": 1.0}, "strength_pct": {"value": 0.5, "u": 0.1}},
    "fill_to_l": 600.0,
    "target": {"low_pct": 6.0, "aim_pct": 7.0, "high_pct": 9.0},
    "mixing": {"strong_pct": 20.0, "weak_pct": 1.0, "closeness_pct": 0.5},
    "bucket": {"usable_l": 9.09218, "water_mark_l": 4.54609, "jug_mark_l": 0.056826125},
    "draw_off": {"allowed": False, "mark_l": 1.0},
}


@settings(max_examples=300, deadline=None)
@example(PLAIN_PAILS)
@given(questions())
def test_room_is_filled_to_within_a_mark_or_nothing_more_fits(body: dict[str, Any]) -> None:
    plan = ask("plan_recipe", body)
    if "not_filled_up" in plan["cautions"]:
        if plan["case"] in ("emptied", "new_charge"):
            # Filled up with these marks it would be too thin, which is never offered.
            assert all(way["why"] != "fill_up" for way in plan["alternatives"])
            return
        # Filled up it would lie further from the band than now, or past it.
        plan = next(way for way in plan["alternatives"] if way["why"] == "fill_up")
        assert does_harm(body, plan["final"]["strength_pct"]["value"])
    left_l = body["fill_to_l"] - plan["final"]["volume_l"]
    assert fill_gap_l(body, plan) == 0 or smallest_bucket_l(body) > left_l - 1e-9


@settings(max_examples=60, deadline=None)
@given(questions(largest_l=200_000.0))
def test_large_tanks(body: dict[str, Any]) -> None:
    assert broken_laws(body, ask("plan_recipe", body)) == []


@settings(max_examples=60, deadline=None)
@given(questions(), st.randoms(use_true_random=False))
def test_order_of_keys_does_not_matter(body: dict[str, Any], random: Any) -> None:
    def shuffled(part: Any) -> Any:
        if not isinstance(part, dict):
            return part
        names = list(part)
        random.shuffle(names)
        return {name: shuffled(part[name]) for name in names}

    asked = {"v": 1, "id": "t", "op": "plan_recipe", "body": body}
    assert answer(json.dumps(shuffled(asked))) == answer(json.dumps(asked))


@settings(max_examples=60, deadline=None)
@given(questions())
def test_whole_numbers_with_and_without_a_point(body: dict[str, Any]) -> None:
    def rounded(part: Any, kind: type) -> Any:
        if isinstance(part, dict):
            return {name: rounded(value, kind) for name, value in part.items()}
        return part if isinstance(part, bool) or part < 1 else kind(round(part))

    for kind in (int, float):
        body["target"] = {"low_pct": kind(6), "aim_pct": kind(8), "high_pct": kind(10)}
    texts = [
        json.dumps({"v": 1, "id": "t", "op": "plan_recipe", "body": rounded(body, kind)})
        for kind in (int, float)
    ]
    assert texts[0] != texts[1]
    assert answer(texts[0]) == answer(texts[1])
