"""The log as an SQLite database for people who ask in SQL: rebuilt each time, never read back."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterable, Sequence
from contextlib import closing
from pathlib import Path

from pycore.office.columns import Cell
from pycore.office.files import replaced
from pycore.office.plant import Table

# Tells our databases from those of other programs; stands in the header of the file.
APPLICATION_ID = int.from_bytes(b"Pail", "big")
# Rows that are handed to SQLite at once.
_AT_ONCE = 5_000


def _quoted(name: str) -> str:
    return '"' + name.replace('"', '""') + '"'


def _made(database: sqlite3.Connection, table: Table) -> None:
    columns = ", ".join(f"{_quoted(column.name)} {column.type}" for column in table.columns)
    database.execute(f"CREATE TABLE {_quoted(table.name)} ({columns})")
    for name in table.indexed:
        index, place = _quoted(f"{table.name}_{name}"), _quoted(table.name)
        database.execute(f"CREATE INDEX {index} ON {place} ({_quoted(name)})")


def _filled(database: sqlite3.Connection, table: Table) -> None:
    marks = ", ".join("?" for _ in table.columns)
    insert = f"INSERT INTO {_quoted(table.name)} VALUES ({marks})"
    rows: list[Sequence[Cell]] = []
    for row in table.rows:
        rows.append([_storable(cell) for cell in row])
        if len(rows) == _AT_ONCE:
            database.executemany(insert, rows)
            rows.clear()
    database.executemany(insert, rows)


def _storable(cell: Cell) -> Cell:
    # A lone surrogate stands for a byte that was no UTF-8; SQLite cannot hold it.
    return cell.encode("utf-8", "replace").decode() if isinstance(cell, str) else cell


def write_database(path: Path, tables: Iterable[Table]) -> None:
    """Writes the database beside its place and then gives it its name: the old one or the new one.

    Raises ``OSError`` where it cannot be written, also when SQLite says so.
    """
    with replaced(path) as part:
        try:
            with closing(sqlite3.connect(part)) as database:
                # Nobody reads it before it is whole, and what is cut off is thrown away.
                database.execute("PRAGMA journal_mode = OFF")
                database.execute(f"PRAGMA application_id = {APPLICATION_ID}")
                for table in tables:
                    _made(database, table)
                    _filled(database, table)
                database.commit()
        except sqlite3.Error as error:
            raise OSError(0, str(error)) from error
