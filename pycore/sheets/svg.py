"""Drawing in SVG whose unit is one millimetre; every text is escaped, no sign can break out."""

from __future__ import annotations

import re

# Fonts that phones and computers have; nothing is fetched.
_FONT = "system-ui, -apple-system, 'Segoe UI', Roboto, 'DejaVu Sans', Arial, sans-serif"
_MONO = "ui-monospace, 'SF Mono', Consolas, 'DejaVu Sans Mono', monospace"

# What XML 1.0 (section 2.2) does not allow, and signs that turn the direction of what follows.
_UNPRINTABLE = re.compile(
    "[\x00-\x08\x0b\x0c\x0e-\x1f\x7f-\x9f\u200e\u200f\u202a-\u202e\u2066-\u2069\ud800-\udfff\ufffe\uffff]"
)
_ESCAPES = str.maketrans(
    {"&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;", "'": "&#39;", "\t": " ", "\n": " "}
)


# Not the no-break space: a number and its unit stay together where a line is wrapped.
_GAP = re.compile(r"[^\S\u00a0\u202f]+")


def printable(text: str) -> str:
    """The text in one line; a sign that cannot be printed shows as the replacement sign."""
    return _GAP.sub(" ", _UNPRINTABLE.sub("\ufffd", text)).strip()


def escaped(text: str) -> str:
    """The text as XML character data or an attribute's value.

    >>> escaped('<b a="1">&')
    '&lt;b a=&quot;1&quot;&gt;&amp;'
    """
    return _UNPRINTABLE.sub("\ufffd", text).translate(_ESCAPES)


def _n(length_mm: float) -> str:
    # A ten-thousandth of a millimetre, far below what a printer or a ruler can show.
    return f"{length_mm:.4f}".rstrip("0").rstrip(".") if length_mm else "0"


Point = tuple[float, float]


class Drawing:
    """One page's drawing. Lengths in mm from the top left corner; ink is black."""

    def __init__(self, width_mm: float, height_mm: float) -> None:
        self.width_mm = width_mm
        self.height_mm = height_mm
        self._parts: list[str] = []
        self._texts: list[str] = []

    def line(
        self, from_mm: tuple[float, float], to_mm: tuple[float, float], weight_mm: float = 0.25,
        dash: str = "", mark: str = "",
    ) -> None:  # fmt: skip
        """A straight line; ``mark`` names it for whoever measures the print."""
        dashed = f' stroke-dasharray="{escaped(dash)}"' if dash else ""
        named = f' data-mark="{escaped(mark)}"' if mark else ""
        self._parts.append(
            f'<line x1="{_n(from_mm[0])}" y1="{_n(from_mm[1])}" x2="{_n(to_mm[0])}" '
            f'y2="{_n(to_mm[1])}" stroke-width="{_n(weight_mm)}"{dashed}{named}/>'
        )

    def box(
        self, corner_mm: tuple[float, float], size_mm: tuple[float, float],
        weight_mm: float = 0.25, fill: str = "none", round_mm: float = 0.0, dash: str = "",
    ) -> None:  # fmt: skip
        """A rectangle; weight 0 draws no edge."""
        edge = f' stroke-width="{_n(weight_mm)}"' if weight_mm else ' stroke="none"'
        dashed = f' stroke-dasharray="{escaped(dash)}"' if dash else ""
        rounded = f' rx="{_n(round_mm)}"' if round_mm else ""
        self._parts.append(
            f'<rect x="{_n(corner_mm[0])}" y="{_n(corner_mm[1])}" width="{_n(size_mm[0])}" '
            f'height="{_n(size_mm[1])}"{rounded} fill="{escaped(fill)}"{edge}{dashed}/>'
        )

    def shape(
        self, points_mm: list[tuple[float, float]], fill: str = "#000", weight_mm: float = 0.0
    ) -> None:
        """A closed shape."""
        edge = f' stroke-width="{_n(weight_mm)}"' if weight_mm else ' stroke="none"'
        corners = " ".join(f"{_n(x)},{_n(y)}" for x, y in points_mm)
        self._parts.append(f'<polygon points="{corners}" fill="{escaped(fill)}"{edge}/>')

    def hatch(
        self, corner_mm: tuple[float, float], size_mm: tuple[float, float], gap_mm: float = 1.6
    ) -> None:
        """45° hatching of a rectangle, each stroke cut at its edges: no pattern, no clip."""
        (left, top), (wide, high) = corner_mm, size_mm
        strokes = []
        for i in range(1, int((wide + high) / gap_mm) + 1):
            along = i * gap_mm
            start = (left + along, top) if along <= wide else (left + wide, top + along - wide)
            end = (left, top + along) if along <= high else (left + along - high, top + high)
            strokes.append((start, end))
        self.strokes(strokes, 0.18)

    def strokes(self, lines_mm: list[tuple[Point, Point]], weight_mm: float) -> None:
        """Many lines of one weight as one element, which is much shorter."""
        if lines_mm:
            parts = (f"M{_n(a)} {_n(b)}L{_n(c)} {_n(d)}" for (a, b), (c, d) in lines_mm)
            self._parts.append(f'<path d="{"".join(parts)}" stroke-width="{_n(weight_mm)}"/>')

    def squares(
        self, corner_mm: tuple[float, float], side_mm: float, rows: list[list[bool]]
    ) -> None:
        """Black squares of a square code, neighbours in a row joined, so that no seam shows."""
        runs = []
        for i, row in enumerate(rows):
            start = None
            for j, dark in enumerate([*row, False]):
                if dark and start is None:
                    start = j
                elif not dark and start is not None:
                    x, y = corner_mm[0] + start * side_mm, corner_mm[1] + i * side_mm
                    wide = (j - start) * side_mm
                    runs.append(f"M{_n(x)} {_n(y)}h{_n(wide)}v{_n(side_mm)}h{_n(-wide)}z")
                    start = None
        self._parts.append(
            f'<path d="{"".join(runs)}" fill="#000" stroke="none" shape-rendering="crispEdges"/>'
        )

    def text(
        self, at_mm: tuple[float, float], text: str, size_mm: float, bold: bool = False,
        anchor: str = "start", turned: bool = False, mono: bool = False, fill: str = "#000",
    ) -> None:  # fmt: skip
        """One line of text on its base line; ``turned`` reads from bottom to top."""
        x, y = at_mm
        extra = ' font-weight="700"' if bold else ""
        extra += f' text-anchor="{anchor}"' if anchor != "start" else ""
        extra += f' transform="rotate(-90 {_n(x)} {_n(y)})"' if turned else ""
        extra += f' font-family="{_MONO}"' if mono else ""
        extra += f' fill="{fill}"' if fill != "#000" else ""
        self._texts.append(
            f'<text x="{_n(x)}" y="{_n(y)}" font-size="{_n(size_mm)}"{extra}>{escaped(text)}</text>'
        )

    def svg(self) -> str:
        """The whole drawing as one SVG file."""
        wide, high = _n(self.width_mm), _n(self.height_mm)
        # No style sheet: inside a page it would reach the page's own texts.
        return (
            f'<svg xmlns="http://www.w3.org/2000/svg" width="{wide}mm" height="{high}mm" '
            f'viewBox="0 0 {wide} {high}" font-family="{_FONT}">'
            f'<g fill="none" stroke="#000">{"".join(self._parts)}</g>'
            f'<g fill="#000" xml:space="preserve">{"".join(self._texts)}</g></svg>'
        )
