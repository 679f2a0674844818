"""pycore.office.tabling: python3 -m pycore table."""

import csv
import io
from pathlib import Path

import pytest

from pycore.office.merging import merge_command
from pycore.office.opened import DONE, FORKED, MISUSED, REFUSED
from pycore.office.tabling import table_command
from tests.phones import Phone, pour, setup, workshop
from tests.unit.office.office_logs import logged


def test_table_is_one_for_spreadsheets(tmp_path: Path) -> None:
    phone = Phone("a")
    phone.save("machine_set", {"machine": setup("=1+1")}, 0)
    phone.save("pour", pour(), 60)
    target = tmp_path / "log.csv"
    assert table_command([str(logged(tmp_path, phone)), "-o", str(target)]) == DONE
    text = target.read_text(encoding="utf-8-sig")
    rows = list(csv.DictReader(io.StringIO(text, newline="")))
    assert [row["machine"] for row in rows] == ["'=1+1", "'=1+1"]
    assert rows[1]["buckets"] == "2"


def test_fork_is_told_by_the_exit_status(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    night, _ = workshop()
    twin = night.clone()
    night.save("note", {"text": "Old phone."}, 7000)
    twin.save("note", {"text": "Restored phone."}, 7000)
    (tmp_path / "one.jsonl").write_text(night.export(), encoding="utf-8")
    (tmp_path / "two.jsonl").write_text(twin.export(), encoding="utf-8")
    files = [str(tmp_path / "one.jsonl"), str(tmp_path / "two.jsonl")]
    assert merge_command([*files, "-o", str(tmp_path / "all.jsonl")]) == FORKED
    arguments = [str(tmp_path / "all.jsonl"), "-o", str(tmp_path / "log.csv")]
    assert table_command(arguments) == FORKED
    assert "Places that two different lines claim: " in capsys.readouterr().out
    assert (tmp_path / "log.csv").exists()


@pytest.mark.parametrize(
    ("more", "status"),
    [
        ([], MISUSED),
        (["-o", "all.jsonl"], MISUSED),
        (["-o", "x", "--sqlite", "x"], MISUSED),
        (["-o", "log.csv", "--now", "yesterday"], MISUSED),
        (["-o", "no/log.csv"], REFUSED),
        (["--sqlite", "no/plant.db"], REFUSED),
        (["--unknown"], MISUSED),
        (["--help"], DONE),
    ],
)
def test_misuse_writes_nothing(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, more: list[str], status: int
) -> None:
    log = logged(tmp_path, workshop()[0])
    monkeypatch.chdir(tmp_path)
    before = {path: path.read_bytes() for path in tmp_path.iterdir()}
    assert table_command([str(log), *more]) == status
    assert {path: path.read_bytes() for path in tmp_path.iterdir()} == before


def test_where_the_database_fails_the_table_that_was_written_is_told(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    # "no/plant.db was not written" was all, and log.csv was there.
    log, table = logged(tmp_path, workshop()[0]), tmp_path / "log.csv"
    database = tmp_path / "no" / "plant.db"
    capsys.readouterr()
    assert table_command([str(log), "-o", str(table), "--sqlite", str(database)]) == REFUSED
    said = capsys.readouterr()
    assert f"written: {table}, " in said.out
    assert f"{database} was not written: " in said.err
    assert table.exists()


def test_what_is_no_log_is_refused(tmp_path: Path) -> None:
    foreign = tmp_path / "foreign.txt"
    foreign.write_text("time;machine\n", encoding="utf-8")
    assert table_command([str(foreign), "-o", str(tmp_path / "log.csv")]) == REFUSED
    assert table_command([str(tmp_path / "none"), "-o", str(tmp_path / "log.csv")]) == MISUSED
    assert not (tmp_path / "log.csv").exists()
