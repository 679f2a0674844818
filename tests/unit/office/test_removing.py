"""``python3 -m pycore tombstone``: what it writes, what it refuses, what it says."""

import json
from pathlib import Path

import pytest

from pycore.office.merging import merge_command
from pycore.office.removing import tombstone_command
from tests.phones import Phone, check, id_of

REASON = ["--reason", "asked for by the person"]


@pytest.fixture
def log(tmp_path: Path) -> Path:
    """Three entries; the second names somebody, the third corrects it."""
    phone = Phone("a")
    phone.save("check", check(), 0)
    phone.save("check", check("300"), 60, by="PA")
    body = {"corrects": id_of("a 2"), "reason": "x", "kind": "check", "content": check("301")}
    phone.save("correction", body, 120, machine="")
    path = tmp_path / "all.jsonl"
    path.write_text(phone.export())
    return path


def test_the_entry_is_gone_and_its_place_is_there(
    log: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    out = tmp_path / "clean.jsonl"
    before = log.read_text()
    assert tombstone_command([str(log), id_of("a 2"), "-o", str(out), *REASON]) == 0
    said = capsys.readouterr().out
    assert "removed: 1" in said
    assert f"{id_of('a 3')} corrects a removed entry and holds a copy" in said
    lines = out.read_text().split("\n")[1:-1]
    old = before.split("\n")[1:-1]
    assert (lines[0], lines[2]) == (old[0], old[2])
    left, was = json.loads(lines[1]), json.loads(old[1])
    assert all(left[name] == was[name] for name in ("id", "log", "seq", "prev", "hash"))
    assert "by" not in left
    assert log.read_text() == before


def test_the_whole_copy_does_not_come_back(
    log: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    out, merged = tmp_path / "clean.jsonl", tmp_path / "merged.jsonl"
    tombstone_command([str(log), id_of("a 2"), "-o", str(out), *REASON])
    assert merge_command([str(log), str(out), "-o", str(merged)]) == 0
    assert '"PA"' not in merged.read_text()
    said = capsys.readouterr().out
    assert "1 added, 2 known, 1 removed" in said
    assert "removed by the office: 1" in said
    again = tmp_path / "again.jsonl"
    assert tombstone_command([str(merged), id_of("a 2"), "-o", str(again), *REASON]) == 0
    assert "removed: 0, removed before: 1" in capsys.readouterr().out
    assert again.read_text() == merged.read_text()


@pytest.mark.parametrize(
    ("arguments", "status", "said"),
    [
        (["LOG", "f" * 32, "-o", "OUT", *REASON], 1, "no entry has the ID ffff"),
        (["LOG", "ID", "-o", "LOG", *REASON], 2, "is the log itself"),
        (["LOG", "ID", "-o", "OUT", "--reason", " "], 2, "--reason"),
        (["LOG", "ID", "-o", "OUT", "--reason", "x" * 201], 2, "--reason"),
        (["LOG", "ID", "-o", "OUT"], 2, "--reason"),
        (["LOG", "-o", "OUT", *REASON], 2, "ID"),
        (["NONE", "ID", "-o", "OUT", *REASON], 2, "there is no such file"),
        (["LOG", "ID", "-o", "NOWHERE", *REASON], 1, "was not written"),
        (["--help"], 0, ""),
    ],
)
def test_what_is_refused(
    log: Path,
    tmp_path: Path,
    capsys: pytest.CaptureFixture[str],
    arguments: list[str],
    status: int,
    said: str,
) -> None:
    names = {
        "LOG": str(log),
        "ID": id_of("a 2"),
        "OUT": str(tmp_path / "out"),
        "NONE": str(tmp_path / "none"),
        "NOWHERE": str(tmp_path / "no" / "folder"),
    }
    before = log.read_text()
    assert tombstone_command([names.get(part, part) for part in arguments]) == status
    assert said in capsys.readouterr().err
    assert not (tmp_path / "out").exists()
    assert log.read_text() == before
