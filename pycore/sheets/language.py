"""The words and the decimal sign of a sheet: English, or another language's whole set of words."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass

from pycore.quantity.fault import Fault
from pycore.quantity.rounding import Shown
from pycore.sheets.english import WORDS
from pycore.sheets.svg import printable

_BLANK = re.compile(r"\{([a-z_]+)\}")
# Between a number and its unit, so that no line breaks there.
_TIE = "\u00a0"
_THIN = "\u202f"


@dataclass(frozen=True)
class Language:
    """Sentences by key, the decimal sign, a point or a comma, and the language's code."""

    words: Mapping[str, str]
    decimal_sign: str = "."
    code: str = "en"

    def say(self, key: str, **blanks: str) -> str:
        """The sentence of a key with its blanks filled in; a blank nobody fills stays visible."""
        return _BLANK.sub(lambda found: blanks.get(found[1], found[0]), self.words[key])

    def plain(self, number: float, decimals: int = 0) -> str:
        """A sum or count. A thin space parts thousands, never a sign that could be a decimal one.

        >>> Language({}, ",").plain(1234.56, 1)
        '1\\u202f234,6'
        """
        text = f"{number:_.{decimals}f}"
        return text.replace(".", self.decimal_sign).replace("_", _THIN)

    def round(self, number: float) -> str:
        """A number that is round already, such as one on an axis: ``0,5``, ``200``."""
        return f"{number:g}".replace(".", self.decimal_sign)

    def number(self, shown: Shown) -> str:
        """A rounded number: ``8.5`` or ``8,5``, ``13 7/16`` on an inch rule."""
        part = shown.fraction
        if part is not None:
            whole = f"{part.whole}{_TIE}" if part.whole else ""
            return f"{whole}{part.numerator}/{part.denominator}"
        return f"{shown.value:.{shown.decimals}f}".replace(".", self.decimal_sign)

    def amount(self, shown: Shown) -> str:
        """A rounded number with its unit, never broken between them.

        >>> Language({}, ",").amount(Shown(8.5, 1, "L"))
        '8,5\\xa0L'
        """
        number = self.number(shown)
        return number if shown.unit == "1" else f"{number}{_TIE}{shown.unit.replace(' ', _TIE)}"


def language_of(words: Mapping[str, str] | None, decimal_sign: str | None, path: str) -> Language:
    """The language of a request: English where it brings no words.

    Errors: ``missing`` at ``path.<key>`` for a set that lacks a sentence, ``unknown_field`` for a
    key that no sheet has.
    """
    if words is None:
        return Language(WORDS, decimal_sign or ".")
    for key in WORDS:
        if key not in words:
            raise Fault("missing", f"{path}.{key}")
    for key in words:
        if key not in WORDS:
            raise Fault("unknown_field", f"{path}.{key}"[:200], key[:80])
    tidy = {key: printable(sentence) for key, sentence in words.items()}
    return Language(tidy, decimal_sign or ".")
