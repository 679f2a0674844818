"""The recipe: from a question to the main plan and the other ways."""

from __future__ import annotations

from dataclasses import replace

from pycore.recipe.draw_off import filled, least_draw_off
from pycore.recipe.outcome import Alternative, Plan, alternative
from pycore.recipe.request import (
    PlanRequest,
    measured_by,
    refuse_contradicting_options,
    refuse_contradictions,
    whole_circuit,
)
from pycore.recipe.stock import affordable, fill_less, missing, within_stock
from pycore.recipe.ways import offered, other_ways


def _when_short(ask: PlanRequest, plan: Plan) -> list[Alternative]:
    """The recipe that the stock does not allow stays visible: it says what to fetch."""
    short = missing(ask, plan.totals)
    fetch = "fetch_concentrate" if "stock_short" in short else "fetch_water"
    less = fill_less(ask) if "stock_short" in short else None
    ways = [alternative(fetch, plan)]
    if less is not None:
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
        Coolant is taken out only where that is allowed and the band cannot be reached without.
        The other ways stand in ``alternatives``, each complete.

    Errors: ``order`` and ``mark_above_bucket`` for settings that contradict each other. A target
    that cannot be reached is no error: the nearest reachable value comes with the verdict
    ``out_of_band``.
    """
    refuse_contradictions(ask.target, ask.mixing, ask.bucket, ask.pail)
    refuse_contradicting_options(ask)
    ask = measured_by(whole_circuit(ask))
    plan = filled(ask)
    if plan.verdict == "out_of_band" and ask.draw_off.allowed:
        plan = least_draw_off(ask) or plan
    at_hand = within_stock(ask, plan)
    ways = affordable(ask, other_ways(ask, plan))
    if at_hand is not plan:
        ways = [*_when_short(ask, plan), *ways]
    return replace(at_hand, alternatives=offered(at_hand, ways))
