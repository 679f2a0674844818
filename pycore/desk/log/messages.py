"""What is asked about logs and what is answered, field for field as in ``shared/schema``."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any

from pycore.desk.contract.results import Level, Strength
from pycore.journal.chain import Break, Fork, Gap
from pycore.journal.clocks import ClockFlag
from pycore.journal.file import Head
from pycore.journal.open_pours import OpenPour, Recheck
from pycore.journal.state import Since


@dataclass(frozen=True)
class FoldLogBody:
    """The lines of a store and the device's clock."""

    lines: list[str]
    now: str
    heads: list[Head] = field(default_factory=list)


@dataclass(frozen=True)
class ReadExportBody:
    """A file, and what the device has."""

    text: str
    lines: list[str]
    heads: list[Head] = field(default_factory=list)
    now: str | None = None


@dataclass(frozen=True)
class WriteExportBody:
    """The whole store, the device's clock and the app's build."""

    lines: list[str]
    now: str
    build: str
    heads: list[Head] = field(default_factory=list)


@dataclass(frozen=True)
class NamedText:
    """A file's name and text."""

    name: str
    text: str


@dataclass(frozen=True)
class MergeLogsBody:
    """Files to put together."""

    files: list[NamedText]
    now: str | None = None


@dataclass(frozen=True)
class HandoverBody:
    """The store, the device's clock and when the shift began."""

    lines: list[str]
    now: str
    since: str
    heads: list[Head] = field(default_factory=list)


@dataclass(frozen=True)
class WriteCsvBody:
    """The store and the device's clock."""

    lines: list[str]
    now: str


@dataclass(frozen=True)
class QuarantinedShown:
    """A line in quarantine: why, where in it, and how it begins."""

    code: str
    path: str
    start: str


@dataclass(frozen=True)
class LogReport:
    """What does not hold in a set of lines."""

    logs: list[Head]
    forks: list[Fork]
    gaps: list[Gap]
    breaks: list[Break]
    missing_heads: list[Head]
    clock_flags: list[ClockFlag]
    quarantined: list[QuarantinedShown]


@dataclass(frozen=True)
class FileShown:
    """What one file brought, or why it was refused."""

    name: str
    findings: list[str]
    lines: int
    added: int
    known: int
    newer: int
    quarantined: int
    refused: dict[str, Any] | None = None
    missing: int | None = None
    ahead_s: int | None = None


@dataclass(frozen=True)
class LatestEntry:
    """The latest entry of its kind, its age in days, and those that may be later."""

    entry: str
    measured_at: str
    age_d: float
    certain: bool
    others: list[str]


@dataclass(frozen=True)
class SetupNow(LatestEntry):
    """The machine's set-up as typed."""

    machine: dict[str, Any] = field(kw_only=True)
    code: str | None = field(kw_only=True, default=None)


@dataclass(frozen=True)
class StateNow(LatestEntry):
    """The machine's state as somebody set it."""

    state: dict[str, Any] = field(kw_only=True)
    by: str = field(kw_only=True)


@dataclass(frozen=True)
class LevelNow(LatestEntry):
    """The last dip, read by the set-up of its day."""

    level: Level | None = field(kw_only=True, default=None)
    trouble: dict[str, Any] | None = field(kw_only=True, default=None)


@dataclass(frozen=True)
class StrengthNow(LatestEntry):
    """The last reading, read by the set-up of its day."""

    strength: Strength | None = field(kw_only=True, default=None)
    trouble: dict[str, Any] | None = field(kw_only=True, default=None)


@dataclass(frozen=True)
class FluidNow(LatestEntry):
    """A fluid of the shop."""

    fluid: dict[str, Any] = field(kw_only=True)


@dataclass(frozen=True)
class InstrumentNow(LatestEntry):
    """An instrument of the shop."""

    instrument: dict[str, Any] = field(kw_only=True)


@dataclass(frozen=True)
class MachineShown:
    """One machine; a part that nobody has entered is absent."""

    machine: str
    name: str
    open_pours: list[OpenPour]
    since_measured: Since
    conflicts: list[str]
    setup: SetupNow | None = None
    state: StateNow | None = None
    level: LevelNow | None = None
    strength: StrengthNow | None = None
    checked: LatestEntry | None = None
    recheck: Recheck | None = None
