"""The sump's own healthy fluid as the carrier of concentrate, for a sump that is full and lean.

A few buckets are taken out, concentrate is stirred in up to the strongest premix, and they are
poured back: nothing is wasted, and what the concentrate takes the room of is kept out as good
fluid. Common practice, no source; the supplier has to agree.
"""

from __future__ import annotations

import math
from dataclasses import replace

from pycore.recipe.balance import concentrate_needed_l
from pycore.recipe.draw_off import drainable_l, filling, taken_out_l
from pycore.recipe.marks import Space, floor_marks
from pycore.recipe.outcome import Plan, drawn, made
from pycore.recipe.pours import Pour
from pycore.recipe.request import PlanRequest, with_sump

# A person keeps so many different buckets apart: common practice, no source.
MOST_KINDS = 3


def _jugs_per_bucket(ask: PlanRequest, fluid_l: float) -> int:
    """Jug marks that so much of the sump's own fluid may carry."""
    strong, own = ask.mixing.strong_pct, ask.sump.strength_pct.value
    if strong >= 100:
        most_l = ask.bucket.usable_l - fluid_l
    else:
        most_l = min(fluid_l * (strong - own) / (100 - strong), ask.bucket.usable_l - fluid_l)
    return floor_marks(most_l / ask.bucket.jug_mark_l)


def _carriers(ask: PlanRequest, jugs: int, most_l: float) -> list[Pour]:
    """Buckets of own fluid that carry so many jug marks, as alike as marks allow.

    They are taken out and poured back one by one, each of no more than most_l of fluid.
    """
    bucket, space = ask.bucket, Space.of(ask)
    best = (0, 0)
    fullest = floor_marks(min(bucket.usable_l, most_l) / bucket.water_mark_l)
    for fluid in range(space.limits.first_water, fullest + 1):
        best = max(best, (_jugs_per_bucket(ask, fluid * bucket.water_mark_l), fluid))
    most, fluid = best
    if min(most, jugs) < space.limits.first_jug:
        return []
    count = math.ceil(jugs / most)
    # Full ones only, where the rest would lie below the first mark of the jug.
    if jugs // count < space.limits.first_jug:
        count, jugs = count - 1, (count - 1) * most
    few, more = divmod(jugs, count)
    fluid_l, mark_l = fluid * bucket.water_mark_l, bucket.jug_mark_l
    sizes = [(more, few + 1), (count - more, few)]
    return [
        Pour(n, 0.0, each * mark_l, fluid_l=fluid_l, kind="own_fluid") for n, each in sizes if n
    ]


def _kept_back_l(ask: PlanRequest, wanted_pct: float) -> tuple[float, float]:
    """Fluid that stays out so that the concentrate fits, and that concentrate, litres."""
    volume_l, strength_pct = ask.sump.volume_l.value, ask.sump.strength_pct.value
    # Each litre of fluid takes each_l of concentrate, so the mark holds 1 / (1 + each_l) of fluid.
    each_l = concentrate_needed_l(1.0, strength_pct, 0.0, wanted_pct)
    kept_l = taken_out_l(ask, volume_l - ask.fill_to_l / (1 + each_l))
    return kept_l, each_l * (volume_l - kept_l)


def by_own_fluid(ask: PlanRequest) -> Plan | None:
    """The plan that lifts a lean sump to its aim with its own fluid; None where it cannot.

    The level ends at the mark that is filled to, whatever room there is above it; what does not
    fit is kept out as good fluid, and room that is left is filled with buckets that hold the aim.
    """
    allowed = ask.own_fluid is not None and ask.own_fluid.allowed
    if not allowed or ask.sump.strength_pct.value >= ask.target.low_pct:
        return None
    kept_l, concentrate_l = _kept_back_l(ask, ask.target.aim_pct)
    if kept_l > drainable_l(ask):
        return None
    left = drawn(ask, kept_l)
    mark_l = ask.bucket.jug_mark_l
    jugs = round(concentrate_l / mark_l)
    room_l = ask.fill_to_l - left.sump.volume_l.value
    jugs = min(jugs, floor_marks(room_l / mark_l))
    pours = _carriers(left, jugs, drainable_l(ask) - kept_l)
    if not pours:
        return None
    own = made(ask, pours, kept_l)
    return made(ask, [*pours, *_filling_up(ask, own)], kept_l)


def _filling_up(ask: PlanRequest, own: Plan) -> list[Pour]:
    """Mixed buckets for the room that is left, no fuller than those of own fluid before them.

    None where they are of more kinds than a person keeps apart.
    """
    usable_l = min(pour.held_l for pour in own.pours)
    after = with_sump(ask, own.final.volume_l, own.final.strength_pct.value)
    rest = filling(replace(after, bucket=replace(ask.bucket, usable_l=usable_l)))
    return rest if len(own.pours) + len(rest) <= MOST_KINDS else []
