"""pycore.journal.amend: the part of a log that split to which an entry belongs."""

from pycore.desk.contract.checked import checked
from pycore.journal.amend import standings
from pycore.journal.entry import read_line
from tests.phones import Phone, check

NONE: frozenset[str] = frozenset()


def test_an_entry_belongs_to_its_log_or_to_a_strand_of_it() -> None:
    phone = Phone("a")
    for after_s in (0, 60, 120):
        phone.save("check", check(), after_s)
    entries = [read_line(line, checked) for line in phone.lines]
    assert [one.strand for one in standings(entries, NONE, NONE)] == [phone.log] * 3
    path = ("begins here", "before", phone.log)
    split = {entries[1].hash: path, entries[2].hash: path}
    found = standings(entries, NONE, NONE, split)
    assert [one.strand for one in found] == [phone.log, "begins here", "begins here"]
    assert [one.earlier for one in found] == [(), path[1:], path[1:]]
    # One that is disputed belongs to it too.
    found = standings(entries, frozenset([entries[1].hash]), NONE, split)
    assert (found[1].standing, found[1].strand) == ("disputed", "begins here")
