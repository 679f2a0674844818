"""The columns of each kind of entry as a table: name, type, what stands in it, and how it is found.

Numbers are read from what was typed, in the unit of the column's name; what cannot be read as that
number stays empty there, and the typed text stands beside it.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

from pycore.quantity.typed import number_of

_UNITS = ("_cfu_ml", "_mg_l", "_brix", "_pct", "_mm", "_c", "_l")
Cell = str | int | float | None
Content = Mapping[str, Any]


@dataclass(frozen=True)
class Column:
    """One column. type: ``TEXT``, ``INTEGER`` or ``REAL``."""

    name: str
    type: str
    meaning: str
    of: Callable[[Content], Cell]


def _inner(content: Content, path: str) -> Any:
    found: Any = content
    for name in path.split("."):
        found = found.get(name) if isinstance(found, Mapping) else None
    return found


def typed_text(typed: Any) -> str | None:
    """A typed number with its unit as one text; None where there is none.

    >>> typed_text({"text": "4.8", "unit": "Brix"})
    '4.8 Brix'
    """
    if typed is None:
        return None
    return f"{typed['text']} {typed.get('unit') or ''}".strip()


def _text(path: str, meaning: str, name: str = "") -> Column:
    def of(content: Content) -> Cell:
        found = _inner(content, path)
        return None if found is None else str(found)

    return Column(name or path.replace(".", "_"), "TEXT", meaning, of)


def _list(path: str, meaning: str) -> Column:
    return Column(path, "TEXT", meaning, lambda content: " ".join(content.get(path, ())) or None)


def _yes(path: str, meaning: str) -> Column:
    def of(content: Content) -> Cell:
        found = _inner(content, path)
        return None if found is None else int(bool(found))

    return Column(path, "INTEGER", f"{meaning}: 1 yes, 0 no", of)


def _without_unit(name: str) -> str:
    found = next((unit for unit in _UNITS if name.endswith(unit)), "")
    return name.removesuffix(found)


def _number(name: str, path: str, quantity: str, meaning: str) -> tuple[Column, ...]:
    return (
        Column(name, "REAL", meaning, lambda content: number_of(_inner(content, path), quantity)),
        Column(
            f"{_without_unit(name)}_as_typed",
            "TEXT",
            "the same as it was typed",
            lambda content: typed_text(_inner(content, path)),
        ),
    )


def _limits_text(content: Content) -> Cell:
    limits = content.get("look_limits")
    return None if limits is None else json.dumps(limits, ensure_ascii=False, sort_keys=True)


_REMARKS = _text("remarks", "remarks")
_LOT = _text("lot", "lot of the drum")
_DRAW_OFF = _number("draw_off_l", "draw_off", "draw_off_l", "litres taken out")

_CHECK = (
    *_number("dip_mm", "dip.depth", "depth_mm", "dip as a depth, mm"),
    *_number("reading_brix", "reading.shows", "reading_brix", "reading on a Brix scale"),
    *_number("ph", "ph", "ph", "pH"),
    *_number("first_fill_ph", "first_fill_ph", "first_fill_ph", "pH at the first fill, as said"),
    *_number("temperature_c", "temperature", "temperature_c", "temperature of the coolant, °C"),
    *_number("nitrite_mg_l", "nitrite", "nitrite_mg_l", "nitrite, mg/L"),
    *_number("germs_cfu_ml", "dip_slide.germs", "dip_slide_cfu_ml", "dip slide, germs per mL"),
    *_number("yeast_cfu_ml", "dip_slide.yeast", "dip_slide_cfu_ml", "dip slide, yeast per mL"),
    _list("look", "what was seen and smelt"),
    _text("topped_up_with", "water of the last top-ups"),
    _text("level_change", "what explains a level that changed more than the log does"),
    _text("despite", "id of the tag or stop that was seen and checked in spite of"),
    _text("instrument", "id of the instrument"),
    _text("of", "id of the check that this one belongs to"),
    _REMARKS,
)
_SETUP = (
    _text("machine.name", "the machine's name", "name"),
    _text("code", "the machine's code, as on its label"),
    *_number("low_pct", "machine.target.low", "low_pct", "low end of the band, % by volume"),
    *_number("aim_pct", "machine.target.aim", "aim_pct", "aim, % by volume"),
    *_number("high_pct", "machine.target.high", "high_pct", "high end of the band, % by volume"),
    *_number("factor", "machine.fluid.factor", "factor", "refractometer factor, % for one Brix"),
    *_number("full_l", "machine.sump.full_volume", "full_volume_l", "litres at the full mark"),
    *_number("usable_l", "machine.bucket.usable", "usable_l", "litres of a usable bucket"),
    _REMARKS,
)

COLUMNS_OF: Mapping[str, tuple[Column, ...]] = {
    "check": _CHECK,
    "recheck": _CHECK,
    "plan": (
        _text("check", "id of the check that the recipe is for"),
        *_DRAW_OFF,
        _text("way", "which of the other ways was chosen"),
        _REMARKS,
    ),
    "pour": (
        _text("plan", "id of the plan; empty: a top-up without a recipe"),
        _yes("finished", "nothing more is to come"),
        *_DRAW_OFF,
        _text("recheck_due_at", "when a second reading is due"),
        _LOT,
        _yes("looked_even", "mixed to an even look"),
        _REMARKS,
    ),
    "clean_out": (
        _yes("finished", "the machine can run again"),
        *_number("waste_l", "waste", "draw_off_l", "litres of old coolant taken out"),
        _text("waste_note", "where it went"),
        *_number("rinse_l", "rinse", "volume_l", "litres to rinse with"),
        *_number("left_l", "left", "rest_l", "litres that stayed"),
        _text("fluid", "id of the fluid"),
        _LOT,
        _REMARKS,
    ),
    "additive": (
        _text("name", "what was added"),
        Column("amount", "TEXT", "how much, as typed", lambda c: typed_text(c.get("amount"))),
        _text("agreed_with", "who agreed"),
        _REMARKS,
    ),
    "unknown_addition": (_text("what", "what it seems to have been"), _REMARKS),
    "machine_set": _SETUP,
    "fluid_set": (
        _text("fluid", "id of the fluid"),
        _text("definition.name", "name", "name"),
        *_number("factor", "definition.factor", "factor", "refractometer factor, % for one Brix"),
        _LOT,
        _text("opened", "day on which the drum was opened"),
        _REMARKS,
    ),
    "instrument_set": (
        _text("instrument", "id of the instrument"),
        _text("name", "name"),
        _text("shows", "brix, or per_cent where a factor is set inside"),
        _yes("compensates", "corrects for temperature"),
        _REMARKS,
    ),
    "calibration": (
        _text("of", "instrument or sump"),
        _text("instrument", "id of the instrument"),
        Column("zero", "TEXT", "zero in water, as typed", lambda c: typed_text(c.get("zero"))),
        Column("shows", "TEXT", "what it shows, as typed", lambda c: typed_text(c.get("shows"))),
        Column("reference", "TEXT", "of what, as typed", lambda c: typed_text(c.get("reference"))),
        _REMARKS,
    ),
    "machine_state": (
        _text("state", "in_use, watch, on_hold, stopped, clean_out, out_of_service or shutdown"),
        _text("reason", "why"),
        _text("until", "until when"),
        _REMARKS,
    ),
    "shop_set": (
        _text("who_to_ask", "who is responsible for coolant in this shop"),
        Column("look_limits", "TEXT", "own limits, as typed", _limits_text),
        *_number("check_every_d", "check_every_d", "check_every_d", "days from check to check"),
        *_number(
            *("clean_out_every_d", "clean_out_every_d", "clean_out_every_d"),
            "days from clean-out to clean-out",
        ),
        *_number(
            *("most_lost_pct_d", "most_lost_pct_d", "most_lost_pct_d"),
            "what use takes in a day at the most, per cent of the full sump",
        ),
        _REMARKS,
    ),
    "note": (_text("text", "the note"), _text("until", "until when it holds")),
    "correction": (
        _text("corrects", "id of the entry that this one corrects"),
        _text("reason", "why"),
        _text("kind", "kind of the corrected entry"),
    ),
    "withdrawal": (
        _text("retracts", "id of the entry that does not count any more"),
        _text("reason", "why"),
    ),
    "decision": (
        _list("use", "hashes of the lines that count"),
        _list("leave", "hashes of the lines that do not"),
        _text("reason", "why"),
    ),
}


def _row_number(name: str, field: str, quantity: str, meaning: str) -> Column:
    return Column(name, "REAL", meaning, lambda row: number_of(row.get(field), quantity))


BUCKET_COLUMNS = (
    Column("count", "INTEGER", "how many buckets are alike", lambda row: row["count"]),
    _text("kind", "mix, water, concentrate, own_fluid, ready_mix or unknown"),
    _row_number("each_l", "each", "volume_l", "litres of one bucket, where it was said"),
    _row_number("water_l", "water", "volume_l", "water of one bucket, litres"),
    _row_number("concentrate_l", "concentrate", "volume_l", "concentrate of one bucket, litres"),
    _row_number("strength_pct", "strength", "poured_pct", "its strength, % by volume"),
    _yes("about", "remembered or estimated, not measured"),
)
