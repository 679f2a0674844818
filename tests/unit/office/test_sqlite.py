"""pycore.office.sqlite: a database that is whole or not there."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from pycore.office.columns import Column
from pycore.office.plant import Row, Table
from pycore.office.sqlite import write_database
from tests.unit.office.office_logs import asked

COLUMNS = (Column("text", "TEXT", "a text", lambda _: None),)


def test_rows_come_back_and_odd_names_break_nothing(tmp_path: Path) -> None:
    path = tmp_path / "plant.db"
    texts = ['a"; DROP TABLE x; --', "ü €", "", "broken \udcff byte"]
    write_database(path, [Table('odd "name"', "", COLUMNS, [[text] for text in texts], ("text",))])
    rows = [text for (text,) in asked(path, 'SELECT * FROM "odd ""name"""')]
    assert rows == [*texts[:3], "broken ? byte"]


def test_a_run_that_breaks_leaves_the_old_database(tmp_path: Path) -> None:
    path = tmp_path / "plant.db"
    write_database(path, [Table("old", "", COLUMNS, [["whole"]])])

    def broken() -> Iterator[Row]:
        yield ["new"]
        raise RuntimeError("power cut")

    with pytest.raises(RuntimeError):
        write_database(path, [Table("new", "", COLUMNS, broken())])
    assert [entry.name for entry in tmp_path.iterdir()] == ["plant.db"]
    assert asked(path, "SELECT * FROM old") == [("whole",)]


def test_trouble_of_sqlite_is_told_as_trouble_with_a_file(tmp_path: Path) -> None:
    twice = [Table("same", "", COLUMNS, []), Table("same", "", COLUMNS, [])]
    with pytest.raises(OSError, match="same"):
        write_database(tmp_path / "plant.db", twice)
    assert list(tmp_path.iterdir()) == []
