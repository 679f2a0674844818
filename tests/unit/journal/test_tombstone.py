"""A removed entry leaves its place, and nothing of its content."""

import pytest

from pycore.desk.contract.checked import checked
from pycore.journal.entry import read_line
from pycore.journal.tombstone import Tombstone, is_tombstone, read_tombstone, tombstone_of
from pycore.quantity.fault import Fault
from tests.phones import Phone, check

PLACE = Tombstone("a" * 32, "b" * 32, 7, "c" * 64, "d" * 64)


def test_it_says_where_the_line_stood() -> None:
    line = tombstone_of(PLACE, "asked for by the person")
    assert read_tombstone(line) == PLACE
    entry = read_line(line, checked)
    assert (entry.hash, entry.seq, entry.is_removed) == ("d" * 64, 7, True)
    assert (entry.usable, entry.is_newer, entry.body) == (False, False, {})


@pytest.mark.parametrize(
    "reason", ['quoted "words"', "Löschung verlangt", "x" * 200, "\U0001f6e2" * 200]
)
def test_any_reason_can_be_read_again(reason: str) -> None:
    assert read_tombstone(tombstone_of(PLACE, reason)) == PLACE


@pytest.mark.parametrize(
    ("reason", "code"), [("", "missing"), ("  ", "missing"), ("x" * 201, "too_large")]
)
def test_a_reason_is_asked_for(reason: str, code: str) -> None:
    with pytest.raises(Fault) as caught:
        tombstone_of(PLACE, reason)
    assert (caught.value.code, caught.value.path) == (code, "reason")
    if code == "too_large":
        assert (caught.value.got, caught.value.limit) == (201, {"most": 200})


def test_every_changed_sign_is_found() -> None:
    line = tombstone_of(PLACE, "reason")
    for place, sign in enumerate(line):
        other = line[:place] + ("0" if sign != "0" else "1") + line[place + 1 :]
        assert not is_tombstone(other) or _is_refused(other), place


def _is_refused(line: str) -> bool:
    try:
        read_tombstone(line)
    except Fault as fault:
        return fault.code == "seal_broken"
    return False


def test_another_line_is_none() -> None:
    phone = Phone("a")
    phone.save("check", check(), 0)
    assert not is_tombstone(phone.lines[0])
    with pytest.raises(Fault) as caught:
        read_tombstone(phone.lines[0])
    assert (caught.value.code, caught.value.path) == ("wrong_form", "line")
    assert caught.value.limit == {"type": "tombstone"}


def test_a_seal_that_does_not_fit_is_named() -> None:
    line = tombstone_of(PLACE, "reason")
    with pytest.raises(Fault) as caught:
        read_tombstone(line.replace('"seq":7', '"seq":8'))
    assert (caught.value.code, caught.value.path) == ("seal_broken", "line")
    assert f'"seal":"{caught.value.got}"' in line
