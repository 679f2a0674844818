"""The questions in SQL that README asks, on the example's year, beside what the report says."""

import re
from pathlib import Path

import pytest

from pycore.office.opened import OpenLog, open_log
from pycore.office.report_of import report_of
from pycore.office.report_words import WORDS
from pycore.office.tabling import table_command
from pycore.sheets.language import Language
from tests.unit.office.office_logs import asked
from web.build.paths import ROOT, SHARED

YEAR = SHARED / "demo" / "year.txt"
QUESTIONS = re.findall(r'sqlite3 plant\.db "(.*?)"', (ROOT / "README.md").read_text("utf-8"), re.S)


@pytest.fixture(scope="module")
def plant(tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = tmp_path_factory.mktemp("plant") / "plant.db"
    assert table_command([str(YEAR), "--sqlite", str(path)]) == 0
    return path


@pytest.fixture(scope="module")
def log() -> OpenLog:
    return open_log(YEAR, None)


def test_how_every_machine_stands_is_what_the_report_says(plant: Path, log: OpenLog) -> None:
    states, _, _ = QUESTIONS
    report = report_of(log, Language(WORDS))
    found = asked(plant, states)
    now = {
        (name, f"{pct}\u00a0%", state) for name, pct, state, poured, _ in found if poured is None
    }
    read = [one for one in report.machines if one.state != "not_read"]
    assert {(one.name, one.strength, one.state) for one in read} == now
    before = {one.name: one.note for one in report.machines if one.state == "not_read"}
    for name, pct, state, poured, unmixed in found:
        assert unmixed == 0
        if poured is not None:
            assert before[name].startswith(f"Before: {WORDS[state]}, {pct}\u00a0%, ")
    # In the example's year five machines were topped up after their last reading.
    assert len(before) == 5
    assert len(found) == 6


def test_weak_checks_are_those_below_the_band_of_their_day(plant: Path) -> None:
    _, weak, _ = QUESTIONS
    found = asked(plant, weak)
    assert [(day, name) for day, name, _ in found][-1] == ("2026-11-16", "Drill line")
    below = "SELECT count(*) FROM checks JOIN entries USING (entry) WHERE used AND strength_pct < "
    assert asked(plant, f"{below}low_pct") == [(len(found),)]


def test_concentrate_of_each_month_is_what_the_report_says(plant: Path, log: OpenLog) -> None:
    _, _, months = QUESTIONS
    report = report_of(log, Language(WORDS))
    said = [month.concentrate_l for month in report.months]
    # Rounded to a tenth in SQL.
    assert [litres for _, litres in asked(plant, months)] == pytest.approx(said, abs=0.051)
