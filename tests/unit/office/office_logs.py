"""Logs of phones as one merged file, and a database made of it."""

import sqlite3
from contextlib import closing
from pathlib import Path
from typing import Any

from pycore.office.merging import merge_command
from pycore.office.opened import DONE
from pycore.office.tabling import table_command
from tests.phones import Phone


def logged(place: Path, *phones: Phone) -> Path:
    """The phones' lines as one merged file."""
    for phone in phones:
        (place / f"{phone.title}.jsonl").write_text(phone.export(), encoding="utf-8")
    out = place / "all.jsonl"
    merge_command([*(str(place / f"{phone.title}.jsonl") for phone in phones), "-o", str(out)])
    return out


def database(place: Path, *phones: Phone, now: str = "") -> Path:
    path = place / "plant.db"
    more = ["--now", now] if now else []
    assert table_command([str(logged(place, *phones)), "--sqlite", str(path), *more]) == DONE
    return path


def asked(path: Path, question: str) -> list[Any]:
    with closing(sqlite3.connect(path)) as opened:
        return opened.execute(question).fetchall()
