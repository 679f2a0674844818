"""The whole walk in one question: a check as it was typed to a recipe ready to show."""

from __future__ import annotations

from dataclasses import replace

from pycore.desk.assess import assessed, is_blurry, level_from, section_of
from pycore.desk.machine import Machine, read_machine
from pycore.desk.messages import MachineTyped, PlanCheckBody
from pycore.desk.reader import Reader, placed
from pycore.desk.recipe import plan_shown, way_shown
from pycore.desk.results import (
    Disagreement,
    Level,
    OtherPlan,
    PlanCheckResult,
    SecondStrength,
    Section,
)
from pycore.desk.second import read_second
from pycore.desk.strength import fluid_notes, strength_from
from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured
from pycore.quantity.rounding import shown
from pycore.reading.second import disturbances
from pycore.recipe.outcome import Plan
from pycore.recipe.plan import plan_recipe
from pycore.recipe.request import (
    DrawOff,
    Effort,
    Losses,
    OwnFluid,
    Pail,
    PlanRequest,
    Stock,
    SumpState,
    Target,
)


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


def _after(machine: Machine, plan: Plan, depth_now_mm: float) -> Section:
    """The section drawing after the last bucket; a sump above its mark stays where it is."""
    sump, volume_l = machine.sump, plan.final.volume_l
    # Where the rim is the full mark, the sum of the buckets may pass it by a float's last digit.
    rim_l = sump.rim_volume_l
    held_l = rim_l if rim_l < volume_l <= rim_l * (1 + 1e-9) else volume_l
    depth_mm = sump.depth_from_volume(held_l, "body.dip.depth") if plan.pours else depth_now_mm
    return section_of(sump, depth_mm, volume_l, plan.final.strength_pct.value)


def _pail(reader: Reader, typed: MachineTyped) -> Pail | None:
    """Lowest marks and jug size, where they are known."""
    pail, path = typed.pail, "body.machine.pail"
    if pail is None:
        return None
    sizes = {
        "first_mark_l": (pail.first_mark, f"{path}.first_mark"),
        "jug_first_mark_l": (pail.jug_first_mark, f"{path}.jug_first_mark"),
        "jug_max_l": (pail.jug_size, f"{path}.jug_size"),
    }
    read = {
        name: None if given is None else reader.value(given, name, place)
        for name, (given, place) in sizes.items()
    }
    return Pail(measure_by=pail.measure_by, **read)


def _never_above_l(reader: Reader, typed: MachineTyped, machine: Machine) -> float | None:
    """Litres at the never-above mark. Error: ``order`` below the full mark, ``out_of_range``."""
    given, path = typed.sump.never_above_depth, "body.machine.sump.never_above_depth"
    if given is None:
        return None
    read = reader.read(given, "never_above_mm", path)
    sump = machine.sump
    if read.value < sump.full_depth_mm:
        fault = Fault("order", path, read.value, {"minimum": sump.full_depth_mm, "unit": "mm"})
        raise placed(fault, path, read.unit.name)
    try:
        return sump.volume_from_depth(read.value, path)
    except Fault as fault:
        raise placed(fault, path, read.unit.name) from None


def _request(
    reader: Reader,
    body: PlanCheckBody,
    machine: Machine,
    level: Level,
    strength_pct: Measured,
    target: Target,
) -> PlanRequest:
    """The check as a question to the planner, with what the shop allows."""
    ways, stock = body.machine.ways, None
    if body.concentrate_at_hand is not None:
        path = "body.concentrate_at_hand"
        have_l = reader.value(body.concentrate_at_hand, "concentrate_at_hand_l", path)
        stock = Stock(concentrate_l=have_l)
    losses = effort = own_fluid = density_kg_l = None
    if body.machine.fluid.density is not None:
        path = "body.machine.fluid.density"
        density_kg_l = reader.value(body.machine.fluid.density, "density_kg_l", path)
    if ways is not None:
        if ways.carry_out is not None:
            path = "body.machine.ways.carry_out"
            losses = Losses(reader.value(ways.carry_out, "carry_out_l_d", path))
        effort = Effort(most_buckets=ways.most_buckets)
        own_fluid = OwnFluid(allowed=bool(ways.own_fluid))
    return PlanRequest(
        sump=SumpState(level.volume_l, strength_pct),
        fill_to_l=_fill_to_l(reader, body, machine),
        target=target,
        mixing=machine.mixing,
        bucket=machine.bucket,
        draw_off=DrawOff(bool(ways and ways.draw_off), machine.bucket.water_mark_l),
        never_above_l=_never_above_l(reader, body.machine, machine),
        pail=_pail(reader, body.machine),
        effort=effort,
        stock=stock,
        own_fluid=own_fluid,
        losses=losses,
        density_kg_l=density_kg_l,
    )


def _planned(request: PlanRequest, typed: MachineTyped) -> Plan:
    try:
        return plan_recipe(request)
    except Fault as fault:
        place = fault.path.removesuffix("_l")
        raise placed(fault, f"body.machine.{place}", typed.units.pail) from None


def _for_strength(request: PlanRequest, strength_pct: Measured) -> PlanRequest:
    return replace(request, sump=replace(request.sump, strength_pct=strength_pct))


def _dose(plan: Plan) -> tuple[float, float]:
    """What a mistake would put in: concentrate first, since it is the harder one to undo."""
    return plan.totals.concentrate_l, plan.totals.water_l


def _disagreement(
    machine: Machine,
    typed: MachineTyped,
    first: PlanRequest,
    second: SecondStrength,
    depth_mm: float,
) -> tuple[PlanRequest, Plan, Disagreement]:
    """Recipes for both strengths, the smaller dose as the main one; nothing is averaged."""
    first_pct = first.sump.strength_pct
    is_high = first_pct.value > second.strength_pct.value
    other = _for_strength(first, second.strength_pct)
    low, high = (other, first) if is_high else (first, other)
    plans = {"low": (low, _planned(low, typed)), "high": (high, _planned(high, typed))}
    main, rest = sorted(plans, key=lambda side: (_dose(plans[side][1]), side))
    request, plan = plans[rest]
    ends = {side: ask.sump.strength_pct for side, (ask, _) in plans.items()}
    disagreement = Disagreement(
        low_pct=ends["low"].value,
        high_pct=ends["high"].value,
        planned_for=main,
        codes=disturbances(second.method, typed.fluid.type, is_high),
        shown={side: shown(end.value, "%", 1) for side, end in ends.items()},
        other=OtherPlan(
            request, plan, plan_shown(plan, request, typed), _after(machine, plan, depth_mm)
        ),
    )
    return *plans[main], disagreement


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
    strength, notes = strength_from(
        reader, body.reading, machine.glass, machine.factor, target, "body.reading"
    )
    notes += [*machine.glass.notes(body.now, "body.now"), *fluid_notes(typed.fluid)]
    if strength.strength_pct is None:
        raise Fault("no_factor", "body.machine.fluid.factor")
    second = disagreement = None
    if body.second is not None:
        fluid = typed.fluid
        second = read_second(reader, body.second, fluid, strength.strength_pct, "body.second")
    request = _request(reader, body, machine, level, strength.strength_pct, target)
    depth_mm = level.depth_mm.value
    if second is None or second.agrees:
        plan = _planned(request, typed)
    else:
        request, plan, disagreement = _disagreement(machine, typed, request, second, depth_mm)
    blurry = is_blurry(body.reading, typed.fluid)
    return PlanCheckResult(
        assessment=assessed(machine.sump, level, strength, blurry, reader, notes),
        request=request,
        plan=plan,
        shown=plan_shown(plan, request, typed),
        after=_after(machine, plan, depth_mm),
        ways=[way_shown(way, request, typed) for way in plan.alternatives],
        doubts=reader.doubts,
        second=second,
        disagreement=disagreement,
    )
