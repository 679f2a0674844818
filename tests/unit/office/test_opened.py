"""pycore.office.opened: one log read, folded and told about."""

from pathlib import Path

import pytest

from pycore.office.opened import MISUSED, REFUSED, Refused, about_lines, open_log
from pycore.office.report_of import report_of
from pycore.office.report_words import WORDS
from pycore.sheets.language import Language
from tests.phones import MORNING_S, Phone, check, moment, newer_phone, setup, workshop
from tests.unit.office.office_logs import logged

ENGLISH = Language(WORDS)


def test_log_is_looked_at_as_of_its_latest_entry(tmp_path: Path) -> None:
    night, day = workshop()
    log = open_log(logged(tmp_path, night, day), None)
    # The last entry of the two phones, 5,000 s after six o'clock in UTC.
    assert log.now == "2026-11-25T08:23:20+01:00"
    assert about_lines(log, ENGLISH) == []
    assert log.status == 0


@pytest.mark.parametrize("kind", ["withdrawal", "correction"])
def test_a_wrong_clock_that_was_put_right_does_not_set_the_time(tmp_path: Path, kind: str) -> None:
    phone = Phone("a")
    phone.save("machine_set", {"machine": setup()}, 0)
    wrong = phone.save("check", check("342", "5.4"), 4 * 365 * 86_400)
    said: dict[str, object] = {"reason": "The clock was wrong."}
    if kind == "withdrawal":
        said |= {"retracts": wrong}
    else:
        content = {"kind": "check", "content": check("342", "5.4"), "measured_at": moment(3_600)}
        said |= {"corrects": wrong, **content}
    phone.save(kind, said, 7_200, machine="")
    log = open_log(logged(tmp_path, phone), None)
    used_s = 0 if kind == "withdrawal" else 3_600
    assert (log.now, log.now_s) == (moment(used_s), MORNING_S + used_s)
    period = report_of(log, ENGLISH).span
    assert "2030" not in period


def test_what_does_not_hold_is_told(tmp_path: Path) -> None:
    log = open_log(logged(tmp_path, newer_phone()), None)
    assert about_lines(log, ENGLISH) == ["Lines of a newer version, not used: 2"]


def test_cut_file_is_read_and_told(tmp_path: Path) -> None:
    path = tmp_path / "cut.jsonl"
    path.write_text(workshop()[0].export()[:-300], encoding="utf-8")
    assert about_lines(open_log(path, None), ENGLISH)[0].endswith("(cut)")


def test_what_cannot_be_read_is_refused_with_a_reason(tmp_path: Path) -> None:
    with pytest.raises(Refused, match="no such file") as none:
        open_log(tmp_path / "none", None)
    assert none.value.status == MISUSED
    only_newer = Phone("a")
    only_newer.save("odour_panel", {"score": 2}, 0)
    with pytest.raises(Refused, match="no entry in it") as newer:
        open_log(logged(tmp_path, only_newer), None)
    assert newer.value.status == REFUSED
    with pytest.raises(Refused, match="could not be read") as folder:
        open_log(tmp_path, None)
    assert folder.value.status == REFUSED
