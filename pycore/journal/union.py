"""Lines from many files as one set: nothing is lost, nothing counts twice, nothing is changed."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from pycore.journal.entry import Entry, Valid, read_line
from pycore.journal.file import Head, write_file
from pycore.quantity.fault import Fault


@dataclass(frozen=True)
class Quarantined:
    """A line that is kept as it is and never used, with the code and the place of its trouble."""

    line: str
    code: str
    path: str


@dataclass(frozen=True)
class Gathered:
    """Entries by log, number and hash; lines in quarantine by their text; heads known of."""

    entries: tuple[Entry, ...]
    quarantined: tuple[Quarantined, ...]
    heads: frozenset[Head]

    @property
    def lines(self) -> list[str]:
        """All lines in the one order in which they are written."""
        return [entry.line for entry in self.entries] + [bad.line for bad in self.quarantined]


def read_lines(lines: Iterable[str], valid: Valid) -> tuple[list[Entry], list[Quarantined]]:
    """Every line either as an entry or in quarantine, each line once, in the order given."""
    entries: list[Entry] = []
    quarantined: list[Quarantined] = []
    for line in dict.fromkeys(lines):
        try:
            entries.append(read_line(line, valid))
        except Fault as fault:
            quarantined.append(Quarantined(line, fault.code, fault.path))
    return entries, quarantined


def _own_heads(entries: Iterable[Entry]) -> set[Head]:
    last: dict[str, int] = {}
    for entry in entries:
        last[entry.log] = max(last.get(entry.log, 0), entry.seq)
    return {
        Head(entry.log, entry.seq, entry.hash)
        for entry in entries
        if entry.seq > 0 and entry.seq == last[entry.log]
    }


def _goes_before(entry: Entry, known: Entry) -> bool:
    """Of two lines with one hash, which one stays: a tombstone, since no copy may bring back what
    was taken out; of two tombstones the first by its text, so that the order does not matter."""
    if entry.is_removed != known.is_removed:
        return entry.is_removed
    return entry.line < known.line


def gathered(
    entries: Iterable[Entry], quarantined: Iterable[Quarantined], heads: Iterable[Head] = ()
) -> Gathered:
    """The union, whatever the order; ``heads`` are those that headers of files told of.

    A head that a file told of is kept until its line is there, so that a missing end stays known.
    """
    once: dict[str, Entry] = {}
    for entry in entries:
        known = once.get(entry.hash)
        if known is None or _goes_before(entry, known):
            once[entry.hash] = entry
    ordered = tuple(sorted(once.values(), key=lambda entry: entry.place))
    bad = {part.line: part for part in quarantined}
    there = {(entry.log, entry.seq, entry.hash) for entry in ordered}
    unseen = {head for head in heads if (head.log, head.count, head.head) not in there}
    return Gathered(
        ordered,
        tuple(bad[line] for line in sorted(bad)),
        frozenset(unseen | _own_heads(ordered)),
    )


def file_of(union: Gathered, written_at: str = "", build: str = "") -> str:
    """The union as the text of a file; without time and build it depends on nothing else."""
    return write_file(union.lines, union.heads, written_at, build)
