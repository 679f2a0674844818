"""Which marks a scale carries: steps of 1, 2 or 5, as fine as can be read at arm's length."""

from __future__ import annotations

import itertools
import math
from collections.abc import Callable
from dataclasses import dataclass

# Two numbers nearer than this run into each other; lines nearer than this run together to the eye
# at arm's length. Common practice on printed rules, no source.
LABEL_GAP_MM = 8.0
LINE_GAP_MM = 1.6
# Into how many parts a step of 1, 2 or 5 is divided, finest first, so that parts are 1, 2 or 5 too.
_PARTS = {1: (10, 5, 2), 2: (10, 4, 2), 5: (10, 5)}
_HAIR = 1e-9


@dataclass(frozen=True)
class Mark:
    """One line of a scale: where (mm from its zero), how much in the scale's unit, its number."""

    at_mm: float
    amount: float
    label: str = ""
    is_half: bool = False


def _multiples(step: float, least: float, top: float) -> range:
    """Which multiples of a step lie from ``least`` to ``top``."""
    return range(math.ceil(least / step - _HAIR), math.floor(top / step + _HAIR) + 1)


def _gap_mm(step: float, least: float, top: float, place: Callable[[float], float]) -> float:
    """The smallest distance of two neighbouring multiples of a step."""
    places = [place(i * step) for i in _multiples(step, least, top)]
    return min((b - a for a, b in itertools.pairwise(places)), default=place(top))


def _steps(step: float, top: float) -> list[tuple[float, int]]:
    """Steps of 1, 2, 5 with their leading digit, none below ``step``, up to the top."""
    exponent = math.floor(math.log10(step)) - 1
    found = []
    while 10.0**exponent <= top * 10:
        found += [(digit * 10.0**exponent, digit) for digit in (1, 2, 5)]
        exponent += 1
    return [(size, digit) for size, digit in found if size >= step * (1 - _HAIR)]


def _number(amount: float, decimals: int, sign: str) -> str:
    return f"{amount:.{decimals}f}".replace(".", sign) if amount else "0"


def marks(
    top: float,
    length_mm: float,
    place: Callable[[float], float],
    least: float = 0.0,
    decimal_sign: str = ".",
) -> list[Mark]:
    """Marks from ``least`` to ``top`` (numbers in the scale's unit, top above least), lowest first.

    ``place`` gives the way from the scale's zero in mm, rising with its argument; ``length_mm`` is
    the place of the top. Numbered lines stand at least LABEL_GAP_MM apart, lines LINE_GAP_MM.

    >>> [mark.label for mark in marks(50, 50.0, lambda amount: amount) if mark.label]
    ['0', '10', '20', '30', '40', '50']
    """
    # Even marks would need this step; uneven ones a coarser one, so the search starts here.
    even = (top - least) * min(1.0, LABEL_GAP_MM / length_mm)
    step, digit = next(
        (
            found
            for found in _steps(even, top)
            if _gap_mm(found[0], least, top, place) >= LABEL_GAP_MM
        ),
        (top, 1),
    )
    parts = next(
        (n for n in _PARTS[digit] if _gap_mm(step / n, least, top, place) >= LINE_GAP_MM), 1
    )
    decimals = max(0, -math.floor(math.log10(step) + _HAIR))
    found = []
    for i in _multiples(step / parts, least, top):
        amount = min(i * step / parts, top)
        label = _number(amount, decimals, decimal_sign) if i % parts == 0 else ""
        is_half = parts % 2 == 0 and i % parts == parts // 2
        found.append(Mark(place(amount), amount, label, is_half))
    return found


# Inches are divided by eight, which the eye still counts at arm's length.
_EIGHTHS = 8
_INCH_MM = 25.4


def ruler(length_mm: float, unit: str) -> list[Mark]:
    """An even ruler: every millimetre with a number each 10, or every 1/8 in with whole inches.

    ``unit`` is a unit of length; whole inches for in and ft, millimetres else.

    >>> [mark.label for mark in ruler(60, "in") if mark.label]
    ['0', '1', '2']
    """
    step_mm, parts = (_INCH_MM / _EIGHTHS, _EIGHTHS) if unit in ("in", "ft") else (1.0, 10)
    per_step = 1 if parts == _EIGHTHS else 10
    found = []
    for i in range(math.floor(length_mm / step_mm + _HAIR) + 1):
        label = str(i // parts * per_step) if i % parts == 0 else ""
        found.append(Mark(i * step_mm, i * step_mm, label, i % parts == parts // 2))
    return found
