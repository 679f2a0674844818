"""The machine card: what a person needs at this machine, to be laminated and hung there."""

from __future__ import annotations

from dataclasses import dataclass

from pycore.sheets.code import shown_code
from pycore.sheets.figures import draw_caution, draw_section
from pycore.sheets.language import Language
from pycore.sheets.letters import shortened, size_for_words_mm, size_that_fits_mm, wrapped
from pycore.sheets.paper import Paper, draw_check_lines, draw_foot, foot_height_mm, new_page
from pycore.sheets.qr import LEAST_SQUARE_MM, QUIET_SQUARES, link_of, square_code
from pycore.sheets.svg import Drawing

# A square code is at least this wide: a tenth of the arm's length it is scanned from, and more.
_CODE_MM = 38.0
_INSET_MM = 6.0
# Few lines of large type, or more lines of smaller type for a long name.
_NAME_SIZES = ((2, 13.0), (3, 9.5), (4, 7.5))


@dataclass(frozen=True)
class MachineCard:
    """What stands on the card, amounts already written out; None leaves a line for the pen.

    facts are pairs of a word's key and the amount; full_share is the full mark as a share of the
    rim's depth, full_depth the mark itself; is_true_running says that it holds while the pump runs.
    """

    name: str
    code: str
    address: str
    facts: list[tuple[str, str | None]]
    full_share: float
    full_depth: str
    is_true_running: bool = False


def machine_card(ask: MachineCard, paper: Paper, language: Language) -> list[str]:
    """The card's one page as SVG."""
    drawing = new_page(paper)
    wide = drawing.width_mm
    right_mm = wide - _INSET_MM
    side_mm = _square_code(drawing, ask, right_mm)
    name_room_mm = side_mm - 2 * _INSET_MM - 4
    y = _name(drawing, ask.name, language, name_room_mm)
    facts_bottom_mm = _facts(drawing, ask, language, y + 1.5, side_mm - _INSET_MM)
    section_mm = (side_mm, _INSET_MM + (right_mm - side_mm) + 22)
    section_high = 40.0
    draw_section(
        drawing, section_mm, (right_mm - side_mm, section_high), ask.full_share, ask.full_depth
    )
    bottom_mm = max(facts_bottom_mm, section_mm[1] + section_high) + 6
    bottom_mm = _cautions(drawing, ask, language, bottom_mm)
    drawing.box((0.4, 0.4), (wide - 0.8, bottom_mm), 0.8, round_mm=3)
    _check(drawing, paper, language, bottom_mm)
    draw_foot(drawing, paper, language, (1, 1))
    return [drawing.svg()]


def _square_code(drawing: Drawing, ask: MachineCard, right_mm: float) -> float:
    """Draws the code at the top right with its signs below; returns its left edge."""
    rows = square_code(link_of(ask.address, ask.code))
    # The light edge may reach into the card's own white margin.
    square_mm = max(LEAST_SQUARE_MM, _CODE_MM / len(rows))
    code_mm = len(rows) * square_mm
    left_mm, top_mm = right_mm - code_mm, _INSET_MM + 1
    drawing.squares((left_mm, top_mm), square_mm, rows)
    text = shown_code(ask.code)
    size_mm = code_mm / (0.61 * len(text))
    at = (left_mm + code_mm / 2, top_mm + code_mm + QUIET_SQUARES * square_mm + size_mm * 0.74)
    drawing.text(at, text, size_mm, True, "middle", mono=True)
    return left_mm


def _name(drawing: Drawing, name: str, language: Language, room_mm: float) -> float:
    y = _INSET_MM + 5.0
    drawing.text((_INSET_MM, y), language.say("machine"), 4.2)
    for most, largest_mm in _NAME_SIZES:
        size_mm = size_for_words_mm(name, largest_mm, 7.0, room_mm, True)
        lines = wrapped(name, size_mm, room_mm, most, True)
        if not lines[-1].endswith("…"):
            break
    for text in lines:
        y += size_mm * 1.08
        drawing.text((_INSET_MM, y), text, size_mm, True)
    y += 5.0
    drawing.line((_INSET_MM, y), (_INSET_MM + room_mm, y), 0.6)
    return y


def _facts(
    drawing: Drawing, ask: MachineCard, language: Language, top_mm: float, right_mm: float
) -> float:
    """The facts, a word and its amount on each line; returns the lower edge."""
    label_mm = 46.0
    room_mm = right_mm - _INSET_MM - label_mm
    y = top_mm
    for key, amount in ask.facts:
        y += 10.4
        label = language.say(key)
        size_mm = size_that_fits_mm(label, 4.4, label_mm - 3)
        drawing.text((_INSET_MM, y), label, size_mm)
        if amount is None:
            drawing.line((_INSET_MM + label_mm, y + 0.8), (right_mm - 6, y + 0.8), 0.25)
            continue
        size_mm = size_that_fits_mm(amount, 6.6, room_mm, True)
        text = shortened(amount, max(size_mm, 4.4), room_mm, True)
        drawing.text((_INSET_MM + label_mm, y), text, max(size_mm, 4.4), True)
    return y + 4


def _cautions(drawing: Drawing, ask: MachineCard, language: Language, top_mm: float) -> float:
    """Cautions between hatched edges, as wide as the card; returns the card's lower edge."""
    wide = drawing.width_mm
    drawing.hatch((0.8, top_mm), (wide - 1.6, 4), 2.0)
    y = top_mm + 5.0
    room_mm = wide - 2 * _INSET_MM - 12
    pump = "card_caution_running" if ask.is_true_running else "card_caution_pump"
    for key in ("card_caution_gloves", "card_caution_eyes", pump, "card_caution_sheet"):
        lines = wrapped(language.say(key), 5.0, room_mm, 2, True)
        draw_caution(drawing, (_INSET_MM + 2.6, y + 4.2), 2.6)
        for text in lines:
            y += 6.0
            drawing.text((_INSET_MM + 9, y), text, 5.0, True)
        y += 2.4
    return y + 2


def _check(drawing: Drawing, paper: Paper, language: Language, top_mm: float) -> None:
    y = drawing.height_mm - foot_height_mm(paper) - 12
    drawing.text((0, top_mm + 7), language.say("cut_and_laminate"), 3.8)
    for text in reversed(wrapped(language.say("check_short"), 3.8, drawing.width_mm, 2)):
        drawing.text((0, y - 6), text, 3.8)
    draw_check_lines(drawing, paper, (2, y), upright=False)
