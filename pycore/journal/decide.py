"""What people decided about lines between which the log itself cannot choose."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterable

from pycore.journal.chain import Fork
from pycore.journal.entry import Entry

Decided = Callable[[frozenset[str]], frozenset[str] | None]


def decisions(entries: Iterable[Entry], disputed: frozenset[str]) -> Decided:
    """A function from lines (by hash) to those of them that count, or None where nobody decided.

    A decision holds for lines that it names, all of them. Inside a log the later one holds;
    decisions of different logs hold only where they agree. Disputed and withdrawn ones do not.
    """
    entries = list(entries)
    withdrawn = {e.body["retracts"] for e in entries if e.kind == "withdrawal" and e.usable}
    about: dict[str, list[Entry]] = defaultdict(list)
    told = [entry for entry in entries if entry.kind == "decision"]
    for entry in sorted(told, key=lambda entry: entry.place):
        if entry.usable and entry.hash not in disputed and entry.id not in withdrawn:
            for name in {*entry.body["use"], *entry.body["leave"]}:
                about[name].append(entry)

    def decided(hashes: frozenset[str]) -> frozenset[str] | None:
        by_log: dict[str, frozenset[str]] = {}
        for entry in about.get(min(hashes, default=""), ()):
            use = frozenset(entry.body["use"])
            if hashes <= use | frozenset(entry.body["leave"]):
                by_log[entry.log] = use & hashes
        answers = set(by_log.values())
        return answers.pop() if len(answers) == 1 else None

    return decided


def unusable(forks: Iterable[Fork], decided: Decided) -> tuple[frozenset[str], frozenset[str]]:
    """Lines of forks that are still open, and lines that a person left out, by hash."""
    open_lines: set[str] = set()
    left_out: set[str] = set()
    for fork in forks:
        lines = frozenset(fork.hashes)
        chosen = decided(lines)
        if chosen is None:
            open_lines |= lines
        else:
            left_out |= lines - chosen
    return frozenset(open_lines), frozenset(left_out)
