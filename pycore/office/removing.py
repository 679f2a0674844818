"""``python3 -m pycore tombstone``: takes the content of named entries out of a log."""

from __future__ import annotations

import argparse
from pathlib import Path

from pycore.desk.contract.checked import checked
from pycore.journal.entry import Entry, read_line
from pycore.journal.file import OFFICE
from pycore.journal.merge import Merged, merged
from pycore.journal.tombstone import Tombstone, tombstone_of
from pycore.journal.union import file_of, gathered
from pycore.office.files import mark_of, read_text, write_whole
from pycore.office.loss import lines_at, refuse_loss
from pycore.office.opened import (
    DONE,
    FORKED,
    MISUSED,
    REFUSED,
    Refused,
    read_arguments,
    refuse_to_overwrite,
    status_of,
)
from pycore.office.outputs import LOG, not_written, refuse_foreign
from pycore.quantity.fault import Fault

_HELP = """Writes a log in which the named entries have no content any more, where a law demands
that somebody's data is removed. What stays of each is a tombstone: its id, log, number,
predecessor and hash, so that the chains still verify, and the reason. Merged with a whole copy of
the entry the tombstone stays; a phone that takes the file in removes its own copy.

An ID is the 32 digits of an entry, as the table (python3 -m pycore table) has them. A reason is
read by everybody who gets the log: name no person in it. Older backups, printed sheets and phones
that never take the file in still hold the entry; no program can reach those.

Example:
  python3 -m pycore tombstone all.jsonl 3f0c…e1 -o clean.jsonl --reason "asked for by the person"

Exit status: 0 done; 1 the log could not be read, holds no entry of that ID, or the output was not
written; 2 misused, nothing was written; 3 done, but two lines claim one place in the log."""


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="python3 -m pycore tombstone",
        description=_HELP,
        formatter_class=argparse.RawDescriptionHelpFormatter,
    )
    parser.add_argument("log", type=Path, metavar="LOG", help="an export or a merged file")
    parser.add_argument("ids", nargs="+", metavar="ID", help="of an entry")
    parser.add_argument("-o", "--output", required=True, type=Path, metavar="OUT")
    parser.add_argument("--reason", required=True, help="why, in at most 200 characters")
    return parser


def _read(path: Path) -> Merged:
    try:
        done = merged([(str(path), read_text(path, OFFICE.characters))], checked, OFFICE)
    except FileNotFoundError:
        raise Refused(MISUSED, f"{path}: there is no such file.") from None
    except OSError as error:
        raise Refused(REFUSED, f"{path}: could not be read: {error.strerror}") from None
    except Fault as fault:
        raise Refused(REFUSED, f"{path}: {fault.sentence()}") from None
    refused = done.files[0].refused
    if refused is not None:
        raise Refused(REFUSED, f"{path}: refused, {refused.code}: {refused.sentence()}")
    return done


def _tombstone(entry: Entry, reason: str) -> Entry:
    place = Tombstone(entry.id, entry.log, entry.seq, entry.prev, entry.hash)
    try:
        return read_line(tombstone_of(place, reason), checked)
    except Fault as fault:
        raise Refused(MISUSED, f"--reason: {fault.sentence()}") from None


def _copies(entries: tuple[Entry, ...], ids: frozenset[str]) -> list[str]:
    """Ids of corrections that hold the content of a removed entry once more."""
    return [
        entry.id
        for entry in entries
        if entry.usable and entry.body.get("corrects") in ids and entry.id not in ids
    ]


def _run(arguments: list[str]) -> int:
    wanted = read_arguments(_parser(), arguments)
    refuse_to_overwrite(wanted.log, wanted.output)
    refuse_foreign(wanted.output, LOG)
    before = mark_of(wanted.output)
    old = lines_at(wanted.output)
    ids = frozenset(wanted.ids)
    done = _read(wanted.log)
    entries = done.union.entries
    unknown = sorted(ids - {entry.id for entry in entries})
    if unknown:
        raise Refused(REFUSED, f"{wanted.log}: no entry has the ID {', '.join(unknown)}.")
    named = [entry for entry in entries if entry.id in ids and not entry.is_removed]
    stones = [_tombstone(entry, wanted.reason) for entry in named]
    union = gathered([*entries, *stones], done.union.quarantined, done.union.heads)
    refuse_loss(wanted.output, old, union)
    try:
        write_whole(wanted.output, file_of(union), before)
    except OSError as error:
        raise Refused(REFUSED, not_written(wanted.output, error)) from None
    again = len(ids) - len({entry.id for entry in named})
    print(f"removed: {len(stones)}" + (f", removed before: {again}" if again else ""))
    for copy in _copies(entries, ids):
        print(f"{copy} corrects a removed entry and holds a copy: name it as well.")
    print(f"written: {wanted.output}, {len(union.lines)} lines")
    return FORKED if done.chains.is_forked else DONE


def tombstone_command(arguments: list[str]) -> int:
    """Runs ``tombstone`` and returns the exit status."""
    return status_of(_run, arguments)
