"""Every command of the office and the file that it is to write."""

import os
import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from tests.phones import Phone, check, id_of, setup
from tests.unit.office.commanded import command
from tests.unit.office.office_logs import logged

WORDS = {
    "merge": "a log of this program",
    "table": "a table of this program",
    "database": "a database of this program",
    "report": "a report of this program",
    "tombstone": "a log of this program",
}
# Command, what stands before the output's name, what stands after it.
COMMANDS = {
    "merge": (["merge", "LOG", "-o"], []),
    "table": (["table", "LOG", "-o"], []),
    "database": (["table", "LOG", "--sqlite"], []),
    "report": (["report", "LOG", "-o"], []),
    "tombstone": (["tombstone", "LOG", id_of("a 2"), "-o"], ["--reason", "asked for"]),
}


@pytest.fixture
def log(tmp_path: Path) -> Path:
    phone = Phone("a")
    phone.save("machine_set", {"machine": setup()}, 0)
    phone.save("check", check(), 60)
    return logged(tmp_path, phone)


def run(kind: str, log: Path, out: Path) -> int:
    before, after = COMMANDS[kind]
    return command(*(str(log) if word == "LOG" else word for word in before), str(out), *after)


@pytest.mark.parametrize("kind", COMMANDS)
def test_a_folder_that_is_not_there_is_told_with_the_name_that_was_asked_for(
    kind: str, log: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    out = tmp_path / "nonexist" / "x.csv"
    capsys.readouterr()
    assert run(kind, log, out) == 1
    said = capsys.readouterr().err
    reason = f"there is no folder {out.parent} (No such file or directory)"
    assert f"{out} was not written: {reason}\n" in said
    assert ".part" not in said


def test_a_link_into_a_folder_that_is_not_there_names_that_folder(
    log: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    link = tmp_path / "link.csv"
    link.symlink_to(tmp_path / "none" / "x.csv")
    assert run("table", log, link) == 1
    said = f"{link} was not written: there is no folder {tmp_path / 'none'} "
    assert said in capsys.readouterr().err


@pytest.mark.parametrize("kind", COMMANDS)
def test_a_file_in_place_of_the_folder_is_told_as_the_system_says_it(
    kind: str, log: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    out = log / "x.csv"
    capsys.readouterr()
    assert run(kind, log, out) == 1
    assert f"{out} was not written: Not a directory\n" in capsys.readouterr().err


@pytest.mark.parametrize("kind", COMMANDS)
def test_a_file_that_is_no_output_of_this_kind_stays(
    kind: str, log: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    out = tmp_path / "mine.txt"
    out.write_text("# Read me\n", encoding="utf-8")
    capsys.readouterr()
    assert run(kind, log, out) == 2
    assert out.read_text(encoding="utf-8") == "# Read me\n"
    said = f"{out} is there and is not {WORDS[kind]}: nothing was written. "
    said += "Give the output another name, or remove that file first.\n"
    assert capsys.readouterr().err.endswith(said)


@pytest.mark.parametrize("kind", COMMANDS)
def test_an_output_of_another_kind_stays(kind: str, log: Path, tmp_path: Path) -> None:
    out = tmp_path / "out"
    other = "report" if kind == "database" else "database"
    assert run(other, log, out) == 0
    before = out.read_bytes()
    assert run(kind, log, out) == 2
    assert out.read_bytes() == before


@pytest.mark.parametrize("kind", COMMANDS)
def test_a_former_output_and_an_empty_file_are_replaced(
    kind: str, log: Path, tmp_path: Path
) -> None:
    out = tmp_path / "out"
    out.write_bytes(b"")
    assert run(kind, log, out) == 0
    first = out.read_bytes()
    assert run(kind, log, out) == 0
    assert out.read_bytes() == first
    assert len(first) > 100


@pytest.mark.parametrize("kind", COMMANDS)
@pytest.mark.parametrize(("name", "reason"), [("loop", "Too many levels"), ("x" * 300, "too long")])
def test_a_name_that_leads_nowhere_is_refused_as_output_and_as_log(
    kind: str, name: str, reason: str, log: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    # A traceback stood there, before anything else was looked at.
    (tmp_path / "loop").symlink_to("loop")
    odd = tmp_path / name
    for given, out in ((log, odd), (odd, tmp_path / "out")):
        capsys.readouterr()
        assert run(kind, given, out) == 1
        (said,) = capsys.readouterr().err.splitlines()
        assert said.startswith(f"{odd} cannot be looked at (")
        assert reason in said
    assert (tmp_path / "loop").is_symlink()
    assert not (tmp_path / "out").exists()


@pytest.mark.parametrize("kind", COMMANDS)
def test_a_folder_that_may_not_be_entered_is_told(
    kind: str,
    log: Path,
    tmp_path: Path,
    capsys: pytest.CaptureFixture[str],
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    odd, real = tmp_path / "closed" / "file", Path.stat

    def closed(path: Path, *, follow_symlinks: bool = True) -> os.stat_result:
        if path == odd:
            raise PermissionError(13, "Permission denied", str(path))
        return real(path, follow_symlinks=follow_symlinks)

    monkeypatch.setattr(Path, "stat", closed)
    for given, out in ((log, odd), (odd, tmp_path / "out")):
        capsys.readouterr()
        assert run(kind, given, out) == 1
        said = f"{odd} cannot be looked at (Permission denied): nothing was written.\n"
        assert capsys.readouterr().err == said


def test_a_report_in_one_language_is_replaced_by_one_in_another(log: Path, tmp_path: Path) -> None:
    out = tmp_path / "report.html"
    for code in ("de", "en", "de"):
        assert command("report", str(log), "-o", str(out), "--language", code) == 0
        assert f'<html lang="{code}">' in out.read_text(encoding="utf-8")


def test_a_page_of_somebody_else_stays(log: Path, tmp_path: Path) -> None:
    out = tmp_path / "index.html"
    out.write_text('<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Mine')
    assert run("report", log, out) == 2
    assert out.read_text().endswith("Mine")


@pytest.mark.parametrize("application_id", [0, 1, -1])
def test_a_database_of_another_program_stays(
    application_id: int, log: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    # Every SQLite file was taken for one of a former run and replaced.
    out = tmp_path / "stock.db"
    with closing(sqlite3.connect(out)) as database:
        database.execute(f"PRAGMA application_id = {application_id}")
        database.execute("CREATE TABLE stock (part TEXT)")
        database.commit()
    before = out.read_bytes()
    assert run("database", log, out) == 2
    assert out.read_bytes() == before
    assert f"{out} is there and is not a database of this program" in capsys.readouterr().err


def test_of_two_outputs_none_is_written_where_one_is_refused(log: Path, tmp_path: Path) -> None:
    table, database = tmp_path / "log.csv", tmp_path / "plant.db"
    database.write_text("not a database")
    assert command("table", str(log), "-o", str(table), "--sqlite", str(database)) == 2
    assert not table.exists()


@pytest.mark.parametrize("kind", COMMANDS)
def test_a_folder_and_what_is_no_file_are_refused(kind: str, log: Path, tmp_path: Path) -> None:
    folder, pipe = tmp_path / "folder", tmp_path / "pipe"
    folder.mkdir()
    os.mkfifo(pipe)
    assert run(kind, log, folder) == 2
    # Nobody writes into it: whoever opened it would wait for ever.
    assert run(kind, log, pipe) == 2
    assert pipe.is_fifo()
