"""pycore.journal.union. The laws of merging stand in tests/properties."""

from pycore.desk.contract.checked import checked
from pycore.journal.file import PHONE, Head, read_file
from pycore.journal.line import sealed
from pycore.journal.tombstone import Tombstone, tombstone_of
from pycore.journal.union import file_of, gathered, read_lines
from tests.phones import NOW, Phone, check, newer_phone


def three() -> Phone:
    phone = Phone("a")
    for after_s in (60, 120, 180):
        phone.save("check", check(), after_s)
    return phone


def test_lines_in_the_order_of_log_number_and_hash_then_quarantine() -> None:
    phone = three()
    entries, bad = read_lines(["zz", *reversed(phone.lines), "aa", phone.lines[0]], checked)
    union = gathered(entries, bad)
    assert union.lines == [*phone.lines, "aa", "zz"]
    assert [part.code for part in union.quarantined] == ["seal_missing", "seal_missing"]


def test_own_head_is_known() -> None:
    phone = three()
    assert gathered(*read_lines(phone.lines, checked)).heads == frozenset(phone.head())
    first = frozenset({Head(phone.log, 1, phone.hash_of(1))})
    assert gathered(*read_lines(phone.lines[:1], checked)).heads == first


def test_a_line_of_which_nobody_can_read_the_place_is_no_head() -> None:
    strange = sealed('{"schema":9,"kind":"a"}')
    assert gathered(*read_lines([strange], checked)).heads == frozenset()


def test_a_tombstone_stays_whatever_comes_first_and_of_two_the_same_one() -> None:
    phone = three()
    (entry,), _ = read_lines(phone.lines[:1], checked)
    place = Tombstone(entry.id, entry.log, entry.seq, entry.prev, entry.hash)
    one, two = tombstone_of(place, "a first reason"), tombstone_of(place, "b second reason")
    lines = [phone.lines[0], two, one]
    for order in (lines, lines[::-1], [two, phone.lines[0], one], [one, phone.lines[0], two]):
        assert gathered(*read_lines(order, checked)).lines == [one]
    for order in ([phone.lines[0], two], [two, phone.lines[0]]):
        assert gathered(*read_lines(order, checked)).lines == [two]


def test_the_files_time_and_build_are_those_given_or_none() -> None:
    union = gathered(*read_lines(three().lines, checked))
    plain, dated = read_file(file_of(union), PHONE), read_file(file_of(union, NOW, "b"), PHONE)
    assert (plain.written_at, plain.build) == ("", "")
    assert (dated.written_at, dated.build) == (NOW, "b")


def test_head_that_is_not_there_stays_known_until_it_is() -> None:
    phone = three()
    parts = read_lines(phone.lines[:2], checked)
    union = gathered(*parts, phone.head())
    assert union.heads == {phone.head()[0], Head(phone.log, 2, phone.hash_of(2))}
    again = read_file(file_of(union), PHONE)
    assert set(again.heads) == union.heads
    whole = gathered(*read_lines(phone.lines, checked), again.heads)
    assert whole.heads == frozenset(phone.head())


def test_newer_lines_are_carried_on_as_they_are() -> None:
    phone = newer_phone()
    union = gathered(*read_lines(phone.lines, checked))
    assert union.lines == phone.lines
    assert [entry.is_newer for entry in union.entries] == [False, True, True]


def test_quarantined_line_stands_once_with_its_place() -> None:
    _, bad = read_lines(["{", "{", '{"a":1}'], checked)
    assert [(part.line, part.code, part.path) for part in bad] == [
        ("{", "seal_missing", "line"),
        ('{"a":1}', "seal_missing", "line"),
    ]
