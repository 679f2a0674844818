"""Small cases against every combination of up to three different buckets there is."""

from itertools import combinations_with_replacement
from typing import Any

from hypothesis import example, given, settings
from hypothesis import strategies as st

from tests.properties.asking import ask
from tests.properties.recipe.plans import HAIR, allowed_buckets, does_harm, outside_pct

# Two results closer than this cannot be told apart (common practice, no source).
SAME_PCT = 0.05
MOST_BUCKETS = 3
MOST_KINDS = 3


@st.composite
def small_questions(draw: st.DrawFn) -> dict[str, Any]:
    """Room for at most three buckets, with marks coarse enough to try everything."""
    usable = draw(st.sampled_from([4.0, 5.0, 8.0]))
    water_mark = draw(st.sampled_from([1.0, 2.0]))
    jug_mark = draw(st.sampled_from([0.1, 0.2, 0.25]))
    room = draw(st.floats(0.5, 2.4 * usable))
    volume = draw(st.floats(1.0, 60.0))
    low = draw(st.floats(3.0, 9.0))
    return {
        "sump": {
            "volume_l": {"value": volume, "u": 1.0},
            "strength_pct": {"value": draw(st.floats(0.0, 15.0)), "u": 0.2},
        },
        "fill_to_l": volume + room,
        "target": {"low_pct": low, "aim_pct": low + 1.0, "high_pct": low + 2.0},
        "mixing": {
            "strong_pct": 20.0,
            "weak_pct": draw(st.sampled_from([0.0, 1.0])),
            "closeness_pct": 0.5,
        },
        "bucket": {"usable_l": usable, "water_mark_l": water_mark, "jug_mark_l": jug_mark},
        "draw_off": {"allowed": False, "mark_l": 1.0},
    }


@st.composite
def coarse_questions(draw: st.DrawFn) -> dict[str, Any]:
    """Marks so coarse that hardly a total lies in the band; room for up to four buckets."""
    usable = draw(st.sampled_from([2.0, 3.0, 4.0]))
    jug_mark = draw(st.sampled_from([0.25, 0.5, 1.0]))
    volume = draw(st.floats(1.0, 60.0))
    low = draw(st.floats(3.0, 9.0))
    high = low + draw(st.sampled_from([0.3, 1.0, 2.0]))
    return {
        "sump": {
            "volume_l": {"value": volume, "u": 1.0},
            "strength_pct": {"value": draw(st.floats(0.0, 12.0)), "u": 0.2},
        },
        "fill_to_l": volume + draw(st.floats(0.5, 3.4 * usable)),
        "target": {"low_pct": low, "aim_pct": (low + high) / 2, "high_pct": high},
        "mixing": {
            "strong_pct": draw(st.sampled_from([20.0, 35.0, 50.0, 100.0])),
            "weak_pct": draw(st.sampled_from([0.0, 1.0, 5.0])),
            "closeness_pct": draw(st.sampled_from([0.1, 0.5])),
        },
        "bucket": {"usable_l": usable, "water_mark_l": 1.0, "jug_mark_l": jug_mark},
        "draw_off": {"allowed": False, "mark_l": 1.0},
    }


def every_result(body: dict[str, Any], most: int = MOST_BUCKETS) -> list[tuple[float, float]]:
    """(litres, per cent) after every set of so many allowed buckets, of three kinds at the most."""
    volume = body["sump"]["volume_l"]["value"]
    held = volume * body["sump"]["strength_pct"]["value"]
    marks = body["bucket"]["water_mark_l"], body["bucket"]["jug_mark_l"]
    sums = {
        (sum(bucket[0] for bucket in chosen), sum(bucket[1] for bucket in chosen))
        for count in range(1, most + 1)
        for chosen in combinations_with_replacement(allowed_buckets(body), count)
        if most <= MOST_KINDS or len(set(chosen)) <= MOST_KINDS
    }
    totals = [
        (volume + water * marks[0] + jug * marks[1], held + 100 * jug * marks[1])
        for water, jug in sums
    ]
    return [(litres, oil / litres) for litres, oil in totals if litres <= body["fill_to_l"] + 1e-9]


# Coarse water marks leave room that no bucket fills: the jug marks have to suit what really fits.
COARSE: dict[str, Any] = {
    "sump": {"volume_l": {"value": 9.0, "u": 1.0}, "strength_pct": {"value": 0.0, "u": 0.2}},
    "fill_to_l": 18.0,
    "target": {"low_pct": 7.25, "aim_pct": 8.25, "high_pct": 9.25},
    "mixing": {"strong_pct": 20.0, "weak_pct": 0.0, "closeness_pct": 0.5},
    "bucket": {"usable_l": 4.0, "water_mark_l": 2.0, "jug_mark_l": 0.1},
    "draw_off": {"allowed": False, "mark_l": 1.0},
}


# Two pails of 1 L and 1.5 L and one of 1 L and 0.5 L make 8.81 %.
HALF_LITRE_JUG: dict[str, Any] = {
    "sump": {"volume_l": {"value": 43.002, "u": 1.0}, "strength_pct": {"value": 2.0, "u": 0.2}},
    "fill_to_l": 50.0,
    "target": {"low_pct": 8.0, "aim_pct": 8.5, "high_pct": 9.0},
    "mixing": {"strong_pct": 100.0, "weak_pct": 5.0, "closeness_pct": 0.1},
    "bucket": {"usable_l": 3.0, "water_mark_l": 1.0, "jug_mark_l": 0.5},
    "draw_off": {"allowed": False, "mark_l": 1.0},
}


@settings(max_examples=60, deadline=None)
@example(COARSE)
@given(small_questions())
def test_no_other_set_of_buckets_is_clearly_better(body: dict[str, Any]) -> None:
    assert missed(body, MOST_BUCKETS) == []


@settings(max_examples=150, deadline=None)
@example(HALF_LITRE_JUG)
@given(coarse_questions())
def test_none_is_clearly_better_with_coarse_marks(body: dict[str, Any]) -> None:
    assert missed(body, 4) == []


def missed(body: dict[str, Any], most: int) -> list[str]:
    """In what some set of so many buckets, that fills the room, is clearly better than the plan.

    Sets that lead further from the band than doing nothing would, or past it, do not count.
    """
    plan = ask("plan_recipe", body)
    target, closeness = body["target"], body["mixing"]["closeness_pct"]
    least_l = body["fill_to_l"] - body["bucket"]["water_mark_l"] - body["bucket"]["jug_mark_l"]

    def excess(strength: float) -> float:
        return max(0.0, abs(strength - target["aim_pct"]) - closeness)

    def outside(strength: float) -> float:
        return outside_pct(body, strength)

    full = [
        strength
        for litres, strength in every_result(body, most)
        if litres >= least_l - HAIR and not does_harm(body, strength)
    ]
    if not full:
        return []
    got = plan["final"]["strength_pct"]["value"]
    laws = {
        "filled": plan["final"]["volume_l"] >= least_l - HAIR,
        "near the band": outside(got) <= min(map(outside, full)) + 2 * SAME_PCT,
        "near the aim": excess(got) <= min(map(excess, full)) + 2 * SAME_PCT,
        "in the band": plan["verdict"] != "out_of_band" or min(map(outside, full)) > 0,
    }
    return [name for name, holds in laws.items() if not holds]
