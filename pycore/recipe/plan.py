"""The recipe: from a question to the main plan and the other ways."""

from __future__ import annotations

from dataclasses import replace

from pycore.recipe.band import outside_pct
from pycore.recipe.bulk import carried_by
from pycore.recipe.carrier import by_own_fluid
from pycore.recipe.choice import CLEARLY_PCT
from pycore.recipe.draw_off import filled, least_draw_off, worth_taking_out_l
from pycore.recipe.outcome import Alternative, Plan, alternative
from pycore.recipe.request import (
    PlanRequest,
    measured_by,
    refuse_contradicting_options,
    refuse_contradictions,
    whole_circuit,
)
from pycore.recipe.stock import affordable, fill_less, filled_to_edge, missing, within_stock
from pycore.recipe.ways import offered, other_ways


def _when_short(ask: PlanRequest, plan: Plan, at_hand: Plan) -> list[Alternative]:
    """The recipe that the stock does not allow stays visible: it says what to fetch."""
    is_concentrate = "stock_short" in missing(ask, plan.totals)
    edge = filled_to_edge(ask, at_hand)
    less = fill_less(ask) if is_concentrate else None
    ways = [alternative("fetch_concentrate" if is_concentrate else "fetch_water", plan)]
    if edge is not None:
        ways.append(alternative("fill_to_edge", edge))
    if less is not None and less.final.volume_l <= at_hand.final.volume_l:
        ways.append(alternative("fill_less", less))
    return ways


def plan_recipe(ask: PlanRequest) -> Plan:
    """The buckets that bring a sump to its target without passing the mark that is filled to.

    Parameters
    ----------
    ask : PlanRequest
        Litres and per cent by volume; ranges in ``shared/schema/check/plan_recipe.schema.json``.

    Returns
    -------
    Plan
        Whole marks only. The room is filled to within one water mark and one jug mark. Inside
        that, the plan nearest to the aim; among plans that no refractometer tells apart, the
        one with the fewest different buckets, then the fewest buckets, then the nearest.
        Coolant is taken out only where that is allowed and the band cannot be reached without, and
        its own coolant carries the concentrate where that is allowed and takes out less. No bucket
        is heavier than what a person set, where the target can be reached so.
        The other ways stand in ``alternatives``, each complete.

    Errors: ``order`` and ``mark_above_bucket`` for settings that contradict each other. A target
    that cannot be reached is no error: the nearest reachable value comes with the verdict
    ``out_of_band``.
    """
    refuse_contradictions(ask.target, ask.mixing, ask.bucket, ask.pail)
    refuse_contradicting_options(ask)
    ask = measured_by(whole_circuit(ask))
    light = carried_by(ask)
    plan = _planned(light)
    if light is ask or _is_best(plan):
        return plan
    # What is light enough misses the target: better with a second person than not at all.
    heavy = _planned(ask)
    return heavy if _is_worth_two(ask, heavy, plan) else plan


def _is_best(plan: Plan) -> bool:
    """Whether no other plan is worth a second person: in the band, nothing taken out, filled up."""
    return plan.verdict != "out_of_band" and plan.draw_off_l == 0 and not _is_low(plan)


def _is_worth_two(ask: PlanRequest, heavy: Plan, light: Plan) -> bool:
    """Whether buckets that two carry come nearer to the band, spare coolant or fill higher.

    A little more may be taken out for light ones, as for fuller ones, but never some for nothing.
    """
    is_missed = light.verdict == "out_of_band"
    if is_missed is not (heavy.verdict == "out_of_band"):
        return is_missed
    # Inside the band both are at 0.
    near, far = (outside_pct(ask, each.final.strength_pct.value) for each in (heavy, light))
    if abs(far - near) > CLEARLY_PCT:
        return near < far
    if light.draw_off_l > worth_taking_out_l(ask, heavy.draw_off_l):
        return True
    is_less = light.draw_off_l < heavy.draw_off_l
    return not is_less and _is_low(light) and not _is_low(heavy)


def _is_low(plan: Plan) -> bool:
    return "not_filled_up" in plan.cautions


def _planned(ask: PlanRequest) -> Plan:
    plan = filled(ask)
    if plan.verdict == "out_of_band" and ask.draw_off.allowed:
        plan = _least_waste(ask) or plan
    at_hand = within_stock(ask, plan)
    ways = affordable(ask, other_ways(ask, plan))
    if at_hand is not plan:
        ways = [*_when_short(ask, plan, at_hand), *ways]
    return replace(at_hand, alternatives=offered(at_hand, ways))


def _least_waste(ask: PlanRequest) -> Plan | None:
    """What reaches the band with the least taken out: fresh mix in its place, or own coolant.

    Own coolant that carries the concentrate has to spare a whole bucket of what is taken out, or
    be no more walks. Waiting for room spares all of it, and leaves the sump lean until then: that
    stays another way, as does the room above the full mark.
    """
    drawn, own = least_draw_off(ask), by_own_fluid(ask)
    if own is None or own.verdict == "out_of_band":
        return drawn
    if drawn is None:
        return own
    spared_l = drawn.draw_off_l - own.draw_off_l
    is_less = spared_l >= ask.bucket.usable_l or (
        spared_l > 0 and _walks(ask, own) <= _walks(ask, drawn)
    )
    return own if is_less else drawn


def _walks(ask: PlanRequest, plan: Plan) -> float:
    """Buckets carried to the sump and from it."""
    return plan.totals.buckets + plan.draw_off_l / ask.bucket.usable_l
