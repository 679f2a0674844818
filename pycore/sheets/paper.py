"""The page: paper, margins, the correction for a printer that shrinks, check lines and the foot."""

from __future__ import annotations

from dataclasses import dataclass

from pycore.quantity.fault import Fault
from pycore.quantity.rounding import shown
from pycore.sheets.figures import draw_sign
from pycore.sheets.language import Language
from pycore.sheets.letters import wrapped
from pycore.sheets.svg import Drawing

# Width and height in mm. A4: ISO 216:2007; Letter: 8.5 × 11 in, ANSI/ASME Y14.1.
PAPERS = {"A4": (210.0, 297.0), "Letter": (215.9, 279.4)}
# Printers leave up to 6 mm white and browsers default to about 10; common practice, no source.
MARGIN_MM = 10.0
# Left over inside the margins: a page that is a hair too large makes a browser shrink all of it.
SLACK_MM = 1.0
# A check line this near to 100 mm passes: what a person can tell with a shop rule.
PASSES_MM = 1.0
# Farther off than this a print was shrunk to fit, which is switched off and not corrected.
MOST_OFF_MM = 10.0
CHECK_MM = 100.0
CHECK_IN_MM = 101.6
# Base line of the last line of a page above the page's lower edge.
FOOT_MM = 1.2


@dataclass(frozen=True)
class Paper:
    """Size and direction of the paper, and the factor that makes up for the printer.

    stretch is 1 for a print that comes out true, 100/measured for one that does not.
    """

    name: str
    is_wide: bool = False
    stretch: float = 1.0
    measured_mm: float | None = None

    @property
    def page_mm(self) -> tuple[float, float]:
        """Width and height of the paper as it lies, mm."""
        wide, high = PAPERS[self.name]
        return (high, wide) if self.is_wide else (wide, high)

    @property
    def room_mm(self) -> tuple[float, float]:
        """Width and height of the drawing, mm: the paper without margins and a little slack."""
        wide, high = self.page_mm
        lost_mm = 2 * (MARGIN_MM + SLACK_MM)
        return wide - lost_mm, high - lost_mm


def paper_of(name: str, is_wide: bool, measured_mm: float | None, path: str) -> Paper:
    """The paper of a request; ``measured_mm`` is how long the 100 mm line came out.

    Error: ``out_of_range`` at ``path`` for a line outside 90 to 110 mm: such a print was fitted
    to the page, which has to be switched off. ``KeyError`` for a paper that is not known.

    >>> round(paper_of("A4", False, 97.0, "measured").stretch, 6)
    1.030928
    """
    if measured_mm is None:
        return Paper(name, is_wide)
    if abs(measured_mm - CHECK_MM) > MOST_OFF_MM:
        low_mm, high_mm = CHECK_MM - MOST_OFF_MM, CHECK_MM + MOST_OFF_MM
        limit = {"minimum": low_mm, "maximum": high_mm, "unit": "mm"}
        raise Fault("out_of_range", path, measured_mm, limit)
    return Paper(name, is_wide, CHECK_MM / measured_mm, measured_mm)


def new_page(paper: Paper) -> Drawing:
    """An empty drawing of the paper's room."""
    return Drawing(*paper.room_mm)


def draw_check_lines(
    drawing: Drawing, paper: Paper, corner_mm: tuple[float, float], upright: bool
) -> None:
    """The 100 mm and the 4 in line, from a corner to the right or upwards, ends ticked.

    They lie in the direction of the scale on the sheet, since a printer may stretch the two
    directions differently.
    """
    x, y = corner_mm
    for i, (length_mm, name) in enumerate(((CHECK_MM, "100 mm"), (CHECK_IN_MM, "4 in"))):
        long_mm, off_mm = length_mm * paper.stretch, 8.0 * i

        def at(along_mm: float, across_mm: float, off_mm: float = off_mm) -> tuple[float, float]:
            if upright:
                return x + off_mm + across_mm, y - along_mm
            return x + along_mm, y + off_mm + across_mm

        drawing.line(at(0, 0), at(long_mm, 0), 0.3, mark=name)
        for end_mm in (0.0, long_mm):
            drawing.line(at(end_mm, -1.8), at(end_mm, 1.8), 0.3, mark=f"{name} end")
        drawing.text(at(long_mm / 2, -1.2), name.replace(" ", "\u00a0"), 3.6, True, "middle",
                     turned=upright)  # fmt: skip


def draw_foot(
    drawing: Drawing, paper: Paper, language: Language, page: tuple[int, int], left_mm: float = 0.0
) -> None:
    """The foot: sign and name, page of pages, and above them what was corrected for."""
    y = drawing.height_mm - FOOT_MM
    draw_sign(drawing, (left_mm, y - 3.3), 3.8)
    drawing.text((left_mm + 5.2, y), language.say("made_by"), 3.2, True)
    number, total = page
    if total > 1:
        said = language.say("page", n=str(number), total=str(total))
        drawing.text((drawing.width_mm, y), said, 3.2, anchor="end")
    if paper.measured_mm is not None:
        length = language.amount(shown(paper.measured_mm, "mm", 1))
        said = language.say("corrected", length=length)
        lines = wrapped(said, 3.2, drawing.width_mm - left_mm, 3)
        for i, line in enumerate(lines):
            drawing.text((left_mm, y - 5.4 - 4.0 * (len(lines) - 1 - i)), line, 3.2)


def foot_height_mm(paper: Paper) -> float:
    """Height that the foot takes from a page, mm; more where a correction is written down."""
    return 6.5 if paper.measured_mm is None else 10.5
