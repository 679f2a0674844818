"""pycore.office.opened: one log read, folded and told about."""

from pathlib import Path

import pytest

from pycore.office.opened import MISUSED, REFUSED, Refused, about_lines, open_log
from tests.phones import Phone, newer_phone, workshop
from tests.unit.office.office_logs import logged


def test_log_is_looked_at_as_of_its_latest_entry(tmp_path: Path) -> None:
    night, day = workshop()
    log = open_log(logged(tmp_path, night, day), None)
    # The last entry of the two phones, 5,000 s after six o'clock in UTC.
    assert log.now == "2026-11-25T08:23:20+01:00"
    assert about_lines(log) == []
    assert log.status == 0


def test_what_does_not_hold_is_told(tmp_path: Path) -> None:
    log = open_log(logged(tmp_path, newer_phone()), None)
    assert about_lines(log) == ["lines of a newer version, not used: 2"]


def test_cut_file_is_read_and_told(tmp_path: Path) -> None:
    path = tmp_path / "cut.jsonl"
    path.write_text(workshop()[0].export()[:-300], encoding="utf-8")
    assert about_lines(open_log(path, None))[0] == "cut off or damaged: cut"


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
