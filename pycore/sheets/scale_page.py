"""The pages of a scale: strips at the left; title, facts, steps and check lines at the right."""

from __future__ import annotations

from dataclasses import dataclass, field

from pycore.sheets.figures import draw_bucket, draw_section
from pycore.sheets.language import Language
from pycore.sheets.letters import size_for_words_mm, size_that_fits_mm, wrapped
from pycore.sheets.paper import (
    CHECK_IN_MM,
    Paper,
    draw_check_lines,
    draw_foot,
    foot_height_mm,
    new_page,
)
from pycore.sheets.strip import EDGE_MM, TAB_MM, Scale, Strip, pieces_of
from pycore.sheets.svg import Drawing

# Between two strips with their words.
_GAP_MM = 2.0
_MOST_STRIPS = 2
# The side column never gets narrower than this.
_LEAST_SIDE_MM = 50.0
# Heights of the drawings beside the strips.
_TANK_MM = 26.0
_MIX_BUCKET_MM = 17.0
# Sizes of the words as shares of the usual ones; the last is still 2.7 mm high type.
_TYPE_SHARES = (1.0, 0.93, 0.86, 0.79, 0.72)


@dataclass(frozen=True)
class Mix:
    """A bucket drawn beside the strips: its shares of the usable bucket, and lines of words."""

    water_share: float
    concentrate_share: float
    words: list[str]


@dataclass(frozen=True)
class Tank:
    """The tank in section beside the strips: full mark as a share of the rim, and its depth."""

    full_share: float
    full_depth: str


@dataclass(frozen=True)
class Said:
    """What stands beside the strips: title, name, facts, numbered steps, and a drawing."""

    title: str
    name: str
    facts: list[str]
    steps: list[str]
    mixes: list[Mix] = field(default_factory=list)
    tank: Tank | None = None


def scale_pages(scale: Scale, said: Said, paper: Paper, language: Language) -> list[str]:
    """The SVG of every page of a scale."""
    pieces = list(enumerate(pieces_of(scale, paper)))
    strip_mm = scale.width_mm + scale.callout_mm + _GAP_MM
    most = min(_MOST_STRIPS, int((paper.room_mm[0] - _LEAST_SIDE_MM) / strip_mm))
    per_page = min(most, len(pieces))
    groups = [pieces[i : i + per_page] for i in range(0, len(pieces), per_page)]
    longest_mm = max(high - low for _, (low, high) in pieces)
    zero_y = EDGE_MM + TAB_MM + longest_mm * paper.stretch
    side_mm = EDGE_MM + per_page * strip_mm + _GAP_MM
    pages = []
    for number, group in enumerate(groups, 1):
        drawing = new_page(paper)
        for place, (index, piece) in enumerate(group):
            left_mm = EDGE_MM + place * strip_mm
            Strip(drawing, scale, paper, index, piece, left_mm, zero_y).draw()
        _side_drawn(drawing, said, side_mm, _checks_top_mm(drawing, paper) - 3.0)
        _draw_checks(drawing, paper, language, side_mm)
        draw_foot(drawing, paper, language, (number, len(groups)), side_mm)
        pages.append(drawing.svg())
    return pages


def _side_drawn(drawing: Drawing, said: Said, left_mm: float, bottom_mm: float) -> None:
    """Words and figure above the check lines, in type as large as the room allows."""
    for share in _TYPE_SHARES:
        trial = Drawing(drawing.width_mm, drawing.height_mm)
        end_mm = _draw_said(trial, said, left_mm, share)
        if end_mm + _mixes_mm(said, share) <= bottom_mm:
            break
    top_mm = _draw_said(drawing, said, left_mm, share)
    if said.tank is not None and bottom_mm - top_mm >= _TANK_MM + 12:
        corner = (left_mm + 1, (top_mm + bottom_mm - _TANK_MM) / 2)
        size = (min(drawing.width_mm - left_mm - 2, 1.5 * _TANK_MM), _TANK_MM)
        draw_section(drawing, corner, size, said.tank.full_share, said.tank.full_depth)
    _draw_mixes(drawing, said, left_mm, (top_mm, bottom_mm), share)


def _draw_said(drawing: Drawing, said: Said, left_mm: float, share: float) -> float:
    """Draws the words from the top down; returns where they end."""
    room_mm = drawing.width_mm - left_mm
    y = 8.0
    drawing.text((left_mm, y), said.title, size_that_fits_mm(said.title, 8, room_mm, True), True)
    y += 3.2
    drawing.line((left_mm, y), (drawing.width_mm, y), 0.6)
    y += 1.5
    size_mm = size_for_words_mm(said.name, 5.6 * share, 4.4 * share, room_mm, True)
    for text in wrapped(said.name, size_mm, room_mm, 3, True):
        y += 6.4 * share
        drawing.text((left_mm, y), text, size_mm, True)
    y += 3.0 * share
    for fact in said.facts:
        for text in wrapped(fact, 4.0 * share, room_mm, 4):
            y += 5.0 * share
            drawing.text((left_mm, y), text, 4.0 * share)
        y += 1.0 * share
    y += 3.0 * share
    for number, step in enumerate(said.steps, 1):
        drawing.text((left_mm, y + 4.8 * share), str(number), 4.0 * share, True)
        for text in wrapped(step, 3.8 * share, room_mm - 6, 7):
            y += 4.8 * share
            drawing.text((left_mm + 6, y), text, 3.8 * share)
        y += 1.6 * share
    return y


def _mixes_mm(said: Said, share: float) -> float:
    """Height that the buckets need: their drawing and up to five lines of words."""
    return _MIX_BUCKET_MM + 5 * 4.8 * share if said.mixes else 0.0


def _draw_mixes(
    drawing: Drawing, said: Said, left_mm: float, free_mm: tuple[float, float], share: float
) -> None:
    """The usual buckets side by side, each with its amounts below."""
    if not said.mixes:
        return
    part_mm = min((drawing.width_mm - left_mm) / len(said.mixes), 46.0)
    spare_mm = max(0.0, free_mm[1] - free_mm[0] - _mixes_mm(said, share))
    y, size_mm = free_mm[0] + min(4.0, spare_mm), 3.8 * share
    for i, mix in enumerate(said.mixes):
        x = left_mm + i * part_mm
        drawing.text((x, y + 4.5), str(i + 1), 5.4, True)
        draw_bucket(drawing, (x + 5.5, y), (18, 15), mix.water_share, mix.concentrate_share)
        words = [
            (text, word is mix.words[-1])
            for word in mix.words
            for text in wrapped(word, size_mm, part_mm - 2, 2, word is mix.words[-1])
        ]
        for j, (text, is_bold) in enumerate(words):
            at = (x, y + _MIX_BUCKET_MM + 3.0 * share + 4.8 * share * j)
            drawing.text(at, text, size_mm, is_bold)


def _checks_top_mm(drawing: Drawing, paper: Paper) -> float:
    return drawing.height_mm - foot_height_mm(paper) - 8.0 - CHECK_IN_MM * paper.stretch


def _draw_checks(drawing: Drawing, paper: Paper, language: Language, left_mm: float) -> None:
    """The check lines upright, as the scales are, with what to do beside them."""
    bottom_mm = drawing.height_mm - foot_height_mm(paper) - 8.0
    draw_check_lines(drawing, paper, (left_mm + 4, bottom_mm), upright=True)
    room_mm = drawing.width_mm - left_mm - 18
    lines = wrapped(language.say("check"), 3.8, room_mm, 14)
    y = _checks_top_mm(drawing, paper) + 4
    for text in lines:
        drawing.text((left_mm + 18, y), text, 3.8)
        y += 5.0
