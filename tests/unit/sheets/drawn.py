"""Reading a drawn sheet back: its lines, marks and texts by an XML parser."""

import xml.etree.ElementTree as ElementTree
from dataclasses import dataclass

NAMESPACE = "{http://www.w3.org/2000/svg}"


@dataclass(frozen=True)
class Line:
    """A line that carries a name, in mm of the page."""

    name: str
    x1_mm: float
    y1_mm: float
    x2_mm: float
    y2_mm: float


def root_of(svg: str) -> ElementTree.Element:
    """The parsed file; raises where it is no well-formed XML."""
    return ElementTree.fromstring(svg)


def lines(svg: str) -> list[Line]:
    """Lines with a name, in drawing order."""
    return [
        Line(
            str(line.get("data-mark")),
            *(float(str(line.get(name))) for name in ("x1", "y1", "x2", "y2")),
        )
        for line in root_of(svg).iter(f"{NAMESPACE}line")
        if line.get("data-mark")
    ]


def texts(svg: str) -> list[str]:
    """Every text, in drawing order."""
    return [str(text.text) for text in root_of(svg).iter(f"{NAMESPACE}text")]


def said(pages: list[str]) -> str:
    """All texts of all pages in one, no-break spaces as spaces."""
    return " ".join(text for page in pages for text in texts(page)).replace("\u00a0", " ")
