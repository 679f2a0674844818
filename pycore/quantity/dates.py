"""Dates and times as a log holds them: ISO 8601 text, with or without a time and an offset.

pycore has no clock, so every date is compared with another one that comes in beside it. Days are
counted on the proleptic Gregorian calendar from 1 March of the year 0 (ISO 8601-1:2019, 4.2.1).
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from pycore.quantity.fault import Fault

FORMS = ["2026-11-25", "2026-11-25T18:40", "2026-11-25T18:40:00+01:00"]

_MOMENT = re.compile(
    r"(?P<year>[0-9]{4})-(?P<month>[0-9]{2})-(?P<day>[0-9]{2})"
    r"(?:T(?P<hour>[0-9]{2}):(?P<minute>[0-9]{2})(?::[0-5][0-9](?:\.[0-9]{1,9})?)?"
    r"(?P<offset>Z|(?P<sign>[+-])(?P<ahead_hour>[0-9]{2}):(?P<ahead_minute>[0-9]{2}))?)?"
)
_MONTH_DAYS = (31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31)
# Years that a workshop's log can hold; another one is a slip of the finger.
_FIRST_YEAR, _LAST_YEAR = 1900, 2999
# Days of 400 years, after which the calendar repeats.
_CYCLE_D = 146_097
# Minutes in a day.
_DAY_MIN = 1440


@dataclass(frozen=True)
class Moment:
    """A day, the minute of it where a time was given, and the minutes its clock is ahead of UTC
    where it said so."""

    text: str
    year: int
    month: int
    day: int
    minute: int | None = None
    ahead: int | None = None


def _days_of(year: int, month: int) -> int:
    leap = year % 4 == 0 and (year % 100 != 0 or year % 400 == 0)
    return 29 if month == 2 and leap else _MONTH_DAYS[month - 1]


def moment_from(text: str, path: str) -> Moment:
    """A date, or a date with a time, which may carry its offset from UTC; seconds are left out.

    Error: ``not_a_date`` for any other text and for a day or time that no calendar has.

    >>> moment_from("2026-11-25T18:40", "zero.on").minute
    1120
    """
    found = _MOMENT.fullmatch(text)
    if found is None:
        raise Fault("not_a_date", path, text, {"allowed": FORMS})
    part = {name: int(found[name] or 0) for name in ("year", "month", "day", "hour", "minute")}
    year, month, day = part["year"], part["month"], part["day"]
    is_month = _FIRST_YEAR <= year <= _LAST_YEAR and 1 <= month <= 12
    is_day = is_month and 1 <= day <= _days_of(year, month)
    ahead_hour, ahead_minute = int(found["ahead_hour"] or 0), int(found["ahead_minute"] or 0)
    is_time = max(part["hour"], ahead_hour) < 24 and max(part["minute"], ahead_minute) < 60
    if not (is_day and is_time):
        raise Fault("not_a_date", path, text, {"allowed": FORMS})
    minute = ahead = None
    if found["hour"] is not None:
        minute = 60 * part["hour"] + part["minute"]
    if found["offset"] is not None:
        ahead = (60 * ahead_hour + ahead_minute) * (-1 if found["sign"] == "-" else 1)
    return Moment(text, year, month, day, minute, ahead)


def day_number(moment: Moment) -> int:
    """The moment's day counted from 1 March of the year 0, which is day 1.

    >>> day_number(moment_from("2026-03-01", "")) - day_number(moment_from("2026-02-28", ""))
    1
    """
    # Years begin in March here, so that the leap day is the last one.
    year, month = divmod(12 * moment.year + moment.month - 3, 12)
    months_days = (153 * month + 2) // 5
    return 365 * year + year // 4 - year // 100 + year // 400 + months_days + moment.day


def day_text(number: int) -> str:
    """The date of a day that ``day_number`` has counted.

    >>> day_text(day_number(moment_from("2028-02-29", "")))
    '2028-02-29'
    """
    # Counted from 1 March the leap day is the last of its year, and months repeat every 153 days.
    cycle, day = divmod(number - 1, _CYCLE_D)
    year = (day - day // 1460 + day // 36_524 - day // (_CYCLE_D - 1)) // 365
    day -= 365 * year + year // 4 - year // 100
    month = (5 * day + 2) // 153
    day -= (153 * month + 2) // 5
    ahead, month = divmod(month + 2, 12)
    return f"{400 * cycle + year + ahead:04d}-{month + 1:02d}-{day + 1:02d}"


def days_between(earlier: Moment, later: Moment, path: str) -> float:
    """Days from one moment to another, with their fraction; a date alone is its first minute.

    Where only one of the two has a time the first minute is taken for the other, so that what is
    old is never called young. Offsets count where both have one; else both are read off the same
    clock. Error: ``order`` when the second one comes first.

    >>> days_between(moment_from("2026-02-28", ""), moment_from("2026-03-01T12:00", ""), "")
    1.5
    """
    minutes = _DAY_MIN * (day_number(later) - day_number(earlier))
    if later.minute is not None or earlier.minute is not None:
        minutes += (later.minute or 0) - (earlier.minute or 0)
    if later.ahead is not None and earlier.ahead is not None:
        minutes -= later.ahead - earlier.ahead
    same_day = day_number(later) == day_number(earlier)
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
