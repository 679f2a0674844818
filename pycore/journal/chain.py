"""Whether the lines of each log are all there and follow one another: forks, gaps, breaks."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass

from pycore.journal.entry import Entry
from pycore.journal.file import Head


@dataclass(frozen=True)
class Fork:
    """Different lines under one number of a log (why ``number``) or under one id (why ``id``)."""

    why: str
    log: str
    seq: int
    id: str
    hashes: tuple[str, ...]


@dataclass(frozen=True)
class Gap:
    """Numbers of a log that are missing, both ends included."""

    log: str
    first: int
    last: int


@dataclass(frozen=True)
class Break:
    """A line that names another line before it than the one that is there."""

    log: str
    seq: int
    hash: str


@dataclass(frozen=True)
class Chains:
    """What does not hold in a set of lines; heads that somebody knew of and that are not there."""

    forks: tuple[Fork, ...]
    gaps: tuple[Gap, ...]
    breaks: tuple[Break, ...]
    missing_heads: tuple[Head, ...]

    @property
    def is_forked(self) -> bool:
        """Whether two versions of one line were seen, or one of them can be inferred."""
        return bool(self.forks or self.breaks)


def _grouped(entries: Iterable[Entry], by_id: bool) -> dict[tuple[str, int], list[Entry]]:
    groups: dict[tuple[str, int], list[Entry]] = defaultdict(list)
    for entry in entries:
        if by_id and entry.id:
            groups[entry.id, 0].append(entry)
        elif not by_id and entry.seq:
            groups[entry.log, entry.seq].append(entry)
    return groups


def _forks(entries: tuple[Entry, ...]) -> tuple[Fork, ...]:
    found = set()
    for (log, seq), twins in _grouped(entries, by_id=False).items():
        if len(twins) > 1:
            found.add(Fork("number", log, seq, "", tuple(sorted(e.hash for e in twins))))
    for (identity, _), twins in _grouped(entries, by_id=True).items():
        if len(twins) > 1:
            found.add(Fork("id", "", 0, identity, tuple(sorted(e.hash for e in twins))))
    return tuple(sorted(found, key=lambda fork: (fork.log, fork.seq, fork.id)))


def _gaps(entries: tuple[Entry, ...], heads: Iterable[Head]) -> tuple[Gap, ...]:
    there: dict[str, set[int]] = defaultdict(set)
    for entry in entries:
        if entry.seq:
            there[entry.log].add(entry.seq)
    ends = {log: max(numbers) for log, numbers in there.items()}
    for head in heads:
        ends[head.log] = max(ends.get(head.log, 0), head.count)
    gaps = []
    for log, end in sorted(ends.items()):
        before = 0
        for seq in [*sorted(there[log]), end + 1]:
            if seq > before + 1:
                gaps.append(Gap(log, before + 1, seq - 1))
            before = seq
    return tuple(gaps)


def _breaks(entries: tuple[Entry, ...]) -> tuple[Break, ...]:
    hashes: dict[tuple[str, int], set[str]] = defaultdict(set)
    for entry in entries:
        hashes[entry.log, entry.seq].add(entry.hash)
    return tuple(
        Break(entry.log, entry.seq, entry.hash)
        for entry in entries
        # Schema 1 had no chain, and a newer line's own may be told in another way.
        if entry.prev
        and entry.seq > 1
        and (entry.log, entry.seq - 1) in hashes
        and entry.prev not in hashes[entry.log, entry.seq - 1]
    )


def chains_of(entries: Iterable[Entry], heads: Iterable[Head]) -> Chains:
    """What does not hold, whatever the order of the lines.

    A shortened chain is a valid chain: a missing end shows only where another file knew of it.
    """
    ordered = tuple(sorted(entries, key=lambda entry: entry.place))
    there = {entry.place for entry in ordered}
    unseen = (head for head in heads if (head.log, head.count, head.head) not in there)
    return Chains(_forks(ordered), _gaps(ordered, heads), _breaks(ordered), tuple(sorted(unseen)))
