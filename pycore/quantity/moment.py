"""Dates and times as people write them in a log: ISO 8601 text, the shop's own clock.

pycore has no clock, so every date is compared with another one that comes in beside it. Days are
counted on the proleptic Gregorian calendar from 1 March of the year 0 (ISO 8601-1:2019, 4.2.1).
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from pycore.quantity.fault import Fault

FORMS = ["2026-11-25", "2026-11-25T18:40"]

_MOMENT = re.compile(
    r"([0-9]{4})-([0-9]{2})-([0-9]{2})(?:T([0-9]{2}):([0-9]{2})(?::[0-9]{2}(?:\.[0-9]{1,9})?)?)?"
)
_MONTH_DAYS = (31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31)
# Years that a workshop's log can hold; another one is a slip of the finger.
_FIRST_YEAR, _LAST_YEAR = 1900, 2999
# Minutes in a day.
_DAY_MIN = 1440


@dataclass(frozen=True)
class Moment:
    """A day, and the minute of it where a time was given."""

    text: str
    year: int
    month: int
    day: int
    minute: int | None = None


def _days_of(year: int, month: int) -> int:
    leap = year % 4 == 0 and (year % 100 != 0 or year % 400 == 0)
    return 29 if month == 2 and leap else _MONTH_DAYS[month - 1]


def moment_from(text: str, path: str) -> Moment:
    """A date or a date with a time of the shop's own clock, without an offset.

    Error: ``not_a_date`` for any other text and for a day that no calendar has.

    >>> moment_from("2026-11-25T18:40", "zero.on").minute
    1120
    """
    found = _MOMENT.fullmatch(text)
    if found is None:
        raise Fault("not_a_date", path, text, {"allowed": FORMS})
    year, month, day = (int(part) for part in found.group(1, 2, 3))
    is_day = (
        _FIRST_YEAR <= year <= _LAST_YEAR and 1 <= month <= 12 and 1 <= day <= _days_of(year, month)
    )
    hour, minute = int(found[4] or 0), int(found[5] or 0)
    if not is_day or hour > 23 or minute > 59:
        raise Fault("not_a_date", path, text, {"allowed": FORMS})
    return Moment(text, year, month, day, None if found[4] is None else 60 * hour + minute)


def _day_number(moment: Moment) -> int:
    # Years begin in March here, so that the leap day is the last one.
    year, month = divmod(12 * moment.year + moment.month - 3, 12)
    months_days = (153 * month + 2) // 5
    return 365 * year + year // 4 - year // 100 + year // 400 + months_days + moment.day


def days_between(earlier: Moment, later: Moment, path: str) -> float:
    """Days from one moment to another, with their fraction; a date alone is its first minute.

    Where only one of the two has a time the first minute is taken for the other, so that what is
    old is never called young. Error: ``order`` when the second one comes first.

    >>> days_between(moment_from("2026-02-28", ""), moment_from("2026-03-01T12:00", ""), "")
    1.5
    """
    minutes = _DAY_MIN * (_day_number(later) - _day_number(earlier))
    if later.minute is not None or earlier.minute is not None:
        minutes += (later.minute or 0) - (earlier.minute or 0)
    same_day = _day_number(later) == _day_number(earlier)
    # A date alone says nothing about the hour, so on one day nothing can be too early.
    if minutes < 0 and same_day and None in (earlier.minute, later.minute):
        return 0.0
    if minutes < 0:
        raise Fault("order", path, earlier.text, {"allowed": [f"up to {later.text}"]})
    return minutes / _DAY_MIN


def months_later(moment: Moment, months: int) -> Moment:
    """The same day so many months later, or that month's last day where it has no such day.

    >>> months_later(moment_from("2026-08-31", ""), 6).text
    '2027-02-28'
    """
    year, month = divmod(12 * moment.year + moment.month - 1 + months, 12)
    day = min(moment.day, _days_of(year, month + 1))
    return Moment(f"{year:04d}-{month + 1:02d}-{day:02d}", year, month + 1, day)
