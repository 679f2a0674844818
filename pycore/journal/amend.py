"""Corrections and withdrawals: new entries about older ones. Nothing is changed or deleted.

A correction replaces what an entry says, a withdrawal takes it out of every calculation. Inside
one log a later correction takes the place of an earlier one; between logs only one that names the
others does. Otherwise it is a conflict: all are shown and none is used. A withdrawn correction or
withdrawal counts as not written.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field, replace
from typing import Any

from pycore.journal.entry import Entry
from pycore.journal.strands import Path
from pycore.journal.times import moment_of

AMENDING = frozenset({"correction", "withdrawal"})


@dataclass(frozen=True, slots=True)
class Standing:
    """What an entry says now.

    standing: ``as_written``, ``corrected``, ``withdrawn``, ``conflict``, ``disputed`` (one of a
    fork that is open), ``left_out`` (one of a fork that was decided). by: ids of the corrections
    and withdrawals about it that count, or that contradict one another. content: of a withdrawn
    entry what it said last. place and kind: those of the entry itself, which no correction moves;
    they stand here because every pass over a log asks for them. strand: its log, or the part of a
    log that split along which its number says what came first; empty stands for its log. earlier:
    the strands that it goes on from, the nearest first.
    """

    entry: Entry
    standing: str
    machine: str
    measured_at: str
    measured_s: int
    content: dict[str, Any]
    by: tuple[str, ...] = ()
    strand: str = ""
    earlier: Path = ()
    place: tuple[str, int, str] = field(init=False)
    kind: str = field(init=False)

    def __post_init__(self) -> None:
        object.__setattr__(self, "place", self.entry.place)
        object.__setattr__(self, "kind", self.entry.kind)
        object.__setattr__(self, "strand", self.strand or self.entry.log)

    @property
    def id(self) -> str:
        """The entry's id."""
        return self.entry.id

    @property
    def is_used(self) -> bool:
        """Whether the entry may feed a calculation."""
        return self.standing in ("as_written", "corrected")

    @property
    def is_in_doubt(self) -> bool:
        """Whether it may not be used only because people have not decided yet."""
        return self.standing in ("conflict", "disputed")


def _target(entry: Entry) -> str:
    name = "corrects" if entry.kind == "correction" else "retracts"
    return str(entry.body[name])


def _roots(amending: Mapping[str, Entry]) -> dict[str, tuple[str, int]]:
    """The id that each chain of amendments is about, and its length.

    Every link is walked once: a chain can be as long as the log. A circle, which can only be made
    on purpose, is about one of its own, and so about no entry.
    """
    found: dict[str, tuple[str, int]] = {}
    for start in amending:
        walked: dict[str, None] = {}
        at = start
        while at in amending and at not in found and at not in walked:
            walked[at] = None
            at = _target(amending[at])
        root, length = found.get(at, (at, 0))
        for place, identity in enumerate(reversed(walked), 1):
            found[identity] = root, length + place
    return found


def _void(chains: list[tuple[Entry, str, int]], open_lines: frozenset[str]) -> set[str]:
    """Ids that a withdrawal which counts has taken back, the outermost looked at first."""
    void: set[str] = set()
    for entry, _, _ in sorted(chains, key=lambda chain: (-chain[2], chain[0].place)):
        counts = entry.id not in void and entry.hash not in open_lines
        if entry.kind == "withdrawal" and counts:
            void.add(_target(entry))
    return void


def _groups(
    known: list[Entry], open_lines: frozenset[str], left_out: frozenset[str]
) -> Mapping[str, list[Entry]]:
    """Corrections and withdrawals that count, by the id of the entry that they are about."""
    amendments = [e for e in known if e.kind in AMENDING and e.hash not in left_out]
    amending = {e.id: e for e in amendments}
    roots = _roots(amending)
    # By the target, since two versions of one id may be about different entries.
    chains = [(e, *roots.get(_target(e), (_target(e), 0))) for e in amendments]
    void = _void(chains, open_lines)
    groups: dict[str, list[Entry]] = defaultdict(list)
    for entry, root, _ in chains:
        # A withdrawal of a correction or withdrawal has done its work by making that one void.
        is_about_root = entry.kind == "correction" or _target(entry) not in amending
        if is_about_root and entry.id not in void:
            groups[root].append(entry)
    return groups


def _survivors(group: list[Entry]) -> list[Entry]:
    """Amendments of one entry that no other one of them takes the place of."""
    names = {e.id: {_target(e), *e.body.get("settles", ())} for e in group}
    named: dict[str, set[str]] = defaultdict(set)
    for identity, others in names.items():
        for other in others:
            named[other].add(identity)
    last: dict[str, int] = {}
    for e in group:
        last[e.log] = max(last.get(e.log, 0), e.seq)
    left = [
        e
        for e in group
        if not named[e.id] - {e.id} and not (e.kind == "correction" and e.seq < last[e.log])
    ]
    return left or group


def _amended(entry: Entry, group: list[Entry], open_lines: frozenset[str]) -> Standing:
    plain = (entry.machine, entry.measured_at, entry.measured_s, entry.body)
    if not group:
        return Standing(entry, "as_written", *plain)
    left = _survivors(group)
    by = tuple(sorted(e.id for e in left))
    if any(e.hash in open_lines for e in group):
        return Standing(entry, "conflict", *plain, by=tuple(sorted({e.id for e in group})))
    if all(e.kind == "withdrawal" for e in left):
        said = _survivors([e for e in group if e.kind == "correction"])
        last = _corrected(entry, said) if _is_clear(entry, said) else plain
        return Standing(entry, "withdrawn", *last, by=by)
    if not _is_clear(entry, left):
        return Standing(entry, "conflict", *plain, by=by)
    return Standing(entry, "corrected", *_corrected(entry, left), by=by)


def _is_clear(entry: Entry, said: list[Entry]) -> bool:
    return len(said) == 1 and said[0].body.get("kind") == entry.kind


def _corrected(entry: Entry, said: list[Entry]) -> tuple[str, str, int, dict[str, Any]]:
    new = said[0].body
    measured_at = new.get("measured_at", entry.measured_at)
    measured_s = moment_of(measured_at, "measured_at")[0]
    return new.get("machine", entry.machine), measured_at, measured_s, new["content"]


def standings(
    entries: Iterable[Entry],
    open_lines: frozenset[str],
    left_out: frozenset[str],
    strands: Mapping[str, Path] | None = None,
) -> list[Standing]:
    """What every entry says now, by log and number, corrections and withdrawals not among them.

    ``open_lines`` are lines of forks nobody has decided, ``left_out`` those decided against, by
    hash; ``strands`` those of logs that split, by hash. Newer entries do not take part.
    """
    known = [e for e in sorted(entries, key=lambda e: e.place) if e.usable]
    groups = _groups(known, open_lines, left_out)
    found = []
    nothing: list[Entry] = []
    split = strands or {}
    for entry in known:
        if entry.kind in AMENDING:
            continue
        standing = _amended(entry, groups.get(entry.id, nothing), open_lines)
        if entry.hash in open_lines or entry.hash in left_out:
            name = "disputed" if entry.hash in open_lines else "left_out"
            plain = (entry.machine, entry.measured_at, entry.measured_s, entry.body)
            standing = Standing(entry, name, *plain, by=standing.by)
        if entry.hash in split:
            strand, *earlier = split[entry.hash]
            standing = replace(standing, strand=strand, earlier=tuple(earlier))
        found.append(standing)
    return found
