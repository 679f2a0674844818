"""Printing for real, and reading the print: vector lines of the PDF, and its picture."""

from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pdfplumber
import pypdfium2
from playwright.sync_api import Page

from pycore.office.sheet_command import drawn_files
from tests.properties.asking import ask
from tests.unit.sheets.drawn import lines

MM = 25.4 / 72
MARGIN_MM = 10.0
# What a good rule can tell, and what the print has to keep.
CLOSE_MM = 0.1


@dataclass(frozen=True)
class Stroke:
    """A straight line of a printed page, mm from its top left corner."""

    x0_mm: float
    y0_mm: float
    x1_mm: float
    y1_mm: float

    @property
    def length_mm(self) -> float:
        """How long it is."""
        return ((self.x1_mm - self.x0_mm) ** 2 + (self.y1_mm - self.y0_mm) ** 2) ** 0.5


def sheet_file(body: dict[str, Any]) -> str:
    """The HTML file that prints a sheet, just as the command writes it."""
    files = drawn_files({"result": ask("draw_sheet", body)})
    return next(content for name, content in files.items() if name.endswith(".html"))


def printed(page: Page, html: str, path: Path) -> Path:
    """The sheet printed to a PDF by the browser, with the paper that the sheet asks for."""
    page.set_content(html)
    page.pdf(path=path, prefer_css_page_size=True, print_background=True)
    return path


def pages_of(path: Path) -> list[tuple[float, float]]:
    """Width and height of each page, mm."""
    with pdfplumber.open(path) as pdf:
        return [(float(page.width) * MM, float(page.height) * MM) for page in pdf.pages]


def strokes_of(path: Path, number: int = 0) -> list[Stroke]:
    """All straight lines of a page as they lie on the paper."""
    with pdfplumber.open(path) as pdf:
        page = pdf.pages[number]
        found = []
        for line in page.lines:
            (x0, y0), (x1, y1) = line["pts"][0], line["pts"][-1]
            found.append(Stroke(*(float(v) * MM for v in (x0, y0, x1, y1))))
        return found


def picture_of(path: Path, number: int = 0, dots_per_inch: float = 200) -> Any:
    """A page as a picture."""
    return pypdfium2.PdfDocument(path)[number].render(scale=dots_per_inch / 72).to_pil()


def place_of(html: str, name: str) -> tuple[float, float, float, float]:
    """Where the drawing says that a named line lies on the paper, mm."""
    svg = html[html.index("<svg") : html.index("</svg>") + 6]
    line = next(line for line in lines(svg) if line.name == name)
    ends = (line.x1_mm, line.y1_mm, line.x2_mm, line.y2_mm)
    x1, y1, x2, y2 = (end + MARGIN_MM for end in ends)
    return x1, y1, x2, y2


def measured(strokes: list[Stroke], place: tuple[float, float, float, float]) -> Stroke:
    """The printed line that lies nearest to a place."""

    def off_mm(stroke: Stroke) -> float:
        ends = (stroke.x0_mm, stroke.y0_mm, stroke.x1_mm, stroke.y1_mm)
        there = sum(abs(a - b) for a, b in zip(ends, place, strict=True))
        back = sum(abs(a - b) for a, b in zip((*ends[2:], *ends[:2]), place, strict=True))
        return min(there, back)

    nearest = min(strokes, key=off_mm)
    assert off_mm(nearest) < 4
    return nearest
