"""pycore.quantity.moment: against the standard library's datetime, which pycore may not use."""

from datetime import UTC, datetime, timedelta, timezone

import pytest
from hypothesis import given
from hypothesis import strategies as st

from pycore.quantity.fault import Fault
from pycore.quantity.moment import day_of

ZONES = st.integers(-1439, 1439).map(lambda minutes: timezone(timedelta(minutes=minutes)))


@given(st.datetimes(min_value=datetime(1, 1, 3), max_value=datetime(9999, 12, 29), timezones=ZONES))
def test_agrees_with_datetime(moment: datetime) -> None:
    moment = moment.replace(microsecond=0)
    start = datetime(1, 1, 1, tzinfo=UTC)
    days = (moment - start).total_seconds() / 86400
    # 1 January of the year 1 is day 1.
    assert day_of(moment.isoformat(), "now") == pytest.approx(days + 1, rel=1e-12)


@pytest.mark.parametrize(
    ("earlier", "later", "days"),
    [
        ("2024-02-28T12:00:00Z", "2024-03-01T12:00:00Z", 2.0),
        ("2100-02-28T12:00:00Z", "2100-03-01T12:00:00Z", 1.0),
        ("2026-10-25T00:00:00+02:00", "2026-10-26T00:00:00+01:00", 25 / 24),
        ("2026-01-01T00:30:00+05:30", "2025-12-31T19:00:00-00:00", 0.0),
        ("2026-01-01T00:00:00.250Z", "2026-01-01T00:00:00Z", 0.0),
    ],
)
def test_days_between(earlier: str, later: str, days: float) -> None:
    assert day_of(later, "now") - day_of(earlier, "at") == pytest.approx(days, abs=1e-6)


@pytest.mark.parametrize(
    "text",
    [
        "",
        "2026-11-25",
        "2026-11-25T09:42:00",
        "2026-11-25 09:42:00Z",
        "2026-13-01T00:00:00Z",
        "2026-00-01T00:00:00Z",
        "2026-02-29T00:00:00Z",
        "2026-11-00T00:00:00Z",
        "2026-11-25T24:00:00Z",
        "2026-11-25T09:60:00Z",
        "2026-11-25T09:42:60Z",
        "2026-11-25T09:42:00+24:00",
        "2026-11-25T09:42:00+01:60",
        "0000-01-01T00:00:00Z",
        "٢٠٢٦-11-25T09:42:00Z",
    ],
)
def test_what_is_no_moment_is_refused(text: str) -> None:
    with pytest.raises(Fault) as refused:
        day_of(text, "body.now")
    assert (refused.value.code, refused.value.path, refused.value.got) == (
        "wrong_type", "body.now", text,
    )  # fmt: skip
    assert "2026" in refused.value.limit["type"]
