"""The whole walk in one question: a check as it was typed to a recipe ready to show."""

from __future__ import annotations

from pycore.desk.assess import assessed, is_blurry, level_from, strength_from
from pycore.desk.machine import Machine, Reader, placed, read_machine
from pycore.desk.messages import PlanCheckBody
from pycore.desk.recipe import plan_shown, section_after, way_shown
from pycore.desk.results import Level, PlanCheckResult
from pycore.desk.shop import read_shop
from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured
from pycore.recipe.plan import plan_recipe
from pycore.recipe.request import PlanRequest, Stock, SumpState, Target


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


def _request(
    reader: Reader,
    body: PlanCheckBody,
    machine: Machine,
    level: Level,
    strength_pct: Measured,
    target: Target,
) -> PlanRequest:
    """The check as a question to the planner, with what the shop allows."""
    stock = None
    if body.concentrate_at_hand is not None:
        path = "body.concentrate_at_hand"
        have_l = reader.value(body.concentrate_at_hand, "concentrate_at_hand_l", path)
        stock = Stock(concentrate_l=have_l)
    shop = read_shop(reader, body.machine, machine, "body.machine")
    return PlanRequest(
        sump=SumpState(level.volume_l, strength_pct),
        fill_to_l=_fill_to_l(reader, body, machine),
        target=target,
        mixing=machine.mixing,
        bucket=machine.bucket,
        draw_off=shop.draw_off,
        never_above_l=shop.never_above_l,
        pail=shop.pail,
        effort=shop.effort,
        unit=shop.unit,
        stock=stock,
        own_fluid=shop.own_fluid,
        losses=shop.losses,
    )


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
    request = _request(reader, body, machine, level, strength.strength_pct, target)
    try:
        plan = plan_recipe(request)
    except Fault as fault:
        place = fault.path.removesuffix("_l")
        raise placed(fault, f"body.machine.{place}", typed.units.pail) from None
    blurry, depth_mm = is_blurry(body.reading, typed.fluid), level.depth_mm.value
    return PlanCheckResult(
        assessment=assessed(machine.sump, level, strength, blurry, reader),
        request=request,
        plan=plan,
        shown=plan_shown(plan, request, typed),
        after=section_after(machine.sump, plan, depth_mm),
        ways=[
            way_shown(way, request, typed, section_after(machine.sump, way, depth_mm))
            for way in plan.alternatives
        ],
        doubts=reader.doubts,
    )
