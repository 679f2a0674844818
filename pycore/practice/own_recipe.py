"""A recipe that a person worked out: where it ends, and whether it is as good as ours."""

from __future__ import annotations

import math
from dataclasses import dataclass

from pycore.practice.figures import Figures
from pycore.practice.judged import slip_of
from pycore.recipe.balance import mix_strength_pct
from pycore.recipe.marks import WEAK_ROUNDING_PCT
from pycore.recipe.outcome import Plan, made
from pycore.recipe.pours import Pour, Totals
from pycore.recipe.request import PlanRequest

# Room for the last digit of a float where marks are added up.
_HAIR = 1e-9
_RANKS = ("on_target", "in_band", "out_of_band")
# Faults that cost nothing but litres; all others would do harm or cannot be measured.
_MILD = {"room_left", "too_much_out"}


@dataclass(frozen=True)
class OwnRecipe:
    """good: as good as ours; works: ends in the band; off: with the faults and the likely slip.

    over_l is what stands above the mark, left_l what still fits below it.
    """

    plan: Plan
    standing: str
    faults: list[str]
    over_l: float
    left_l: float
    slip: str | None


def _is_whole(amount_l: float, mark_l: float) -> bool:
    marks = amount_l / mark_l
    return math.isclose(marks, round(marks), abs_tol=1e-6)


def _of_bucket(ask: PlanRequest, pour: Pour) -> set[str]:
    bucket, mixing = ask.bucket, ask.mixing
    strength_pct = mix_strength_pct(pour.water_l, pour.concentrate_l)
    found = {
        "not_whole_marks": not _is_whole(pour.water_l, bucket.water_mark_l)
        or not _is_whole(pour.concentrate_l, bucket.jug_mark_l),
        "bucket_overfull": pour.water_l + pour.concentrate_l > bucket.usable_l + _HAIR,
        "too_strong": strength_pct > mixing.strong_pct + _HAIR,
        "too_weak": strength_pct < mixing.weak_pct - WEAK_ROUNDING_PCT - _HAIR,
    }
    return {code for code, holds in found.items() if holds}


def _slips(ask: PlanRequest, true: Figures, totals: Totals) -> tuple[dict[str, float], float]:
    """Concentrate in L that each slip puts into these buckets, by its code, and the right one."""
    total_l = totals.water_l + totals.concentrate_l
    needed_pct = true.top_up_pct
    wanted_pct = ask.mixing.strong_pct if needed_pct is None else needed_pct
    wanted_pct = min(max(wanted_pct, ask.mixing.weak_pct), ask.mixing.strong_pct)
    right_l = wanted_pct * total_l / 100
    shortfall_pct = true.aim_pct - true.strength_pct
    return {
        "of_water": total_l * wanted_pct / (100 + wanted_pct),
        "aim_as_top_up": true.aim_pct * total_l / 100,
        "shortfall_as_top_up": shortfall_pct * total_l / 100,
        "sump_only": shortfall_pct * true.volume_l / 100,
        "sump_forgotten": true.aim_pct * true.full_volume_l / 100,
        "ten_times": 10 * right_l,
        "a_tenth": right_l / 10,
    }, right_l


def _slip(ask: PlanRequest, true: Figures, theirs: Totals, ours: Totals) -> str | None:
    """The slip behind the strength of these buckets; none where they are as strong as ours."""
    mark_l = ask.bucket.jug_mark_l
    mix_pct, our_pct = (mix_strength_pct(of.water_l, of.concentrate_l) for of in (theirs, ours))
    if abs(mix_pct - our_pct) <= 100 * mark_l / ask.bucket.usable_l:
        return None
    slips, right_l = _slips(ask, true, theirs)
    # Each bucket is rounded to a mark of the jug.
    return slip_of(theirs.concentrate_l, slips, right_l, mark_l * theirs.buckets / 2)


def _standing(faults: set[str], verdict: str, ours: str) -> str:
    misses = verdict == "out_of_band" and ours != "out_of_band"
    if misses or faults - _MILD:
        return "off"
    return "works" if faults or _RANKS.index(verdict) > _RANKS.index(ours) else "good"


def judge_recipe(
    ask: PlanRequest,
    plan: Plan,
    true: Figures,
    pours: list[Pour],
    take_out_l: float,
    allowed_l: float,
) -> OwnRecipe:
    """A person's buckets beside the plan for the same question.

    allowed_l is what the stick cannot tell apart: so much above the mark is no fault. A recipe is
    judged by where it ends, not by whether its buckets are ours.
    """
    theirs = made(ask, pours, take_out_l)
    stands_l = ask.sump.volume_l.value - take_out_l + theirs.totals.water_l
    left_l = ask.fill_to_l - stands_l - theirs.totals.concentrate_l
    marks_l = ask.bucket.water_mark_l + ask.bucket.jug_mark_l
    ours_left_l = ask.fill_to_l - plan.final.volume_l
    most_out_l = max(true.take_out_l or 0.0, plan.draw_off_l) + ask.draw_off.mark_l
    found = {
        "above_mark": -left_l > allowed_l + _HAIR,
        "room_left": left_l > max(ask.bucket.usable_l, ours_left_l + marks_l) + _HAIR,
        "too_much_out": take_out_l > most_out_l + _HAIR,
    }
    faults = {code for code, holds in found.items() if holds}
    faults = faults.union(*(_of_bucket(ask, pour) for pour in pours))
    standing = _standing(faults, theirs.verdict, plan.verdict)
    slip = None if standing == "good" else _slip(ask, true, theirs.totals, plan.totals)
    return OwnRecipe(theirs, standing, sorted(faults), max(0.0, -left_l), max(0.0, left_l), slip)
