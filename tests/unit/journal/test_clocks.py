"""pycore.journal.clocks."""

from pycore.desk.contract.checked import checked
from pycore.journal.clocks import AHEAD_S, clock_flags
from pycore.journal.entry import read_line
from pycore.journal.line import sealed
from tests.phones import MORNING_S, Phone, check, moment


def flags(walls: list[str], now_s: int | None = None, **more: object) -> list[tuple[int, str]]:
    phone = Phone("a")
    for wall in walls:
        phone.save("check", check(), 0, wall=wall, **more)
    entries = [read_line(line, checked) for line in phone.lines]
    return [(flag.seq, flag.flag) for flag in clock_flags(reversed(entries), now_s)]


def test_equal_and_rising_times_have_no_flag() -> None:
    assert flags([moment(0), moment(0), moment(60)], MORNING_S + 60) == []


def test_clock_set_back_stays_flagged_until_it_has_caught_up() -> None:
    times = [moment(1000), moment(500), moment(600), moment(1000), moment(1001)]
    assert flags(times) == [(2, "back"), (3, "back")]


def test_ahead_of_the_reading_computer_by_more_than_ten_minutes() -> None:
    times = [moment(AHEAD_S), moment(AHEAD_S + 1)]
    assert flags(times, MORNING_S) == [(2, "future")]
    assert flags(times) == []


def test_other_zone_than_before() -> None:
    assert flags([moment(0, 60), moment(60, 120), moment(120, 120)]) == [(2, "zone")]


def test_an_hour_that_comes_twice_is_a_zone_and_not_a_jump() -> None:
    assert flags([moment(0, 120), moment(600, 60)]) == [(2, "zone")]


def test_flags_of_the_device_are_told_too() -> None:
    assert flags([moment(0)], clock_flags=["back"]) == [(1, "back")]


def test_logs_do_not_flag_each_other() -> None:
    one, two = Phone("a"), Phone("b")
    one.save("check", check(), 1000)
    two.save("check", check(), 0, wall=moment(0, 120))
    assert clock_flags(read_line(line, checked) for line in one.lines + two.lines) == ()


def test_newer_line_without_a_legible_clock() -> None:
    line = sealed('{"schema":9,"log":"' + "a" * 32 + '","seq":1,"wall":"noon"}')
    assert clock_flags([read_line(line, checked)], 0) == ()
