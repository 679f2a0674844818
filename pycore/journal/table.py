"""The log as comma-separated values, for people with a spreadsheet. It is never read back.

Source of the rule against formulas: OWASP, CSV Injection. Quoting as in RFC 4180.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Any

from pycore.journal.amend import Standing
from pycore.journal.order import in_order
from pycore.quantity.typed import number_of

_FORMULA = ("=", "+", "-", "@", "\t", "\r", "\n")
_TEXTS = ("measured_at", "machine", "kind", "by", "standing", "log", "number", "id")
# Column -> where the typed number stands in the content, and which quantity it is.
_NUMBERS: Mapping[str, tuple[tuple[str, ...], str]] = {
    "dip_mm": (("dip", "depth"), "depth_mm"),
    "reading_brix": (("reading", "shows"), "reading_brix"),
    "ph": (("ph",), "ph"),
    "temperature_c": (("temperature",), "temperature_c"),
    "nitrite_mg_l": (("nitrite",), "nitrite_mg_l"),
    "germs_cfu_ml": (("dip_slide", "germs"), "dip_slide_cfu_ml"),
}
_AS_TYPED = ("dip", "reading")
_LAST = ("buckets", "poured_as_typed", "look", "remarks")
COLUMNS = (*_TEXTS, *_NUMBERS, *(f"{name}_as_typed" for name in _AS_TYPED), *_LAST)


def text_cell(text: str) -> str:
    """A text as a quoted cell that no spreadsheet takes for a formula.

    >>> text_cell("=1+1")
    '"\\'=1+1"'
    """
    safe = f"'{text}" if text.startswith(_FORMULA) else text
    return '"' + safe.replace('"', '""') + '"'


def _number_cell(content: Mapping[str, Any], column: str) -> str:
    path, quantity = _NUMBERS[column]
    typed: Any = content
    for name in path:
        typed = typed.get(name) if isinstance(typed, Mapping) else None
    number = number_of(typed, quantity)
    # What cannot be read as this number stays in the column of what was typed.
    return '""' if number is None else f'"{number:.10g}"'


def _as_typed(typed: Any) -> str:
    return f"{typed['text']} {typed.get('unit', '')}".strip()


def _row_as_typed(row: Mapping[str, Any]) -> str:
    names = ("kind", "each", "water", "concentrate", "strength")
    parts = [row[n] if n == "kind" else f"{n} {_as_typed(row[n])}" for n in names if n in row]
    about = ["about"] if row.get("about") else []
    return " ".join([f"{row['count']} x", *about, *parts])


def _cells(entry: Standing, names: Mapping[str, str]) -> Iterable[str]:
    content = entry.content
    machine = names.get(entry.machine) or entry.machine
    texts = (entry.measured_at, machine, entry.kind, entry.entry.by, entry.standing)
    for text in (*texts, entry.entry.log, str(entry.entry.seq), entry.id):
        yield text_cell(text)
    for column in _NUMBERS:
        yield _number_cell(content, column)
    for name, inner in (("dip", "depth"), ("reading", "shows")):
        yield text_cell(_as_typed(content[name][inner]) if name in content else "")
    rows = content.get("pours", content.get("charge", []))
    yield f'"{sum(row["count"] for row in rows)}"' if rows else '""'
    yield text_cell("; ".join(_row_as_typed(row) for row in rows))
    yield text_cell(" ".join(content.get("look", [])))
    yield text_cell(str(content.get("text") or content.get("remarks") or ""))


def csv_of(entries: Iterable[Standing], names: Mapping[str, str]) -> str:
    """One line for each entry in order, with what became of it; corrected ones as corrected.

    ``names`` are the machines' names by id. Numbers stand in the unit of their column and are ours;
    every other cell is text. Lines end with CR LF.
    """
    lines = [",".join(text_cell(name) for name in COLUMNS)]
    lines += [",".join(_cells(entry, names)) for entry in in_order(entries)]
    return "".join(f"{line}\r\n" for line in lines)
