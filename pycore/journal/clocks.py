"""Clocks that were wrong. A flag never keeps an entry out: it only makes "latest" less certain."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from pycore.journal.entry import Entry
from pycore.journal.strands import Path

# A clock this far ahead of the reading computer's is called wrong; clocks that the network sets
# agree far better (common practice, no source).
AHEAD_S = 600


@dataclass(frozen=True)
class ClockFlag:
    """``back``: earlier than a line before it in its log; ``future``: ahead; ``zone``: changed."""

    log: str
    seq: int
    hash: str
    flag: str


def _flags(
    entry: Entry, latest_s: int | None, offset_min: int | None, now_s: int | None
) -> list[str]:
    wall_s = entry.wall_s
    shown = {
        "back": wall_s is not None and latest_s is not None and wall_s < latest_s,
        "future": wall_s is not None and now_s is not None and wall_s > now_s + AHEAD_S,
        "zone": wall_s is not None and offset_min is not None and entry.offset_min != offset_min,
    }
    return [flag for flag, is_shown in shown.items() if is_shown or flag in entry.clock_flags]


def clock_flags(
    entries: Iterable[Entry], now_s: int | None = None, strands: Mapping[str, Path] | None = None
) -> tuple[ClockFlag, ...]:
    """Flags that the devices set and those that the lines of each log show, by log and number.

    A clock that was set back stays flagged until it has caught up with the latest line before.
    now_s: the reading computer's clock, seconds since 1970; without it nothing is ``future``.
    strands: of logs that split, by hash; a line is before another one along its strand.
    """
    split = strands or {}
    found = []
    # Of each strand the latest time so far, and the last zone.
    seen: dict[str, tuple[int | None, int | None]] = {}
    for entry in sorted(entries, key=lambda entry: entry.place):
        if not entry.seq:
            continue
        path = split.get(entry.hash, (entry.log,))
        latest_s, offset_min = next((seen[name] for name in path if name in seen), (None, None))
        for flag in _flags(entry, latest_s, offset_min, now_s):
            found.append(ClockFlag(entry.log, entry.seq, entry.hash, flag))
        if entry.wall_s is not None:
            latest_s = entry.wall_s if latest_s is None else max(latest_s, entry.wall_s)
            offset_min = entry.offset_min
        seen[path[0]] = latest_s, offset_min
    return tuple(found)
