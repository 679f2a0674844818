"""pycore.quantity.dates at the edges of months, years and clocks."""

import calendar

import pytest

from pycore.quantity.dates import days_between, moment_from, months_later
from pycore.quantity.fault import Fault

FORMS = ["2026-11-25", "2026-11-25T18:40", "2026-11-25T18:40:00+01:00"]


def _days(early: str, late: str) -> float:
    return days_between(moment_from(early, "a"), moment_from(late, "b"), "a")


# 1900 and 2100 are no leap years, 2000 and 2400 are (ISO 8601-1:2019, 4.2.1).
@pytest.mark.parametrize("year", [1900, 2000, 2026, 2028, 2100, 2400])
@pytest.mark.parametrize("month", range(1, 13))
def test_months_have_the_days_of_the_standard_library(year: int, month: int) -> None:
    last = calendar.monthrange(year, month)[1]
    assert moment_from(f"{year}-{month:02d}-{last}", "a").day == last
    with pytest.raises(Fault) as caught:
        moment_from(f"{year}-{month:02d}-{last + 1}", "a")
    assert caught.value.code == "not_a_date"


@pytest.mark.parametrize("text", ["1900-01-01", "2999-12-31"])
def test_first_and_last_day_of_a_log(text: str) -> None:
    assert moment_from(text, "a").text == text


@pytest.mark.parametrize("text", ["1899-12-31", "3000-01-01", "soon"])
def test_refusal_names_the_forms(text: str) -> None:
    with pytest.raises(Fault) as caught:
        moment_from(text, "a")
    assert (caught.value.code, caught.value.got) == ("not_a_date", text)
    assert caught.value.limit == {"allowed": FORMS}


@pytest.mark.parametrize("text", FORMS)
def test_every_form_that_a_refusal_names_is_read(text: str) -> None:
    assert moment_from(text, "a").text == text


@pytest.mark.parametrize(
    ("text", "ahead"),
    [("2026-11-25T12:00+05:30", 330), ("2026-11-25T12:00-03:30", -210), ("2026-11-25T12:00Z", 0)],
)
def test_offset_is_whole_minutes(text: str, ahead: int) -> None:
    got = moment_from(text, "a").ahead
    assert (got, type(got)) == (ahead, int)


@pytest.mark.parametrize(
    ("early", "late", "days"),
    [
        # A date alone is its first minute, on whichever side it stands.
        ("2026-11-24T12:00", "2026-11-25", 0.5),
        ("2026-11-25", "2026-11-25T12:00", 0.5),
        # Only the first clock says its offset: both are the shop's own.
        ("2026-11-25T06:00+01:00", "2026-11-25T18:00", 0.5),
        ("2026-11-25T06:00", "2026-11-25T06:00", 0),
    ],
)
def test_days_where_one_moment_says_less(early: str, late: str, days: float) -> None:
    assert _days(early, late) == days


def test_two_times_of_one_day_have_an_order() -> None:
    with pytest.raises(Fault) as caught:
        _days("2026-11-25T18:40", "2026-11-25T18:39")
    assert (caught.value.code, caught.value.got) == ("order", "2026-11-25T18:40")
    assert caught.value.limit == {"allowed": ["up to 2026-11-25T18:39"]}


@pytest.mark.parametrize("months", [0, 1, 11, 12, 25])
def test_moment_months_later_is_that_of_its_text(months: int) -> None:
    later = months_later(moment_from("2026-08-31", "a"), months)
    assert later == moment_from(later.text, "a")
