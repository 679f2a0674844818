"""pycore.office.report_of: sums, what was corrected, and an example that says that it is one."""

from pathlib import Path

import pytest

from pycore.office.opened import open_log
from pycore.office.report_german import WORDS as GERMAN
from pycore.office.report_of import report_of
from pycore.office.report_words import WORDS
from pycore.sheets.language import Language
from tests.phones import Phone, check, moment, pour, setup, workshop
from tests.unit.office.office_logs import logged
from web.build.paths import SHARED

LANGUAGE = Language(WORDS)


def test_pours_are_summed_by_month(tmp_path: Path) -> None:
    phone = Phone("a")
    phone.save("machine_set", {"machine": setup()}, 0)
    phone.save("pour", pour(2), 60)
    phone.save("pour", pour(1), 40 * 86_400)
    months = report_of(open_log(logged(tmp_path, phone), None), LANGUAGE).months
    counts = [(month.word, month.buckets) for month in months]
    assert counts == [("Nov 2026", 2), ("Dec 2026", 0), ("Jan 2027", 1)]
    # Two buckets of 10 L at 3 %.
    assert abs(months[0].concentrate_l - 0.6) < 1e-9


def test_correction_stands_beside_what_it_is_about(tmp_path: Path) -> None:
    phone = Phone("a")
    phone.save("machine_set", {"machine": setup()}, 0)
    first = phone.save("check", check("342", "4.0"), 60)
    body = {
        "corrects": first,
        "reason": "It was 4.8.",
        "kind": "check",
        "content": check("342", "4.8"),
    }
    phone.save("correction", body, 120, machine="", by="RO")
    (row,) = report_of(open_log(logged(tmp_path, phone), None), LANGUAGE).audit
    assert row[1:] == ("Wheel lathe", "Check, 25 Nov 2026, 07:01: corrected", "It was 4.8.", "RO")


def test_machines_that_wait_are_named_once(tmp_path: Path) -> None:
    report = report_of(open_log(logged(tmp_path, *workshop()), None), LANGUAGE)
    names = [name for name, _ in report.waiting]
    assert names == sorted(set(names))
    assert "Wheel lathe" in names
    assert not report.invented


def test_example_says_that_it_is_invented() -> None:
    log = open_log(SHARED / "demo" / "year.txt", None)
    report = report_of(log, LANGUAGE)
    assert report.invented
    assert len(report.machines) == 6
    assert len(report.months) == 13


@pytest.mark.parametrize(
    ("language", "said"),
    [
        (LANGUAGE, "machines: 1 · Entries after 25 Nov 2026, 19:00, used all the same: 1"),
        (
            Language(GERMAN, ",", "de"),
            "Maschinen: 1 · Einträge nach 25. Nov. 2026, 19:00, trotzdem verwendet: 1",
        ),
    ],
)
def test_what_lies_after_the_time_looked_at_is_told_at_the_head(
    language: Language, said: str, tmp_path: Path
) -> None:
    phone = Phone("a")
    phone.save("machine_set", {"machine": setup()}, 0)
    phone.save("pour", pour(), 86_400)
    log = logged(tmp_path, phone)
    assert report_of(open_log(log, moment(43_200)), language).counts.endswith(said)
    counts = report_of(open_log(log, None), language).counts
    # Without a moment nothing lies after it: the machines alone are counted.
    assert counts.endswith(said.partition(" · ")[0])
