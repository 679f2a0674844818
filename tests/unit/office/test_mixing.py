"""pycore.office.mixing: whether the last reading was of coolant in which a pour had mixed."""

from typing import Any

import pytest

from pycore.office.mixing import unmixed_before
from tests.phones import Phone, check, moment, pour, setup
from tests.unit.journal.reading import fold

READ: tuple[str, dict[str, Any]] = ("check", check("342", "5.4"))
EMPTIED: tuple[str, dict[str, Any]] = ("clean_out", {"finished": True})


def poured(due_s: int) -> tuple[str, dict[str, Any]]:
    return ("pour", pour(recheck_due_at=moment(due_s)))


@pytest.mark.parametrize(
    ("entries", "due_s"),
    [
        ([poured(900)], None),
        ([READ, poured(900)], None),
        ([("pour", pour()), READ], None),
        # Entries are a minute apart; the reading of the second minute is in time.
        ([poured(121), READ], 121),
        ([poured(120), READ], None),
        ([poured(119), READ], None),
        # The last pour with a time counts, as where the second reading is due.
        ([poured(900), poured(600), READ], 600),
        ([poured(600), poured(900), READ], 900),
        # What is told beside it mixes as long: from 60 s to 900 s, and so from 120 s to 960 s.
        ([poured(900), ("pour", pour()), READ], 960),
        ([poured(900), READ, ("note", {"text": "x"})], 900),
        # A reading in time after one that was not, and a pour after it.
        ([poured(180), READ, READ], None),
        ([poured(900), READ, poured(950)], 900),
        # Of the charge before.
        ([poured(900), EMPTIED, READ], None),
        ([poured(900), READ, EMPTIED], None),
    ],
)
def test_when_the_coolant_of_the_last_reading_was_to_have_mixed(
    entries: list[tuple[str, dict[str, Any]]], due_s: int | None
) -> None:
    phone = Phone("a")
    phone.save("machine_set", {"machine": setup()}, 0)
    for place, (kind, body) in enumerate(entries, 1):
        phone.save(kind, body, 60 * place)
    wanted = "" if due_s is None else moment(due_s)
    assert unmixed_before(fold(phone).machines[0]) == wanted
