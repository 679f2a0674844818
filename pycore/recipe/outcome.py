"""A whole plan from its pours: verdict, expected result, uncertainty and cautions."""

from __future__ import annotations

from dataclasses import dataclass

from pycore.recipe.balance import state_after
from pycore.recipe.marks import Pours, Space
from pycore.recipe.outlook import (
    NEW_CHARGE_SHARE,
    Final,
    Share,
    cautions,
    final_state,
    reach_pct,
)
from pycore.recipe.pours import Pour, Step, Totals, steps_for, totals_of
from pycore.recipe.request import PlanRequest, with_sump

# What rinsing leaves behind is no coolant any more: common practice, no source.
RINSE_PCT = 1.0

# Room for the last digit of a float when a result lies on an edge of the band.
_HAIR_PCT = 1e-9


@dataclass(frozen=True)
class Reach:
    """Weakest and strongest result that the room left allows."""

    low_pct: float
    high_pct: float


@dataclass(frozen=True)
class Wait:
    """What has to happen first where waiting is the way: a level, a strength, or days."""

    level_l: float | None = None
    strength_pct: float | None = None
    time_d: float | None = None


@dataclass(frozen=True)
class Plan:
    """A recipe with its verdict: on_target, in_band or out_of_band."""

    verdict: str
    case: str
    draw_off_l: float
    pours: list[Pour]
    steps: list[Step]
    totals: Totals
    final: Final
    reachable: Reach
    shares: list[Share]
    cautions: list[str]
    alternatives: list[Alternative]


@dataclass(frozen=True)
class Alternative:
    """Another complete way, with the reason why one would take it."""

    why: str
    verdict: str
    draw_off_l: float
    pours: list[Pour]
    steps: list[Step]
    totals: Totals
    final: Final
    shares: list[Share]
    cautions: list[str]
    wait: Wait | None = None


def verdict_of(ask: PlanRequest, volume_l: float, strength_pct: float) -> str:
    """on_target, in_band or out_of_band for a result; half a jug mark is near enough too."""
    target = ask.target
    if not target.low_pct - _HAIR_PCT <= strength_pct <= target.high_pct + _HAIR_PCT:
        return "out_of_band"
    half_mark_pct = 50 * ask.bucket.jug_mark_l / volume_l if volume_l > 0 else 0.0
    near = max(ask.mixing.closeness_pct, half_mark_pct) + _HAIR_PCT
    return "on_target" if abs(strength_pct - target.aim_pct) <= near else "in_band"


def case_of(ask: PlanRequest, has_room: bool) -> str:
    """Where the sump stands: lean, in range or rich, with room or full, almost empty or emptied."""
    target, strength = ask.target, ask.sump.strength_pct.value
    if has_room and ask.sump.volume_l.value < NEW_CHARGE_SHARE * ask.fill_to_l:
        return "emptied" if strength < RINSE_PCT else "new_charge"
    level = "low" if has_room else "full"
    if strength < target.low_pct:
        return f"lean_{level}"
    return f"rich_{level}" if strength > target.high_pct else f"in_range_{level}"


def bucket_pours(space: Space, groups: Pours) -> list[Pour]:
    """Groups of marks as pours in litres."""
    return [Pour(count, water_l, conc_l) for count, water_l, conc_l in space.amounts(groups)]


def drawn(ask: PlanRequest, draw_off_l: float) -> PlanRequest:
    """The question after so much has been taken out at the sump's own strength."""
    if draw_off_l == 0:
        return ask
    return with_sump(ask, ask.sump.volume_l.value - draw_off_l, ask.sump.strength_pct.value)


def made(
    ask: PlanRequest,
    pours: list[Pour],
    draw_off_l: float = 0.0,
    steps: list[Step] | None = None,
    run_in_l: tuple[float, float] = (0.0, 0.0),
) -> Plan:
    """A whole plan from its pours: result, uncertainty, verdict and cautions; no alternatives."""
    left = drawn(ask, draw_off_l)
    space = Space.of(left)
    totals = totals_of(pours, run_in_l)
    amounts = [(pour.count, pour.water_l, pour.concentrate_l) for pour in pours]
    final, parts = final_state(left, totals.water_l, totals.concentrate_l)
    volume_l, strength_pct = state_after(
        left.sump.volume_l.value,
        left.sump.strength_pct.value,
        [*amounts, (1, *run_in_l)],
    )
    verdict = verdict_of(ask, volume_l, strength_pct)
    return Plan(
        verdict=verdict,
        case=case_of(ask, Space.of(ask).has_room()),
        draw_off_l=draw_off_l,
        pours=pours,
        steps=steps_for(draw_off_l, pours, ask.run_min) if steps is None else steps,
        totals=totals,
        final=final,
        reachable=Reach(*reach_pct(space)),
        shares=parts,
        cautions=cautions(space, verdict, pours, totals, draw_off_l, final, parts),
        alternatives=[],
    )


def alternative(why: str, plan: Plan, wait: Wait | None = None) -> Alternative:
    """A plan as another way, with its reason."""
    return Alternative(
        why,
        plan.verdict,
        plan.draw_off_l,
        plan.pours,
        plan.steps,
        plan.totals,
        plan.final,
        plan.shares,
        plan.cautions,
        wait,
    )
