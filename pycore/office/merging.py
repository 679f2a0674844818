"""``python3 -m pycore merge``: exported logs into one file, with a report."""

from __future__ import annotations

import argparse
import sys
from collections import Counter
from collections.abc import Iterator
from pathlib import Path

from pycore.desk.contract.checked import checked
from pycore.journal.file import OFFICE
from pycore.journal.merge import FileReport, Merged, merged
from pycore.journal.times import moment_of
from pycore.journal.union import file_of
from pycore.office.files import files_in, is_same_file, mark_of, read_text, write_whole
from pycore.office.loss import lines_at, refuse_loss
from pycore.office.opened import (
    DONE,
    FORKED,
    MISUSED,
    REFUSED,
    Refused,
    read_arguments,
    status_of,
    unseen,
)
from pycore.office.outputs import LOG, not_written, refuse_foreign
from pycore.quantity.fault import Fault

# Lines of one sort that are listed one by one; the rest is counted.
MOST_LISTED = 20

_HELP = """Puts exported logs together. Nothing that stands in an input is left out, and no input is
changed. The output does not depend on the order of the inputs.

Example:
  python3 -m pycore merge phones/ old.jsonl -o all.jsonl --now "$(date -Iseconds)"

Exit status: 0 done; 1 a file could not be read or written, the others were merged; 2 misused,
nothing was written; 3 done, but two different lines claim one place in a log."""


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="python3 -m pycore merge",
        description=_HELP,
        formatter_class=argparse.RawDescriptionHelpFormatter,
    )
    parser.add_argument("inputs", nargs="+", type=Path, metavar="FILE", help="file or folder")
    parser.add_argument("-o", "--output", required=True, type=Path, metavar="OUT")
    parser.add_argument(
        "--now",
        metavar="MOMENT",
        help="this computer's time, as 2026-11-25T06:30:00+01:00: finds clocks that were wrong",
    )
    return parser


def _inputs(wanted: list[Path], output: Path) -> list[Path]:
    """Every input file once. Raises ``ValueError`` where the output is one of them, ``OSError``."""
    found: dict[Path, Path] = {}
    for place in wanted:
        for path in files_in(place):
            if is_same_file(path, output):
                raise ValueError(f"{output} is one of the inputs. Give the output another name.")
            found.setdefault(path.resolve(), path)
    return list(found.values())


class _Reading:
    """Reads the files one after the other, says so, and notes those that cannot be read."""

    def __init__(self, paths: list[Path]) -> None:
        self.paths = paths
        self.unread: list[FileReport] = []
        self.failed: list[str] = []

    def __iter__(self) -> Iterator[tuple[str, str]]:
        for place, path in enumerate(self.paths, 1):
            print(f"[{place}/{len(self.paths)}] {path}", file=sys.stderr, flush=True)
            try:
                yield str(path), read_text(path, OFFICE.characters)
            except Fault as fault:
                self.unread.append(FileReport(str(path), refused=fault))
            except OSError as error:
                self.failed.append(f"{path}: could not be read: {error.strerror}")


def _clock(report: FileReport) -> str:
    if not report.ahead_s:
        return ""
    side = "ahead" if report.ahead_s > 0 else "behind"
    return f"; written with a clock {abs(report.ahead_s)} s {side} of --now"


def _about_file(report: FileReport) -> str:
    if report.refused is not None:
        return f"{report.name}: refused, {report.refused.code}: {report.refused.sentence()}"
    parts = [f"{report.added} added", f"{report.known} known"]
    parts += [f"{report.newer} of a newer version"] if report.newer else []
    parts += [f"{report.removed} removed"] if report.removed else []
    parts += [f"{report.quarantined} in quarantine"] if report.quarantined else []
    parts += [f"{report.missing} missing"] if report.missing and report.missing > 0 else []
    found = f" ({', '.join(report.findings)})" if report.findings else ""
    return f"{report.name}: {report.lines} lines, {', '.join(parts)}{found}{_clock(report)}"


def _listed(title: str, lines: list[str]) -> list[str]:
    if not lines:
        return [f"{title}: none"]
    rest = len(lines) - MOST_LISTED
    more = [f"  and {rest} more"] if rest > 0 else []
    return [f"{title}: {len(lines)}", *(f"  {line}" for line in lines[:MOST_LISTED]), *more]


def report_lines(done: Merged) -> list[str]:
    """The report as lines for people: files, forks, gaps, unknown, quarantine, clocks."""
    union, chains = done.union, done.chains
    newer = Counter(f"schema {e.schema}, kind {e.kind}" for e in union.entries if e.is_newer)
    codes = [f"{bad.code} at {bad.path}: {bad.line[:60]!r}" for bad in union.quarantined]
    removed = [f"log {e.log} number {e.seq}" for e in union.entries if e.is_removed]
    forks = [
        f"{'log ' + f.log + ' number ' + str(f.seq) if f.log else 'id ' + f.id}: "
        + " ".join(name[:12] for name in f.hashes)
        for f in chains.forks
    ]
    breaks = [f"log {b.log} number {b.seq} follows another line" for b in chains.breaks]
    ends = [f"log {h.log} number {h.count} {h.head[:12]}" for h in chains.missing_heads]
    return [
        *(_about_file(report) for report in done.files),
        f"lines: {len(union.lines)}, logs: {len({e.log for e in union.entries if e.log})}",
        *_listed("forks", forks + breaks),
        *_listed("gaps", [f"log {g.log} numbers {g.first} to {g.last}" for g in chains.gaps]),
        *_listed("known of but not there", ends),
        *_listed("of a newer version", [f"{kind}: {n}" for kind, n in sorted(newer.items())]),
        *_listed("removed by the office", removed),
        *_listed("in quarantine", codes),
        *_listed("clock flags", [f"log {f.log} number {f.seq}: {f.flag}" for f in done.flags]),
    ]


def _before_reading(wanted: argparse.Namespace) -> tuple[int | None, list[Path]]:
    """Seconds since 1970 of ``--now``, and the input files. Raises ``Refused``."""
    try:
        now_s = None if wanted.now is None else moment_of(wanted.now, "--now")[0]
        return now_s, _inputs(wanted.inputs, wanted.output)
    except FileNotFoundError as missing:
        text = f"{missing.filename}: there is no such file or folder."
        raise Refused(MISUSED, text) from None
    except OSError as error:
        raise unseen(error) from None
    except ValueError as error:
        raise Refused(MISUSED, str(error)) from None


def _run(arguments: list[str]) -> int:
    wanted = read_arguments(_parser(), arguments)
    now_s, paths = _before_reading(wanted)
    refuse_foreign(wanted.output, LOG)
    # Two runs at once must not write over each other unseen: the later one says so and stops.
    before = mark_of(wanted.output)
    old = lines_at(wanted.output)
    reading = _Reading(paths)
    done = merged(reading, checked, OFFICE, now_s)
    done = Merged(done.union, (*done.files, *reading.unread), done.chains, done.flags)
    print("\n".join([*reading.failed, *report_lines(done)]))
    if not done.union.lines:
        raise Refused(REFUSED, "There is no line to write.")
    refuse_loss(wanted.output, old, done.union)
    try:
        write_whole(wanted.output, file_of(done.union), before)
    except OSError as error:
        raise Refused(REFUSED, not_written(wanted.output, error)) from None
    print(f"written: {wanted.output}")
    if done.chains.is_forked:
        return FORKED
    left_out = reading.failed or any(report.refused for report in done.files)
    return REFUSED if left_out else DONE


def merge_command(arguments: list[str]) -> int:
    """Runs ``merge`` and returns the exit status."""
    return status_of(_run, arguments)
