"""Charts of the report: strength and level over time, what was poured a month. Plain inline SVG.

No charting library: what is drawn is a band, a line and bars; the pure Python ones bring scripts
from outside addresses, the others are many times as large as all of pycore.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from pycore.sheets.svg import escaped

# Sizes in the drawing's own units; the page scales the whole.
_WIDE, _LEFT, _RIGHT, _TOP, _FOOT = 720, 46, 12, 10, 22
_POINT = 4.2
# More points than that lie on each other anyway: their shapes are drawn smaller.
_MANY = 80
# Lines of a grid that can still be read beside one another.
_MOST_LINES = 5


@dataclass(frozen=True)
class Mark:
    """A measured value. at_s: seconds since 1970. state: weak, in_range, strong or empty."""

    at_s: int
    value: float
    u: float = 0.0
    state: str = ""


@dataclass(frozen=True)
class Span:
    """A value that holds from one moment to another: a band's edge, a mark, a rest."""

    from_s: int
    to_s: int
    low: float = 0.0
    high: float = 0.0


@dataclass(frozen=True)
class Trend:
    """One chart over time. ticks: moments with their words, such as the first of a month."""

    name: str
    unit: str
    marks: Sequence[Mark]
    bands: Sequence[Span]
    rests: Sequence[Span]
    start_s: int
    end_s: int
    ticks: Sequence[tuple[int, str]]
    high: int = 190


def _n(length: float) -> str:
    return f"{length:.1f}".removesuffix(".0")


def step_of(span: float, most: int = _MOST_LINES) -> float:
    """A round distance of grid lines, 1, 2 or 5 times a power of ten.

    >>> [step_of(span) for span in (0.9, 4, 12, 180)]
    [0.2, 1.0, 5.0, 50.0]
    """
    size = 1.0
    while size > span / most:
        size /= 10
    while size * 10 <= span / most:
        size *= 10
    return next(factor * size for factor in (1, 2, 5, 10) if factor * size >= span / most)


class _Frame:
    """Where a moment and a value lie in the drawing."""

    def __init__(self, trend: Trend) -> None:
        values = [mark.value + side * mark.u for mark in trend.marks for side in (-1, 1)]
        values += [edge for band in trend.bands for edge in (band.low, band.high)]
        low, high = min(values, default=0.0), max(values, default=1.0)
        self.step = step_of(max(high - low, 1e-6))
        self.low = max(0.0, (low // self.step - 0.5) * self.step)
        self.high = (high // self.step + 1.5) * self.step
        self.trend = trend
        self.floor = trend.high - _FOOT

    def x(self, at_s: float) -> float:
        """From the left edge; what lies outside the time that is shown stays at the edge."""
        start_s, end_s = self.trend.start_s, self.trend.end_s
        share = (at_s - start_s) / max(1, end_s - start_s)
        return _LEFT + min(1.0, max(0.0, share)) * (_WIDE - _LEFT - _RIGHT)

    def y(self, value: float) -> float:
        """From the top."""
        share = (value - self.low) / (self.high - self.low)
        return self.floor - share * (self.floor - _TOP)


def _shape(x: float, y: float, state: str, size: float) -> str:
    """State by shape, colour last: weak hangs, strong stands, in range is a diamond."""
    corners = {
        "weak": ((-1, -0.8), (1, -0.8), (0, 1.1)),
        "strong": ((-1, 0.8), (1, 0.8), (0, -1.1)),
        "in_range": ((0, -1.1), (1, 0), (0, 1.1), (-1, 0)),
    }.get(state, ((-0.6, -0.6), (0.6, -0.6), (0.6, 0.6), (-0.6, 0.6)))
    points = " ".join(f"{_n(x + size * a)},{_n(y + size * b)}" for a, b in corners)
    return f'<polygon class="mark {escaped(state)}" points="{points}"/>'


def _grid(frame: _Frame) -> str:
    trend, parts = frame.trend, []
    right = _WIDE - _RIGHT
    line = int(frame.low / frame.step)
    while line * frame.step <= frame.high + 1e-9:
        value = line * frame.step
        if value >= frame.low - 1e-9:
            y = _n(frame.y(value))
            parts.append(f'<path class="grid" d="M{_LEFT} {y}H{right}"/>')
            parts.append(
                f'<text class="tick" x="{_LEFT - 6}" y="{y}" dy="4" text-anchor="end">'
                f"{value:g}</text>"
            )
        line += 1
    for at_s, word in trend.ticks:
        x = _n(frame.x(at_s))
        parts.append(f'<path class="grid" d="M{x} {_TOP}V{frame.floor}"/>')
        parts.append(
            f'<text class="tick" x="{x}" y="{trend.high - 6}" text-anchor="middle">'
            f"{escaped(word)}</text>"
        )
    return "".join(parts)


def _box(frame: _Frame, span: Span, top: float, foot: float, kind: str) -> str:
    x = frame.x(span.from_s)
    wide = max(1.0, frame.x(span.to_s) - x)
    return (
        f'<rect class="{kind}" x="{_n(x)}" y="{_n(top)}" width="{_n(wide)}" '
        f'height="{_n(max(0.8, foot - top))}"/>'
    )


def _measured(frame: _Frame) -> str:
    marks = frame.trend.marks
    size = _POINT if len(marks) <= _MANY else _POINT * 0.75
    places = [(frame.x(mark.at_s), frame.y(mark.value), mark) for mark in marks]
    line = "L".join(f"{_n(x)} {_n(y)}" for x, y, _ in places)
    parts = [f'<path class="line" d="M{line}"/>'] if places else []
    bars = "".join(
        f"M{_n(x)} {_n(frame.y(max(frame.low, mark.value - mark.u)))}"
        f"V{_n(frame.y(min(frame.high, mark.value + mark.u)))}"
        for x, _, mark in places
        if mark.u
    )
    parts += [f'<path class="doubt" d="{bars}"/>'] if bars else []
    return "".join([*parts, *(_shape(x, y, mark.state, size) for x, y, mark in places)])


def trend_svg(trend: Trend) -> str:
    """The chart as one SVG element; its name says what it shows to whoever cannot see it."""
    frame = _Frame(trend)
    rests = "".join(_box(frame, span, _TOP, frame.floor, "rest") for span in trend.rests)
    bands = "".join(
        _box(frame, band, frame.y(band.high), frame.y(band.low), "band") for band in trend.bands
    )
    unit = f'<text class="tick" x="4" y="{_TOP + 4}">{escaped(trend.unit)}</text>'
    return (
        f'<svg class="chart" viewBox="0 0 {_WIDE} {trend.high}" role="img" '
        f'aria-label="{escaped(trend.name)}">'
        f"{bands}{rests}{_grid(frame)}{unit}{_measured(frame)}</svg>"
    )


def bars_svg(name: str, unit: str, columns: Sequence[tuple[str, float, float]]) -> str:
    """Stacked bars: a word, the lower part and the upper part of each."""
    high = 180
    floor, top = high - _FOOT, _TOP
    most = max((low + up for _, low, up in columns), default=0.0) or 1.0
    step = step_of(most)
    scale = (floor - top) / most
    parts = [f'<text class="tick" x="4" y="{_TOP + 4}">{escaped(unit)}</text>']
    for line in range(int(most / step) + 1):
        y = _n(floor - line * step * scale)
        parts.append(f'<path class="grid" d="M{_LEFT} {y}H{_WIDE - _RIGHT}"/>')
        parts.append(
            f'<text class="tick" x="{_LEFT - 6}" y="{y}" dy="4" text-anchor="end">'
            f"{line * step:g}</text>"
        )
    room = (_WIDE - _LEFT - _RIGHT) / max(1, len(columns))
    for place, (word, low, up) in enumerate(columns):
        x, wide = _LEFT + (place + 0.2) * room, 0.6 * room
        for kind, part, below in (("concentrate", low, 0.0), ("water", up, low)):
            head = floor - (below + part) * scale
            parts.append(
                f'<rect class="{kind}" x="{_n(x)}" y="{_n(head)}" width="{_n(wide)}" '
                f'height="{_n(part * scale)}"/>'
            )
        parts.append(
            f'<text class="tick" x="{_n(x + wide / 2)}" y="{high - 6}" text-anchor="middle">'
            f"{escaped(word)}</text>"
        )
    return (
        f'<svg class="chart" viewBox="0 0 {_WIDE} {high}" role="img" '
        f'aria-label="{escaped(name)}">{"".join(parts)}</svg>'
    )
