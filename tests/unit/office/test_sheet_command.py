"""pycore.office.sheet_command: ``python3 -m pycore sheet`` writes files."""

import json
import re
import subprocess
import sys
from pathlib import Path

import pytest

from pycore.office.sheet_command import sheet_command
from tests.unit.desk.sheets.workshop import KINDS, body
from tests.unit.sheets.drawn import root_of, said
from web.build.paths import ROOT


def run(*arguments: str, given: str = "") -> subprocess.CompletedProcess[str]:
    command = [sys.executable, "-m", "pycore", "sheet", *arguments]
    return subprocess.run(
        command, cwd=ROOT, input=given, capture_output=True, text=True, check=False, timeout=60
    )


@pytest.mark.parametrize("kind", KINDS)
def test_files_of_every_sheet(kind: str, tmp_path: Path) -> None:
    request = tmp_path / "request.json"
    request.write_text(json.dumps(body(kind)), encoding="utf-8")
    status, told = sheet_command([str(request), "--to", str(tmp_path / "new" / "out")])
    assert status == 0
    paths = [Path(line) for line in told.splitlines()]
    assert all(path.is_file() for path in paths)
    *pages, file = paths
    assert file.name == f"{kind}.html"
    texts = [path.read_text(encoding="utf-8") for path in pages]
    assert all(root_of(text).tag.endswith("svg") for text in texts)
    assert all(text in file.read_text(encoding="utf-8") for text in texts)


def test_standard_input_paper_and_measured_line(tmp_path: Path) -> None:
    arguments = ["-", "--paper", "Letter", "--measured-100-mm", "97,5", "--to", str(tmp_path)]
    done = run(*arguments, given=json.dumps(body("machine_card")))
    assert (done.returncode, done.stderr) == (0, "")
    file = (tmp_path / "machine_card.html").read_text(encoding="utf-8")
    assert "@page{size:215.9mm 279.4mm" in file
    page = (tmp_path / "machine_card_1.svg").read_text(encoding="utf-8")
    assert "97.5 mm" in said([page])


def test_a_refusal_is_status_1_with_its_reason(tmp_path: Path) -> None:
    done = run("-", "--to", str(tmp_path), given=json.dumps(body("machine_card", code="7K3F-5")))
    assert (done.returncode, done.stdout) == (1, "")
    assert "body.code" in done.stderr
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize(
    "arguments",
    [[], ["a", "b"], ["-", "--to"], ["-", "--colour", "x"], ["-", "--to", "a", "--to", "b"]],
)
def test_misuse_is_status_2(arguments: list[str]) -> None:
    status, told = sheet_command(arguments)
    assert status == 2
    assert told.startswith("usage")


@pytest.mark.parametrize("content", [b"{", b"[]", b"\xff\xfe", None])
def test_a_file_that_cannot_be_read_is_status_2(content: bytes | None, tmp_path: Path) -> None:
    request = tmp_path / "request.json"
    if content is not None:
        request.write_bytes(content)
    status, told = sheet_command([str(request)])
    assert status == 2
    assert "request.json" in told


def test_a_folder_that_cannot_be_written_is_status_2(tmp_path: Path) -> None:
    request = tmp_path / "request.json"
    request.write_text(json.dumps(body("log_sheet")), encoding="utf-8")
    status, told = sheet_command([str(request), "--to", str(request)])
    assert status == 2
    assert told == f"there can be no folder {request} (File exists): nothing was written."


@pytest.fixture
def asked(tmp_path: Path) -> list[str]:
    request = tmp_path / "request.json"
    request.write_text(json.dumps(body("log_sheet")), encoding="utf-8")
    return [str(request), "--to", str(tmp_path)]


@pytest.mark.parametrize(
    ("name", "content"),
    [
        ("log_sheet.html", "<!doctype html><html><head><title>Mine"),
        ("log_sheet_1.svg", '<svg xmlns="http://www.w3.org/2000/svg" width="275mm" height="10mm">'),
    ],
)
def test_a_file_that_is_no_sheet_stays_and_none_is_written(
    name: str, content: str, asked: list[str], tmp_path: Path
) -> None:
    (tmp_path / name).write_text(content, encoding="utf-8")
    there = {path.name for path in tmp_path.iterdir()}
    said = f"{tmp_path / name} is there and is not a sheet of this program: nothing was written. "
    status, told = sheet_command(asked)
    assert (status, told.startswith(said)) == (2, True)
    assert (tmp_path / name).read_text(encoding="utf-8") == content
    assert {path.name for path in tmp_path.iterdir()} == there


@pytest.mark.parametrize("kind", KINDS)
def test_a_sheet_of_a_former_run_is_replaced_on_every_paper(kind: str, tmp_path: Path) -> None:
    request = tmp_path / "request.json"
    request.write_text(json.dumps(body(kind)), encoding="utf-8")
    for paper in ("A4", "Letter", "A4"):
        assert sheet_command([str(request), "--to", str(tmp_path), "--paper", paper])[0] == 0


def test_a_file_that_was_not_written_is_named_and_those_before_it(
    asked: list[str], tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    # The hidden name beside it stood there: nobody had asked for that one.
    real = Path.replace

    def full(path: Path, target: Path) -> Path:
        if target.suffix == ".html":
            raise OSError(28, "No space left on device", str(path))
        return real(path, target)

    monkeypatch.setattr(Path, "replace", full)
    status, told = sheet_command(asked)
    assert status == 1
    first, last = told.splitlines()
    assert first == f"written before: {tmp_path / 'log_sheet_1.svg'}"
    assert last == f"{tmp_path / 'log_sheet.html'} was not written: No space left on device"


def test_help() -> None:
    done = run("--help")
    assert (done.returncode, done.stdout[:5]) == (0, "usage")


def test_language_of_a_sheet(tmp_path: Path) -> None:
    request = tmp_path / "request.json"
    request.write_text(json.dumps(body("machine_card")), encoding="utf-8")
    command = [str(request), "--to", str(tmp_path), "--language"]
    assert sheet_command([*command, "de"])[0] == 0
    card = said([(tmp_path / "machine_card_1.svg").read_text(encoding="utf-8")])
    assert "Handschuhe tragen" in card
    assert "Wear gloves" not in card
    assert not re.search(r"\d\.\d", card)
    assert sheet_command([*command, "en"])[0] == 0
    assert "Wear gloves" in said([(tmp_path / "machine_card_1.svg").read_text(encoding="utf-8")])
    assert sheet_command([*command, "xx"])[0] == 2


@pytest.mark.parametrize("kind", KINDS)
def test_no_decimal_point_on_a_german_sheet(kind: str, tmp_path: Path) -> None:
    request = tmp_path / "request.json"
    request.write_text(json.dumps(body(kind)), encoding="utf-8")
    status, told = sheet_command([str(request), "--to", str(tmp_path), "--language", "de"])
    assert status == 0
    pages = [Path(line) for line in told.splitlines() if line.endswith(".svg")]
    assert not re.findall(r"\d\.\d", said([page.read_text(encoding="utf-8") for page in pages]))
