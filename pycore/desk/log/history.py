"""Every dip and reading of a log as litres and per cent, each by the set-up of its day."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from pycore.desk.check.dip import level_from
from pycore.desk.check.strength import strength_from
from pycore.desk.contract.build import built
from pycore.desk.contract.messages import DipTyped, MachineTyped
from pycore.desk.contract.reader import Reader
from pycore.desk.contract.records import ReadingTyped
from pycore.desk.contract.results import Level, Strength
from pycore.desk.setup.machine import Machine, read_machine
from pycore.journal.amend import Standing
from pycore.journal.poured import Poured, poured, usable_of
from pycore.journal.state import MachineNow
from pycore.quantity.fault import Fault

# Where the buckets that went in stand in an entry.
_ROWS = {"pour": "pours", "clean_out": "charge"}
# Set-ups that are kept as read: those before them are rarely met again.
_MOST_KNOWN = 8


@dataclass(frozen=True)
class Band:
    """The target by the set-up of the day, per cent by volume."""

    low_pct: float
    aim_pct: float
    high_pct: float


@dataclass(frozen=True)
class Point:
    """One entry of a machine: what its dip and reading say, and what went in with it.

    poured: None too for a pour over which logs differ. trouble: codes of what could not be read;
    the typed text still stands in the entry.
    """

    entry: Standing
    level: Level | None = None
    strength: Strength | None = None
    band: Band | None = None
    poured: Poured | None = None
    trouble: tuple[str, ...] = ()


Typed = dict[str, Any]
Setup = tuple[MachineTyped, Machine]


def setup_from(typed: Typed | None) -> Setup:
    """A set-up ready to read by. Errors: ``missing`` where there is none; its own."""
    if typed is None:
        raise Fault("missing", "machine")
    setup = built(MachineTyped, typed)
    return setup, read_machine(Reader(), setup, "machine")


@dataclass(frozen=True)
class _Known:
    """A set-up as typed, as read or why not, and litres of one usable bucket."""

    typed: Typed | None
    read: Setup | Fault
    usable_l: float | None


def _tried(typed: Typed | None) -> Setup | Fault:
    try:
        return setup_from(typed)
    except Fault as fault:
        return fault


class _Setups:
    """Set-ups read once, however many entries were made under them."""

    def __init__(self) -> None:
        self._read: list[_Known] = []

    def known(self, typed: Typed | None) -> _Known:
        """What is known of a set-up; an entry's is most often that of the entry before."""
        for known in reversed(self._read):
            if known.typed == typed:
                return known
        self._read = [
            *self._read[1 - _MOST_KNOWN :],
            _Known(typed, _tried(typed), usable_of(typed)),
        ]
        return self._read[-1]

    def of(self, typed: Typed | None) -> Setup:
        """As ``setup_from``, with the same errors."""
        found = self.known(typed).read
        if isinstance(found, Fault):
            raise found
        return found


def level_of(entry: Standing, setup: Setup) -> Level:
    """The level by an entry's dip. Errors: every fault of the dip."""
    typed, machine = setup
    dip = built(DipTyped, entry.content["dip"])
    return level_from(Reader(), machine.tank, dip, typed.units, "dip", "machine.sump").level


def strength_of(entry: Standing, setup: Setup) -> Strength:
    """The strength by an entry's reading. Errors: every fault of the reading."""
    _, machine = setup
    reading = built(ReadingTyped, entry.content["reading"])
    glass, factor, target = machine.glass, machine.factor, machine.target
    return strength_from(Reader(), reading, glass, factor, target, "reading")[0]


def _went_in(entry: Standing, typed: Typed | None, setups: _Setups) -> Poured | None:
    rows = () if entry.is_in_doubt else entry.content.get(_ROWS.get(entry.kind, ""), ())
    return poured(rows, setups.known(typed).usable_l) if rows else None


def _point(entry: Standing, typed: Typed | None, setups: _Setups) -> Point:
    went, trouble = _went_in(entry, typed, setups), []
    level = strength = band = None
    try:
        if entry.content.keys() & {"dip", "reading"}:
            setup = setups.of(typed)
            target = setup[1].target
            band = Band(target.low_pct, target.aim_pct, target.high_pct)
            if "dip" in entry.content:
                level = level_of(entry, setup)
    except Fault as fault:
        trouble.append(fault.code)
    try:
        if band is not None and "reading" in entry.content:
            strength = strength_of(entry, setup)
    except Fault as fault:
        trouble.append(fault.code)
    return Point(entry, level, strength, band, went, tuple(trouble))


def history_of(machine: MachineNow) -> list[Point]:
    """The machine's entries in order, each with what it says; nothing is raised.

    Pours over which logs differ stand among them. An entry's own copy of the set-up goes before
    the one that was in force, so that an old reading keeps the factor of its day.
    """
    setups = _Setups()
    in_force: Typed | None = None
    points = []
    for entry in machine.with_doubtful_pours:
        if entry.kind == "machine_set":
            in_force = entry.content["machine"]
        points.append(_point(entry, entry.content.get("machine") or in_force, setups))
    return points
