"""Moments of a log: time with seconds and an offset, and the same as seconds since 1970."""

from __future__ import annotations

import re

from pycore.quantity.dates import day_number, day_text, moment_from
from pycore.quantity.fault import Fault

# Clocks of two phones are compared, so neither the seconds nor the offset may be missing.
_FORM = re.compile(r".*T[0-9]{2}:[0-9]{2}:(?P<second>[0-9]{2})(?:\.[0-9]{1,9})?(?:Z|[+-].*)")
_ALLOWED = ["2026-11-25T06:30:00+01:00"]
# Definition of the units of time.
DAY_S = 86_400
_MINUTE_S = 60
_START = day_number(moment_from("1970-01-01", "start"))


def moment_of(text: str, path: str) -> tuple[int, int]:
    """Seconds since 1970-01-01T00:00:00Z, and the offset from UTC in minutes.

    Parts of a second are dropped: no measurement needs them. Error: ``not_a_date`` for anything
    else than a date, a time with seconds, and ``Z`` or an offset.

    >>> moment_of("1970-01-02T01:00:00+01:00", "wall")
    (86400, 60)
    """
    found = _FORM.fullmatch(text)
    if found is None:
        raise Fault("not_a_date", path, text[:80], {"allowed": _ALLOWED})
    moment = moment_from(text, path)
    ahead_min = moment.ahead or 0
    minutes = (moment.minute or 0) - ahead_min
    days = day_number(moment) - _START
    return days * DAY_S + minutes * _MINUTE_S + int(found["second"]), ahead_min


def text_of(moment_s: int, ahead_min: int) -> str:
    """A moment as a log holds it. moment_s: seconds since 1970; ahead_min: offset from UTC.

    >>> text_of(86_400, 60)
    '1970-01-02T01:00:00+01:00'
    """
    days, second = divmod(moment_s + ahead_min * _MINUTE_S, DAY_S)
    minute, second = divmod(second, _MINUTE_S)
    hours, minutes = divmod(abs(ahead_min), 60)
    offset = f"{'-' if ahead_min < 0 else '+'}{hours:02d}:{minutes:02d}"
    return f"{day_text(_START + days)}T{minute // 60:02d}:{minute % 60:02d}:{second:02d}{offset}"
