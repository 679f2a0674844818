"""How wide a text will be at the most, and how it is wrapped or visibly shortened to fit.

The phone's font is not known here. The widths are those of DejaVu Sans, one of the widest of the
usual system fonts (advance widths of version 2.37, in em, read from the font and grouped upwards),
so a text that fits by this table fits in the others too.
"""

from __future__ import annotations

import re

_GROUPS = {
    "ijl'": 0.28,
    "IJ,. \u00a0\u202f\u2018\u2019\u0142\u00b7": 0.32,
    "f/:;\\|": 0.36,
    "t()-[]": 0.40,
    'r!"': 0.47,
    "sz*_`\u2013\u00b0\u201c\u201d\u201e": 0.53,
    "ckvxyFL?": 0.60,
    "0123456789abdeghnopquEPSTY${}äöüß": 0.64,
    "ABCKRVXZÄ": 0.70,
    "UÜ": 0.74,
    "DGHNOQ&Ö": 0.79,
    "w#+<=>^~\u00d7\u00b1\u2212": 0.84,
    "mMW%@\u2026\u2014": 1.02,
}
_EM = {sign: width for group, width in _GROUPS.items() for sign in group}
# Widest signs of that font up to the end of a script: other Latin, Greek and Cyrillic, and the
# rest, such as Chinese, which fills its square; picture signs come from fonts of their own.
_OTHERS_EM = (("\u036f", 1.02), ("\u058f", 1.08), ("\U0001efff", 1.10))
_PICTURE_EM = 1.5
# What bold adds to each sign at the most.
_BOLD_EM = 0.085


# A line may break behind a hyphen inside a word.
_BREAKS = re.compile(r"(?<=[^-]-)(?=[^-])")


def _em(sign: str) -> float:
    if sign in _EM:
        return _EM[sign]
    return next((em for last, em in _OTHERS_EM if sign <= last), _PICTURE_EM)


def width_mm(text: str, size_mm: float, bold: bool = False) -> float:
    """How wide a text of a font size in mm is at the most, in mm."""
    return (sum(map(_em, text)) + (_BOLD_EM * len(text) if bold else 0.0)) * size_mm


def _fits(text: str, size_mm: float, room_mm: float, bold: bool) -> bool:
    # A size that was made to fit may miss by a float's last digit.
    return width_mm(text, size_mm, bold) <= room_mm * (1 + 1e-9)


def size_that_fits_mm(text: str, size_mm: float, room_mm: float, bold: bool = False) -> float:
    """The size, made smaller where the text would be wider than the room."""
    wide = width_mm(text, size_mm, bold)
    return size_mm if wide <= room_mm else size_mm * room_mm / wide


def shortened(text: str, size_mm: float, room_mm: float, bold: bool = False) -> str:
    """The text, cut with an ellipsis where it does not fit, so that the cut can be seen.

    >>> shortened("Wheel lathe", 4, 18)
    'Wheel…'
    """
    if _fits(text, size_mm, room_mm, bold):
        return text
    while text and not _fits(text + "…", size_mm, room_mm, bold):
        text = text[:-1]
    return text.rstrip() + "…"


def _broken(word: str, size_mm: float, room_mm: float, bold: bool) -> list[str]:
    """A word cut into pieces that fit, at least one sign each."""
    pieces = [""]
    for sign in word:
        if pieces[-1] and not _fits(pieces[-1] + sign, size_mm, room_mm, bold):
            pieces.append("")
        pieces[-1] += sign
    return pieces


def size_for_words_mm(
    text: str, size_mm: float, least_mm: float, room_mm: float, bold: bool = False
) -> float:
    """The size at which the longest word fits into a line, but not below the least."""
    words = [word for word, _ in _words(text)]
    sizes = [size_that_fits_mm(word, size_mm, room_mm, bold) for word in words]
    return max(least_mm, min(sizes, default=size_mm))


def _words(text: str) -> list[tuple[str, str]]:
    """Pieces between which a line may break, with what joins each to the one before it."""
    found = []
    for word in text.split(" "):
        for i, part in enumerate(_BREAKS.split(word)):
            found.append((part, "" if i else " "))
    return found


def wrapped(
    text: str, size_mm: float, room_mm: float, most_lines: int, bold: bool = False
) -> list[str]:
    """The text in lines that fit; what does not fit into the last line is cut with an ellipsis.

    >>> wrapped("Wheel lathe by the north door", 4, 30, 2)
    ['Wheel lathe', 'by the north…']
    """
    lines: list[str] = []
    for word, joint in _words(text):
        joined = f"{lines[-1]}{joint}{word}" if lines else word
        if lines and _fits(joined, size_mm, room_mm, bold):
            lines[-1] = joined
        else:
            lines += _broken(word, size_mm, room_mm, bold)
    if len(lines) > most_lines:
        last = lines[most_lines - 1]
        while last and not _fits(f"{last}…", size_mm, room_mm, bold):
            last = last[:-1]
        lines = [*lines[: most_lines - 1], f"{last.rstrip()}…"]
    return lines
