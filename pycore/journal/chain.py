"""Whether the lines of each log are all there and follow one another: forks, gaps, breaks."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Collection, Iterable, Iterator
from dataclasses import dataclass
from itertools import pairwise

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


# What is made for every line, and kept, makes long logs slow: the garbage collector walks it all.


def _numbers_twice(ordered: tuple[Entry, ...]) -> Iterator[list[Entry]]:
    """Lines of one log under one number; those without a number do not count."""
    twins: list[Entry] = []
    for before, entry in pairwise(ordered):
        if entry.seq and entry.seq == before.seq and entry.log == before.log:
            twins = twins or [before]
            twins.append(entry)
        elif twins:
            yield twins
            twins = []
    if twins:
        yield twins


def _ids_twice(entries: tuple[Entry, ...]) -> Iterable[list[Entry]]:
    """Lines under one id; those without one do not count."""
    first: dict[str, Entry] = {}
    twins: dict[str, list[Entry]] = {}
    for entry in entries:
        known = first.setdefault(entry.id, entry)
        if known is not entry and entry.id:
            twins.setdefault(entry.id, [known]).append(entry)
    return twins.values()


def _hashes(twins: list[Entry]) -> tuple[str, ...]:
    return tuple(sorted(entry.hash for entry in twins))


def _forks(ordered: tuple[Entry, ...]) -> tuple[Fork, ...]:
    numbers = (
        Fork("number", twins[0].log, twins[0].seq, "", _hashes(twins))
        for twins in _numbers_twice(ordered)
    )
    ids = (Fork("id", "", 0, twins[0].id, _hashes(twins)) for twins in _ids_twice(ordered))
    return tuple(sorted({*numbers, *ids}, key=lambda fork: (fork.log, fork.seq, fork.id)))


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
    log, seq = "", 0
    before: list[str] | None = None
    here: list[str] = []
    for entry in ordered:
        if entry.seq != seq or entry.log != log:
            follows = entry.seq == seq + 1 and entry.log == log
            before, here = here if follows else None, []
            log, seq = entry.log, entry.seq
        here.append(entry.hash)
        # Schema 1 had no chain, and a newer line's own may be told in another way.
        if before is not None and entry.prev and entry.prev not in before:
            found.append(Break(log, seq, entry.hash))
    return tuple(found)


def chains_of(entries: Iterable[Entry], heads: Collection[Head]) -> Chains:
    """What does not hold, whatever the order of the lines.

    A shortened chain is a valid chain: a missing end shows only where another file knew of it.
    """
    ordered = tuple(sorted(entries, key=lambda entry: entry.place))
    there = {entry.place for entry in ordered}
    unseen = (head for head in heads if (head.log, head.count, head.head) not in there)
    return Chains(_forks(ordered), _gaps(ordered, heads), _breaks(ordered), tuple(sorted(unseen)))
