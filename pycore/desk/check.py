"""The whole walk in one question: a check as it was typed to a recipe ready to show."""

from __future__ import annotations

from typing import Any

from pycore.desk.assess import (
    assessed,
    is_blurry,
    is_customary,
    level_from,
    section_of,
    strength_from,
)
from pycore.desk.machine import Machine, Reader, placed, read_machine
from pycore.desk.messages import PlanCheckBody, PlanCheckResult, PourShown, Section, Units
from pycore.quantity.fault import Fault
from pycore.quantity.rounding import decimals_for, shown, tidy
from pycore.recipe.balance import mix_strength_pct
from pycore.recipe.outcome import Plan
from pycore.recipe.outlook import bucket_weight_kg
from pycore.recipe.plan import plan_recipe
from pycore.recipe.pours import Pour
from pycore.recipe.request import Bucket, DrawOff, PlanRequest, SumpState, Target


def _aim(reader: Reader, body: PlanCheckBody, target: Target) -> Target:
    """The machine's target, with this check's own aim when there is one."""
    if body.aim is None:
        return target
    aim_pct = reader.value(body.aim, "aim_pct", "body.aim")
    if not target.low_pct <= aim_pct <= target.high_pct:
        limit = {"minimum": target.low_pct, "maximum": target.high_pct, "unit": "%"}
        raise Fault("order", "body.aim", aim_pct, limit)
    return Target(target.low_pct, aim_pct, target.high_pct)


def _fill_to_l(reader: Reader, body: PlanCheckBody, machine: Machine) -> float:
    """Litres at the mark that is filled to: the full mark, or less for this once."""
    sump = machine.sump
    if body.fill_to_depth is None:
        return sump.full_volume_l
    path = "body.fill_to_depth"
    read = reader.read(body.fill_to_depth, "full_depth_mm", path)
    if read.value > sump.full_depth_mm:
        limit = {"maximum": sump.full_depth_mm, "unit": "mm"}
        raise placed(Fault("order", path, read.value, limit), path, read.unit.name)
    return sump.volume_from_depth(read.value, path)


def _pour_shown(pour: Pour, bucket: Bucket, units: Units) -> PourShown:
    total_l = pour.water_l + pour.concentrate_l
    weight_kg = bucket_weight_kg(pour.water_l, pour.concentrate_l)
    return PourShown(
        count=pour.count,
        water=tidy(pour.water_l, units.pail),
        concentrate=tidy(pour.concentrate_l, units.jug),
        total=tidy(total_l, units.pail, most_decimals=2),
        strength=shown(mix_strength_pct(pour.water_l, pour.concentrate_l), "%", 1),
        weight=shown(weight_kg, "lb" if units.pail.startswith("US") else "kg", 0),
        water_share=pour.water_l / bucket.usable_l,
        concentrate_share=pour.concentrate_l / bucket.usable_l,
    )


def _shown(plan: Plan, request: PlanRequest, units: Units) -> dict[str, Any]:
    """Every number of the recipe page, rounded and in the tools' units."""
    final, target, totals = plan.final, request.target, plan.totals
    decimals = decimals_for(final.strength_pct.u, 1) if final.strength_pct.u > 0 else 2
    # A range whose ends read the same as the middle would say nothing.
    decimals = max(decimals, 1)
    return {
        "pours": [_pour_shown(pour, request.bucket, units) for pour in plan.pours],
        "water": tidy(totals.water_l, units.pail),
        "concentrate": tidy(totals.concentrate_l, units.jug),
        "added": tidy(totals.water_l + totals.concentrate_l, units.pail, most_decimals=1),
        "strength": shown(final.strength_pct.value, "%", decimals),
        "low": shown(final.low_pct, "%", decimals),
        "high": shown(final.high_pct, "%", decimals),
        "volume": shown(final.volume_l, units.plate, 1 if is_customary(units.plate) else 0),
        "aim": tidy(target.aim_pct, "%"),
        "band_low": tidy(target.low_pct, "%"),
        "band_high": tidy(target.high_pct, "%"),
        "reach_low": shown(plan.reachable.low_pct, "%", 1),
        "reach_high": shown(plan.reachable.high_pct, "%", 1),
    }


def _after(machine: Machine, plan: Plan, depth_now_mm: float) -> Section:
    """The section drawing after the last bucket; a sump above its mark stays where it is."""
    sump, volume_l = machine.sump, plan.final.volume_l
    depth_mm = sump.depth_from_volume(volume_l, "body.dip.depth") if plan.pours else depth_now_mm
    return section_of(sump, depth_mm, volume_l, plan.final.strength_pct.value)


def plan_check(body: PlanCheckBody) -> PlanCheckResult:
    """The recipe of a typed check.

    Errors: every fault of reading the machine, the dip and the reading, at the path of the
    field; ``no_factor`` when the strength cannot be known; ``order`` for an aim outside the band
    or a fill above the full mark.
    """
    reader = Reader()
    typed = body.machine
    machine = read_machine(reader, typed, "body.machine")
    target = _aim(reader, body, machine.target)
    level = level_from(reader, machine.sump, body.dip, typed.units, "body.dip")
    strength = strength_from(
        reader, body.reading, machine.factor, machine.zero_brix, target, "body.reading"
    )
    if strength.strength_pct is None:
        raise Fault("no_factor", "body.machine.fluid.factor")
    request = PlanRequest(
        sump=SumpState(level.volume_l, strength.strength_pct),
        fill_to_l=_fill_to_l(reader, body, machine),
        target=target,
        mixing=machine.mixing,
        bucket=machine.bucket,
        draw_off=DrawOff(allowed=False, mark_l=machine.bucket.water_mark_l),
    )
    plan = plan_recipe(request)
    blurry = is_blurry(body.reading, typed.fluid)
    return PlanCheckResult(
        assessment=assessed(machine.sump, level, strength, blurry, reader),
        request=request,
        plan=plan,
        shown=_shown(plan, request, typed.units),
        after=_after(machine, plan, level.depth_mm.value),
        doubts=reader.doubts,
    )
