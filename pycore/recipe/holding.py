"""A dip without a reading: fill up at the usual strength, and read as soon as possible."""

from __future__ import annotations

from dataclasses import dataclass, replace

from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured
from pycore.recipe.balance import state_after
from pycore.recipe.marks import Space
from pycore.recipe.outcome import bucket_pours
from pycore.recipe.outlook import has_water_first
from pycore.recipe.pours import Pour, Step, Totals, steps_for, totals_of
from pycore.recipe.request import (
    Bucket,
    DrawOff,
    Mixing,
    Pail,
    PlanRequest,
    SumpState,
    Target,
    refuse_contradicting_options,
    refuse_contradictions,
)
from pycore.recipe.search import best_pours


@dataclass(frozen=True)
class LastReading:
    """The last strength that was read, how many days ago, and how far it can move in a day."""

    strength_pct: Measured
    age_d: float
    drift_pct_d: float


@dataclass(frozen=True)
class HoldingRequest:
    """One question for a top-up without a reading; usual_pct is this machine's usual top-up."""

    volume_l: Measured
    fill_to_l: float
    usual_pct: float
    target: Target
    mixing: Mixing
    bucket: Bucket
    last: LastReading | None = None
    pail: Pail | None = None


@dataclass(frozen=True)
class Ends:
    """Worst-case ends of the strength after the top-up."""

    low_pct: float
    high_pct: float


@dataclass(frozen=True)
class Holding:
    """The holding top-up; ends only where a last reading is known."""

    pours: list[Pour]
    steps: list[Step]
    totals: Totals
    volume_l: float
    cautions: list[str]
    ends: Ends | None = None


def _ends(ask: HoldingRequest, pours: list[Pour]) -> Ends | None:
    last = ask.last
    if last is None:
        return None
    away = 2 * last.strength_pct.u + last.age_d * last.drift_pct_d
    amounts = [(pour.count, pour.water_l, pour.concentrate_l) for pour in pours]
    lowest = max(0.0, last.strength_pct.value - away)
    after = [
        state_after(ask.volume_l.value, strength, amounts)[1]
        for strength in (lowest, last.strength_pct.value + away)
    ]
    return Ends(after[0], after[1])


def even_request(ask: HoldingRequest) -> PlanRequest:
    """The question whose answer is buckets at the usual strength, and nothing else.

    A sump that holds the usual strength already, with the usual strength as its aim, stays where
    it is at that strength only.
    """
    usual = ask.usual_pct
    return PlanRequest(
        sump=SumpState(ask.volume_l, Measured(usual, 0.0)),
        fill_to_l=ask.fill_to_l,
        target=Target(usual, usual, usual),
        mixing=replace(ask.mixing, closeness_pct=min(ask.mixing.closeness_pct, 0.2)),
        bucket=ask.bucket,
        draw_off=DrawOff(allowed=False, mark_l=ask.bucket.water_mark_l),
        pail=ask.pail,
    )


def plan_holding(ask: HoldingRequest) -> Holding:
    """Buckets at the usual top-up strength up to the mark, and how far off the sump may be.

    Parameters
    ----------
    ask : HoldingRequest
        Litres, per cent by volume, days. usual_pct must lie between weakest and strongest mix.

    The worst-case ends are the last strength, two standard uncertainties and the drift of its
    age away on either side, mixed with what is poured. Errors: as of ``plan_recipe``, and ``order``
    for a usual strength that this fluid may not be mixed at.
    """
    refuse_contradictions(ask.target, ask.mixing, ask.bucket)
    usual = ask.usual_pct
    if not ask.mixing.weak_pct <= usual <= ask.mixing.strong_pct:
        limit = {"minimum": ask.mixing.weak_pct, "maximum": ask.mixing.strong_pct, "unit": "%"}
        raise Fault("order", "usual_pct", usual, limit)
    even = even_request(ask)
    refuse_contradicting_options(even)
    space = Space.of(even)
    pours = bucket_pours(space, best_pours(space).pours) if space.can_pour() else []
    ends = _ends(ask, pours)
    said = {
        "reading_open": True,
        "gloves_and_eyes": any(pour.concentrate_l > 0 for pour in pours),
        "water_first": has_water_first(pours),
        "may_be_out_of_band": ends is None
        or ends.low_pct < ask.target.low_pct
        or ends.high_pct > ask.target.high_pct,
        "nothing_to_pour": not pours,
    }
    totals = totals_of(pours)
    return Holding(
        pours=pours,
        steps=steps_for(0.0, pours) or [Step("read_again")],
        totals=totals,
        volume_l=ask.volume_l.value + totals.water_l + totals.concentrate_l,
        cautions=[code for code, holds in said.items() if holds],
        ends=ends,
    )
