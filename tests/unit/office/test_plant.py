"""pycore.office.plant: what the tables of the database hold."""

from pathlib import Path

import pytest

from pycore.journal.entry import KINDS
from pycore.office.columns import COLUMNS_OF
from tests.phones import Phone, check, id_of, moment, newer_phone, pour, setup, typed, workshop
from tests.unit.office.office_logs import asked, database


def test_three_questions_in_sql(tmp_path: Path) -> None:
    path = database(tmp_path, *workshop(), now=moment(6000))
    weak = "SELECT name, round(strength_pct, 2) FROM machines WHERE strength_state = 'weak'"
    # 4.0 Brix times the factor 1.5.
    assert asked(path, weak) == [("Wheel lathe", 6.0)]
    poured = (
        "SELECT e.name, sum(p.buckets), sum(p.all_water_l), sum(p.all_concentrate_l) "
        "FROM pours p JOIN entries e USING (entry) WHERE e.used GROUP BY e.machine"
    )
    assert asked(path, poured) == [("Wheel lathe", 2, 18.0, 2.0)]
    overdue = "SELECT name FROM machines WHERE recheck_overdue OR open_pours"
    assert asked(path, overdue) == [("Wheel lathe",)]


def test_days_since_a_pour_stand_beside_the_reading_before_it(tmp_path: Path) -> None:
    phone = Phone("a")
    phone.save("machine_set", {"machine": setup()}, 0)
    phone.save("pour", pour(), 0)
    phone.save("check", check("342", "5.4"), 0)
    question = "SELECT strength_state, strength_age_d, poured_age_d FROM machines"
    later = moment(2 * 86_400)
    assert asked(database(tmp_path, phone, now=later), question) == [("in_range", 2.0, None)]
    phone.save("pour", pour(), 86_400)
    assert asked(database(tmp_path, phone, now=later), question) == [("in_range", 2.0, 1.0)]
    told = "SELECT meaning FROM columns WHERE column_name = 'poured_age_d'"
    assert "after that reading" in asked(tmp_path / "plant.db", told)[0][0]


@pytest.mark.parametrize(
    ("kind", "body"),
    [
        ("pour", pour()),
        ("unknown_addition", {"what": "water"}),
        ("pour", {"pours": [], "finished": True, "draw_off": typed("20", "L")}),
    ],
)
def test_litres_of_before_a_pour_or_a_draw_off_are_not_the_present_ones(
    kind: str, body: dict[str, object], tmp_path: Path
) -> None:
    # 154 L and 44 L of room stood there, though two buckets had gone in and were read.
    phone = Phone("a")
    phone.save("machine_set", {"machine": setup()}, 0)
    phone.save("check", check("342", "5.4"), 0)
    question = "SELECT round(volume_l), round(room_l), level_age_d, strength_pct > 8 FROM machines"
    later = moment(2 * 86_400)
    assert asked(database(tmp_path, phone, now=later), question) == [(154, 44, 2.0, 1)]
    phone.save(kind, body, 60)
    phone.save("recheck", {"of": id_of("a 3"), "reading": check("342", "5.4")["reading"]}, 120)
    assert asked(database(tmp_path, phone, now=later), question) == [(None, None, 2.0, 1)]
    phone.save("check", check("400", "5.4"), 86_400)
    assert asked(database(tmp_path, phone, now=later), question) == [(180, 18, 1.0, 1)]


def test_a_reading_before_the_pour_had_mixed_is_marked(tmp_path: Path) -> None:
    phone = Phone("a")
    phone.save("machine_set", {"machine": setup()}, 0)
    question = "SELECT strength_state, hardly_mixed FROM machines"
    assert asked(database(tmp_path, phone), question) == [(None, None)]
    phone.save("pour", pour(recheck_due_at=moment(600)), 0)
    for after_s, mark in ((599, 1), (600, 0)):
        again = {"of": id_of("a 2"), "reading": check("342", "5.4")["reading"]}
        phone.save("recheck", again, after_s)
        assert asked(database(tmp_path, phone), question) == [("in_range", mark)]


def test_what_lies_after_the_time_looked_at_is_told(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    # A negative age stood there without a word.
    phone = Phone("a")
    phone.save("machine_set", {"machine": setup()}, 0)
    phone.save("check", check("342", "5.4"), 0)
    phone.save("pour", pour(), 86_400)
    question = "SELECT strength_age_d, poured_age_d, later FROM machines"
    past = database(tmp_path, phone, now=moment(43_200))
    assert asked(past, question) == [(0.5, -0.5, 1)]
    said = "Entries after 25 Nov 2026, 19:00, used all the same: 1\n"
    assert said in capsys.readouterr().out
    told = "SELECT meaning FROM columns WHERE table_name = 'machines' AND column_name LIKE '%age_d'"
    assert all("negative where it lies after" in meaning for (meaning,) in asked(past, told))
    assert asked(database(tmp_path, phone), question) == [(1.0, 0.0, 0)]
    assert "used all the same" not in capsys.readouterr().out


def test_every_kind_has_a_table_and_every_column_a_meaning(tmp_path: Path) -> None:
    path = database(tmp_path, *workshop())
    tables = {name for (name,) in asked(path, "SELECT name FROM sqlite_master WHERE type='table'")}
    assert set(COLUMNS_OF) == KINDS
    assert tables >= {f"{kind}s" for kind in KINDS}
    told = asked(path, "SELECT table_name, column_name, meaning FROM columns")
    assert all(meaning for *_, meaning in told)
    there = {
        (table, row[1]) for table in tables for row in asked(path, f'PRAGMA table_info("{table}")')
    }
    assert there == {(table, column) for table, column, _ in told if column}


def test_corrected_and_withdrawn_entries_both_stay_visible(tmp_path: Path) -> None:
    phone = Phone("a")
    phone.save("machine_set", {"machine": setup()}, 0)
    first = phone.save("check", check("342", "4.0"), 60)
    second = phone.save("check", check("342", "9.9"), 120)
    wrong = {"corrects": first, "reason": "Read 4.0, it was 4.8.", "kind": "check"}
    phone.save("correction", {**wrong, "content": check("342", "4.8")}, 180, machine="")
    phone.save("withdrawal", {"retracts": second, "reason": "Wrong machine."}, 240, machine="")
    path = database(tmp_path, phone)
    rows = asked(
        path,
        "SELECT standing, used, reading_brix, strength_pct FROM checks JOIN entries USING (entry) "
        "ORDER BY number",
    )
    assert rows[0][:3] == ("corrected", 1, 4.8)
    assert rows[0][3] == pytest.approx(7.2)
    # A withdrawn reading feeds no calculation.
    assert rows[1] == ("withdrawn", 0, 9.9, None)
    assert asked(path, "SELECT reason FROM corrections") == [("Read 4.0, it was 4.8.",)]
    assert asked(path, "SELECT retracts FROM withdrawals") == [(second,)]


def test_newer_lines_are_told_and_not_used(tmp_path: Path) -> None:
    path = database(tmp_path, newer_phone())
    assert asked(path, "SELECT count(*) FROM findings WHERE what = 'newer'") == [(2,)]
    assert asked(path, "SELECT count(*) FROM entries") == [(1,)]
