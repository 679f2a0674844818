"""pycore.journal.union. The laws of merging stand in tests/properties."""

from pycore.desk.contract.checked import checked
from pycore.journal.file import PHONE, Head, read_file
from pycore.journal.union import file_of, gathered, read_lines
from tests.phones import Phone, check, newer_phone


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
