"""pycore.journal.clocks."""

from pycore.desk.contract.checked import checked
from pycore.journal.chain import chains_of
from pycore.journal.clocks import clock_flags
from pycore.journal.entry import read_line
from pycore.journal.line import sealed
from pycore.journal.strands import strands_of
from tests.phones import MORNING_S, Phone, check, id_of, moment


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


def test_a_log_that_split_goes_back_only_along_its_own_part() -> None:
    phone = Phone("a")
    phone.save("check", check(), 0, wall=moment(0))
    copy = phone.clone()
    for after_s in (7200, 7140, 7260):
        phone.save("check", check(), after_s, wall=moment(after_s), id=id_of(f"here {after_s}"))
    for after_s in (60, 30, 120):
        copy.save("check", check(), after_s, wall=moment(after_s), id=id_of(f"there {after_s}"))
    lines = dict.fromkeys(phone.lines + copy.lines)
    entries = [read_line(line, checked) for line in lines]
    strands = strands_of(entries, chains_of(entries, ()).forks)
    found = clock_flags(entries, strands=strands)
    here, there = ([entry.hash for entry in entries if entry.seq == 3][i] for i in (0, 1))
    # By log and number, whatever part they stand in.
    told = [(flag.seq, flag.hash, flag.flag) for flag in found]
    assert told == sorted([(3, here, "back"), (3, there, "back")])
    # What stood before the split is before both of its parts.
    assert [flag.seq for flag in clock_flags(entries[:1] + entries[-3:], strands=strands)] == [3]
    phone.save("check", check(), 7000, wall=moment(7000), id=id_of("later"))
    entries = [read_line(line, checked) for line in dict.fromkeys(phone.lines + copy.lines)]
    copied = strands_of(entries, chains_of(entries, ()).forks)
    assert [flag.seq for flag in clock_flags(entries, strands=copied)] == [3, 3, 5]


def test_ahead_of_the_reading_computer_by_more_than_ten_minutes() -> None:
    # Common practice, no source.
    times = [moment(600), moment(601)]
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


def test_one_line_may_have_all_flags_in_one_order() -> None:
    times = [moment(9000), moment(8000, 120)]
    assert flags(times, MORNING_S)[1:] == [(2, "back"), (2, "future"), (2, "zone")]


def test_a_clock_that_nobody_can_read_is_passed_over() -> None:
    phone = Phone("a")
    for wall in (moment(1000), "noon", moment(500, 60)):
        phone.save("check", check(), 0, wall=wall, schema=3)
    found = clock_flags([read_line(line, checked) for line in phone.lines], MORNING_S + 1000)
    assert [(flag.log, flag.seq, flag.hash, flag.flag) for flag in found] == [
        (phone.log, 3, phone.hash_of(3), "back")
    ]


def test_a_line_of_no_log_has_no_flag() -> None:
    line = read_line(sealed('{"schema":9,"wall":"2199-01-01T00:00:00Z"}'), checked)
    assert clock_flags([line], 0) == ()
    # It takes none from the lines of a log.
    phone = Phone("a")
    for after_s in (60, 0):
        phone.save("check", check(), 0, wall=moment(after_s))
    others = [read_line(text, checked) for text in phone.lines]
    assert [flag.seq for flag in clock_flags([line, *others])] == [2]


def test_newer_line_without_a_legible_clock() -> None:
    line = sealed('{"schema":9,"log":"' + "a" * 32 + '","seq":1,"wall":"noon"}')
    assert clock_flags([read_line(line, checked)], 0) == ()
