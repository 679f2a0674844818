"""The recipe slip: the recipe just as it was shown, in big type, for a wet pocket."""

from __future__ import annotations

from dataclasses import dataclass

from pycore.sheets.figures import draw_bucket, draw_caution
from pycore.sheets.language import Language
from pycore.sheets.letters import shortened, size_that_fits_mm, wrapped
from pycore.sheets.paper import Paper, draw_check_lines, draw_foot, foot_height_mm, new_page
from pycore.sheets.svg import Drawing

# Height of one kind of bucket: two amounts that are read from the floor, and boxes to tick.
_ROW_MM = 70.0
# More boxes than this are not ticked; the number alone stands there.
_MOST_BOXES = 12
# Check lines, foot and the sentence above them.
_BELOW_MM = 24.0
_CAUTION_MM = 6.0


@dataclass(frozen=True)
class SlipPart:
    """One amount of a bucket: the key of its word, the amount, and how it is measured."""

    word: str
    amount: str
    note: str = ""


@dataclass(frozen=True)
class SlipPour:
    """Buckets of one kind: how many, and each one's parts in pouring order.

    The shares of water and concentrate in the usable bucket draw it; note tells of the mix.
    """

    count: int
    parts: list[SlipPart]
    water_share: float
    concentrate_share: float
    note: str = ""


@dataclass(frozen=True)
class RecipeSlip:
    """What stands on the slip, amounts already written out as the page showed them.

    before and after are whole sentences, take_out an amount or None, cautions whole sentences.
    """

    name: str
    when: str | None
    before: list[str]
    take_out: str | None
    pours: list[SlipPour]
    after: str
    cautions: list[str]


def recipe_slip(ask: RecipeSlip, paper: Paper, language: Language) -> list[str]:
    """The slip's pages as SVG, each with as many kinds of buckets as it holds in full."""
    slip = _Slip(ask, paper, language)
    slip.before()
    for number, pour in enumerate(ask.pours, 1):
        slip.pour(number, pour)
    slip.after()
    return slip.pages()


class _Slip:
    """The slip while it is being filled from top to bottom."""

    def __init__(self, ask: RecipeSlip, paper: Paper, language: Language) -> None:
        self.ask, self.paper, self.language = ask, paper, language
        self.drawings: list[Drawing] = []
        self.y_mm = 0.0
        self._new_page()

    @property
    def drawing(self) -> Drawing:
        return self.drawings[-1]

    def _room_for(self, height_mm: float) -> None:
        lower_mm = self.drawing.height_mm - foot_height_mm(self.paper) - _BELOW_MM
        if self.y_mm + height_mm > lower_mm:
            self._new_page()

    def _new_page(self) -> None:
        self.drawings.append(new_page(self.paper))
        drawing, wide = self.drawing, self.drawing.width_mm
        drawing.text((0, 6), self.language.say("recipe_slip"), 4.6)
        if self.ask.when:
            drawing.text((wide, 6), shortened(self.ask.when, 4.6, wide / 2), 4.6, anchor="end")
        size_mm = max(8.0, size_that_fits_mm(self.ask.name, 12, wide, True))
        y = 7.0
        for text in wrapped(self.ask.name, size_mm, wide, 2, True):
            y += size_mm * 1.05
            drawing.text((0, y), text, size_mm, True)
        y += 4
        drawing.line((0, y), (wide, y), 0.6)
        self.y_mm = y + 2

    def _sentence(self, text: str, size_mm: float, bold: bool) -> None:
        for line in wrapped(text, size_mm, self.drawing.width_mm, 4, bold):
            self._room_for(size_mm * 1.25)
            self.y_mm += size_mm * 1.25
            self.drawing.text((0, self.y_mm), line, size_mm, bold)

    def before(self) -> None:
        """What was measured, and what has to come out first."""
        for text in self.ask.before:
            self._sentence(text, 5.0, False)
        if self.ask.take_out is not None:
            self.y_mm += 3
            self._sentence(self.language.say("take_out", amount=self.ask.take_out), 9.0, True)
        if not self.ask.pours:
            self.y_mm += 3
            self._sentence(self.language.say("nothing_to_pour"), 9.0, True)
        self.y_mm += 4

    def pour(self, number: int, pour: SlipPour) -> None:
        """One kind of bucket: drawing, big amounts, a box to tick for each."""
        self._room_for(_ROW_MM)
        drawing, wide, y = self.drawing, self.drawing.width_mm, self.y_mm
        drawing.box((0.4, y), (wide - 0.8, _ROW_MM - 4), 0.6, round_mm=2)
        drawing.text((5, y + 10), str(number), 8, True)
        draw_bucket(drawing, (6, y + 17), (29, 37), pour.water_share, pour.concentrate_share)
        key = "buckets_one" if pour.count == 1 else "buckets_many"
        drawing.text((42, y + 10), self.language.say(key, n=str(pour.count)), 7, True)
        left_mm, label_mm = 42.0, 58.0
        for i, part in enumerate(pour.parts):
            line_y = y + 28 + 17.5 * i
            label = self.language.say(part.word)
            drawing.text(
                (left_mm, line_y), label, size_that_fits_mm(label, 7, label_mm, True), True
            )
            room_mm = wide - left_mm - label_mm - 8
            size_mm = size_that_fits_mm(part.amount, 17, room_mm, True)
            drawing.text((left_mm + label_mm + 4, line_y), part.amount, size_mm, True)
            if part.note:
                note_mm = size_that_fits_mm(part.note, 4.2, label_mm)
                drawing.text((left_mm, line_y + 5.6), part.note, note_mm)
        if pour.note:
            note = shortened(pour.note, 4.2, 58)
            drawing.text((wide - 5, y + 10), note, 4.2, anchor="end")
        self._boxes(pour.count, left_mm, y + _ROW_MM - 14)
        self.y_mm += _ROW_MM

    def _boxes(self, count: int, left_mm: float, top_mm: float) -> None:
        if count <= _MOST_BOXES:
            for i in range(count):
                self.drawing.box((left_mm + 11 * i, top_mm), (7, 7), 0.4, round_mm=0.6)

    def after(self) -> None:
        """What is to be expected, and what to take care of."""
        self.y_mm += 2
        wide = self.drawing.width_mm
        self._sentence(self.ask.after, max(5.2, size_that_fits_mm(self.ask.after, 6.4, wide, True)),
                       True)  # fmt: skip
        self.y_mm += 3
        for caution in self.ask.cautions:
            lines = wrapped(caution, 4.8, self.drawing.width_mm - 10, 4)
            self._room_for(_CAUTION_MM * len(lines))
            draw_caution(self.drawing, (2.4, self.y_mm + 4.4), 2.4)
            for line in lines:
                self.y_mm += _CAUTION_MM
                self.drawing.text((8, self.y_mm), line, 4.8)
            self.y_mm += 2

    def pages(self) -> list[str]:
        """All pages, each with check lines and foot."""
        total = len(self.drawings)
        for number, drawing in enumerate(self.drawings, 1):
            y = drawing.height_mm - foot_height_mm(self.paper) - 12
            draw_check_lines(drawing, self.paper, (2, y), upright=False)
            draw_foot(drawing, self.paper, self.language, (number, total))
        return [drawing.svg() for drawing in self.drawings]
