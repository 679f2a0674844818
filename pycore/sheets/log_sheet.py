"""The empty log sheet: a table for the pen, one line a check, for a shop that wants paper."""

from __future__ import annotations

from dataclasses import dataclass

from pycore.sheets.language import Language
from pycore.sheets.letters import shortened, size_that_fits_mm, width_mm, wrapped
from pycore.sheets.paper import Paper, draw_check_lines, draw_foot, foot_height_mm, new_page
from pycore.sheets.svg import Drawing

# Columns by the key of their word, width in mm (0: what is left) and whether a unit stands below.
_COLUMNS = (
    ("col_date", 25.0), ("col_who", 24.0), ("col_dip", 20.0), ("col_reading", 23.0),
    ("col_strength", 24.0), ("col_water", 20.0), ("col_concentrate", 31.0), ("col_after", 23.0),
    ("col_notes", 0.0),
)  # fmt: skip
_HEAD_MM = 13.0
# A hand with a pen needs 8 to 9 mm a line; common practice of forms, no source.
_LINE_MM = 8.6
# The check lines and the foot, with their distance to the table.
_BELOW_MM = 22.0
# A long name of a coolant may not make the other amounts at the top unreadably small.
_MOST_FACT_SHARE = 0.36


@dataclass(frozen=True)
class LogSheet:
    """What stands at the top and in the columns' heads; None leaves a line for the pen.

    facts are pairs of a word's key and the amount; units belong to the columns of dip, reading,
    strength, water, concentrate and second reading.
    """

    name: str | None
    facts: list[tuple[str, str | None]]
    units: dict[str, str]


def log_sheet(ask: LogSheet, paper: Paper, language: Language) -> list[str]:
    """The sheet's one page as SVG."""
    drawing = new_page(paper)
    top_mm = _head(drawing, ask, language)
    _table(drawing, ask, language, top_mm, drawing.height_mm - foot_height_mm(paper) - _BELOW_MM)
    y = drawing.height_mm - foot_height_mm(paper) - 12
    draw_check_lines(drawing, paper, (2, y), upright=False)
    room_mm = drawing.width_mm - 122
    for i, text in enumerate(wrapped(language.say("log_note"), 3.8, room_mm, 3)):
        drawing.text((122, y - 2 + 5 * i), text, 3.8)
    draw_foot(drawing, paper, language, (1, 1))
    return [drawing.svg()]


def _head(drawing: Drawing, ask: LogSheet, language: Language) -> float:
    wide = drawing.width_mm
    title = language.say("log_sheet")
    drawing.text((0, 8), title, 8, True)
    left_mm = width_mm(title, 8, True) + 6
    if ask.name is None:
        label = language.say("machine")
        drawing.text((left_mm, 8), label, 4.4)
        drawing.line((left_mm + width_mm(label, 4.4) + 3, 8.6), (wide, 8.6), 0.25)
    else:
        size_mm = max(5.0, size_that_fits_mm(ask.name, 8, wide - left_mm, True))
        name = shortened(ask.name, size_mm, wide - left_mm, True)
        drawing.text((wide, 8), name, size_mm, True, "end")
    drawing.line((0, 11), (wide, 11), 0.6)
    most_mm = _MOST_FACT_SHARE * wide
    facts = [
        (language.say(key), amount and shortened(amount, 4.6, most_mm, True))
        for key, amount in ask.facts
    ]
    _facts(drawing, facts)
    return 22.0


def _facts(drawing: Drawing, facts: list[tuple[str, str | None]]) -> None:
    """One line of words and amounts with even gaps, smaller where it would not fit."""
    gap_mm, least_between_mm, wide = 2.0, 5.0, drawing.width_mm
    count = len(facts)
    # At a size of 1 mm; a line for the pen is as long as eight letters are wide.
    ones = [(width_mm(label, 1), width_mm(amount or "0" * 8, 1, True)) for label, amount in facts]
    total = sum(label + amount for label, amount in ones)
    size_mm = min(4.6, (wide - gap_mm * count - least_between_mm * (count - 1)) / total)
    used_mm = total * size_mm + gap_mm * count
    between_mm = min(14.0, (wide - used_mm) / max(1, count - 1))
    x = 0.0
    for (label, amount), (label_one, amount_one) in zip(facts, ones, strict=True):
        drawing.text((x, 17.5), label, size_mm)
        start_mm = x + label_one * size_mm + gap_mm
        end_mm = start_mm + amount_one * size_mm
        if amount is None:
            drawing.line((start_mm, 18.2), (end_mm, 18.2), 0.25)
        else:
            drawing.text((start_mm, 17.5), amount, size_mm, True)
        x = end_mm + between_mm


def _widths_mm(wide_mm: float) -> list[float]:
    left_mm = wide_mm - sum(width for _, width in _COLUMNS)
    return [width or left_mm for _, width in _COLUMNS]


def _table(
    drawing: Drawing, ask: LogSheet, language: Language, top_mm: float, bottom_mm: float
) -> None:
    wide = drawing.width_mm
    lines = int((bottom_mm - top_mm - _HEAD_MM) / _LINE_MM)
    end_mm = top_mm + _HEAD_MM + lines * _LINE_MM
    x = 0.4
    for (key, _), column_mm in zip(_COLUMNS, _widths_mm(wide - 0.8), strict=True):
        word = language.say(key)
        longest = max(word.split(" "), key=len)
        size_mm = size_that_fits_mm(longest, 3.8, column_mm - 2.4, True)
        for i, text in enumerate(wrapped(word, size_mm, column_mm - 2.3, 2, True)):
            drawing.text((x + 1.4, top_mm + 4.6 + 4.2 * i), text, size_mm, True)
        if key in ask.units:
            drawing.text((x + column_mm - 1.4, top_mm + 11.6), ask.units[key], 3.4, anchor="end")
        if x > 1:
            drawing.line((x, top_mm), (x, end_mm), 0.25)
        x += column_mm
    drawing.box((0.4, top_mm), (wide - 0.8, end_mm - top_mm), 0.6)
    drawing.line((0.4, top_mm + _HEAD_MM), (wide - 0.4, top_mm + _HEAD_MM), 0.6)
    for i in range(1, lines):
        y = top_mm + _HEAD_MM + i * _LINE_MM
        drawing.line((0.4, y), (wide - 0.4, y), 0.2)
