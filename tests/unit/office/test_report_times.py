"""pycore.office.report_times: local days as written, and months of an axis."""

from pycore.journal.times import moment_of
from pycore.office.report_times import day_word, month_word, months_between, ticks_of, time_word
from pycore.office.report_words import WORDS
from pycore.sheets.language import Language

LANGUAGE = Language(WORDS)


def test_day_is_that_of_the_one_who_wrote_it() -> None:
    late = "2026-11-25T23:30:00-08:00"
    assert day_word(late, LANGUAGE) == "25 Nov 2026"
    assert time_word(late, LANGUAGE) == "25 Nov 2026, 23:30"
    assert month_word("2026-01", LANGUAGE) == "Jan 2026"


def test_months_run_over_the_turn_of_the_year() -> None:
    assert months_between("2025-11-30", "2026-01-01") == ["2025-11", "2025-12", "2026-01"]
    assert months_between("2026-11-01", "2026-11-30") == ["2026-11"]


def test_ticks_stand_at_first_days_and_stay_few() -> None:
    ticks = ticks_of("2025-11-26", "2026-02-10", LANGUAGE)
    assert [word for _, word in ticks] == ["Dec", "2026", "Feb"]
    assert ticks[0][0] == moment_of("2025-12-01T00:00:00Z", "x")[0]
    assert len(ticks_of("2000-01-01", "2026-02-10", LANGUAGE)) <= 13
