"""Laws of a plan and of each other way, worked out again from its pours and steps."""

import math
from typing import Any

from tests.properties.recipe.plans import HAIR

Body = dict[str, Any]
# This may pass the full mark, and never the mark above it.
MAY_PASS = {"above_full_mark"}
# What is run in has no marks of a pail.
RUN_IN = {"hose", "unit"}


def _near(a: float, b: float) -> bool:
    return math.isclose(a, b, rel_tol=1e-9, abs_tol=1e-9)


def _marks(amount: float, mark: float) -> bool:
    return abs(amount / mark - round(amount / mark)) < 1e-6


def levels_and_end(body: Body, plan: Body) -> tuple[list[float], float, float]:
    """Litres after every step, concentrate times 100 at the end, and what was taken out.

    A bucket of the sump's own fluid is taken out before it is poured back.
    """
    volume = body["sump"]["volume_l"]["value"]
    pct = body["sump"]["strength_pct"]["value"]
    levels, held, taken = [volume], volume * pct, 0.0
    for step in plan["steps"]:
        amount = step.get("volume_l", 0.0)
        if step["kind"] == "take_out":
            volume, held, taken = volume - amount, held - amount * pct, taken + amount
        elif step["kind"] in RUN_IN:
            volume, held = volume + amount, held + amount * step.get("setting_pct", 0.0)
        elif step["kind"] in ("bucket", "own_fluid"):
            pour = plan["pours"][step["pour"]]
            volume += pour["count"] * (pour["water_l"] + pour["concentrate_l"])
            held += 100 * pour["count"] * pour["concentrate_l"]
        levels.append(volume)
    return levels, held, taken


def amount_laws(body: Body, plan: Body) -> dict[str, bool]:
    """Conservation, totals and levels; ``body`` is about all of the liquid."""
    levels, held, taken = levels_and_end(body, plan)
    final, totals, why = plan["final"], plan["totals"], plan.get("why", "main")
    run_l = sum(s["volume_l"] for s in plan["steps"] if s["kind"] in RUN_IN)
    run_oil_l = sum(
        s["volume_l"] * s.get("setting_pct", 0.0) / 100
        for s in plan["steps"]
        if s["kind"] in RUN_IN
    )
    water = math.fsum(p["count"] * p["water_l"] for p in plan["pours"]) + run_l - run_oil_l
    oil = math.fsum(p["count"] * p["concentrate_l"] for p in plan["pours"]) + run_oil_l
    start = levels[0]
    most = max(body["fill_to_l"], start)
    if why in MAY_PASS:
        most = max(body.get("never_above_l", body["fill_to_l"]), body["fill_to_l"])
        levels = levels[1:] if taken else levels
    strength = held / levels[-1] if levels[-1] > 0 else final["strength_pct"]["value"]
    return {
        "volume is conserved": _near(final["volume_l"], levels[-1]),
        "concentrate is conserved": _near(final["strength_pct"]["value"], strength),
        "what is taken out is said": _near(plan["draw_off_l"], taken),
        "totals are the sum": _near(totals["water_l"], water)
        and _near(totals["concentrate_l"], oil)
        and totals["buckets"] == sum(p["count"] for p in plan["pours"]),
        "never above the mark": max(levels) <= most + HAIR * most,
        "not more taken out than there is": taken <= start + HAIR,
        "never above the mark at the end": not (plan["pours"] or taken)
        or why in MAY_PASS
        or levels[-1] <= body["fill_to_l"] * (1 + HAIR),
        "taken out in whole marks": _marks(plan["draw_off_l"], body["draw_off"]["mark_l"]),
        "waste is said": ("taken_out_is_waste" in plan["cautions"]) is (plan["draw_off_l"] > 0),
    }


def bucket_laws(body: Body, plan: Body) -> dict[str, bool]:
    """Marks, fills and strengths of each bucket, by the kind of what is poured."""
    laws = {"at most three different buckets": len(plan["pours"]) <= 3}
    for i, pour in enumerate(plan["pours"]):
        own = pour.get("kind") == "own_fluid"
        ready = pour.get("kind") == "ready_mix"
        for name, holds in _of_bucket(body, pour, own, ready).items():
            laws[f"{name} (pour {i})"] = holds
    sizes = [sum(p.get(part, 0) for part in PARTS) for p in plan["pours"]]
    if plan.get("why") != "strong_first":
        laws["part bucket last"] = not sizes or sizes[-1] <= min(sizes) + HAIR
    laws["a step for each pour, in order"] = [
        s["pour"] for s in plan["steps"] if s["kind"] in ("bucket", "own_fluid")
    ] == list(range(len(plan["pours"])))
    return laws


PARTS = ("water_l", "concentrate_l", "fluid_l")


def _of_bucket(body: Body, pour: Body, own: bool, ready: bool) -> dict[str, bool]:
    bucket, mixing, pail = body["bucket"], body["mixing"], body.get("pail", {})
    fluid, oil = pour.get("fluid_l", 0.0), pour["concentrate_l"]
    carrier = pour["water_l"] + fluid
    total = carrier + oil
    # What was mixed before is measured as a whole, by the pail alone.
    measured = total if ready else carrier
    held = fluid * body["sump"]["strength_pct"]["value"] + 100 * oil
    first, jug_first = pail.get("first_mark_l", 0.0), pail.get("jug_first_mark_l", 0.0)
    return {
        "a whole count": pour["count"] >= 1 and isinstance(pour["count"], int),
        "whole pail marks": _marks(measured, bucket["water_mark_l"]),
        "whole jug marks": ready or _marks(oil, bucket["jug_mark_l"]),
        "pail marks that are there": measured >= first - HAIR,
        "jug marks that are there": ready or oil == 0 or oil >= jug_first - HAIR,
        "usable fill": total <= bucket["usable_l"] + HAIR,
        "never neat in the mix": carrier > 0,
        "no mix above the premix": held / total <= mixing["strong_pct"] + 0.01,
        "no mix below the weakest": own or held / total >= mixing["weak_pct"] - 0.3 - HAIR,
        "own fluid by its name": own == (fluid > 0),
    }


def broken(body: Body, plan: Body) -> list[str]:
    """Names of the laws that a plan or another way breaks."""
    laws = {**amount_laws(body, plan), **bucket_laws(body, plan), **_verdict(body, plan)}
    return [f"{plan.get('why', 'main')}: {name}" for name, holds in laws.items() if not holds]


def _verdict(body: Body, plan: Body) -> dict[str, bool]:
    target, strength = body["target"], plan["final"]["strength_pct"]["value"]
    inside = target["low_pct"] - HAIR <= strength <= target["high_pct"] + HAIR
    final = plan["final"]
    return {
        "verdict is where it lands": (plan["verdict"] != "out_of_band") == inside,
        "range holds the value": final["low_pct"] - HAIR <= strength <= final["high_pct"] + HAIR,
        "chance is a fraction": 0 <= final["chance_in_band"] <= 1,
        "shares add up to one": not plan["shares"]
        or math.isclose(sum(s["share"] for s in plan["shares"]), 1, abs_tol=1e-9),
    }
