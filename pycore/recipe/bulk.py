"""More than one person carries: lower buckets, a mixing unit, a hose with premix, or two days."""

from __future__ import annotations

from dataclasses import replace

from pycore.recipe.draw_off import filling
from pycore.recipe.marks import Space, floor_marks, limits_of
from pycore.recipe.outcome import Plan, bucket_pours, drawn, made
from pycore.recipe.outlook import is_too_many, light_usable_l
from pycore.recipe.pours import Step, finish
from pycore.recipe.request import PlanRequest, Target
from pycore.recipe.search import best_pours


def is_too_much(ask: PlanRequest, plan: Plan) -> bool:
    """Whether a plan is more than one person carries in a check."""
    carried_l = sum(pour.count * (pour.water_l + pour.concentrate_l) for pour in plan.pours)
    return is_too_many(ask, plan.totals.buckets, carried_l)


def carried_by(ask: PlanRequest) -> PlanRequest:
    """The question with buckets filled so low that the person who set a weight may carry them.

    The same question without such a weight, and where so little holds no mix that may be poured.
    """
    if ask.effort is None or ask.effort.heaviest_kg is None:
        return ask
    return _filled_lower(ask) or ask


def _filled_lower(ask: PlanRequest) -> PlanRequest | None:
    """The question with buckets filled so low that they are light enough.

    None where they are that already, and where so little holds no mark of water and of concentrate
    or no mix that may be poured.
    """
    bucket, usable_l = ask.bucket, light_usable_l(ask)
    if not bucket.water_mark_l + bucket.jug_mark_l <= usable_l < bucket.usable_l:
        return None
    lower = replace(bucket, usable_l=usable_l)
    leanest, richest = limits_of(ask.mixing, lower, ask.pail).ratios
    return replace(ask, bucket=lower) if leanest <= richest else None


def lighter_buckets(ask: PlanRequest, plan: Plan) -> Plan | None:
    """The same in buckets that are filled so low that this person may carry them.

    None where they are light enough, or where so little holds nothing that may be poured.
    """
    lower = _filled_lower(ask)
    if "bucket_heavy" not in plan.cautions or lower is None:
        return None
    pours = filling(drawn(lower, plan.draw_off_l))
    return made(ask, pours, plan.draw_off_l) if pours else None


def by_mixing_unit(ask: PlanRequest) -> Plan | None:
    """One setting of the mixing unit and the litres to run; None without one or without room."""
    unit, space = ask.unit, Space.of(ask)
    mark_l = ask.bucket.water_mark_l
    run_l = floor_marks(space.room_l / mark_l) * mark_l
    if unit is None or run_l <= 0:
        return None
    highest = min(unit.highest_pct, ask.mixing.strong_pct)
    lowest = max(unit.lowest_pct, ask.mixing.weak_pct)
    if lowest > highest:
        return None
    wanted = space.wanted_pct
    steps_up = round((wanted - unit.lowest_pct) / unit.step_pct)
    while unit.lowest_pct + steps_up * unit.step_pct > highest + 1e-9:
        steps_up -= 1
    while unit.lowest_pct + steps_up * unit.step_pct < lowest - 1e-9:
        steps_up += 1
    setting = unit.lowest_pct + steps_up * unit.step_pct
    if setting > highest + 1e-9:
        return None
    run = (run_l * (1 - setting / 100), run_l * setting / 100)
    walk = [Step("unit", volume_l=run_l, setting_pct=setting), *finish(ask.run_min)]
    return made(ask, [], steps=walk, run_in_l=run)


def by_hose(ask: PlanRequest) -> Plan | None:
    """Water by the hose first, the concentrate in strong buckets after it.

    All of it together is no weaker than the weakest mix. None when the fill needs no strong bucket
    or plain water is all it needs.
    """
    space = Space.of(ask)
    wanted, strong = space.wanted_pct, ask.mixing.strong_pct
    mark_l = ask.bucket.water_mark_l
    hose_l = floor_marks(space.room_l * (1 - wanted / strong) / mark_l) * mark_l
    if hose_l <= 0:
        return None
    sump = ask.sump
    volume_l = sump.volume_l.value + hose_l
    thinner = replace(
        ask,
        target=_thinned(ask),
        sump=replace(
            sump,
            volume_l=replace(sump.volume_l, value=volume_l),
            strength_pct=replace(
                sump.strength_pct,
                value=sump.strength_pct.value * sump.volume_l.value / volume_l,
            ),
        ),
    )
    rest = Space.of(thinner)
    if not rest.can_pour():
        return None
    pours = bucket_pours(rest, best_pours(rest).pours)
    walk = [Step("hose", volume_l=hose_l)]
    walk += [Step("bucket", pour=i) for i in range(len(pours))]
    return made(ask, pours, steps=[*walk, *finish(ask.run_min)], run_in_l=(hose_l, 0.0))


def _thinned(ask: PlanRequest) -> Target:
    """The target, or the strength that the weakest mix reaches where that is all that helps.

    The buckets after the hose would go on to thin a rich sump, past the weakest mix that its fluid
    may be poured at.
    """
    sump, weak_pct, wanted_pct = ask.sump, ask.mixing.weak_pct, Space.of(ask).wanted_pct
    if wanted_pct > weak_pct:
        return ask.target
    held = sump.volume_l.value * sump.strength_pct.value
    reached_pct = (held + Space.of(ask).room_l * weak_pct) / ask.fill_to_l
    return Target(reached_pct, reached_pct, reached_pct)


def half_today(ask: PlanRequest) -> Plan | None:
    """The same aim with half the room filled now; the other half is planned from a new reading."""
    room_l = ask.fill_to_l - ask.sump.volume_l.value
    half = replace(ask, fill_to_l=ask.sump.volume_l.value + room_l / 2)
    pours = filling(half)
    return made(ask, pours) if pours else None
