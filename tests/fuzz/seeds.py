"""Where slips start from: every example of the contract, and every value that stands in one.

A log travels as text inside a request. Here its lines are objects, so that a slip meets what
stands in them; ``written`` makes sealed and chained lines of them again.
"""

import json
from collections import defaultdict
from functools import cache
from typing import Any

from pycore.journal.file import Head, write_file
from pycore.journal.line import hash_of, sealed
from pycore.quantity.fault import Fault
from tests.contract import FILES
from tests.examples import files
from web.build.paths import SHARED

# A field under this name holds lines that become text again.
LINES, FILE = "lines", "text"


def _opened(part: Any) -> Any:
    """The request with each line of a log, and each file of lines, as objects."""
    if isinstance(part, dict):
        return {name: _opened(value) for name, value in part.items()}
    if isinstance(part, list):
        return [_opened(value) for value in part]
    if not isinstance(part, str) or '"hash":"' not in part:
        return part
    try:
        lines = [json.loads(line) for line in part.split("\n") if line.startswith('{"id"')]
    except ValueError:
        return part  # a file that is damaged on purpose
    return {"file": lines} if "\n" in part else {"line": lines[0]}


def _lines(entries: list[Any], chained: bool) -> list[str]:
    """Sealed lines; chained ones name the hash of the line before in their own log."""
    ends: dict[Any, str] = {}
    lines = []
    for entry in entries:
        if not isinstance(entry, dict):
            lines.append(json.dumps(entry))
            continue
        log = str(entry.get("log"))
        if chained and "prev" in entry:
            entry = {**entry, "prev": ends.get(log, "")}
        text = json.dumps({name: entry[name] for name in entry if name != "hash"})
        try:
            lines.append(sealed(text))
            ends[log] = hash_of(text)
        except Fault:
            lines.append(text)
    return lines


def _file(entries: list[Any], chained: bool) -> str:
    lines = _lines(entries, chained)
    heads: dict[str, Head] = {}
    for entry, line in zip(entries, lines, strict=True):
        if isinstance(entry, dict) and isinstance(entry.get("log"), str):
            log = entry["log"]
            count = heads[log].count + 1 if log in heads else 1
            heads[log] = Head(log, count, line[-66:-2])
    return write_file(lines, list(heads.values()))


def written(part: Any, chained: bool) -> Any:
    """The request as it is sent."""
    if isinstance(part, dict) and list(part) == ["file"] and isinstance(part["file"], list):
        return _file(part["file"], chained)
    if isinstance(part, dict) and list(part) == ["line"]:
        return _lines([part["line"]], chained=False)[0]
    if isinstance(part, dict):
        return {name: written(value, chained) for name, value in part.items()}
    if isinstance(part, list):
        rows = [list(item) == ["line"] for item in part if isinstance(item, dict)]
        if part and len(rows) == len(part) and all(rows):
            return _lines([item["line"] for item in part], chained)
        return [written(value, chained) for value in part]
    return part


@cache
def examples() -> list[Any]:
    """Every request of ``shared/examples`` that is an object with a known operation."""
    found = []
    for example in files.examples().values():
        request = example["request"]
        if isinstance(request, dict) and "op" in request:
            found.append(_opened(request))
    return found


@cache
def pool() -> dict[str, list[Any]]:
    """What stands under each name in the examples, in a line of each kind, and in the contract."""
    found: dict[str, dict[str, Any]] = defaultdict(dict)

    def look(part: Any) -> None:
        if isinstance(part, list):
            for value in part:
                look(value)
        if isinstance(part, dict):
            for name, value in part.items():
                found[name].setdefault(json.dumps(value, sort_keys=True), value)
                look(value)

    look(examples())
    look(_kinds())
    for file in sorted(FILES):
        _look_for_choices(FILES[file], found)
    return {name: [values[key] for key in sorted(values)] for name, values in found.items()}


def _kinds() -> list[Any]:
    """The first entry of each kind in the example's year."""
    kinds: dict[str, Any] = {}
    for line in (SHARED / "demo" / "year.txt").read_text(encoding="utf-8").split("\n"):
        if line.startswith('{"id"'):
            entry = json.loads(line)
            kinds.setdefault(entry["kind"], entry)
    return list(kinds.values())


def _look_for_choices(part: Any, found: dict[str, dict[str, Any]]) -> None:
    if isinstance(part, list):
        for value in part:
            _look_for_choices(value, found)
    if isinstance(part, dict):
        for name, value in part.items():
            for choice in value.get("enum", []) if isinstance(value, dict) else []:
                found[name].setdefault(json.dumps(choice), choice)
            _look_for_choices(value, found)
