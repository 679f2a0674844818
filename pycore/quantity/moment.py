"""Moments that come in as text: pycore has no clock and no calendar of its own but this."""

from __future__ import annotations

import re

from pycore.quantity.fault import Fault

# The extended form of ISO 8601 that the page writes; without its offset a moment means nothing.
_MOMENT = re.compile(
    r"(?P<year>\d{4})-(?P<month>\d\d)-(?P<day>\d\d)"
    r"T(?P<hour>\d\d):(?P<minute>\d\d):(?P<second>\d\d)(?:\.\d{1,6})?"
    r"(?:Z|(?P<sign>[+-])(?P<ahead_hour>\d\d):(?P<ahead_minute>\d\d))",
    re.ASCII,
)
_KIND = {"type": "a moment like 2026-11-25T09:42:00+01:00"}
_MONTH_DAYS = (31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31)
# By definition of hour and day; leap seconds are left out.
_SECONDS_PER_DAY = 86400


def _is_leap(year: int) -> bool:
    return year % 4 == 0 and (year % 100 != 0 or year % 400 == 0)


def _days_in(year: int, month: int) -> int:
    return _MONTH_DAYS[month - 1] + (month == 2 and _is_leap(year))


def _day_number(year: int, month: int, day: int) -> int:
    before = year - 1
    full_years = 365 * before + before // 4 - before // 100 + before // 400
    return full_years + sum(_days_in(year, m) for m in range(1, month)) + day


def day_of(text: str, path: str) -> float:
    """Days from the start of 31 December of the year 0, in UTC, fraction of a day included.

    Gregorian calendar throughout, as ISO 8601 asks. Valid: years 1 to 9999, whole seconds and
    up to six decimals, which are left out. Error: ``wrong_type`` for any other text.

    >>> day_of("2026-11-26T00:30:00+01:00", "now") - day_of("2026-11-25T11:30:00Z", "at")
    0.5
    """
    found = _MOMENT.fullmatch(text)
    if found is None:
        raise Fault("wrong_type", path, text, _KIND)
    part = {name: int(digits) for name, digits in found.groupdict("0").items() if name != "sign"}
    year, month = part["year"], part["month"]
    is_day = year >= 1 and 1 <= month <= 12 and 1 <= part["day"] <= _days_in(year, month)
    is_time = part["hour"] < 24 and part["minute"] < 60 and part["second"] < 60
    if not (is_day and is_time and part["ahead_hour"] < 24 and part["ahead_minute"] < 60):
        raise Fault("wrong_type", path, text, _KIND)
    ahead_minutes = 60 * part["ahead_hour"] + part["ahead_minute"]
    minutes = 60 * part["hour"] + part["minute"]
    minutes += ahead_minutes if found["sign"] == "-" else -ahead_minutes
    seconds = 60 * minutes + part["second"]
    return _day_number(year, month, part["day"]) + seconds / _SECONDS_PER_DAY
