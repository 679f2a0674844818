"""Every command of the office and the file that it is to write."""

from pathlib import Path

import pytest

from tests.phones import Phone, check, id_of, setup
from tests.unit.office.commanded import command
from tests.unit.office.office_logs import logged

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


@pytest.mark.parametrize("kind", COMMANDS)
def test_a_file_in_place_of_the_folder_is_told_as_the_system_says_it(
    kind: str, log: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    out = log / "x.csv"
    capsys.readouterr()
    assert run(kind, log, out) == 1
    assert f"{out} was not written: Not a directory\n" in capsys.readouterr().err
