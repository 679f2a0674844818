"""A new charge after a clean-out: what the rinse left behind counts in the balance."""

from __future__ import annotations

from dataclasses import replace

from pycore.desk.check.assess import assessed, section_of
from pycore.desk.check.charge_messages import PlanChargeBody
from pycore.desk.check.check import mark_to_fill, planned, request_of
from pycore.desk.check.circuit import Circuit
from pycore.desk.check.dip import level_from
from pycore.desk.check.strength import fluid_notes
from pycore.desk.contract.messages import DipTyped
from pycore.desk.contract.reader import Reader
from pycore.desk.contract.records import WaterTyped
from pycore.desk.contract.results import PlanCheckResult
from pycore.desk.setup.machine import read_machine
from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured

# Water of a first charge holds 80 to 200 mg/L of hardness: common practice, no source.
FIRST_FILL_LEAST_MG_L = 80.0

# A rinse mix and what stayed of it are known to half a point (judgement, no source).
_LEFT_U_PCT = 0.5


def _water_notes(reader: Reader, water: WaterTyped | None) -> list[str]:
    """Right for topping up, demineralised water makes a first fill of many emulsions foam."""
    if water is None or water.kind != "demineralised":
        return []
    path = "body.machine.water.hardness"
    hardness_mg_l = reader.optional(water.hardness, "hardness_mg_l", path)
    is_hard = hardness_mg_l is not None and hardness_mg_l >= FIRST_FILL_LEAST_MG_L
    return [] if is_hard else ["demineralised_first_fill"]


def plan_charge(body: PlanChargeBody) -> PlanCheckResult:
    """The recipe that fills an emptied sump to its full mark.

    Errors: every fault of reading the machine and the two numbers at their fields.
    """
    reader = Reader()
    machine = read_machine(reader, body.machine, "body.machine")
    dip = DipTyped(depth=body.left, read_as="volume")
    units = body.machine.units
    try:
        # Little is left in an emptied sump: there is nothing to ask about its level.
        dipped = level_from(Reader(), machine.tank, dip, units, "body.left", "body.machine.sump")
    except Fault as fault:
        path = fault.path.removesuffix(".depth")
        raise Fault(fault.code, path, fault.got, fault.limit) from None
    strength_pct = reader.value(body.left_strength, "strength_pct", "body.left_strength")
    mark = mark_to_fill(reader, None, machine.sump)
    circuit = Circuit(dipped)
    left = Measured(strength_pct, _LEFT_U_PCT if strength_pct > 0 else 0.0)
    request = request_of(reader, body, machine, circuit, left, machine.target, mark)
    level = dipped.level
    section = section_of(machine.sump, level.depth_mm.value, level.volume_l.value, strength_pct)
    notes = [*fluid_notes(body.machine.fluid), *_water_notes(reader, body.machine.water)]
    found = assessed(machine.sump, dipped, None, False, reader, notes)
    return planned(request, body.machine, machine, replace(found, section=section), circuit)
