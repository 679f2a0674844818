"""A scale as strips of paper: ruler, marks, bands and lines, in pieces that are joined."""

from __future__ import annotations

import math
from dataclasses import dataclass, field

from pycore.sheets.figures import draw_level_sign
from pycore.sheets.ladder import Mark
from pycore.sheets.letters import size_that_fits_mm, wrapped
from pycore.sheets.paper import Paper
from pycore.sheets.svg import Drawing, Point

# Pieces from long to short; the longest that fits on both papers is 250 mm.
PIECES_MM = (250.0, 200.0)
# Above each joint a tab to glue the next piece on.
TAB_MM = 4.0
# Between the drawing's edge and a strip, so that its cut lines are printed whole.
EDGE_MM = 0.6
# Columns of a strip: ruler, numbers, marks, then one column for each band.
NUMBERS_RIGHT_MM = 21.5
MARKS_MM = (22.5, 28.5)
COLUMN_MM = 7.5
# Words beside a strip begin here and are this wide unless the scale wants more.
CALLOUT_MM = 27.0
_CALLOUT_INSET_MM = 4.2
_CALLOUT_SIZE_MM = 3.4
_CALLOUT_LEADING_MM = 4.0
# A line this heavy is a level and carries the level sign.
_LEVEL_WEIGHT_MM = 0.9
# A band's word stands this high in it, and not at all in a band lower than this.
_WORD_MM = (30.0, 6.0)
_HAIR = 1e-6


@dataclass(frozen=True)
class Band:
    """A part of a column, "hatch" or "solid" or "water", mm from the scale's zero."""

    column: int
    low_mm: float
    high_mm: float
    fill: str
    word: str = ""


@dataclass(frozen=True)
class Line:
    """A heavy line across the columns with its words beside the strip."""

    at_mm: float
    title: str
    notes: tuple[str, ...] = ()
    columns: tuple[int, int] = (0, 0)
    weight_mm: float = 0.9


@dataclass(frozen=True)
class Scale:
    """All that stands on a scale, bottom up, lengths in mm from its zero."""

    length_mm: float
    ruler: list[Mark]
    marks: list[Mark]
    unit: str
    ruler_unit: str
    bands: list[Band] = field(default_factory=list)
    lines: list[Line] = field(default_factory=list)
    columns: int = 1
    callout_mm: float = CALLOUT_MM

    @property
    def width_mm(self) -> float:
        """Width of the strip between its cut lines."""
        return MARKS_MM[1] + self.columns * COLUMN_MM


def piece_length_mm(paper: Paper) -> float:
    """Length of a whole piece: 250 mm, or 200 mm where the correction leaves no room for it."""
    room_mm = paper.room_mm[1] - TAB_MM - 2 * EDGE_MM
    return next(length for length in PIECES_MM if length * paper.stretch <= room_mm)


def pieces_of(scale: Scale, paper: Paper) -> list[tuple[float, float]]:
    """Lower and upper end of each piece, mm from the scale's zero, bottom piece first."""
    length_mm = piece_length_mm(paper)
    count = max(1, math.ceil(scale.length_mm / length_mm - _HAIR))
    return [(i * length_mm, min((i + 1) * length_mm, scale.length_mm)) for i in range(count)]


def joint_name(index: int) -> str:
    """Name of the joint above a piece: A to Z, then AA and so on."""
    letter = chr(ord("A") + index % 26)
    return letter if index < 26 else joint_name(index // 26 - 1) + letter


class Strip:
    """One piece of a scale on a page: ``left_mm`` its cut line, ``zero_y_mm`` its lower end."""

    def __init__(
        self, drawing: Drawing, scale: Scale, paper: Paper, index: int, piece: tuple[float, float],
        left_mm: float, zero_y_mm: float,
    ) -> None:  # fmt: skip
        self.drawing, self.scale, self.paper, self.index = drawing, scale, paper, index
        self.low_mm, self.high_mm = piece
        self.left_mm, self.zero_y_mm = left_mm, zero_y_mm

    def y_mm(self, at_mm: float) -> float:
        """Where on the page a place of the scale lies, corrected for the printer."""
        return self.zero_y_mm - (at_mm - self.low_mm) * self.paper.stretch

    def _x(self, across_mm: float) -> float:
        return self.left_mm + across_mm

    def _holds(self, at_mm: float) -> bool:
        return self.low_mm - _HAIR <= at_mm <= self.high_mm + _HAIR

    @property
    def is_last(self) -> bool:
        """Whether no piece follows above."""
        return self.high_mm >= self.scale.length_mm - _HAIR

    def draw(self) -> None:
        """Draws the whole strip."""
        self._bands()
        self._ruler()
        self._marks()
        self._edges()
        self._lines()

    def _label_y(self, at_mm: float, size_mm: float) -> float:
        """Base line of a number centred on its mark, kept inside the strip at both ends."""
        top_mm, bottom_mm = self.y_mm(self.high_mm), self.zero_y_mm
        centred_mm = self.y_mm(at_mm) + size_mm * 0.36
        return min(max(centred_mm, top_mm + size_mm * 0.85), bottom_mm - 0.8)

    def _ruler(self) -> None:
        thin: list[tuple[Point, Point]] = []
        thick: list[tuple[Point, Point]] = []
        for mark in self.scale.ruler:
            if not self._holds(mark.at_mm):
                continue
            long_mm = 4.6 if mark.label else 3.4 if mark.is_half else 2.0
            y = self.y_mm(mark.at_mm)
            (thick if mark.label else thin).append(((self._x(0), y), (self._x(long_mm), y)))
            if mark.label:
                at = (self._x(5.2), self._label_y(mark.at_mm, 2.7))
                self.drawing.text(at, mark.label, 2.7)
        self.drawing.strokes(thin, 0.16)
        self.drawing.strokes(thick, 0.25)

    def _marks(self) -> None:
        left, right = MARKS_MM
        room_mm = NUMBERS_RIGHT_MM - 12.8
        longest = max((mark.label for mark in self.scale.marks), key=len)
        size_mm = size_that_fits_mm(longest, 5.2, room_mm, True)
        for mark in self.scale.marks:
            if not self._holds(mark.at_mm):
                continue
            y = self.y_mm(mark.at_mm)
            start_mm = left if mark.label else left + 2 if mark.is_half else left + 3.4
            name = f"{mark.amount:.9g} {self.scale.unit}"
            weight_mm = 0.5 if mark.label else 0.25
            self.drawing.line((self._x(start_mm), y), (self._x(right), y), weight_mm, mark=name)
            if mark.label:
                at = (self._x(NUMBERS_RIGHT_MM), self._label_y(mark.at_mm, size_mm))
                self.drawing.text(at, mark.label, size_mm, True, "end")

    def _bands(self) -> None:
        for band in self.scale.bands:
            low_mm, high_mm = max(band.low_mm, self.low_mm), min(band.high_mm, self.high_mm)
            if high_mm - low_mm < _HAIR:
                continue
            corner = (self._x(MARKS_MM[1] + band.column * COLUMN_MM), self.y_mm(high_mm))
            size = (COLUMN_MM, (high_mm - low_mm) * self.paper.stretch)
            if band.fill == "hatch":
                self.drawing.hatch(corner, size)
            elif band.fill == "solid":
                self.drawing.box(corner, size, 0, "#000")
            elif band.fill == "water":
                self._water(corner, size)
            if band.word and size[1] >= _WORD_MM[1]:
                # At the same height in each column, so that the words stand in a row.
                low_y = corner[1] + size[1]
                x, y = corner[0] + COLUMN_MM / 2, low_y - min(_WORD_MM[0], size[1] / 2)
                self.drawing.box((x - 2.6, y - 2.8), (5.2, 5.6), 0, "#fff")
                self.drawing.text((x, y + 1.6), band.word, 4.4, True, "middle")

    def _water(self, corner_mm: tuple[float, float], size_mm: tuple[float, float]) -> None:
        x, y = corner_mm
        for i in range(1, int(size_mm[1] / 4) + 1):
            self.drawing.line((x + 1, y + 4 * i), (x + COLUMN_MM - 1, y + 4 * i), 0.2,
                              dash="2.2 1.1")  # fmt: skip

    def _edges(self) -> None:
        top, bottom = self.y_mm(self.high_mm), self.zero_y_mm
        wide = self.scale.width_mm
        draw = self.drawing.line
        for across_mm in (0.0, wide):
            draw((self._x(across_mm), bottom), (self._x(across_mm), top), 0.35)
        draw((self._x(MARKS_MM[1]), bottom), (self._x(MARKS_MM[1]), top), 0.25)
        draw((self._x(0), bottom), (self._x(wide), bottom), 0.35)
        draw((self._x(0), top), (self._x(wide), top), 0.35)
        ends = [] if self.index == 0 else [(bottom, self.index - 1)]
        if not self.is_last:
            ends.append((top, self.index))
            self.drawing.hatch((self._x(0), top - TAB_MM), (wide, TAB_MM), 2.4)
            self.drawing.box((self._x(0), top - TAB_MM), (wide, TAB_MM), 0.25, dash="1.5 1")
        for y, joint in ends:
            name, edge = joint_name(joint), self._x(wide)
            self.drawing.shape([(edge, y), (edge + 3, y - 1.3), (edge + 3, y + 1.3)])
            self.drawing.text((edge + 3.8, y + 1.4 if y < bottom else y), name, 4, True)

    def _lines(self) -> None:
        lines = [line for line in self.scale.lines if self._holds(line.at_mm)]
        lines.sort(key=lambda line: -line.at_mm)
        blocks = [self._words(line) for line in lines]
        tops = self._tops_mm(lines, blocks)
        for line, words, top_mm in zip(lines, blocks, tops, strict=True):
            y = self.y_mm(line.at_mm)
            first, last = line.columns
            left = self._x(MARKS_MM[1] + first * COLUMN_MM)
            right = self._x(MARKS_MM[1] + (last + 1) * COLUMN_MM)
            self.drawing.line((left, y), (right, y), line.weight_mm, mark=line.title)
            if line.weight_mm >= _LEVEL_WEIGHT_MM:
                draw_level_sign(self.drawing, ((left + right) / 2, y), 3.4)
            edge = self._x(self.scale.width_mm)
            self.drawing.line((right, y), (edge + 0.6, y), 0.25)
            self.drawing.line((edge + 0.6, y), (edge + 3.4, top_mm + 1.4), 0.25)
            for i, (text, is_bold) in enumerate(words):
                at = (edge + _CALLOUT_INSET_MM, top_mm + 2.6 + _CALLOUT_LEADING_MM * i)
                self.drawing.text(at, text, _CALLOUT_SIZE_MM, is_bold)

    def _words(self, line: Line) -> list[tuple[str, bool]]:
        """The lines of words beside a line, and whether each is bold."""
        room_mm = self.scale.callout_mm - _CALLOUT_INSET_MM
        size_mm = _CALLOUT_SIZE_MM
        words = [(text, True) for text in wrapped(line.title, size_mm, room_mm, 3, True)]
        for note in line.notes:
            words += [(text, False) for text in wrapped(note, size_mm, room_mm, 4)]
        return words

    def _tops_mm(self, lines: list[Line], blocks: list[list[tuple[str, bool]]]) -> list[float]:
        """Where each block of words begins: at its line, or moved so that none touch."""
        heights = [len(words) * _CALLOUT_LEADING_MM + 0.4 for words in blocks]
        free_mm = self.y_mm(self.high_mm) + (0.0 if self.is_last else 4.0)
        tops = []
        for line, height_mm in zip(lines, heights, strict=True):
            tops.append(max(free_mm, self.y_mm(line.at_mm) - 1.5))
            free_mm = tops[-1] + height_mm
        # The name of a joint stands at the lower end of every piece but the first.
        floor_mm = self.zero_y_mm - (5.5 if self.index else -0.5)
        for i in range(len(tops) - 1, -1, -1):
            tops[i] = min(tops[i], floor_mm - heights[i])
            floor_mm = tops[i]
        return tops
