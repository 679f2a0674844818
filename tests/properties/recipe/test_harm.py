"""No main plan ends further from the band than doing nothing would."""

import random
from collections import Counter
from typing import Any

from tests.properties.asking import ask
from tests.properties.recipe.laws import broken
from tests.properties.recipe.plans import HAIR, does_harm, outside_pct
from tests.properties.recipe.sumps import SYSTEMS, sump, whole

SEED = 20
COUNT = 400
Body = dict[str, Any]


def tempting(chance: random.Random) -> Body:
    """A sump with much room that coarse marks, a weak premix or an empty shelf cannot fill well."""
    body = sump(chance, chance.choice(list(SYSTEMS)), draws=chance.random() < 0.3, largest_l=300.0)
    full_l, low = body["fill_to_l"], body["target"]["low_pct"]
    body["sump"]["volume_l"]["value"] = full_l * chance.uniform(0.1, 0.9)
    body["sump"]["strength_pct"]["value"] = chance.uniform(0.7, 1.5) * low
    body["mixing"] = {
        "strong_pct": chance.choice([4.0, 6.0, 10.0, 20.0]),
        "weak_pct": 0.0,
        "closeness_pct": 0.25,
    }
    if chance.random() < 0.5:
        body["bucket"] = {"usable_l": 10.0, "water_mark_l": 5.0, "jug_mark_l": 2.0}
        body.pop("pail", None)
    body.pop("stock", None)
    if chance.random() < 0.5:
        body["stock"] = {
            "concentrate_l": chance.choice([0.0, 1.0, 5.0]),
            "water_l": chance.choice([0.0, 20.0, 1000.0]),
        }
    return body


def test_nothing_is_poured_rather_than_something_that_does_harm() -> None:
    chance, seen = random.Random(SEED), Counter[str]()
    for _ in range(COUNT):
        asked = tempting(chance)
        plan, body = ask("plan_recipe", asked), whole(asked)
        after_pct = plan["final"]["strength_pct"]["value"]
        after = outside_pct(body, after_pct)
        # Below a fifth of the full mark it is a new charge: common practice, no source.
        is_new = body["sump"]["volume_l"]["value"] < 0.2 * body["fill_to_l"]
        assert not plan["pours"] or not does_harm(body, after_pct), asked
        if is_new and "stock_short" in plan["cautions"]:
            # Mixed too thin it would serve nobody.
            assert plan["pours"] == [] or after == 0, asked
        seen.update(plan["cautions"])
        seen["new and poured"] += is_new and bool(plan["pours"])
        for way in (plan, *plan["alternatives"]):
            assert broken(body, way) == [], asked
            if way.get("why") == "fill_up":
                assert not is_new, asked
                assert does_harm(body, way["final"]["strength_pct"]["value"]), asked
            seen[way.get("why", "main")] += 1
    # An eighth of them at least, so that the law is tried.
    assert min(seen["not_filled_up"], seen["fill_up"]) >= COUNT / 8, seen
    assert min(seen["stock_short"], seen["water_short"], seen["new and poured"]) >= 10, seen
    assert seen["fill_less"] >= 5, seen


def test_a_shelf_is_never_asked_for_more_than_it_holds() -> None:
    chance, poured = random.Random(SEED + 1), 0
    for _ in range(COUNT):
        body = tempting(chance)
        plan = ask("plan_recipe", body)
        stock = body.get("stock", {"concentrate_l": 1e9, "water_l": 1e9})
        for way in (plan, *plan["alternatives"]):
            if way.get("why") not in ("fetch_concentrate", "fetch_water"):
                for name, have_l in stock.items():
                    assert way["totals"][name] <= have_l + HAIR, (body, way.get("why"))
        fetches = [way["why"] for way in plan["alternatives"] if way["why"].startswith("fetch")]
        short = [code for code in plan["cautions"] if code in ("stock_short", "water_short")]
        assert bool(fetches) is bool(short), body
        assert ("fetch_concentrate" in fetches) is ("stock_short" in short), body
        poured += bool(short) and bool(plan["pours"])
    assert poured >= 20


# These pass the mark, wait, take out, run in or pour what stands ready: no other level of buckets.
NOT_BUCKETS = {"ready_mix", "above_full_mark", "own_fluid", "leave_room", "use_it_up", "hose"}


def test_short_stock_meets_the_band_wherever_another_way_does() -> None:
    chance, seen = random.Random(SEED + 2), Counter[str]()
    for _ in range(COUNT):
        body = tempting(chance)
        body["draw_off"]["allowed"] = False
        body["sump"]["strength_pct"]["value"] *= chance.choice([1.0, 2.0])
        plan = ask("plan_recipe", body)
        if not {"stock_short", "water_short"} & set(plan["cautions"]):
            continue
        for way in plan["alternatives"]:
            is_other = way["why"] in NOT_BUCKETS or way["why"].startswith("fetch")
            if not is_other and way["draw_off_l"] == 0 and way["why"] != "mixing_unit":
                assert plan["verdict"] != "out_of_band" or way["verdict"] == "out_of_band", body
                seen[way["why"]] += 1
        marks_l = body["bucket"]["water_mark_l"] + body["bucket"]["jug_mark_l"]
        is_lower = plan["final"]["volume_l"] < whole(body)["fill_to_l"] - marks_l - HAIR
        assert ("not_filled_up" in plan["cautions"]) is is_lower, body
        seen[plan["verdict"]] += 1
    assert min(seen["on_target"], seen["in_band"], seen["out_of_band"], seen["fill_less"]) >= 5, (
        seen
    )


# Named for what they do: filling up all the same, or more or less taken out.
MAY_LEAD_AWAY = {"fill_up", "without_draw_off", "least_draw_off", "draw_off_to_aim"}
# Offered only where the room does not reach the band, so measured by what is there now.
FULL_SUMP = {"own_fluid", "above_full_mark", "leave_room", "use_it_up"}
# The recipe itself, with what it lacks.
FETCH = {"fetch_concentrate", "fetch_water"}


def test_no_other_way_leads_away_and_none_comes_twice() -> None:
    chance, seen = random.Random(SEED + 2), Counter[str]()
    for number in range(2 * COUNT):
        draws = chance.random() < 0.5
        asked = tempting(chance) if number % 2 else sump(chance, "litre", draws, 300.0)
        plan, body = ask("plan_recipe", asked), whole(asked)
        now = outside_pct(body, body["sump"]["strength_pct"]["value"])
        is_new = body["sump"]["volume_l"]["value"] < 0.2 * body["fill_to_l"]
        ways = [way for way in plan["alternatives"] if way["why"] not in MAY_LEAD_AWAY]
        for way in ways:
            seen[way["why"]] += 1
            after = outside_pct(body, way["final"]["strength_pct"]["value"])
            assert is_new or after <= now + HAIR, (asked, way["why"])
            if way["why"] not in (*FULL_SUMP, *FETCH) and plan["verdict"] != "out_of_band":
                assert after == 0, (asked, way["why"])
        done = [(way["steps"], way["pours"]) for way in (plan, *plan["alternatives"])
                if "wait" not in way]  # fmt: skip
        assert all(done.count(each) == 1 for each in done), asked
        assert all(steps for steps, _ in done[1:]), asked
    names = {"mixing_unit", "hose", "smaller_dose", "strong_first", "own_fluid", "above_full_mark"}
    assert min(seen[name] for name in names) >= 5, seen
