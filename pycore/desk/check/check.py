"""The whole walk in one question: a check as it was typed to a recipe ready to show."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Any

from pycore.desk.check.assess import assessed, is_blurry, section_of
from pycore.desk.check.charge_messages import PlanChargeBody
from pycore.desk.check.circuit import Circuit, read_circuit
from pycore.desk.check.dip import level_from
from pycore.desk.check.recipe import plan_shown, section_after, wait_depth, way_shown
from pycore.desk.check.second import read_second
from pycore.desk.check.strength import fluid_notes, strength_from
from pycore.desk.contract.messages import MachineTyped, PlanCheckBody
from pycore.desk.contract.reader import Reader, placed
from pycore.desk.contract.records import Typed
from pycore.desk.contract.results import (
    AssessSumpResult,
    Disagreement,
    Level,
    PlanCheckResult,
    SecondStrength,
    Section,
)
from pycore.desk.setup.machine import Machine, read_machine
from pycore.desk.setup.shop import read_shop
from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured
from pycore.quantity.rounding import Shown, shown
from pycore.reading.second import disturbances
from pycore.recipe.outcome import Alternative, Plan
from pycore.recipe.plan import plan_recipe
from pycore.recipe.request import PlanRequest, Stock, Target, whole_circuit
from pycore.sump.sump import Sump


def _aim(reader: Reader, body: PlanCheckBody, target: Target) -> Target:
    """The machine's target, with this check's own aim when there is one."""
    if body.aim is None:
        return target
    aim_pct = reader.value(body.aim, "aim_pct", "body.aim")
    if not target.low_pct <= aim_pct <= target.high_pct:
        limit = {"minimum": target.low_pct, "maximum": target.high_pct, "unit": "%"}
        raise Fault("order", "body.aim", aim_pct, limit)
    return Target(target.low_pct, aim_pct, target.high_pct)


@dataclass(frozen=True)
class Mark:
    """The mark that is filled to; given is the depth as typed, None for the full mark."""

    volume_l: float
    given: Shown | None = None


def mark_to_fill(reader: Reader, typed: Typed | None, sump: Sump) -> Mark:
    """The full mark, or less for this once. Error: ``order`` above the full mark."""
    if typed is None:
        return Mark(sump.full_volume_l)
    path = "body.fill_to_depth"
    read = reader.read(typed, "full_depth_mm", path)
    if read.value > sump.full_depth_mm:
        limit = {"maximum": sump.full_depth_mm, "unit": "mm"}
        raise placed(Fault("order", path, read.value, limit), path, read.unit.name)
    return Mark(sump.volume_from_depth(read.value, path), read.shown)


def request_of(
    reader: Reader,
    body: PlanCheckBody | PlanChargeBody,
    machine: Machine,
    circuit: Circuit,
    strength_pct: Measured,
    target: Target,
    mark: Mark,
) -> PlanRequest:
    """The check as a question to the planner, with what the shop allows."""
    stock = None
    if body.concentrate_at_hand is not None:
        path = "body.concentrate_at_hand"
        have_l = reader.value(body.concentrate_at_hand, "concentrate_at_hand_l", path)
        stock = Stock(concentrate_l=have_l)
    density_kg_l = None
    if body.machine.fluid.density is not None:
        path = "body.machine.fluid.density"
        density_kg_l = reader.value(body.machine.fluid.density, "density_kg_l", path)
    shop = read_shop(reader, body.machine, machine, "body.machine")
    sump, hidden = circuit.at(strength_pct)
    # Who fills to less than the full mark this once wants none of the room above that mark.
    is_lower = mark.volume_l < machine.sump.full_volume_l
    return PlanRequest(
        sump=sump,
        fill_to_l=mark.volume_l,
        target=target,
        mixing=machine.mixing,
        bucket=machine.bucket,
        draw_off=replace(shop.draw_off, most_l=circuit.drainable_l),
        never_above_l=None if is_lower else shop.never_above_l,
        hidden=hidden,
        pail=shop.pail,
        effort=shop.effort,
        unit=shop.unit,
        stock=stock,
        own_fluid=shop.own_fluid,
        losses=shop.losses,
        density_kg_l=density_kg_l,
        level_u_l=circuit.dipped.level_u_l,
        mix_min=body.machine.sump.mix_min,
    )


def _mark_shown(mark: Mark, level: Level) -> dict[str, Shown]:
    """A mark of its own, and the room up to it, said as exactly as the level itself."""
    if mark.given is None:
        return {}
    about = level.shown["volume"]
    room_l = mark.volume_l - level.volume_l.value
    name = "fill_room" if room_l >= 0 else "fill_over"
    return {"fill_to": mark.given, name: shown(abs(room_l), about.unit, about.decimals)}


def _hidden_shown(hidden_l: Measured | None, typed: MachineTyped) -> dict[str, Shown]:
    return {} if hidden_l is None else {"hidden": shown(hidden_l.value, typed.units.plate, 3)}


def planned(
    request: PlanRequest,
    typed: MachineTyped,
    machine: Machine,
    assessment: AssessSumpResult,
    circuit: Circuit,
) -> PlanCheckResult:
    """The answer for one strength of a sump that was dipped; errors of the planner."""
    try:
        plan = plan_recipe(request)
    except Fault as fault:
        place = fault.path.removesuffix("_l")
        raise placed(fault, f"body.machine.{place}", typed.units.pail) from None
    depth_mm, hidden_l = circuit.dipped.level.depth_mm.value, circuit.dipped.hidden_l
    # The balance that is shown is that of the whole circuit, as the plan is.
    whole = whole_circuit(request)

    def after(poured: Plan | Alternative) -> Section:
        return section_after(machine.sump, poured, depth_mm, hidden_l)

    return PlanCheckResult(
        assessment=assessment,
        request=request,
        plan=plan,
        shown={**plan_shown(plan, whole, typed), **_hidden_shown(hidden_l, typed)},
        after=after(plan),
        ways=[
            replace(
                way_shown(way, whole, typed, after(way), hidden_l),
                level_depth=wait_depth(way, machine.tank, typed.units.stick, hidden_l),
            )
            for way in plan.alternatives
        ],
        doubts=assessment.doubts or [],
    )


def _dose(answer: PlanCheckResult) -> tuple[float, float]:
    """What a mistake would put in: concentrate first, since it is the harder one to undo."""
    return answer.plan.totals.concentrate_l, answer.plan.totals.water_l


def _with_both(
    first: PlanCheckResult,
    second: SecondStrength,
    typed: MachineTyped,
    machine: Machine,
    circuit: Circuit,
) -> PlanCheckResult:
    """Recipes for both strengths, the smaller dose as the main one; nothing is averaged."""
    first_pct, second_pct = first.request.sump.strength_pct, second.strength_pct
    sump, hidden = circuit.at(second_pct)
    request = replace(first.request, sump=sump, hidden=hidden)
    # The drawing shows the strength that this recipe starts from; the mark stays the same.
    level = circuit.dipped.level
    section = section_of(machine.sump, level.depth_mm.value, level.volume_l.value, second_pct.value)
    assessment = replace(first.assessment, section=section)
    theirs = planned(request, typed, machine, assessment, circuit)
    mark: dict[str, Any] = {
        name: first.shown[name]
        for name in ("fill_to", "fill_room", "fill_over")
        if name in first.shown
    }
    answers = [first, replace(theirs, shown={**theirs.shown, **mark})]
    low, high = sorted(answers, key=lambda answer: answer.request.sump.strength_pct.value)
    main, other = (low, high) if _dose(low) < _dose(high) else (high, low)
    ends = {"low": low.request.sump.strength_pct, "high": high.request.sump.strength_pct}
    disagreement = Disagreement(
        low_pct=ends["low"].value,
        high_pct=ends["high"].value,
        planned_for="low" if main is low else "high",
        codes=disturbances(second.method, typed.fluid.type, first_pct.value > second_pct.value),
        shown={side: shown(end.value, "%", 1) for side, end in ends.items()},
        other=other,
    )
    return replace(main, second=second, disagreement=disagreement)


def plan_check(body: PlanCheckBody) -> PlanCheckResult:
    """The recipe of a typed check.

    Errors: every fault of reading the machine, the dip and the reading, at the path of the
    field; ``no_factor`` when the strength cannot be known; ``order`` for an aim outside the band
    or a fill above the full mark; ``screen_blocked`` when the sides of a divided tank differ at
    rest: adding coolant would be wrong; ``not_for_kind`` for a strength of hidden coolant where
    none is hidden.
    """
    reader = Reader()
    typed = body.machine
    machine = read_machine(reader, typed, "body.machine")
    target = _aim(reader, body, machine.target)
    # Before what is measured, so that the page of the mark hears of it also without a dip.
    mark = mark_to_fill(reader, body.fill_to_depth, machine.sump)
    dipped = level_from(
        reader, machine.tank, body.dip, typed.units, "body.dip", "body.machine.sump"
    )
    if dipped.blocked is not None:
        raise dipped.blocked
    circuit = read_circuit(reader, dipped, body.hidden_strength, "body.hidden_strength")
    strength, notes = strength_from(
        reader, body.reading, machine.glass, machine.factor, target, "body.reading"
    )
    notes += [*machine.glass.notes(body.now, "body.now"), *fluid_notes(typed.fluid)]
    if strength.strength_pct is None:
        raise Fault("no_factor", "body.machine.fluid.factor")
    second = None
    if body.second is not None:
        fluid = typed.fluid
        second = read_second(reader, body.second, fluid, strength.strength_pct, "body.second")
    request = request_of(reader, body, machine, circuit, strength.strength_pct, target, mark)
    blurry = is_blurry(body.reading, typed.fluid)
    assessment = assessed(machine.sump, dipped, strength, blurry, reader, notes)
    answer = planned(request, typed, machine, assessment, circuit)
    answer = replace(answer, shown={**answer.shown, **_mark_shown(mark, dipped.level)})
    if second is None or second.agrees:
        return replace(answer, second=second)
    return _with_both(answer, second, typed, machine, circuit)
