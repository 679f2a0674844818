"""The whole walk in one question: a check as it was typed to a recipe ready to show."""

from __future__ import annotations

import math

from pycore.desk.assess import assessed, is_blurry, section_of, strength_from
from pycore.desk.dip import Dipped, level_from
from pycore.desk.machine import Machine, read_machine
from pycore.desk.messages import MachineTyped, PlanCheckBody
from pycore.desk.reader import Reader, placed
from pycore.desk.recipe import plan_shown, way_shown
from pycore.desk.results import PlanCheckResult, Section
from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured
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
    whole_circuit,
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


def _hidden(
    reader: Reader, body: PlanCheckBody, dipped: Dipped, strength_pct: Measured
) -> SumpState | None:
    """What counts beside the sump, with a strength of its own where it stood still."""
    if dipped.hidden_l is None:
        if body.hidden_strength is not None:
            raise Fault("not_for_kind", "body.hidden_strength", body.hidden_strength.text)
        return None
    if body.hidden_strength is not None:
        own_pct = reader.value(body.hidden_strength, "strength_pct", "body.hidden_strength")
        return SumpState(dipped.hidden_l, Measured(own_pct, strength_pct.u))
    # The same coolant, so the same error of the reading: the planner adds the two variances, and
    # this share of them makes the mixture just as uncertain as the reading itself.
    seen_l, hidden_l = dipped.level.volume_l.value, dipped.hidden_l.value
    times = math.sqrt(1 + 2 * seen_l / hidden_l) if hidden_l > 0 else 1.0
    return SumpState(dipped.hidden_l, Measured(strength_pct.value, strength_pct.u * times))


def _after(machine: Machine, plan: Plan, dipped: Dipped) -> Section:
    """The section drawing after the last bucket; a sump above its mark stays where it is."""
    sump, depth_now_mm = machine.sump, dipped.level.depth_mm.value
    volume_l = plan.final.volume_l - (dipped.hidden_l.value if dipped.hidden_l else 0.0)
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
    dipped: Dipped,
    strength_pct: Measured,
    target: Target,
) -> PlanRequest:
    """The check as a question to the planner, with what the shop allows."""
    ways, stock = body.machine.ways, None
    if body.concentrate_at_hand is not None:
        path = "body.concentrate_at_hand"
        have_l = reader.value(body.concentrate_at_hand, "concentrate_at_hand_l", path)
        stock = Stock(concentrate_l=have_l)
    losses = effort = own_fluid = None
    if ways is not None:
        if ways.carry_out is not None:
            path = "body.machine.ways.carry_out"
            losses = Losses(reader.value(ways.carry_out, "carry_out_l_d", path))
        effort = Effort(most_buckets=ways.most_buckets)
        own_fluid = OwnFluid(allowed=bool(ways.own_fluid))
    return PlanRequest(
        sump=SumpState(dipped.level.volume_l, strength_pct),
        fill_to_l=_fill_to_l(reader, body, machine),
        target=target,
        mixing=machine.mixing,
        bucket=machine.bucket,
        draw_off=DrawOff(bool(ways and ways.draw_off), machine.bucket.water_mark_l),
        never_above_l=_never_above_l(reader, body.machine, machine),
        hidden=_hidden(reader, body, dipped, strength_pct),
        pail=_pail(reader, body.machine),
        effort=effort,
        stock=stock,
        own_fluid=own_fluid,
        losses=losses,
    )


def plan_check(body: PlanCheckBody) -> PlanCheckResult:
    """The recipe of a typed check.

    Errors: every fault of reading the machine, the dip and the reading, at the path of the
    field; ``no_factor`` when the strength cannot be known; ``order`` for an aim outside the band
    or a fill above the full mark; ``screen_blocked`` when the sides of a divided tank differ at
    rest: adding coolant would be wrong.
    """
    reader = Reader()
    typed = body.machine
    machine = read_machine(reader, typed, "body.machine")
    target = _aim(reader, body, machine.target)
    dipped = level_from(
        reader, machine.tank, body.dip, typed.units, "body.dip", "body.machine.sump"
    )
    if dipped.blocked is not None:
        raise dipped.blocked
    strength = strength_from(
        reader, body.reading, machine.factor, machine.zero_brix, target, "body.reading"
    )
    if strength.strength_pct is None:
        raise Fault("no_factor", "body.machine.fluid.factor")
    request = _request(reader, body, machine, dipped, strength.strength_pct, target)
    try:
        plan = plan_recipe(request)
    except Fault as fault:
        place = fault.path.removesuffix("_l")
        raise placed(fault, f"body.machine.{place}", typed.units.pail) from None
    blurry = is_blurry(body.reading, typed.fluid)
    return PlanCheckResult(
        assessment=assessed(machine.sump, dipped, strength, blurry, reader),
        request=request,
        plan=plan,
        # The balance that is shown is that of the whole circuit, as the plan is.
        shown=plan_shown(plan, whole_circuit(request), typed),
        after=_after(machine, plan, dipped),
        ways=[way_shown(way, request, typed) for way in plan.alternatives],
        doubts=reader.doubts,
    )
