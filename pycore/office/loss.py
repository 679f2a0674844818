"""The log that an output is to replace: no line of it is lost without a word."""

from __future__ import annotations

from bisect import bisect_left
from pathlib import Path

from pycore.desk.contract.checked import checked
from pycore.journal.entry import Entry
from pycore.journal.file import OFFICE, read_file
from pycore.journal.union import Gathered, read_lines
from pycore.office.files import read_text
from pycore.office.opened import MISUSED, REFUSED, Refused
from pycore.quantity.fault import Fault


def lines_at(path: Path) -> list[str]:
    """Lines of the log at the output's place; none where nothing or an empty file is there.

    Raises ``Refused`` where a file is there whose lines cannot be told.
    """
    try:
        text = read_text(path, OFFICE.characters)
        return read_file(text, OFFICE).lines if text else []
    except (FileNotFoundError, NotADirectoryError):
        return []
    except OSError as error:
        why = error.strerror
    except Fault as fault:
        why = f"{fault.code}: {fault.sentence()}"
    text = f"{path} is there and what it holds cannot be told ({why}): nothing was written."
    raise Refused(REFUSED, f"{text} Give the output another name, or remove that file first.")


def _is_held(entry: Entry, held: dict[str, Entry]) -> bool:
    """Whether the new log holds an entry, or the tombstone of it.

    A whole copy does not stand for a tombstone: it would bring back what was taken out.
    """
    new = held.get(entry.hash)
    return new is not None and (new.is_removed or not entry.is_removed)


def _is_cut(damaged: str, lines: list[str]) -> bool:
    """Whether a damaged line is the beginning of one of these, which are sorted."""
    place = bisect_left(lines, damaged)
    return place < len(lines) and lines[place].startswith(damaged)


def refuse_loss(path: Path, old: list[str], new: Gathered) -> None:
    """Raises ``Refused`` where the file at ``path`` holds lines (``lines_at``) that ``new`` lacks.

    So a log grows with each run, and another phone's only copy is never taken for a former run.
    """
    there = set(new.lines)
    entries, damaged = read_lines((line for line in old if line not in there), checked)
    held = {entry.hash: entry for entry in new.entries} if entries else {}
    # A file that was copied half ends in half a line, and the next day's copy has the whole one.
    whole = sorted(there) if damaged else []
    cut = sum(_is_cut(bad.line, whole) for bad in damaged)
    lost = len(damaged) - cut + sum(not _is_held(entry, held) for entry in entries)
    if lost:
        raise Refused(
            MISUSED,
            f"{path} would lose lines, since the new log does not hold them: {lost}. Nothing was "
            "written: only a log whose every line stands in the new one is replaced. Give the "
            "output another name; merge can then put both files together.",
        )
