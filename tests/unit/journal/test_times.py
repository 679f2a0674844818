"""pycore.journal.times, compared with the standard library's calendar."""

from datetime import datetime, timedelta, timezone

import pytest
from hypothesis import given
from hypothesis import strategies as st

from pycore.journal.times import moment_of, text_of
from pycore.quantity.fault import Fault

ZONES = st.integers(-23 * 60, 23 * 60)
# The years that a log can hold.
FIRST, LAST = datetime(1900, 1, 1), datetime(2999, 12, 31)


@given(st.datetimes(min_value=FIRST, max_value=LAST), ZONES)
def test_same_seconds_as_the_standard_library(at: datetime, offset_min: int) -> None:
    sign = "-" if offset_min < 0 else "+"
    hours, minutes = divmod(abs(offset_min), 60)
    text = f"{at.replace(microsecond=0).isoformat()}{sign}{hours:02}:{minutes:02}"
    seconds = datetime.fromisoformat(text) - datetime.fromisoformat("1970-01-01T00:00:00+00:00")
    assert moment_of(text, "wall") == (seconds.total_seconds(), offset_min)


@given(st.datetimes(min_value=FIRST, max_value=LAST), ZONES)
def test_a_moment_is_written_as_the_standard_library_writes_it(
    at: datetime, offset_min: int
) -> None:
    zone = timezone(timedelta(minutes=offset_min))
    text = at.replace(microsecond=0, tzinfo=zone).isoformat()
    assert text_of(*moment_of(text, "wall")) == text


def test_z_and_parts_of_a_second() -> None:
    assert moment_of("2026-11-25T06:00:00.999Z", "wall") == (1_795_586_400, 0)


@pytest.mark.parametrize(
    "text",
    [
        "",
        "2026-11-25",
        "2026-11-25T06:00:00",
        "2026-11-25 06:00:00Z",
        "2026-13-01T06:00:00Z",
        "2026-00-01T06:00:00Z",
        "2026-02-29T06:00:00Z",
        "2100-02-29T06:00:00Z",
        "2026-04-31T06:00:00Z",
        "2026-11-00T06:00:00Z",
        "2026-11-25T24:00:00Z",
        "2026-11-25T06:60:00Z",
        "2026-11-25T06:00:60Z",
        "2026-11-25T06:00:00+01:60",
        "0000-11-25T06:00:00Z",
        "２026-11-25T06:00:00Z",
        "2026-11-25T06:00:00Z\n",
        "1899-12-31T06:00:00Z",
        "2026-11-25T06:00Z",
    ],
)
def test_what_is_no_moment_is_refused(text: str) -> None:
    with pytest.raises(Fault) as caught:
        moment_of(text, "wall")
    assert (caught.value.code, caught.value.path) == ("not_a_date", "wall")


def test_a_refusal_shows_the_beginning_and_one_that_is_allowed() -> None:
    with pytest.raises(Fault) as caught:
        moment_of("x" * 90, "wall")
    assert caught.value.got == "x" * 80
    (allowed,) = caught.value.limit["allowed"]
    assert moment_of(allowed, "wall")[1] == 60


def test_leap_days() -> None:
    assert moment_of("2000-02-29T00:00:00Z", "wall")[0] == 951_782_400
    assert moment_of("2024-02-29T00:00:00Z", "wall")[0] == 1_709_164_800
