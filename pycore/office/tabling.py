"""``python3 -m pycore table``: the log as a table for a spreadsheet, and as an SQLite database."""

from __future__ import annotations

import argparse
from pathlib import Path

from pycore.desk.log.state import name_of
from pycore.journal.table import csv_of
from pycore.office.files import write_whole
from pycore.office.opened import (
    EXIT_STATUS,
    MISUSED,
    NOW_HELP,
    REFUSED,
    OpenLog,
    Refused,
    about_lines,
    later_lines,
    open_log,
    read_arguments,
    refuse_one_file,
    refuse_to_overwrite,
    say,
    status_of,
    zone_lines,
)
from pycore.office.outputs import Kind, not_written, refuse_foreign
from pycore.office.plant import tables_of
from pycore.office.report_words import WORDS
from pycore.office.sqlite import APPLICATION_ID, write_database
from pycore.sheets.language import Language

# Spreadsheets take a file for UTF-8 only when it begins with this sign.
_MARK = "\ufeff"
_TABLE = Kind("a table of this program", ((_MARK + csv_of((), {})).encode(),))
# How the files of SQLite begin and where its application id stands, by its own description.
_DATABASE = Kind(
    "a database of this program", (b"SQLite format 3\0",), 68, APPLICATION_ID.to_bytes(4, "big")
)
_HELP = f"""Writes a log as a table for a spreadsheet (-o), as an SQLite database (--sqlite), or as
both. They are for reading only: they are made anew from the log each time, and never read back.

The table has one line for each entry; every cell is quoted, and a text that a spreadsheet would
take for a formula gets an apostrophe before it. The database has one table for each kind of
entry, the table machines with the present state, and the table columns, which explains all others.

Examples:
  python3 -m pycore table all.jsonl -o log.csv
  python3 -m pycore table all.jsonl --sqlite plant.db
  sqlite3 plant.db "SELECT name, strength_state, poured_age_d FROM machines"
  sqlite3 plant.db "SELECT * FROM columns WHERE table_name = 'checks'"

{EXIT_STATUS}"""


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="python3 -m pycore table",
        description=_HELP,
        formatter_class=argparse.RawDescriptionHelpFormatter,
    )
    parser.add_argument("log", type=Path, metavar="LOG", help="an export or a merged file")
    parser.add_argument("-o", "--output", type=Path, metavar="CSV", help="the table")
    parser.add_argument("--sqlite", type=Path, metavar="DB", help="the database")
    parser.add_argument("--now", metavar="MOMENT", help=NOW_HELP)
    return parser


def _write(log: OpenLog, wanted: argparse.Namespace) -> None:
    """Writes and says so at once: where the second one fails, the first one is there."""
    if wanted.output is not None:
        names = {machine.machine: name_of(machine) for machine in log.folded.machines}
        text = _MARK + csv_of(log.folded.entries, names)
        try:
            write_whole(wanted.output, text)
        except OSError as error:
            raise Refused(REFUSED, not_written(wanted.output, error)) from None
        print(f"written: {wanted.output}, {len(log.folded.entries)} entries", flush=True)
    if wanted.sqlite is not None:
        tables = tables_of(log)
        try:
            write_database(wanted.sqlite, tables)
        except OSError as error:
            raise Refused(REFUSED, not_written(wanted.sqlite, error)) from None
        print(f"written: {wanted.sqlite}, {len(tables)} tables")


def _run(arguments: list[str]) -> int:
    wanted = read_arguments(_parser(), arguments)
    kinds = {wanted.output: _TABLE, wanted.sqlite: _DATABASE}
    targets = [path for path in (wanted.output, wanted.sqlite) if path is not None]
    if not targets:
        raise Refused(MISUSED, "Say what to write: -o CSV, --sqlite DB, or both.")
    if len(targets) > 1:
        refuse_one_file(targets[0], targets[1], "The table and the database need two names.")
    for target in targets:
        refuse_to_overwrite(wanted.log, target)
        refuse_foreign(target, kinds[target])
    log = open_log(wanted.log, wanted.now)
    say(f"[3/3] writing {' and '.join(map(str, targets))}")
    words = Language(WORDS)
    for line in (*about_lines(log, words), *later_lines(log, words), *zone_lines(log, words)):
        print(line)
    _write(log, wanted)
    return log.status


def table_command(arguments: list[str]) -> int:
    """Runs ``table`` and returns the exit status."""
    return status_of(_run, arguments)
