"""pycore.office.reporting: python -m pycore report."""

from pathlib import Path

import pytest

from pycore.office.opened import DONE, MISUSED, REFUSED
from pycore.office.reporting import report_command
from tests.phones import Phone, check, setup, workshop
from tests.unit.office.office_logs import logged


def test_report_is_written_and_says_what_it_did(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    target = tmp_path / "report.html"
    assert report_command([str(logged(tmp_path, *workshop())), "-o", str(target)]) == DONE
    said = capsys.readouterr()
    assert "written: " in said.out
    assert "[3/3] Wheel lathe" in said.err
    assert target.read_text(encoding="utf-8").startswith("<!doctype html>")


def test_names_are_escaped(tmp_path: Path) -> None:
    phone = Phone("a")
    phone.save("machine_set", {"machine": setup("<b onclick=x>Lathe")}, 0)
    phone.save("check", check(), 60)
    target = tmp_path / "report.html"
    assert report_command([str(logged(tmp_path, phone)), "-o", str(target)]) == DONE
    page = target.read_text(encoding="utf-8")
    assert "<b onclick" not in page
    assert "&lt;b onclick=x&gt;Lathe" in page


@pytest.mark.parametrize(
    ("more", "status"),
    [
        ([], MISUSED),
        (["-o", "all.jsonl"], MISUSED),
        (["-o", "r.html", "--now", "today"], MISUSED),
        (["-o", "no/r.html"], REFUSED),
        (["--help"], DONE),
    ],
)
def test_misuse_writes_nothing(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, more: list[str], status: int
) -> None:
    log = logged(tmp_path, workshop()[0])
    monkeypatch.chdir(tmp_path)
    before = {path: path.read_bytes() for path in tmp_path.iterdir()}
    assert report_command([str(log), *more]) == status
    assert {path: path.read_bytes() for path in tmp_path.iterdir()} == before
