"""A second reading as it was typed, beside what the first check and the pour lead to expect."""

from __future__ import annotations

from typing import Any

from pycore.desk.check.assess import assessed, is_blurry, is_customary
from pycore.desk.check.check import plan_check
from pycore.desk.check.dip import Dipped, level_from
from pycore.desk.check.recheck_messages import RecheckBody, RecheckResult
from pycore.desk.check.strength import fluid_notes, strength_from, strength_shown
from pycore.desk.contract.build import plain
from pycore.desk.contract.messages import MachineTyped
from pycore.desk.contract.reader import Reader
from pycore.desk.contract.results import Level, PlanCheckResult
from pycore.desk.setup.machine import Machine, read_machine
from pycore.journal.poured import Poured, poured
from pycore.journal.recheck import (
    Comparison,
    Dip,
    LevelCompared,
    Went,
    compared,
    dip_of,
    level_compared,
)
from pycore.quantity.dates import days_between, moment_from
from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured
from pycore.quantity.rounding import Shown, shown, shown_with_u
from pycore.recipe.request import PlanRequest, whole_circuit

# By definition.
_MINUTES_D = 1440.0


def _checked(body: RecheckBody) -> PlanCheckResult:
    try:
        return plan_check(body.check)
    except Fault as fault:
        path = fault.path.replace("body", "body.check", 1)
        raise Fault(fault.code, path, fault.got, fault.limit) from None


def _minutes(body: RecheckBody) -> float:
    """How long the pump can have run since the last bucket."""
    poured_at = moment_from(body.poured_at, "body.poured_at")
    now = moment_from(body.now, "body.now")
    return days_between(poured_at, now, "body.poured_at") * _MINUTES_D


def _taken_out(reader: Reader, body: RecheckBody, request: PlanRequest) -> float:
    if body.draw_off is None:
        return 0.0
    draw_off_l = reader.value(body.draw_off, "volume_l", "body.draw_off")
    most_l = request.sump.volume_l.value
    if draw_off_l > most_l:
        limit = {"maximum": most_l, "unit": "L"}
        raise Fault("order", "body.draw_off", draw_off_l, limit)
    return draw_off_l


def _in_all(body: RecheckBody, checked: PlanCheckResult) -> Poured:
    return poured([plain(row) for row in body.pours], checked.request.bucket.usable_l)


def _level(first: Level | None, dipped: Dipped | None, went: Went) -> LevelCompared | None:
    if first is None or dipped is None:
        return None

    def dip(level: Level) -> Dip:
        return dip_of(level.volume_l, level.depth_mm.u, level.litres_per_mm)

    return level_compared(dip(first), dip(dipped.level), went)


def _reasons(
    strength: Comparison, level: LevelCompared | None, is_mixed: bool, has_hidden: bool
) -> list[str]:
    """What a difference may come from, the likeliest first."""
    codes = []
    differs = strength.verdict != "as_expected"
    if differs and not is_mixed:
        codes.append("mixed_too_short")
    if level is not None and level.verdict != "as_expected":
        codes.append(f"level_{level.verdict}")
    if strength.implied_l is not None:
        holds_more = strength.implied_l.value > strength.before_l.value
        codes.append("sump_holds_more" if holds_more else "sump_holds_less")
    if differs and has_hidden:
        codes.append("hidden_not_run")
    codes += strength.checks
    return [*codes, "somebody_added"] if differs else codes


def _litres(volume_l: float, unit: str) -> Shown:
    return shown(volume_l, unit, 1 if is_customary(unit) else 0)


def _shown(
    typed: MachineTyped, strength: Comparison, level: LevelCompared | None
) -> dict[str, Shown]:
    gap = strength.difference_pct
    expected = strength_shown(strength.expected_pct)
    unit = typed.units.plate
    said = {
        "expected": expected["strength"],
        "expected_low": expected["low"],
        "expected_high": expected["high"],
        "found": strength_shown(strength.found_pct)["strength"],
        "difference": shown(abs(gap.value), "1", 1),
        "expected_volume": _litres(strength.expected_l.value, unit),
        "before_volume": _litres(strength.before_l.value, unit),
    }
    if strength.implied_l is not None:
        implied = strength.implied_l
        said["implied_volume"] = shown_with_u(implied.value, implied.u, unit)
    if level is not None:
        said["level_expected"] = _litres(level.expected_l, unit)
        said["level_found"] = _litres(level.found_l, unit)
        said["level_difference"] = _litres(abs(level.difference_l.value), unit)
    return said


def _found(reader: Reader, body: RecheckBody, machine: Machine) -> tuple[Any, Measured, Any]:
    """The assessment of the second reading, its strength, and its dip where there is one."""
    typed = body.machine
    dipped = None
    if body.dip is not None:
        place = ("body.dip", "body.machine.sump")
        dipped = level_from(reader, machine.tank, body.dip, typed.units, *place)
        if dipped.blocked is not None:
            raise dipped.blocked
    strength, notes = strength_from(
        reader, body.reading, machine.glass, machine.factor, machine.target, "body.reading"
    )
    if strength.strength_pct is None:
        raise Fault("no_factor", "body.machine.fluid.factor")
    notes += [*machine.glass.notes(body.now, "body.now"), *fluid_notes(typed.fluid)]
    blurry = is_blurry(body.reading, typed.fluid)
    whole = assessed(machine.sump, dipped, strength, blurry, reader, notes)
    return whole, strength.strength_pct, dipped


def recheck(body: RecheckBody) -> RecheckResult:
    """The second reading after a pour, expected against found.

    Without a comparison, ``reasons`` says why: something unknown was poured.
    Errors: every fault of reading the first check, the reading and the dip, at the path of the
    field; ``no_factor``; ``order`` for a reading before the pour and for more taken out than
    there was; ``out_of_range`` for all of it taken out and nothing poured; ``screen_blocked``.
    """
    reader = Reader()
    minutes = _minutes(body)
    checked = _checked(body)
    machine = read_machine(Reader(), body.machine, "body.machine")
    assessment, found_pct, dipped = _found(reader, body, machine)
    request = whole_circuit(checked.request)
    went_in = _in_all(body, checked)
    went = Went(_taken_out(reader, body, request), went_in.water_l, went_in.concentrate_l)
    if went_in.unknown_buckets > 0:
        return RecheckResult(assessment, minutes, ["unknown_poured"], {}, reader.doubts)
    held_l = request.sump.volume_l.value
    if went_in.water_l + went_in.concentrate_l <= 0 and went.draw_off_l >= held_l:
        limit = {"minimum": 0.0, "below": held_l, "unit": "L"}
        raise Fault("out_of_range", "body.draw_off", went.draw_off_l, limit)
    share = machine.factor.u_share if machine.factor is not None else 0.0
    strength = compared(request.sump, went, found_pct, share)
    level = _level(checked.assessment.level, dipped, went)
    is_mixed = minutes >= request.run_min
    reasons = _reasons(strength, level, is_mixed, checked.request.hidden is not None)
    said = _shown(body.machine, strength, level)
    return RecheckResult(assessment, minutes, reasons, said, reader.doubts, strength, level)
