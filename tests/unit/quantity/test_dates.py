"""pycore.quantity.dates, against the standard library's calendar."""

from datetime import date, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from pycore.quantity.dates import day_number, day_text, days_between, moment_from, months_later
from pycore.quantity.fault import Fault

TIMES = st.datetimes(datetime(1900, 1, 1), datetime(2199, 12, 31))


def _text(time: datetime) -> str:
    return time.strftime("%Y-%m-%dT%H:%M")


@given(TIMES, TIMES)
def test_days_are_those_of_the_standard_library(one: datetime, other: datetime) -> None:
    early, late = sorted(
        (one.replace(second=0, microsecond=0), other.replace(second=0, microsecond=0))
    )
    got = days_between(moment_from(_text(early), "a"), moment_from(_text(late), "b"), "a")
    assert got == pytest.approx((late - early).total_seconds() / 86400, abs=1e-9)


@given(st.dates(date(1900, 1, 1), date(2999, 12, 31)))
def test_a_day_is_written_as_the_standard_library_writes_it(day: date) -> None:
    assert day_text(day_number(moment_from(day.isoformat(), "a"))) == day.isoformat()


@pytest.mark.parametrize("year", [1900, 2000, 2023, 2024, 2100, 2400, 2999])
def test_every_day_of_a_year_comes_back(year: int) -> None:
    first = date(year, 1, 1)
    days = [first + timedelta(days=n) for n in range(366)]
    for day in days:
        if day.year == year:
            assert day_text(day_number(moment_from(day.isoformat(), "a"))) == day.isoformat()


@pytest.mark.parametrize(
    "text",
    ["", "2026-13-01", "2026-02-29", "25.11.2026", "2026-11-25 18:40", "2026-11-25T24:00",
     "2026-11-25T18:40+24:00", "0000-01-01", "2026-11-25+01:00", "2026-11-25T18:60", "٢٠٢٦-11-25"],
)  # fmt: skip
def test_no_other_form_is_guessed_at(text: str) -> None:
    with pytest.raises(Fault) as caught:
        moment_from(text, "body.today")
    assert (caught.value.code, caught.value.path) == ("not_a_date", "body.today")


def test_leap_day_is_a_day() -> None:
    assert moment_from("2028-02-29", "a").day == 29


def test_later_than_now_is_refused() -> None:
    with pytest.raises(Fault) as caught:
        days_between(moment_from("2026-11-26", "a"), moment_from("2026-11-25", "b"), "a")
    assert caught.value.code == "order"


@pytest.mark.parametrize(
    ("early", "late", "days"),
    [
        ("2026-11-25", "2026-11-25", 0),
        ("2026-11-24", "2026-11-25T12:00", 1.5),
        # The hour of the later day is not known, so nothing on that day is too early.
        ("2026-11-25T18:40", "2026-11-25", 0),
    ],
)
def test_a_date_alone_is_its_first_minute(early: str, late: str, days: float) -> None:
    assert days_between(moment_from(early, "a"), moment_from(late, "b"), "a") == days


@pytest.mark.parametrize(
    ("start", "months", "end"),
    [
        ("2026-01-31", 1, "2026-02-28"),
        ("2027-08-31", 6, "2028-02-29"),
        ("2026-12-01", 12, "2027-12-01"),
        ("2026-05-04", 120, "2036-05-04"),
    ],
)
def test_months_end_where_the_month_ends(start: str, months: int, end: str) -> None:
    assert months_later(moment_from(start, "a"), months).text == end


@pytest.mark.parametrize(
    ("early", "late", "days"),
    [
        ("2026-11-25T11:30:00Z", "2026-11-26T00:30:00+01:00", 0.5),
        ("2026-11-25T12:00:00.123+02:00", "2026-11-25T12:00-10:00", 0.5),
        # One clock says no offset: both are the shop's own.
        ("2026-11-25T06:00", "2026-11-25T18:00:00+01:00", 0.5),
    ],
)
def test_offsets_count_where_both_have_one(early: str, late: str, days: float) -> None:
    assert days_between(moment_from(early, "a"), moment_from(late, "b"), "a") == days
