"""Taking coolant out first, where the target cannot be reached in the room that is left."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace
from itertools import islice, takewhile

from pycore.recipe.band import inside_pct
from pycore.recipe.choice import SAME_PCT, is_much_more
from pycore.recipe.harm import does_harm, harmless_pours, lower_cautions
from pycore.recipe.marks import Pours, Space, ceil_marks, limits_of
from pycore.recipe.outcome import Plan, bucket_pours, drawn, made
from pycore.recipe.outlook import reach_pct
from pycore.recipe.pours import Pour
from pycore.recipe.request import PlanRequest, Target
from pycore.recipe.search import best_pours
from pycore.recipe.totals import may_end_between

# Marks beyond the closed form are tried, since buckets come in whole marks too: at least so many,
# over four bucket marks and a whole bucket of litres, and never more than the most; finer marks are
# then skipped. Over one more bucket the last one takes every size, also above a high first mark.
_LEAST_TRIES = 12
_MOST_TRIES = 96

# Of so many plans that land near enough to the aim the nearest is taken; each more takes out more,
# and pails and jugs as they are marked differ by about so many steps.
_MORE_LANDINGS = 6
# Fuller or lighter buckets are worth so much more taken out, or one bucket: common practice, no
# source.
_WORTH_SHARE = 0.05

# How often it is asked for what the marks left open: with three, every one of 1,500 random sumps
# lands within 0.1 points, with one 34 do not.
_MORE_ROUNDS = 3


def filling(ask: PlanRequest) -> list[Pour]:
    """The best buckets for the question that do no harm, with nothing taken out."""
    return _harmless(ask)[0]


def filled(ask: PlanRequest) -> Plan:
    """The plan of these buckets; it says so where they leave room open that could be filled."""
    pours, is_up = _harmless(ask)
    plan = made(ask, pours)
    return plan if is_up else replace(plan, cautions=lower_cautions(ask, plan.cautions))


def _harmless(ask: PlanRequest) -> tuple[list[Pour], bool]:
    space = Space.of(ask)
    best = _best(space)
    is_up = not does_harm(ask, space.strength_pct(best))
    return bucket_pours(space, best if is_up else harmless_pours(space).pours), is_up


def filled_up(ask: PlanRequest) -> Plan:
    """The best buckets that fill the room, even where that leads away from the band."""
    space = Space.of(ask)
    return made(ask, bucket_pours(space, _best(space)))


def _best(space: Space) -> Pours:
    return best_pours(space).pours if space.can_pour() else ()


def drainable_l(ask: PlanRequest) -> float:
    """Litres that can be taken out at all."""
    volume_l, most_l = ask.sump.volume_l.value, ask.draw_off.most_l
    return volume_l if most_l is None else min(volume_l, most_l)


def taken_out_l(ask: PlanRequest, needed_l: float) -> float:
    """At least so many litres in whole marks of the vessel; 0 where nothing has to come out.

    The pail takes it too: below its first mark it shows nothing.
    """
    if needed_l <= 0:
        return 0.0
    return (
        max(1, ceil_marks(needed_l / ask.draw_off.mark_l), _first_taken(ask)) * ask.draw_off.mark_l
    )


def _first_taken(ask: PlanRequest) -> int:
    """Marks of the vessel up to the first one that the pail shows."""
    first_l = (ask.pail and ask.pail.first_mark_l) or 0.0
    return ceil_marks(first_l / ask.draw_off.mark_l)


def _needed_l(ask: PlanRequest, wanted_pct: float, *, full: bool) -> float | None:
    """Litres to take out so that filling up with the richest or leanest bucket gives wanted_pct.

    With ``full`` that is the richest or leanest of the full buckets. None when that bucket is as
    strong as the sump. Solves (V − x)·C + (F − V + x)·m = F·wanted for
    x, F the mark that is filled to and m the strength of the bucket. One that leads away from
    wanted_pct gives 0, and no result then lies near it.
    """
    sump, limits = ask.sump, limits_of(ask.mixing, ask.bucket, ask.pail)
    volume_l, strength = sump.volume_l.value, sump.strength_pct.value
    strengths_pct = limits.full_strengths_pct if full else limits.strengths_pct
    fill_pct = strengths_pct[1 if strength < wanted_pct else 0]
    gain = fill_pct - strength
    if gain == 0:
        return None
    missing = ask.fill_to_l * (wanted_pct - fill_pct) + volume_l * gain
    return max(0.0, missing / gain)


def _landings(
    ask: PlanRequest,
    wanted_pct: float,
    low_pct: float,
    high_pct: float,
    close_pct: float,
    *,
    full: bool = False,
) -> Iterator[Plan]:
    """Plans whose result lies from low to high, the fewest marks taken out first.

    close_pct is how near to the aim the buckets are searched for. With ``full`` so much comes out
    that full buckets will do.
    """
    needed_l = _needed_l(ask, wanted_pct, full=full)
    if needed_l is None:
        return
    mark_l, bucket = ask.draw_off.mark_l, ask.bucket
    fewest = max(ceil_marks(needed_l / mark_l), _first_taken(ask), 1)
    marks_l = 4 * (bucket.water_mark_l + bucket.jug_mark_l)
    tries = max(_LEAST_TRIES, ceil_marks(max(marks_l, bucket.usable_l) / mark_l))
    # Searched for inside these limits, so that no easier set of buckets outside them is taken.
    inside = replace(
        ask,
        target=Target(low_pct, ask.target.aim_pct, high_pct),
        mixing=replace(ask.mixing, closeness_pct=close_pct),
    )
    for marks in range(fewest, fewest + tries, -(-tries // _MOST_TRIES)):
        if marks * mark_l > drainable_l(ask):
            return
        space = Space.of(drawn(inside, marks * mark_l))
        if not may_end_between(space, low_pct, high_pct):
            continue
        groups = _best(space)
        if low_pct - 1e-9 <= space.strength_pct(groups) <= high_pct + 1e-9:
            yield made(ask, bucket_pours(space, groups), marks * mark_l)


def drawn_to(ask: PlanRequest, wanted_pct: float, low_pct: float, high_pct: float) -> Plan | None:
    """The plan with the fewest marks taken out whose result lies from low to high.

    A little more comes out where the buckets are fuller for it and one in five and one is spared:
    marks may make a low bucket the weakest or the strongest of all. None when taking out all that
    can be does not do it.
    """
    close_pct = ask.mixing.closeness_pct
    least = next(_landings(ask, wanted_pct, low_pct, high_pct, close_pct), None)
    if least is None or not _is_in_low_buckets(ask, least):
        return least
    most_l = worth_taking_out_l(ask, least.draw_off_l)
    fuller = _landings(ask, wanted_pct, low_pct, high_pct, close_pct, full=True)
    worth = takewhile(lambda plan: plan.draw_off_l <= most_l, fuller)
    fewer = (p for p in worth if is_much_more(least.totals.buckets, p.totals.buckets))
    return next(fewer, least)


def worth_taking_out_l(ask: PlanRequest, least_l: float) -> float:
    """The most that may come out for buckets that are easier to carry, where least_l would do.

    One bucket or a twentieth more; nothing where nothing has to come out.
    """
    return least_l + max(ask.bucket.usable_l, _WORTH_SHARE * least_l) if least_l > 0 else 0.0


def _is_in_low_buckets(ask: PlanRequest, plan: Plan) -> bool:
    """Whether full buckets would be far fewer."""
    poured_l = plan.totals.water_l + plan.totals.concentrate_l
    return is_much_more(plan.totals.buckets, ceil_marks(poured_l / ask.bucket.usable_l))


def least_draw_off(ask: PlanRequest) -> Plan | None:
    """The least that has to come out so that the result lies well inside the band.

    None when the band can be reached without, or not at all.
    """
    reach_low, reach_high = reach_pct(Space.of(ask))
    target = ask.target
    if reach_high >= target.low_pct and reach_low <= target.high_pct:
        return None
    low, high = inside_pct(ask)
    # On the far side the band itself is limit enough: a wide closeness would leave nothing.
    if reach_high < target.low_pct:
        return drawn_to(ask, low, low, target.high_pct)
    return drawn_to(ask, high, target.low_pct, high)


def draw_off_to_aim(ask: PlanRequest) -> Plan | None:
    """What has to come out so that the result lands on the aim; None when nothing does.

    As near as marks allow with the fewest taken out that land near enough, or a few more.
    """
    aim, wanted = ask.target.aim_pct, ask.target.aim_pct
    nearest, off_pct = None, math.inf
    for _ in range(_MORE_ROUNDS):
        found = _nearest_landing(ask, wanted)
        if found is None or abs(found.final.strength_pct.value - aim) >= abs(off_pct):
            break
        nearest, off_pct = found, found.final.strength_pct.value - aim
        if abs(off_pct) <= SAME_PCT:
            break
        # Marks make the mix weaker or stronger than its limit; so much further off it is asked.
        wanted -= off_pct
    return nearest


def _nearest_landing(ask: PlanRequest, wanted_pct: float) -> Plan | None:
    """The nearest to the aim of the first few plans that are near enough to it."""
    aim, close = ask.target.aim_pct, ask.mixing.closeness_pct
    low, high = max(ask.target.low_pct, aim - close), min(ask.target.high_pct, aim + close)
    nearest, nearest_pct = None, math.inf
    for plan in islice(_landings(ask, wanted_pct, low, high, SAME_PCT), _MORE_LANDINGS):
        away_pct = abs(plan.final.strength_pct.value - aim)
        if away_pct < nearest_pct:
            nearest, nearest_pct = plan, away_pct
        if nearest_pct <= SAME_PCT:
            break
    return nearest
