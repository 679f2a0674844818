"""Days and months of the report: local time as it was written down, and the months of an axis."""

from __future__ import annotations

from pycore.journal.times import moment_of
from pycore.sheets.language import Language

# Months between two ticks of an axis, by how many months it shows: more words would touch.
_MOST_TICKS = 13


def day_word(text: str, language: Language) -> str:
    """The date of a stored moment: ``25 Nov 2026``."""
    months = language.say("months").split()
    return f"{int(text[8:10])} {months[int(text[5:7]) - 1]} {text[:4]}"


def time_word(text: str, language: Language) -> str:
    """Date and time of a stored moment, on the clock of the one who wrote it."""
    return f"{day_word(text, language)}, {text[11:16]}"


def month_word(month: str, language: Language) -> str:
    """A month such as ``2026-11`` as ``Nov 2026``."""
    return f"{language.say('months').split()[int(month[5:7]) - 1]} {month[:4]}"


def months_between(first: str, last: str) -> list[str]:
    """Months from that of one date to that of another, both included, at least one.

    >>> months_between("2025-12-24", "2026-02-01")
    ['2025-12', '2026-01', '2026-02']
    """
    year, month = int(first[:4]), int(first[5:7])
    found = [f"{year:04}-{month:02}"]
    while found[-1] < last[:7]:
        year, month = (year, month + 1) if month < 12 else (year + 1, 1)
        found.append(f"{year:04}-{month:02}")
    return found


def ticks_of(first: str, last: str, language: Language) -> list[tuple[int, str]]:
    """First days of months, so many that their words stay apart; January names its year."""
    months = months_between(first, last)[1:]
    every = -(-len(months) // _MOST_TICKS) or 1
    words = language.say("months").split()
    ticks = []
    for month in months[::every]:
        word = words[int(month[5:7]) - 1]
        at_s = moment_of(f"{month}-01T00:00:00Z", "month")[0]
        ticks.append((at_s, month[:4] if month[5:] == "01" else word))
    return ticks
