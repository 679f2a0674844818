"""Which lines of a log were written one after another, where several lines claim one number.

A phone that was copied goes on twice under one log. A number says what came first only along one
of the two; from the first claimed number on they are put in order like logs of their own, after
what stands before them.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping

from pycore.journal.chain import Fork
from pycore.journal.entry import Entry

# The name of a strand, and those that it goes on from, the nearest first.
Path = tuple[str, ...]
# Copies of copies farther back count as other logs; without an end hostile files would be slow.
MOST_BEFORE = 8


def _strand(entry: Entry, known: Mapping[str, Entry], followers: Counter[tuple[int, str]]) -> str:
    """The line before is followed alone, and is one of this log at the number before."""
    before = known.get(entry.prev)
    follows = before is not None and before.seq == entry.seq - 1
    return entry.prev if follows and followers[entry.seq, entry.prev] == 1 else ""


def strands_of(entries: Iterable[Entry], forks: Iterable[Fork]) -> dict[str, Path]:
    """Hashes of lines and, for each, its strand, by the hash of the strand's first line.

    Lines that are not in it belong to the strand of their log, under the log's own name: those of
    a log without a claimed number, and those before the first such number. A line whose
    predecessor is missing, or is no longer told, begins a strand after those.
    """
    first: dict[str, int] = {}
    for fork in forks:
        if fork.why == "number":
            first[fork.log] = min(first.get(fork.log, fork.seq), fork.seq)
    split: dict[str, list[Entry]] = {log: [] for log in first}
    # Most logs have no claimed number, and then nothing is looked at.
    for entry in entries if first else ():
        if entry.log in split and entry.seq >= first[entry.log]:
            split[entry.log].append(entry)
    found: dict[str, Path] = {}
    for lines in split.values():
        known = {entry.hash: entry for entry in lines}
        followers = Counter((entry.seq, entry.prev) for entry in lines)
        for entry in sorted(lines, key=lambda entry: entry.place):
            before = _strand(entry, known, followers)
            if before:
                found[entry.hash] = found[before]
            else:
                earlier = found.get(entry.prev, (entry.log,))
                found[entry.hash] = (entry.hash, *earlier[:MOST_BEFORE])
    return found
