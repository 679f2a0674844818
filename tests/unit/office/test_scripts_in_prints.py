"""Names that are scripts in what the office opens: report, sheets and tables (F45)."""

import csv
import json
import sqlite3
from contextlib import closing
from html.parser import HTMLParser
from pathlib import Path
from typing import Any
from xml.etree import ElementTree

import pytest

from tests.payloads import PAYLOADS
from tests.phones import Phone, check, id_of, setup
from tests.unit.office.commanded import command
from tests.unit.office.office_logs import logged

CARD = {"code": "7k3f-4", "address": "https://depot.example/pailwright/"}
# Signs that would turn the direction of all that follows are shown as what cannot be printed.
PRINTED = {"\u202egnirts \u2066isolated\u2069": "\ufffdgnirts \ufffdisolated\ufffd"}
# Nothing in a report or a printed sheet runs, loads or sends.
FORBIDDEN = {"script", "img", "iframe", "object", "embed", "base", "form", "input", "link", "a"}


class Seen(HTMLParser):
    """Every element, attribute and text of a page, as a browser takes them apart."""

    def __init__(self, text: str) -> None:
        super().__init__(convert_charrefs=True)
        self.tags: set[str] = set()
        self.attributes: set[str] = set()
        self.texts: list[str] = []
        self.feed(text)
        self.close()

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.add(tag)
        self.attributes |= {name for name, _ in attrs}

    def handle_data(self, data: str) -> None:
        self.texts.append(data)


def harmless(text: str) -> str:
    """The words of an HTML file, after a look at what else is in it."""
    seen = Seen(text)
    assert not seen.tags & FORBIDDEN
    assert not {name for name in seen.attributes if name.startswith("on")}
    return "".join(seen.texts)


@pytest.fixture(scope="module")
def log(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A log in which every machine, fluid, person and note is one of the texts."""
    phone = Phone("hostile")
    for number, text in enumerate(PAYLOADS):
        machine, by = id_of(f"hostile {number}"), text[:40]
        typed = setup(text)
        typed["fluid"]["name"] = text
        phone.save("machine_set", {"machine": typed}, number * 600, machine, by=by)
        phone.save("check", check(), number * 600 + 60, machine, by=by)
        phone.save("note", {"text": text}, number * 600 + 120, machine=machine, by=by)
    return logged(tmp_path_factory.mktemp("hostile"), phone)


def test_report(log: Path) -> None:
    out = log.parent / "report.html"
    assert command("report", str(log), "-o", str(out)) == 0
    words = harmless(out.read_text(encoding="utf-8"))
    assert [text for text in PAYLOADS if PRINTED.get(text, text) not in words] == []


def test_tables(log: Path) -> None:
    out, base = log.parent / "table.csv", log.parent / "plant.db"
    assert command("table", str(log), "-o", str(out)) == 0
    with out.open(encoding="utf-8-sig", newline="") as file:
        cells = {cell for row in csv.reader(file) for cell in row}
    assert not [cell for cell in cells if cell.startswith(("=", "+", "@", "\t", "\r"))]
    assert [text for text in PAYLOADS if not {text, f"'{text}"} & cells] == []
    assert command("table", str(log), "--sqlite", str(base)) == 0
    with closing(sqlite3.connect(base)) as opened:
        named = {name for (name,) in opened.execute("SELECT name FROM machines")}
    assert named == set(PAYLOADS)


def _texts(svg: str) -> str:
    return "".join(ElementTree.fromstring(svg).itertext())


@pytest.mark.parametrize("text", PAYLOADS)
def test_sheets(text: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    typed: dict[str, Any] = setup(text)
    typed["fluid"]["name"] = text
    request = {"kind": "machine_card", "paper": "A4", "machine": typed, **CARD}
    (tmp_path / "request").write_text(json.dumps(request), encoding="utf-8")
    status = command("sheet", str(tmp_path / "request"), "--to", str(tmp_path))
    assert status == 0, capsys.readouterr()
    harmless((tmp_path / "machine_card.html").read_text(encoding="utf-8"))
    drawn = _texts((tmp_path / "machine_card_1.svg").read_text(encoding="utf-8"))
    # A name that is too long for its line is cut at its end, and never changed.
    assert PRINTED.get(text, text)[:12] in drawn
