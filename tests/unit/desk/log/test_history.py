"""pycore.desk.log.history: every dip and reading by the set-up of its day."""

from pathlib import Path

from pycore.desk.log.history import history_of
from tests.phones import Phone, check, pour, setup
from tests.unit.journal.reading import dispute, fold
from tests.unit.office.office_logs import asked, database


def test_old_reading_keeps_the_factor_of_its_day(tmp_path: Path) -> None:
    phone = Phone("a")
    phone.save("machine_set", {"machine": setup(factor="1.5")}, 0)
    phone.save("check", check("342", "4.0"), 60)
    phone.save("machine_set", {"machine": setup(factor="2.0")}, 120)
    phone.save("check", check("342", "4.0"), 180)
    path = database(tmp_path, phone)
    rows = asked(path, "SELECT strength_pct FROM checks JOIN entries USING (entry) ORDER BY number")
    assert rows == [(6.0,), (8.0,)]


def test_points_hold_what_was_said_and_what_went_in() -> None:
    phone = Phone("a")
    phone.save("machine_set", {"machine": setup()}, 0)
    phone.save("check", check("342", "4.0"), 60)
    phone.save("pour", pour(2), 120)
    phone.save("check", check("342", "oily"), 180)
    (machine,) = fold(phone).machines
    _, first, poured, last = history_of(machine)
    assert first.level is not None
    # 342 of 440 mm of 198 L.
    assert abs(first.level.volume_l.value - 198 * 342 / 440) < 1e-9
    assert first.band is not None
    assert (first.band.low_pct, first.band.aim_pct, first.band.high_pct) == (7, 8, 9)
    assert poured.poured is not None
    # Two buckets of 10 L at 3 %.
    assert abs(poured.poured.concentrate_l - 0.6) < 1e-9
    assert last.strength is None
    assert last.trouble == ("not_a_number",)
    assert last.level is not None


def test_reading_without_a_set_up_is_told_and_not_guessed() -> None:
    phone = Phone("a")
    phone.save("check", check("342", "4.0"), 60)
    (machine,) = fold(phone).machines
    (point,) = history_of(machine)
    assert (point.level, point.strength, point.trouble) == (None, None, ("missing",))


def test_a_pour_over_which_two_phones_differ_stands_in_its_place_without_litres() -> None:
    one, two = Phone("a"), Phone("b")
    one.save("machine_set", {"machine": setup()}, 0)
    one.save("check", check(), 60)
    poured = one.save("pour", pour(6), 120)
    one.save("check", check(), 180)
    dispute((one, two), poured, "pour", [pour(7), pour(5)])
    (machine,) = fold(one, two).machines
    _, _, point, _ = history_of(machine)
    assert (point.entry.id, point.poured) == (poured, None)
