"""Papers, a language and a sump to draw with."""

from pycore.quantity.rounding import Shown
from pycore.sheets.english import WORDS
from pycore.sheets.language import Language
from pycore.sheets.paper import Paper, paper_of
from pycore.sump.shapes import Sump, proportional, table

ENGLISH = Language(WORDS)
# Words half as long again, as some languages have them.
LONG = Language({key: f"{text} {text[: len(text) // 2]}" for key, text in WORDS.items()})
PAPERS = [
    paper_of(name, False, measured, "measured")
    for name in ("A4", "Letter")
    for measured in (None, 92.0, 109.0)
]
A4: Paper = PAPERS[0]
LETTER: Paper = PAPERS[3]
SLOPED: Sump = table([60, 180, 320], [12, 60, 116], 300, 0.03)
EVEN: Sump = proportional(440, 198, 0.03)


def litres(value: float) -> Shown:
    """An amount in whole litres."""
    return Shown(value, 0, "L")
