"""What the log says of one machine before anything is added: earlier results, and the level."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from pycore.desk.check.dip import level_from
from pycore.desk.contract.checked import checked
from pycore.desk.contract.messages import DipTyped
from pycore.desk.contract.reader import Reader
from pycore.desk.contract.records import ReadingTyped
from pycore.desk.contract.results import Level
from pycore.desk.log.due_checks import shop_number
from pycore.desk.log.first_ph import earlier, first_ph
from pycore.desk.log.history import level_of, setup_from
from pycore.desk.look_back.since import after, own_losses_l_d, went_since
from pycore.desk.look_back.unlike import reading_doubt
from pycore.journal.amend import Standing
from pycore.journal.line import from_store
from pycore.journal.loss import LevelChange, MostLost, level_change, most_lost, most_lost_l
from pycore.journal.poured import usable_of
from pycore.journal.recheck import Dip, dip_of
from pycore.journal.state import MachineNow, folded, of_this_charge
from pycore.journal.times import moment_of
from pycore.journal.union import gathered, read_lines
from pycore.quantity.fault import Fault
from pycore.quantity.rounding import Shown, shown

_MEASURING = ("check", "recheck")


@dataclass(frozen=True)
class LookBackBody:
    """Lines of machine and shop, the device's clock, a dip and a reading."""

    lines: list[str]
    machine: str
    now: str
    dip: DipTyped | None = None
    reading: ReadingTyped | None = None


def _nitrite(machine: MachineNow) -> list[dict[str, Any]]:
    return [
        earlier(entry, "nitrite")
        for entry in of_this_charge(machine.ordered)
        if entry.kind in _MEASURING and "nitrite" in entry.content
    ]


def _is_told(entry: Standing) -> bool:
    """Whether something went in whose water nobody has written down."""
    by_habit = entry.kind == "pour" and "plan" not in entry.content and entry.content["pours"]
    return bool(by_habit) or entry.kind == "unknown_addition"


def _dip(level: Level) -> Dip:
    return dip_of(level.volume_l, level.depth_mm.u, level.litres_per_mm)


def _shown(change: LevelChange, unit: str) -> dict[str, Shown]:
    litres = {
        "expected": change.expected_l,
        "found": change.found_l,
        "difference": abs(change.difference_l.value),
        "most_lost": change.most_lost_l,
    }
    return {name: shown(value, unit, 0) for name, value in litres.items()}


def _level(machine: MachineNow, dip: DipTyped, most: MostLost, now_s: int) -> dict[str, Any] | None:
    """The dip beside the last one, or None where they cannot be compared."""
    last = machine.level
    if last is None or machine.definition is None:
        return None
    try:
        typed, read = setup_from(machine.definition.entry.content["machine"])
        first = level_of(last.entry, setup_from(machine.setup_at(last.entry)))
    except Fault:
        # One of the two belongs to a set-up that cannot be read any more.
        return None
    place = ("body.dip", "body.machine.sump")
    second = level_from(Reader(), read.tank, dip, typed.units, *place)
    usable_l = usable_of(machine.definition.entry.content["machine"])
    known = went_since(machine, last.entry, usable_l)
    if known is None or known[0].draw_off_l > first.volume_l.value:
        return None
    went, unknown = known
    seconds = max(0, now_s - last.entry.measured_s)
    most_l = most_lost_l(second.level.full_volume_l, most, seconds)
    change = level_change(_dip(first), _dip(second.level), went, most_l, bool(unknown))
    return {
        "verdict": change.verdict,
        "expected_l": change.expected_l,
        "found_l": change.found_l,
        "difference_l": change.difference_l,
        "most_lost_l": change.most_lost_l,
        "since": last.entry.measured_at,
        "limit_by": most.by,
        "shown": _shown(change, typed.units.plate),
    }


def _compared(
    machine: MachineNow, body: LookBackBody, shop_pct_d: float | None, now_s: int
) -> dict[str, Any]:
    """Dip and reading beside the last ones; nothing where neither was typed."""
    if machine.definition is None or (body.dip is None and body.reading is None):
        return {"doubts": []}
    try:
        setup = setup_from(machine.definition.entry.content["machine"])
    except Fault:
        return {"doubts": []}
    most = most_lost(setup[1].tank.sump.full_volume_l, own_losses_l_d(machine), shop_pct_d)
    level = None if body.dip is None else _level(machine, body.dip, most, now_s)
    doubt = (
        None if body.reading is None else reading_doubt(machine, body.reading, most, setup, now_s)
    )
    return {
        "doubts": [] if doubt is None else [doubt],
        **({} if level is None else {"level": level}),
    }


def look_back(body: LookBackBody) -> dict[str, Any]:
    """Earlier results of this charge, and dip and reading beside the last ones.

    A machine without a line, or of another charge, has nothing to tell. Errors: ``not_a_date`` for
    a ``now`` that is no moment; every fault of the dip and the reading.
    """
    now_s = moment_of(body.now, "body.now")[0]
    lines = [from_store(line) for line in body.lines]
    state = folded(gathered(*read_lines(lines, checked), ()), now_s)
    found = [one for one in state.machines if one.machine == body.machine]
    if not found:
        return {"nitrite_before": [], "topped_up": False, "doubts": []}
    (machine,) = found
    charge = of_this_charge(machine.with_doubtful_pours)
    since = charge if machine.level is None else after(machine, machine.level.entry)
    ph = first_ph(machine)
    return {
        "nitrite_before": _nitrite(machine),
        "topped_up": any(_is_told(entry) for entry in since),
        **({} if ph is None else {"first_fill_ph": ph}),
        **_compared(machine, body, shop_number(state, "most_lost_pct_d"), now_s),
    }
