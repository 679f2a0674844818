"""A reading beside the last one and the target: asked about once, never refused."""

from __future__ import annotations

import math

from pycore.desk.check.hold import DRIFT_PCT_D
from pycore.desk.check.strength import strength_from
from pycore.desk.contract.reader import Reader
from pycore.desk.contract.records import ReadingTyped
from pycore.desk.contract.results import Doubt, Level, Strength
from pycore.desk.log.history import Setup, level_of, setup_from, strength_of
from pycore.desk.look_back.since import went_since
from pycore.journal.amend import Standing
from pycore.journal.loss import MostLost, most_lost_l
from pycore.journal.plausible import Before, Range, near_aim, plausible
from pycore.journal.poured import usable_of
from pycore.journal.state import MachineNow
from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured
from pycore.quantity.rounding import Shown, shown

_PATH = "body.reading"


def _brix(strength: Strength) -> Measured:
    """Of the coolant itself: of a diluted sample the doubled reading."""
    return strength.corrected_brix or strength.reading_brix


def _said(strength: Strength) -> Shown:
    return strength.shown.get("mean") or strength.shown["reading"]


def _in_unit(strength: Strength, brix: float) -> float:
    """A reading in Brix as this instrument shows it; an index of refraction has no plain ratio."""
    now, said = _brix(strength).value, _said(strength)
    return brix * said.value / now if now and said.unit != "nD" else brix


def _slip(strength: Strength, found: Range) -> Shown | None:
    """What would be plausible with the decimal sign moved by one place."""
    said = _said(strength)
    moved = None if said.unit == "nD" else found.slip(_brix(strength).value)
    if moved is None:
        return None
    decimals = said.decimals + (moved < _brix(strength).value)
    return shown(_in_unit(strength, moved), said.unit, decimals)


def _doubt(code: str, strength: Strength, found: Range) -> Doubt:
    top = found.high_brix if math.isfinite(found.high_brix) else found.expected_brix
    return Doubt(
        path=f"{_PATH}.shows",
        code=code,
        got=_said(strength),
        usual_low=_in_unit(strength, found.low_brix),
        usual_high=_in_unit(strength, top),
        slip=_slip(strength, found),
    )


def _circuit_l(level: Level) -> float:
    """Litres that what is poured mixes with, those that do not show on the stick among them."""
    return (level.circuit_l or level.volume_l).value


def _pct_brix(strength: Strength) -> float | None:
    """Per cent for one Brix at this reading; None without a factor."""
    brix, pct = _brix(strength).value, strength.strength_pct
    return None if pct is None or brix <= 0 or pct.value <= 0 else pct.value / brix


def _first(strength: Strength, setup: Setup) -> Doubt | None:
    """Without an earlier reading only the target can speak."""
    ratio = _pct_brix(strength)
    if ratio is None:
        return None
    found = near_aim(setup[1].target.aim_pct / ratio)
    if found.holds(_brix(strength).value):
        return None
    return _doubt("unlike_target", strength, found)


def _unlike_last(
    machine: MachineNow,
    last: Standing,
    strength: Strength,
    most: MostLost,
    setup: Setup,
    now_s: int,
) -> Doubt | None:
    typed, read = machine.setup_at(last), setup[1]
    then = setup_from(typed)
    before, full_l = strength_of(last, then), read.tank.circuit_full_l
    level_l = _circuit_l(level_of(last, then)) if "dip" in last.content else full_l
    known = went_since(machine, last, usable_of(typed))
    ratio = _pct_brix(before) or _pct_brix(strength)
    if known is None or (ratio is None and known[0].concentrate_l > 0):
        return None
    went, unknown = known
    age_s = float(max(0, now_s - last.measured_s))
    # A sump that reads nothing, or stood empty, has no ratio: a hundredth of it is left.
    volume_l = max(level_l, went.draw_off_l + full_l / 100)
    found = plausible(
        Before(_brix(before), volume_l, age_s),
        went,
        100 / (ratio or 1.0),
        full_l,
        most_lost_l(read.tank.sump.full_volume_l, most, age_s),
        DRIFT_PCT_D / (ratio or 1.0),
        unknown,
    )
    if found.holds(_brix(strength).value):
        return None
    nothing = not unknown and went.water_l + went.concentrate_l + went.draw_off_l == 0
    doubt = _doubt("unlike_last" if nothing else "unlike_last_poured", strength, found)
    return Doubt(**{**vars(doubt), "last": _said(before), "last_at": last.measured_at})


def reading_doubt(
    machine: MachineNow, reading: ReadingTyped, most: MostLost, setup: Setup, now_s: int
) -> Doubt | None:
    """What is asked about a reading by the log of its machine; None where it fits.

    Parameters
    ----------
    machine : MachineNow
        The machine as its log stands.
    reading : ReadingTyped
        As it was typed just now.
    most : MostLost
        What ordinary use takes in a day.
    setup : Setup
        The machine's present set-up.
    now_s : int
        The device's clock, seconds since 1970.

    Errors: every fault of the reading.
    """
    _, read = setup
    glass, factor, target = read.glass, read.factor, read.target
    strength, _ = strength_from(Reader(), reading, glass, factor, target, _PATH)
    last = None if machine.strength is None else machine.strength.entry
    if last is None:
        return _first(strength, setup)
    try:
        return _unlike_last(machine, last, strength, most, setup, now_s)
    except Fault:
        # The last one belongs to a set-up that cannot be read any more.
        return _first(strength, setup)
