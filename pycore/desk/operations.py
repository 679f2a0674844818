"""What the desk can be asked: one function for each operation, from message to message."""

from __future__ import annotations

import math
import platform
from collections.abc import Callable
from fractions import Fraction
from typing import Any

import pycore
from pycore.desk.check.assess import assessed, is_blurry
from pycore.desk.check.charge import plan_charge
from pycore.desk.check.charge_messages import PlanChargeBody
from pycore.desk.check.check import plan_check
from pycore.desk.check.dip import level_from
from pycore.desk.check.hold import hold_check
from pycore.desk.check.look import JudgeLookBody, judge_look
from pycore.desk.check.mishap import AdviseMishapBody, advise_mishap
from pycore.desk.check.recheck import recheck
from pycore.desk.check.recheck_messages import RecheckBody
from pycore.desk.check.strength import fluid_notes, strength_from
from pycore.desk.contract.messages import (
    AssessSumpBody,
    CalibrateSumpBody,
    DescribeBody,
    HoldCheckBody,
    PlanCheckBody,
    ReadMachineBody,
    ReadQuantityBody,
)
from pycore.desk.contract.reader import Reader, doubts_about
from pycore.desk.contract.records import FitFactorBody, ReadFluidBody, ReadWaterBody
from pycore.desk.contract.results import AssessSumpResult
from pycore.desk.log.due_checks import DueChecksBody, due_checks
from pycore.desk.log.logs import (
    fold_log,
    handover,
    merge_logs,
    read_export,
    write_csv,
    write_export,
)
from pycore.desk.log.messages import (
    FoldLogBody,
    HandoverBody,
    MergeLogsBody,
    ReadExportBody,
    WriteCsvBody,
    WriteExportBody,
)
from pycore.desk.look_back.look_back import LookBackBody, look_back
from pycore.desk.practice.dealing import deal_practice
from pycore.desk.practice.judging import judge_practice
from pycore.desk.practice.messages import DealPracticeBody, JudgePracticeBody, TrySumpBody
from pycore.desk.practice.trying import try_sump
from pycore.desk.setup.calibrate import calibrate_sump
from pycore.desk.setup.factor import read_factor
from pycore.desk.setup.fit import answer_fit_factor
from pycore.desk.setup.fluid import answer_read_fluid
from pycore.desk.setup.instrument import read_glass
from pycore.desk.setup.machine import read_machine, read_target, refuse_neat_oil
from pycore.desk.setup.shop import read_never_above, read_shop
from pycore.desk.setup.tank import read_tank, worth_of_one
from pycore.desk.setup.water import answer_read_water
from pycore.desk.sheets.codes import answer_code, make_code
from pycore.desk.sheets.messages import (
    DrawSheetBody,
    DrawSheetResult,
    MakeCodeBody,
    ReadCodeBody,
)
from pycore.desk.trend.messages import TrendBody
from pycore.desk.trend.trend import trend
from pycore.quantity.fault import Fault
from pycore.quantity.known import KNOWN
from pycore.quantity.rounding import on_rule, tidy
from pycore.quantity.typed import Reading, read_typed
from pycore.quantity.units import UNITS, to_base
from pycore.reading.factor import EXAMPLE_PCT
from pycore.recipe.holding import HoldingRequest, plan_holding
from pycore.recipe.plan import plan_recipe
from pycore.recipe.request import PlanRequest
from pycore.sump.outline import drawing_of

SCHEMA = 1


def _describe(_: DescribeBody) -> dict[str, Any]:
    return {
        "pycore": pycore.__version__,
        "python": platform.python_version(),
        "schema": SCHEMA,
        "operations": sorted(OPERATIONS),
        "quantities": [name for name, known in KNOWN.items() if known.typed],
        "units": list(UNITS),
    }


def _in_unit(reading: Reading, beside: str | None) -> dict[str, Any]:
    """The number in the unit beside the field, where another one of its kind was typed."""
    if beside is None or beside == reading.unit.name:
        return {}
    if UNITS[beside].dimension != reading.unit.dimension:
        return {}
    said = tidy(reading.value, beside)
    # What is another number once it is rounded is left out rather than called equal. Litres typed
    # beside millilitres: from 1000 mL on both are said in litres.
    back = float(to_base(Fraction(str(said.value)), UNITS[said.unit]))
    is_same = math.isclose(back, reading.value, rel_tol=1e-9, abs_tol=1e-12)
    return {"in_unit": said} if is_same and said.unit != reading.unit.name else {}


def _read_quantity(body: ReadQuantityBody) -> dict[str, Any]:
    typed = [name for name, known in KNOWN.items() if known.typed]
    if body.quantity not in typed:
        raise Fault("not_allowed", "body.quantity", body.quantity, {"allowed": typed})
    reading = read_typed(body.text, body.unit, body.quantity, "body.text")
    return {
        **_in_unit(reading, body.unit),
        "quantity": body.quantity,
        "value": reading.value,
        "read_as": reading.shown,
        "doubts": doubts_about(reading),
    }


def _read_machine(body: ReadMachineBody) -> dict[str, Any]:
    reader = Reader()
    typed = body.machine
    machine = read_machine(reader, typed, "body.machine")
    read_shop(reader, typed, machine, "body.machine")
    sump, target, mixing, bucket = machine.sump, machine.target, machine.mixing, machine.bucket
    units = typed.units
    said = {
        "full_depth": on_rule(sump.full_depth_mm, units.stick),
        "full_volume": tidy(sump.full_volume_l, units.plate),
        "low": tidy(target.low_pct, "%"),
        "aim": tidy(target.aim_pct, "%"),
        "high": tidy(target.high_pct, "%"),
        "usable": tidy(bucket.usable_l, units.pail),
        "water_mark": tidy(bucket.water_mark_l, units.pail),
        "jug_mark": tidy(bucket.jug_mark_l, units.jug),
        "strong": tidy(mixing.strong_pct, "%"),
        "weak": tidy(mixing.weak_pct, "%"),
        **worth_of_one(sump.litres_per_mm(sump.full_depth_mm), units),
    }
    result: dict[str, Any] = {
        "full_depth_mm": sump.full_depth_mm,
        "rim_depth_mm": sump.rim_depth_mm,
        "full_volume_l": sump.full_volume_l,
        "rim_volume_l": sump.rim_volume_l,
        "litres_per_mm": sump.litres_per_mm(sump.full_depth_mm),
        **{name: getattr(target, name) for name in ("low_pct", "aim_pct", "high_pct")},
        **{name: getattr(mixing, name) for name in ("strong_pct", "weak_pct", "closeness_pct")},
        **{name: getattr(bucket, name) for name in ("usable_l", "water_mark_l", "jug_mark_l")},
        "shown": said,
        "drawing": drawing_of(sump),
        "doubts": reader.doubts,
    }
    if sump.zero_mm > 0:
        result["least_volume_l"] = sump.least_volume_l
    if machine.tank.hidden is not None:
        result["hidden_l"] = machine.tank.hidden.volume_l
    if machine.tank.rest_l is not None:
        result["rest_l"] = machine.tank.rest_l
    if machine.factor is not None:
        factor = machine.factor.factor.value
        result["factor"], said["factor"] = factor, tidy(factor, "1")
        reads_brix = machine.factor.reads_brix(EXAMPLE_PCT) + machine.glass.zero_brix
        said["five_reads"] = machine.glass.said(reads_brix, "body.machine.fluid.factor")
    return result


def _assess_sump(body: AssessSumpBody) -> AssessSumpResult:
    reader = Reader()
    if body.fluid is not None:
        refuse_neat_oil(body.fluid, "body.fluid")
    tank = read_tank(reader, body.sump, "body.sump")
    read_never_above(reader, body.sump, tank.sump, "body.sump")
    target = None if body.target is None else read_target(reader, body.target, "body.target")
    factor = None
    glass = read_glass(reader, body.instrument, body.fluid, "body")
    if body.fluid is not None:
        factor = read_factor(reader, body.fluid, "body.fluid")
    notes = fluid_notes(body.fluid)
    dipped = strength = None
    if body.dip is not None:
        dipped = level_from(reader, tank, body.dip, body.units, "body.dip", "body.sump")
    if body.reading is not None:
        strength, more = strength_from(reader, body.reading, glass, factor, target, "body.reading")
        notes = [*more, *glass.notes(body.now, "body.now"), *notes]
    blurry = is_blurry(body.reading, body.fluid)
    return assessed(tank.sump, dipped, strength, blurry, reader, notes)


def _draw_sheet(body: DrawSheetBody) -> DrawSheetResult:
    # The rooms of the sheets are a tenth of pycore, and most visits print nothing.
    from pycore.desk.sheets.drawing import draw_sheet

    return draw_sheet(body)


def _in_body(answer: Callable[[Any], Any]) -> Callable[[Any], Any]:
    """An operation of a room whose faults name a field of the body."""

    def answered(ask: Any) -> Any:
        try:
            return answer(ask)
        except Fault as fault:
            raise Fault(fault.code, f"body.{fault.path}", fault.got, fault.limit) from None

    return answered


# Each operation: the frozen dataclass of its body, and what answers it.
OPERATIONS: dict[str, tuple[type, Callable[[Any], Any]]] = {
    "describe": (DescribeBody, _describe),
    "read_quantity": (ReadQuantityBody, _read_quantity),
    "read_machine": (ReadMachineBody, _read_machine),
    "assess_sump": (AssessSumpBody, _assess_sump),
    "calibrate_sump": (CalibrateSumpBody, calibrate_sump),
    "plan_recipe": (PlanRequest, _in_body(plan_recipe)),
    "plan_holding": (HoldingRequest, _in_body(plan_holding)),
    "plan_check": (PlanCheckBody, plan_check),
    "plan_charge": (PlanChargeBody, plan_charge),
    "hold_check": (HoldCheckBody, hold_check),
    "recheck": (RecheckBody, recheck),
    "judge_look": (JudgeLookBody, judge_look),
    "deal_practice": (DealPracticeBody, deal_practice),
    "judge_practice": (JudgePracticeBody, judge_practice),
    "try_sump": (TrySumpBody, try_sump),
    "look_back": (LookBackBody, look_back),
    "advise_mishap": (AdviseMishapBody, advise_mishap),
    "read_fluid": (ReadFluidBody, answer_read_fluid),
    "read_water": (ReadWaterBody, answer_read_water),
    "fit_factor": (FitFactorBody, answer_fit_factor),
    "draw_sheet": (DrawSheetBody, _draw_sheet),
    "make_code": (MakeCodeBody, make_code),
    "read_code": (ReadCodeBody, answer_code),
    "fold_log": (FoldLogBody, fold_log),
    "read_export": (ReadExportBody, read_export),
    "write_export": (WriteExportBody, write_export),
    "merge_logs": (MergeLogsBody, merge_logs),
    "due_checks": (DueChecksBody, due_checks),
    "handover": (HandoverBody, handover),
    "write_csv": (WriteCsvBody, write_csv),
    "trend": (TrendBody, trend),
}
# Their requests carry a log and may be as long as one.
WITH_A_LOG = frozenset(
    (
        "due_checks",
        "fold_log",
        "handover",
        "look_back",
        "merge_logs",
        "read_export",
        "trend",
        "write_csv",
        "write_export",
    )
)
