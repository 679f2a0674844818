"""The recipe: from a question to buckets, verdict, expected result and cautions."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

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
from pycore.recipe.request import PlanRequest, refuse_contradictions
from pycore.recipe.search import best_pours

# Time for the pump to mix what was poured: common practice, no source.
MIX_MINUTES = 30.0

# Room for the last digit of a float when a result lies on an edge of the band.
_HAIR_PCT = 1e-9


@dataclass(frozen=True)
class Pour:
    """So many buckets, each with this water and this concentrate in litres."""

    count: int
    water_l: float
    concentrate_l: float


@dataclass(frozen=True)
class Step:
    """One step of the walk: pour a kind of bucket, run the pump, read again."""

    kind: str
    pour: int | None = None
    minutes: float | None = None


@dataclass(frozen=True)
class Totals:
    """Everything that is carried."""

    buckets: int
    water_l: float
    concentrate_l: float


@dataclass(frozen=True)
class Reach:
    """Weakest and strongest result that the room left allows."""

    low_pct: float
    high_pct: float


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
    alternatives: list[dict[str, Any]]


def _case(ask: PlanRequest, can_pour: bool) -> str:
    target, strength = ask.target, ask.sump.strength_pct.value
    if can_pour and ask.sump.volume_l.value < NEW_CHARGE_SHARE * ask.fill_to_l:
        return "new_charge"
    level = "low" if can_pour else "full"
    if strength < target.low_pct:
        return f"lean_{level}"
    return f"rich_{level}" if strength > target.high_pct else f"in_range_{level}"


def _verdict(ask: PlanRequest, volume_l: float, strength_pct: float) -> str:
    target = ask.target
    if not target.low_pct - _HAIR_PCT <= strength_pct <= target.high_pct + _HAIR_PCT:
        return "out_of_band"
    half_mark_pct = 50 * ask.bucket.jug_mark_l / volume_l if volume_l > 0 else 0.0
    near = max(ask.mixing.closeness_pct, half_mark_pct) + _HAIR_PCT
    return "on_target" if abs(strength_pct - target.aim_pct) <= near else "in_band"


def _steps(pours: list[Pour]) -> list[Step]:
    if not pours:
        return []
    walk = [Step("bucket", pour=i) for i in range(len(pours))]
    return [*walk, Step("run", minutes=MIX_MINUTES), Step("read_again")]


def _can_pour(space: Space) -> bool:
    """Whether the smallest bucket that may be poured still fits."""
    waters = space.water_range(0.0, space.room_l) if space.room_l > 0 else range(0)
    ranges = [space.jug_range(water, 0.0, space.room_l) for water in waters]
    return any(low <= high for low, high in ranges)


def plan_recipe(ask: PlanRequest) -> Plan:
    """The buckets that bring a sump to its target without passing the mark that is filled to.

    Parameters
    ----------
    ask : PlanRequest
        Litres and per cent by volume; see ``shared/schema/plan_recipe.schema.json`` for ranges.

    Returns
    -------
    Plan
        Whole marks only. The room is filled to within one water mark and one jug mark. Inside
        that, the plan nearest to the aim; among plans that no refractometer tells apart, the
        one with the fewest different buckets, then the fewest buckets, then the nearest.

    Errors: ``order`` and ``mark_above_bucket`` for settings that contradict each other. A target
    that cannot be reached is no error: the nearest reachable value comes with the verdict
    ``out_of_band``.
    """
    refuse_contradictions(ask.target, ask.mixing, ask.bucket)
    room_l = ask.fill_to_l - ask.sump.volume_l.value
    mark_l = ask.bucket.water_mark_l + ask.bucket.jug_mark_l
    space = Space(ask, room_l, room_l - mark_l)
    can_pour = _can_pour(space)
    chosen: Pours = best_pours(space).pours if can_pour else ()
    amounts = space.amounts(chosen)
    pours = [Pour(count, water_l, concentrate_l) for count, water_l, concentrate_l in amounts]
    totals = Totals(
        sum(pour.count for pour in pours),
        sum(pour.count * pour.water_l for pour in pours),
        sum(pour.count * pour.concentrate_l for pour in pours),
    )
    final, parts = final_state(ask, totals.water_l, totals.concentrate_l)
    volume_l, strength_pct = state_after(
        ask.sump.volume_l.value, ask.sump.strength_pct.value, amounts
    )
    verdict = _verdict(ask, volume_l, strength_pct)
    return Plan(
        verdict=verdict,
        case=_case(ask, can_pour),
        draw_off_l=0.0,
        pours=pours,
        steps=_steps(pours),
        totals=totals,
        final=final,
        reachable=Reach(*reach_pct(space)),
        shares=parts,
        cautions=cautions(space, verdict, amounts, final, parts),
        alternatives=[],
    )
