"""Whether the lines of each log are all there and follow one another: forks, gaps, breaks."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Collection, Hashable, Iterable, Iterator
from dataclasses import dataclass
from itertools import groupby

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


def _twins(entries: Iterable[Entry], key: Callable[[Entry], Hashable]) -> Iterator[tuple[str, ...]]:
    """Hashes of the lines that share a key; lines without one (empty) do not count.

    Lists are made only for those few: one for every line is what makes long logs slow.
    """
    first: dict[Hashable, Entry] = {}
    twins: dict[Hashable, list[str]] = {}
    for entry in entries:
        name = key(entry)
        if not name:
            continue
        known = first.setdefault(name, entry)
        if known is not entry:
            twins.setdefault(name, [known.hash]).append(entry.hash)
    return (tuple(sorted(hashes)) for hashes in twins.values())


def _forks(entries: tuple[Entry, ...]) -> tuple[Fork, ...]:
    by_hash = {entry.hash: entry for entry in entries}
    found = set()
    for hashes in _twins(entries, lambda entry: (entry.log, entry.seq) if entry.seq else ""):
        one = by_hash[hashes[0]]
        found.add(Fork("number", one.log, one.seq, "", hashes))
    for hashes in _twins(entries, lambda entry: entry.id):
        found.add(Fork("id", "", 0, by_hash[hashes[0]].id, hashes))
    return tuple(sorted(found, key=lambda fork: (fork.log, fork.seq, fork.id)))


def _gaps(entries: tuple[Entry, ...], heads: Iterable[Head]) -> tuple[Gap, ...]:
    there: dict[str, set[int]] = defaultdict(set)
    for entry in entries:
        if entry.seq:
            there[entry.log].add(entry.seq)
    told: dict[str, int] = defaultdict(int)
    for head in heads:
        told[head.log] = max(told[head.log], head.count)
    gaps = []
    for log in sorted(there.keys() | told.keys()):
        before = 0
        # An end that was told of and is there makes no gap.
        for seq in [*sorted(there[log]), told[log] + 1]:
            if seq > before + 1:
                gaps.append(Gap(log, before + 1, seq - 1))
            before = seq
    return tuple(gaps)


def _breaks(ordered: tuple[Entry, ...]) -> tuple[Break, ...]:
    found: list[Break] = []
    before_log, before_seq, before = "", 0, frozenset[str]()
    for (log, seq), group in groupby(ordered, key=lambda entry: (entry.log, entry.seq)):
        lines = list(group)
        follows = log == before_log and seq == before_seq + 1
        found += [
            Break(log, seq, entry.hash)
            for entry in lines
            # Schema 1 had no chain, and a newer line's own may be told in another way.
            if follows and entry.prev and entry.prev not in before
        ]
        before_log, before_seq = log, seq
        before = frozenset(entry.hash for entry in lines)
    return tuple(found)


def chains_of(entries: Iterable[Entry], heads: Collection[Head]) -> Chains:
    """What does not hold, whatever the order of the lines.

    A shortened chain is a valid chain: a missing end shows only where another file knew of it.
    """
    ordered = tuple(sorted(entries, key=lambda entry: entry.place))
    there = {entry.place for entry in ordered}
    unseen = (head for head in heads if (head.log, head.count, head.head) not in there)
    return Chains(_forks(ordered), _gaps(ordered, heads), _breaks(ordered), tuple(sorted(unseen)))
