"""The order of entries: by number inside a log, by what was confirmed as time between logs.

What is said here of logs holds for the strands of a log that split (``strands.py``).
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from operator import attrgetter
from typing import Protocol, TypeVar

# Two phones' clocks are not trusted to put entries in order that lie closer together than this.
CERTAIN_S = 600


class Placed(Protocol):
    """What can be put in order: a line's place and its confirmed time in seconds since 1970."""

    @property
    def place(self) -> tuple[str, int, str]:
        """Log, number, hash."""

    @property
    def strand(self) -> str:
        """The log, or a strand of it."""

    @property
    def earlier(self) -> tuple[str, ...]:
        """The strands that this one goes on from, the nearest first."""

    @property
    def measured_s(self) -> int:
        """Seconds since 1970."""


P = TypeVar("P", bound=Placed)
_place = attrgetter("place")


@dataclass(frozen=True)
class Latest:
    """The latest entry. others: those that may be later, when it is not certain."""

    hash: str
    others: tuple[str, ...]

    @property
    def is_certain(self) -> bool:
        """Whether no other entry can be the latest one."""
        return not self.others


def in_order(entries: Iterable[P]) -> list[P]:
    """Entries for display: never against the numbers of a log, otherwise by confirmed time.

    An entry that was written down late stands after its log's entries before it.
    """
    ordered = sorted(entries, key=_place)
    reached: dict[str, int] = {}
    reached_s = []
    for entry in ordered:
        strand, measured_s = entry.strand, entry.measured_s
        known_s = reached.get(strand)
        if known_s is None:
            known_s = next((reached[name] for name in entry.earlier if name in reached), None)
        reached[strand] = at_s = measured_s if known_s is None else max(known_s, measured_s)
        reached_s.append(at_s)
    # A sort keeps the order of equals. Numbers are no work for the garbage collector; pairs are.
    return [ordered[n] for n in sorted(range(len(ordered)), key=reached_s.__getitem__)]


def latest(
    entries: Iterable[Placed],
    flagged: frozenset[str],
    decided: Callable[[frozenset[str]], frozenset[str] | None],
) -> Latest | None:
    """The latest of entries of one kind about one machine; None where there are none.

    It is certain when there is one log, or when its time is more than ten minutes later than that
    of every other log's latest and none of the clocks is ``flagged`` (by hash), or when a person
    has ``decided`` for exactly one of them.
    """
    lasts: dict[str, Placed] = {}
    for entry in entries:
        known = lasts.get(entry.strand)
        if known is None or known.place <= entry.place:
            lasts[entry.strand] = entry
    if not lasts:
        return None
    # What stands before a strand came before its entries.
    for name in {name for entry in lasts.values() for name in entry.earlier}:
        lasts.pop(name, None)
    ranked = sorted(
        lasts.values(), key=lambda entry: (-entry.measured_s, entry.place[:2], entry.strand)
    )
    first = ranked[0]
    doubtful = first.place[2] in flagged
    others = [
        entry.place[2]
        for entry in ranked[1:]
        if doubtful or entry.place[2] in flagged or first.measured_s - entry.measured_s <= CERTAIN_S
    ]
    chosen = decided(frozenset([first.place[2], *others]))
    if chosen is not None and len(chosen) == 1:
        return Latest(next(iter(chosen)), ())
    return Latest(first.place[2], tuple(others))
