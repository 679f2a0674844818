"""What every recipe must hold, and questions to try it on."""

import math
from typing import Any

from hypothesis import strategies as st

US_GAL_L = 3.785411784
IMP_GAL_L = 4.54609
# Tolerance for counting marks and litres: 1e-9 of a mark or a litre.
HAIR = 1e-9

# Usable fill in bucket marks, bucket mark and jug mark in litres, as pails and jugs are marked.
BUCKETS = [
    (10, 1.0, 0.05),
    (20, 0.5, 0.05),
    (10, 1.0, 0.1),
    (8, 1.0, 0.025),
    (5, 2.0, 0.25),
    (16, US_GAL_L / 4, US_GAL_L / 64),
    (4, US_GAL_L, US_GAL_L / 32),
    (8, US_GAL_L / 2, US_GAL_L / 64),
    (2, IMP_GAL_L, IMP_GAL_L / 80),
    (8, IMP_GAL_L / 4, IMP_GAL_L / 40),
]


@st.composite
def questions(draw: st.DrawFn, largest_l: float = 2000.0) -> dict[str, Any]:
    """Bodies of plan_recipe as they come up in a shop, and some beyond."""
    usable_marks, water_mark_l, jug_mark_l = draw(st.sampled_from(BUCKETS))
    fill_to_l = draw(st.floats(20.0, largest_l))
    low = draw(st.floats(2.0, 10.0))
    high = low + draw(st.floats(0.5, 4.0))
    aim = low + (high - low) * draw(st.floats(0.0, 1.0))
    weak = draw(st.sampled_from([0.0, 0.5, 1.0, 2.0]))
    return {
        "sump": {
            "volume_l": {
                "value": min(fill_to_l * draw(st.floats(0.0, 1.1)), 200_000.0),
                "u": draw(st.floats(0.0, 20.0)),
            },
            "strength_pct": {"value": draw(st.floats(0.0, 20.0)), "u": draw(st.floats(0.0, 1.0))},
        },
        "fill_to_l": fill_to_l,
        "target": {"low_pct": low, "aim_pct": min(aim, high), "high_pct": high},
        "mixing": {
            "strong_pct": draw(st.sampled_from([10.0, 15.0, 20.0, 25.0, 35.0])),
            "weak_pct": weak,
            "closeness_pct": draw(st.sampled_from([0.1, 0.25, 0.5, 1.0])),
        },
        "bucket": {
            "usable_l": usable_marks * water_mark_l,
            "water_mark_l": water_mark_l,
            "jug_mark_l": jug_mark_l,
        },
        "draw_off": {"allowed": False, "mark_l": 1.0},
    }


def broken_laws(body: dict[str, Any], plan: dict[str, Any]) -> list[str]:
    """Names of the laws that a plan breaks."""
    laws = {
        **_about_buckets(body, plan),
        **_about_amounts(body, plan),
        **_about_verdict(body, plan),
    }
    return [name for name, holds in laws.items() if not holds]


def _about_buckets(body: dict[str, Any], plan: dict[str, Any]) -> dict[str, bool]:
    bucket, mixing, pours = body["bucket"], body["mixing"], plan["pours"]
    totals = [pour["water_l"] + pour["concentrate_l"] for pour in pours]
    strengths = [100 * p["concentrate_l"] / t for p, t in zip(pours, totals, strict=True)]
    return {
        "whole bucket marks": all(_whole(p["water_l"], bucket["water_mark_l"]) for p in pours),
        "whole jug marks": all(_whole(p["concentrate_l"], bucket["jug_mark_l"]) for p in pours),
        "no bucket above its usable fill": all(t <= bucket["usable_l"] + HAIR for t in totals),
        "none stronger than the premix": all(s <= mixing["strong_pct"] + 0.01 for s in strengths),
        "none weaker than the weak mix": all(s >= mixing["weak_pct"] - 0.3 for s in strengths),
        "never neat": all(p["water_l"] > 0 for p in pours),
        "at most three different buckets": len(pours) <= 3,
        "no two alike listed apart": len({(p["water_l"], p["concentrate_l"]) for p in pours})
        == len(pours),
        "part bucket last": not totals or totals[-1] <= min(totals) + HAIR,
        "a step for each pour, in order": [
            s["pour"] for s in plan["steps"] if s["kind"] == "bucket"
        ]
        == list(range(len(pours))),
    }


def _about_amounts(body: dict[str, Any], plan: dict[str, Any]) -> dict[str, bool]:
    sump, pours, totals, final = body["sump"], plan["pours"], plan["totals"], plan["final"]
    water = math.fsum(p["count"] * p["water_l"] for p in pours)
    concentrate = math.fsum(p["count"] * p["concentrate_l"] for p in pours)
    volume = sump["volume_l"]["value"] + water + concentrate
    held = sump["volume_l"]["value"] * sump["strength_pct"]["value"] + 100 * concentrate
    strength = held / volume if volume else sump["strength_pct"]["value"]
    return {
        "nothing is taken out": plan["draw_off_l"] == 0,
        "totals are the sum": _near(totals["water_l"], water)
        and _near(totals["concentrate_l"], concentrate)
        and totals["buckets"] == sum(p["count"] for p in pours),
        "volume is conserved": _near(final["volume_l"], volume),
        "concentrate is conserved": _near(final["strength_pct"]["value"], strength),
        "never above the mark": not pours or volume <= body["fill_to_l"] + HAIR * body["fill_to_l"],
        "likely range holds the value": final["low_pct"]
        <= strength + HAIR
        <= final["high_pct"] + 2 * HAIR,
        "shares add up to one": not plan["shares"]
        or math.isclose(sum(s["share"] for s in plan["shares"]), 1, abs_tol=1e-9),
    }


def _about_verdict(body: dict[str, Any], plan: dict[str, Any]) -> dict[str, bool]:
    target, final, reach = body["target"], plan["final"], plan["reachable"]
    strength = final["strength_pct"]["value"]
    inside = target["low_pct"] - HAIR <= strength <= target["high_pct"] + HAIR
    half_mark = 50 * body["bucket"]["jug_mark_l"] / final["volume_l"] if final["volume_l"] else 0
    near = (
        abs(strength - target["aim_pct"]) <= max(body["mixing"]["closeness_pct"], half_mark) + HAIR
    )
    misses = reach["high_pct"] < target["low_pct"] or reach["low_pct"] > target["high_pct"]
    coarse = "marks_too_coarse" in plan["cautions"]
    verdict = plan["verdict"]
    return {
        "on_target is near and inside": verdict != "on_target" or (inside and near),
        "in_band is inside and not near": verdict != "in_band" or (inside and not near),
        "out_of_band is outside": verdict != "out_of_band" or not inside,
        "out_of_band only when it must": verdict != "out_of_band"
        or misses
        or coarse
        or not plan["pours"],
    }


def fill_gap_l(body: dict[str, Any], plan: dict[str, Any]) -> float:
    """Litres by which the room stays open beyond one bucket mark and one jug mark."""
    marks_l = body["bucket"]["water_mark_l"] + body["bucket"]["jug_mark_l"]
    return max(0.0, body["fill_to_l"] - plan["final"]["volume_l"] - marks_l - HAIR)


def outside_pct(body: dict[str, Any], strength_pct: float) -> float:
    """How far a strength lies outside the band, points."""
    target = body["target"]
    return max(target["low_pct"] - strength_pct, strength_pct - target["high_pct"], 0.0)


def does_harm(body: dict[str, Any], strength_pct: float) -> bool:
    """Whether a result lies further from the band than now, or past it on the other side.

    A new charge (below a fifth of the full mark: common practice, no source) only where it is too
    thin although the strongest mix is not.
    """
    target, sump, room = body["target"], body["sump"], body["fill_to_l"]
    volume, now = sump["volume_l"]["value"], sump["strength_pct"]["value"]
    is_thin = strength_pct < target["low_pct"] - HAIR
    if volume < 0.2 * room:
        strongest = volume * now + (room - volume) * body["mixing"]["strong_pct"]
        return is_thin and strongest >= target["low_pct"] * room
    is_rich = strength_pct > target["high_pct"] + HAIR
    if (is_thin and now > target["high_pct"]) or (is_rich and now < target["low_pct"]):
        return True
    return outside_pct(body, strength_pct) > outside_pct(body, now) + HAIR


def allowed_buckets(body: dict[str, Any]) -> list[tuple[int, int]]:
    """Every bucket that may be poured, as bucket marks and jug marks, tried one by one.

    The weakest mix may miss its strength by the rounding to a jug mark, up to 0.3 points.
    """
    bucket, mixing = body["bucket"], body["mixing"]
    water_mark, jug_mark, usable = (
        bucket[name] for name in ("water_mark_l", "jug_mark_l", "usable_l")
    )
    found = []
    for water in range(1, int(usable / water_mark + HAIR) + 1):
        for jug in range(int(usable / jug_mark) + 1):
            total = water * water_mark + jug * jug_mark
            strength = 100 * jug * jug_mark / total
            nearest = round(
                mixing["weak_pct"] / (100 - mixing["weak_pct"]) * water * water_mark / jug_mark
            )
            weak_enough = jug >= nearest and strength >= mixing["weak_pct"] - 0.3 + HAIR
            if total <= usable + HAIR and strength <= mixing["strong_pct"] + HAIR and weak_enough:
                found.append((water, jug))
    return found


def smallest_bucket_l(body: dict[str, Any]) -> float:
    """Litres in the smallest bucket that may be poured; infinite when none may be."""
    marks = body["bucket"]["water_mark_l"], body["bucket"]["jug_mark_l"]
    sizes = [water * marks[0] + jug * marks[1] for water, jug in allowed_buckets(body)]
    return min(sizes, default=math.inf)


def _whole(amount: float, mark: float) -> bool:
    return abs(amount / mark - round(amount / mark)) < 1e-6


def _near(a: float, b: float) -> bool:
    # Conservation holds to a billionth of the amount.
    return math.isclose(a, b, rel_tol=1e-9, abs_tol=1e-9)
