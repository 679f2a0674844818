"""Exported files into one: union, and a report of what is odd about them."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from pycore.journal.chain import Chains, chains_of
from pycore.journal.clocks import ClockFlag, clock_flags
from pycore.journal.entry import Entry, Valid
from pycore.journal.file import Limits, LogFile, read_file
from pycore.journal.strands import strands_of
from pycore.journal.times import moment_of
from pycore.journal.union import Gathered, Quarantined, gathered, read_lines
from pycore.quantity.fault import Fault


@dataclass(frozen=True)
class FileReport:
    """One file: why it was refused as a whole, or what it brought.

    findings: ``no_header``, ``cut``, ``damaged``. missing: lines that its header promises more
    than there are. removed: tombstones among what was added. ahead_s: its device's clock at export
    against the reading computer's, seconds.
    """

    name: str
    refused: Fault | None = None
    findings: tuple[str, ...] = ()
    lines: int = 0
    added: int = 0
    known: int = 0
    newer: int = 0
    removed: int = 0
    quarantined: int = 0
    missing: int | None = None
    ahead_s: int | None = None


@dataclass(frozen=True)
class Merged:
    """The union of all files, a report for each, and what does not hold in the union."""

    union: Gathered
    files: tuple[FileReport, ...]
    chains: Chains
    flags: tuple[ClockFlag, ...]


class _Collector:
    """Lines that were seen so far; every line is read once, however many files hold it."""

    def __init__(self, valid: Valid) -> None:
        self.valid = valid
        self.entries: dict[str, Entry] = {}
        self.quarantined: dict[str, Quarantined] = {}
        self.removed: set[str] = set()

    def add(self, name: str, file: LogFile, now_s: int | None) -> FileReport:
        own = list(dict.fromkeys(file.lines))
        fresh = [line for line in own if not self.knows(line)]
        entries, bad = read_lines(fresh, self.valid)
        self.entries |= {entry.line: entry for entry in entries}
        self.quarantined |= {part.line: part for part in bad}
        self.removed |= {entry.hash for entry in entries if entry.is_removed}
        # A whole copy of what was removed brings nothing.
        gone = sum(not entry.is_removed and entry.hash in self.removed for entry in entries)
        return FileReport(
            name=name,
            findings=tuple(file.findings),
            lines=len(file.lines),
            added=len(entries) - gone,
            known=len(file.lines) - len(fresh) + gone,
            removed=sum(entry.is_removed for entry in entries),
            newer=sum(self.entries[line].is_newer for line in own if line in self.entries),
            quarantined=sum(line in self.quarantined for line in own),
            missing=file.missing,
            ahead_s=_ahead_s(file, now_s),
        )

    def knows(self, line: str) -> bool:
        return line in self.entries or line in self.quarantined


def _ahead_s(file: LogFile, now_s: int | None) -> int | None:
    if now_s is None:
        return None
    try:
        return moment_of(file.written_at, "file.header.written_at")[0] - now_s
    except Fault:
        return None


def merged(
    files: Iterable[tuple[str, str]],
    valid: Valid,
    limits: Limits,
    now_s: int | None = None,
    own: Mapping[str, LogFile] | None = None,
) -> Merged:
    """The union of the files' lines.

    Parameters
    ----------
    files : iterable of (name, text)
        Exports, in any order: the union does not depend on it, only the count of what is new.
    valid : callable
        Compares a part with its definition in the contract and raises Fault.
    limits : Limits
        How much one file may hold; a file above it is refused, as is one that is no log.
    now_s : int, optional
        The reading computer's clock, seconds since 1970.
    own : mapping of name to LogFile, optional
        Lines that are there already.
    """
    collector = _Collector(valid)
    reports = []
    heads = set()
    for name, there in (own or {}).items():
        collector.add(name, there, now_s)
        heads |= set(there.heads)
    for name, text in files:
        try:
            file = read_file(text, limits)
        except Fault as fault:
            reports.append(FileReport(name, refused=fault))
            continue
        reports.append(collector.add(name, file, now_s))
        heads |= set(file.heads)
    union = gathered(collector.entries.values(), collector.quarantined.values(), heads)
    chains = chains_of(union.entries, union.heads)
    strands = strands_of(union.entries, chains.forks)
    flags = clock_flags(union.entries, now_s, strands)
    return Merged(union, tuple(reports), chains, flags)
