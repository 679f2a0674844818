"""A dip without a reading: fill up at the usual strength, and read as soon as possible."""

from __future__ import annotations

from dataclasses import dataclass

from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured
from pycore.recipe.balance import mix_strength_pct, state_after
from pycore.recipe.marks import Space
from pycore.recipe.outcome import bucket_pours
from pycore.recipe.outlook import has_water_first, may_overfill
from pycore.recipe.pours import Pour, Step, Totals, steps_for, totals_of
from pycore.recipe.request import (
    Bucket,
    DrawOff,
    Mixing,
    Pail,
    PlanRequest,
    SumpState,
    Target,
    measured_by,
    refuse_contradicting_options,
    refuse_contradictions,
)
from pycore.recipe.search import best_pours

# A mix so far from the usual one moves the sump by half a point where it fills a quarter of it,
# which is the most that a top-up should be off unread: common practice, no source.
_NEAR_USUAL_PCT = 2.0


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
    mix_min: int | None = None
    level_u_l: float | None = None


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
    even = PlanRequest(
        sump=SumpState(ask.volume_l, Measured(usual, 0.0)),
        fill_to_l=ask.fill_to_l,
        target=Target(usual, usual, usual),
        mixing=ask.mixing,
        bucket=ask.bucket,
        draw_off=DrawOff(allowed=False, mark_l=ask.bucket.water_mark_l),
        pail=ask.pail,
        mix_min=ask.mix_min,
    )
    return measured_by(even)


def poured_pct(pours: list[Pour]) -> float:
    """Strength of everything that is poured, per cent by volume; 0 where nothing is."""
    totals = totals_of(pours)
    return mix_strength_pct(totals.water_l, totals.concentrate_l)


def _near_usual(ask: HoldingRequest, space: Space) -> tuple[list[Pour], bool]:
    """The highest fill with a mix near the usual strength, and whether a higher one was not near.

    More room stays open, twice as much each time; at the end nothing is poured.
    """
    # Less than one mark of each below the mark is as full as a plan promises.
    if space.least_l <= 0 or not space.can_pour():
        return [], False
    open_l, is_first = space.room_l - space.least_l, True
    while open_l < space.room_l:
        found = best_pours(Space(space.ask, space.room_l, space.room_l - open_l))
        pours = bucket_pours(space, found.pours)
        if abs(poured_pct(pours) - ask.usual_pct) <= _NEAR_USUAL_PCT:
            return pours, not is_first
        open_l, is_first = 2 * open_l, False
    return [], True


def plan_holding(ask: HoldingRequest) -> Holding:
    """Buckets at the usual top-up strength up to the mark, and how far off the sump may be.

    Parameters
    ----------
    ask : HoldingRequest
        Litres, per cent by volume, days. usual_pct must lie between weakest and strongest mix.

    Where the marks allow no mix near the usual strength the level stays lower, or nothing is
    poured (``no_usual_mix``). The worst-case ends are the last strength, two standard uncertainties
    and the drift of its age away on either side, mixed with what is poured. Errors: as of
    ``plan_recipe``, and ``order`` for a usual strength that this fluid may not be mixed at.
    """
    refuse_contradictions(ask.target, ask.mixing, ask.bucket, ask.pail)
    usual = ask.usual_pct
    if not ask.mixing.weak_pct <= usual <= ask.mixing.strong_pct:
        limit = {"minimum": ask.mixing.weak_pct, "maximum": ask.mixing.strong_pct, "unit": "%"}
        raise Fault("order", "usual_pct", usual, limit)
    even = even_request(ask)
    refuse_contradicting_options(even)
    pours, is_coarse = _near_usual(ask, Space.of(even))
    ends = _ends(ask, pours)
    totals = totals_of(pours)
    volume_l = ask.volume_l.value + totals.water_l + totals.concentrate_l
    room_l = ask.fill_to_l - volume_l
    said = {
        "reading_open": True,
        "gloves_and_eyes": any(pour.concentrate_l > 0 for pour in pours),
        "water_first": has_water_first(pours),
        "may_be_out_of_band": ends is None
        or ends.low_pct < ask.target.low_pct
        or ends.high_pct > ask.target.high_pct,
        "no_usual_mix": is_coarse,
        "nothing_to_pour": not pours and not is_coarse,
        "watch_the_mark": bool(pours) and may_overfill(ask.level_u_l, ask.bucket.usable_l, room_l),
    }
    return Holding(
        pours=pours,
        steps=steps_for(0.0, pours, even.run_min) or [Step("read_again")],
        totals=totals,
        volume_l=volume_l,
        cautions=[code for code, holds in said.items() if holds],
        ends=ends,
    )
