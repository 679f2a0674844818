"""Moments as text with an offset, such as ``2026-11-25T06:30:00+01:00``, and as seconds."""

from __future__ import annotations

import re

from pycore.quantity.fault import Fault

_FORM = re.compile(
    r"([0-9]{4})-([0-9]{2})-([0-9]{2})T([0-9]{2}):([0-9]{2}):([0-9]{2})(?:\.[0-9]{1,9})?"
    r"(?:Z|([+-])([0-9]{2}):([0-9]{2}))"
)
_MONTH_D = (31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31)
# Definition of the calendar: days of four hundred years, and days before 1970-01-01.
_DAYS_1970 = 719_162
# Definition of the units of time.
DAY_S = 86_400
_HOUR_S = 3_600
_MINUTE_S = 60
# No place on Earth is further from UTC (common knowledge of the time zones: -12 to +14 hours).
_MOST_OFFSET_MIN = 14 * 60


def _is_leap(year: int) -> bool:
    return year % 4 == 0 and (year % 100 != 0 or year % 400 == 0)


def _day_number(year: int, month: int, day: int) -> int:
    """Days since 1970-01-01 in the Gregorian calendar, carried back before its beginning."""
    before = year - 1
    days = before * 365 + before // 4 - before // 100 + before // 400 - _DAYS_1970
    days += sum(_MONTH_D[: month - 1]) + (1 if month > 2 and _is_leap(year) else 0)
    return days + day - 1


def moment_of(text: str, path: str) -> tuple[int, int]:
    """Seconds since 1970-01-01T00:00:00Z, and the offset from UTC in minutes.

    Parts of a second are dropped: no measurement needs them. Error: ``wrong_form`` for anything
    else than date, time with seconds, and ``Z`` or an offset of at most 14 hours.

    >>> moment_of("1970-01-02T01:00:00+01:00", "wall")
    (86400, 60)
    """
    found = _FORM.fullmatch(text)
    if found is None:
        raise Fault("wrong_form", path, text[:80], {"type": "2026-11-25T06:30:00+01:00"})
    year, month, day, hour, minute, second = (int(found[i]) for i in range(1, 7))
    offset_min = 0
    if found[7] is not None:
        offset_min = int(found[8]) * 60 + int(found[9])
        if found[7] == "-":
            offset_min = -offset_min
    last = 0
    if 1 <= month <= 12:
        last = 29 if month == 2 and _is_leap(year) else _MONTH_D[month - 1]
    fits = year >= 1 and 1 <= day <= last and hour < 24 and minute < 60 and second < 60
    if not fits or abs(offset_min) > _MOST_OFFSET_MIN or int(found[9] or 0) > 59:
        raise Fault("wrong_form", path, text, {"type": "2026-11-25T06:30:00+01:00"})
    clock_s = hour * _HOUR_S + minute * _MINUTE_S + second
    days = _day_number(year, month, day)
    return days * DAY_S + clock_s - offset_min * _MINUTE_S, offset_min
