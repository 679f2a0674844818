"""pycore.office.reporting: python3 -m pycore report."""

import re
from pathlib import Path

import pytest

from pycore.office.opened import DONE, MISUSED, REFUSED
from pycore.office.reporting import report_command
from tests.phones import Phone, check, setup, workshop
from tests.unit.office.office_logs import logged
from web.build.paths import SHARED


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


def test_german_report_has_german_words_and_decimal_commas(tmp_path: Path) -> None:
    pages = {}
    for code in ("en", "de"):
        target = tmp_path / f"{code}.html"
        year = str(SHARED / "demo" / "year.txt")
        assert report_command([year, "-o", str(target), "--language", code]) == DONE
        pages[code] = target.read_text(encoding="utf-8")
    english, german = pages["en"], pages["de"]
    assert '<html lang="de">' in german
    assert "KSS-Bericht" in german
    assert "9,8\u00a0%" in german
    assert "9.8\u00a0%" in english
    assert ">320,4<" in german
    # 1,127 or 1.127 could be read in two ways.
    assert "1\u202f127" in german
    assert "1\u202f127" in english
    assert "25. Nov. 2026, 06:23" in german
    assert "Nachmessung fällig: 25. Nov. 2026, 06:44" in german
    texts = re.sub(r"<style>.*?</style>|<[^>]*>", "\n", german)
    own = "\n".join(line for line in texts.splitlines() if line.strip() != "Typed 14.0 by mistake.")
    # No number has a point in it, and no English word of the report is left.
    assert re.findall(r"\d\.\d", own) == []
    assert [word for word in ("Readings", "Machine:", "In range", "Too weak") if word in own] == []


def test_what_does_not_hold_is_told_in_german(tmp_path: Path) -> None:
    path, target = tmp_path / "cut.jsonl", tmp_path / "r.html"
    path.write_text(workshop()[0].export()[:-300], encoding="utf-8")
    assert report_command([str(path), "-o", str(target), "--language", "de"]) == DONE
    page = target.read_text(encoding="utf-8")
    assert "Die Datei ist abgeschnitten, beschädigt oder ohne ihren Anfang (cut)" in page
    assert "Jede Zeile des Prüfbuchs ist da" not in page


def test_a_language_that_is_not_there_is_a_misuse(tmp_path: Path) -> None:
    log, target = logged(tmp_path, workshop()[0]), tmp_path / "r.html"
    assert report_command([str(log), "-o", str(target), "--language", "fr"]) == MISUSED
    assert not target.exists()
