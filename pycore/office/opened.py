"""What the office's commands share: one log read and folded, with what does not hold in it."""

from __future__ import annotations

import argparse
import sys
from collections import Counter
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from pathlib import Path

from pycore.desk.contract.checked import checked
from pycore.journal.amend import Standing
from pycore.journal.entry import Entry
from pycore.journal.file import OFFICE
from pycore.journal.merge import FileReport, Merged, merged
from pycore.journal.state import Folded, folded
from pycore.journal.times import moment_of
from pycore.journal.union import Gathered
from pycore.office.files import is_same_file, read_text
from pycore.office.report_times import time_word
from pycore.quantity.fault import Fault
from pycore.sheets.language import Language

# Exit status of table and report, as their help says.
DONE, REFUSED, MISUSED, FORKED = 0, 1, 2, 3
EXIT_STATUS = """Exit status: 0 done; 1 the log could not be read or the output not written;
2 misused, nothing was written; 3 done, but two lines claim
one place in a log (merge tells which)."""
NOW_HELP = (
    "the time at which the log is looked at, as 2026-11-25T06:30:00+01:00; by default that of the "
    "latest entry. Entries after it are used all the same, since a clock may be wrong, and counted "
    "in what is said"
)


class Refused(Exception):
    """Nothing was written. ``status`` is the exit status, the text is for people."""

    def __init__(self, status: int, text: str) -> None:
        super().__init__(text)
        self.status = status


def status_of(run: Callable[[list[str]], int], arguments: list[str]) -> int:
    """Exit status of a command that may be ``Refused``; the reason goes to standard error."""
    try:
        return run(arguments)
    except Refused as refused:
        if str(refused):
            print(refused, file=sys.stderr)
        return refused.status


@dataclass(frozen=True)
class OpenLog:
    """A log as the office looks at it. now_s: seconds since 1970; now: the same as text."""

    merged: Merged
    folded: Folded
    now: str
    now_s: int

    @property
    def file(self) -> FileReport:
        """What is odd about the file itself."""
        return self.merged.files[0]

    @property
    def status(self) -> int:
        """Exit status of a command that has done what it was asked."""
        return FORKED if self.merged.chains.is_forked else DONE


def say(text: str) -> None:
    """Progress, beside the result: on standard error."""
    print(text, file=sys.stderr, flush=True)


def read_arguments(parser: argparse.ArgumentParser, arguments: list[str]) -> argparse.Namespace:
    """The arguments. Raises ``Refused`` with status 0 after help, 2 after a misuse, empty text."""
    try:
        return parser.parse_args(arguments)
    except SystemExit as left:
        raise Refused(left.code if isinstance(left.code, int) else MISUSED, "") from None


def unseen(error: OSError) -> Refused:
    """For a name that cannot be looked at, with the system's reason: nothing is known of it."""
    text = f"{error.filename} cannot be looked at ({error.strerror}): nothing was written."
    return Refused(REFUSED, text)


def refuse_one_file(one: Path, other: Path, text: str) -> None:
    """Raises ``Refused`` with the text where two names lead to one file, or one of them nowhere."""
    try:
        if is_same_file(one, other):
            raise Refused(MISUSED, text)
    except OSError as error:
        raise unseen(error) from None


def refuse_to_overwrite(source: Path, target: Path) -> None:
    """Raises ``Refused`` where the output is the log itself: nothing may change a log."""
    text = f"{target} is the log itself. Give the output another name."
    refuse_one_file(source, target, text)


def _latest(entries: Iterable[Entry | Standing]) -> tuple[str, int] | None:
    """The time of the latest one as text and in seconds since 1970."""
    last = max(entries, key=lambda entry: (entry.measured_s, entry.place), default=None)
    return None if last is None else (last.measured_at, last.measured_s)


def _folded_as_of(
    union: Gathered, given: tuple[str, int] | None, path: Path
) -> tuple[Folded, str, int]:
    """As of the given time, or of the latest entry that counts: one of a wrong clock may be
    corrected or taken back."""
    last = _latest(entry for entry in union.entries if entry.usable)
    if last is None:
        raise Refused(REFUSED, f"{path}: no entry in it can be read by this version.")
    at, at_s = given or last
    found = folded(union, at_s)
    used = None if given else _latest(entry for entry in found.entries if entry.is_used)
    if used is None or used[1] == at_s:
        return found, at, at_s
    return folded(union, used[1]), *used


def open_log(path: Path, now: str | None) -> OpenLog:
    """Reads and folds one log. Raises ``Refused`` where it cannot be read or is none."""
    say(f"[1/3] reading {path}")
    try:
        text = read_text(path, OFFICE.characters)
        given = None if now is None else (now, moment_of(now, "--now")[0])
    except FileNotFoundError:
        raise Refused(MISUSED, f"{path}: there is no such file.") from None
    except OSError as error:
        raise Refused(REFUSED, f"{path}: could not be read: {error.strerror}") from None
    except Fault as fault:
        status = MISUSED if fault.path == "--now" else REFUSED
        raise Refused(status, f"{path}: {fault.sentence()}") from None
    done = merged([(str(path), text)], checked, OFFICE, given and given[1])
    refused = done.files[0].refused
    if refused is not None:
        raise Refused(REFUSED, f"{path}: refused, {refused.code}: {refused.sentence()}")
    say(f"[2/3] putting {len(done.union.lines):,} lines in order")
    return OpenLog(done, *_folded_as_of(done.union, given, path))


def about_lines(log: OpenLog, language: Language) -> list[str]:
    """What does not hold in the log, in a few lines; empty where all holds."""
    chains, union = log.merged.chains, log.merged.union
    flags = Counter(flag.flag for flag in log.folded.flags)
    counts = {
        "finding_places": len(chains.forks) + len(chains.breaks),
        "finding_gaps": len(chains.gaps),
        "finding_ends": len(chains.missing_heads),
        "finding_newer": sum(entry.is_newer for entry in union.entries),
        "finding_quarantine": len(union.quarantined),
        "finding_clocks": sum(flags[name] for name in ("back", "future")),
    }
    codes = ", ".join(log.file.findings)
    file = [language.say("finding_file", n=codes)] if codes else []
    return [*file, *(language.say(key, n=language.plain(n)) for key, n in counts.items() if n)]


def later_lines(log: OpenLog, language: Language) -> list[str]:
    """How many entries lie after the time at which the log is looked at; empty for none.

    They count: of a clock that is ahead and of a time that is long past the log alone cannot tell
    which it is.
    """
    n = sum(e.is_used and e.measured_s > log.now_s for e in log.folded.entries)
    return (
        [language.say("later", now=time_word(log.now, language), n=language.plain(n))] if n else []
    )


def zone_lines(log: OpenLog, language: Language) -> list[str]:
    """How often a clock's zone changed; empty for never. Summer time is no fault of a log."""
    n = sum(flag.flag == "zone" for flag in log.folded.flags)
    return [language.say("finding_zones", n=language.plain(n))] if n else []
