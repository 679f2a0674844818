"""pycore.journal.strands: which lines were written one after another where a log split."""

from pycore.desk.contract.checked import checked
from pycore.journal.chain import chains_of
from pycore.journal.entry import Entry, read_line
from pycore.journal.strands import strands_of
from tests.phones import Phone, check, id_of


def strands(*phones: Phone, without: str = "") -> dict[str, str]:
    """Strands by the names of the entries, each named after its first entry."""
    lines = dict.fromkeys(line for phone in phones for line in phone.lines)
    entries: list[Entry] = [read_line(line, checked) for line in reversed(lines)]
    entries = [entry for entry in entries if entry.id != id_of(without)]
    named = {entry.hash: entry.id for entry in entries}
    found = strands_of(entries, chains_of(entries, ()).forks)
    return {named[line]: named[first] for line, (first, *_) in found.items()}


def save(phone: Phone, *names: str) -> None:
    for name in names:
        phone.save("check", check(), 0, id=id_of(name))


def ids(**first_of: str) -> dict[str, str]:
    return {id_of(name): id_of(first) for name, first in first_of.items()}


def split() -> tuple[Phone, Phone]:
    phone = Phone("a")
    save(phone, "t1", "t2")
    copy = phone.clone()
    save(phone, "a3", "a4", "a5")
    save(copy, "b3", "b4")
    return phone, copy


def test_a_log_without_a_claimed_number_is_one_strand() -> None:
    phone, _ = split()
    assert strands(phone) == {}
    other = Phone("b")
    save(other, "o1")
    assert strands(phone, other) == {}


def test_both_go_on_as_strands_of_their_own() -> None:
    assert strands(*split()) == ids(a3="a3", a4="a3", a5="a3", b3="b3", b4="b3")


def test_other_logs_stay_whole() -> None:
    other = Phone("b")
    save(other, "o1", "o2", "o3", "o4")
    assert strands(*split(), other) == ids(a3="a3", a4="a3", a5="a3", b3="b3", b4="b3")


def test_a_line_that_names_one_farther_back_begins_one() -> None:
    phone, copy = split()
    before = phone.prev
    save(phone, "a6")
    phone.prev = before
    save(phone, "a7")
    found = strands(phone, copy)
    assert (found[id_of("a6")], found[id_of("a7")]) == (id_of("a3"), id_of("a7"))


def test_a_strand_splits_again() -> None:
    phone, copy = split()
    again = copy.clone()
    save(copy, "b5")
    save(again, "c5", "c6")
    found = strands(phone, copy, again)
    assert found == ids(a3="a3", a4="a3", a5="a3", b3="b3", b4="b3", b5="b5", c5="c5", c6="c5")


def test_a_line_whose_predecessor_is_missing_begins_one() -> None:
    assert strands(*split(), without="b3") == ids(a4="a4", a5="a4", b4="b4")


def test_a_strand_names_those_that_it_goes_on_from() -> None:
    phone, copy = split()
    again = copy.clone()
    save(copy, "b5")
    save(again, "c5")
    lines = dict.fromkeys(phone.lines + copy.lines + again.lines)
    entries = [read_line(line, checked) for line in lines]
    named = {entry.hash: entry.id for entry in entries}
    found = strands_of(entries, chains_of(entries, ()).forks)
    paths = {named[line]: [named.get(name, name) for name in path] for line, path in found.items()}
    assert paths[id_of("a5")] == [id_of("a3"), phone.log]
    assert paths[id_of("c5")] == [id_of("c5"), id_of("b3"), phone.log]


def test_copies_of_copies_are_followed_so_far_and_no_farther() -> None:
    phone = Phone("a")
    save(phone, "t1")
    phones = [phone]
    for number in range(10):
        phones.append(phones[-1].clone())
        save(phones[-2], f"left {number}")
        save(phones[-1], f"right {number}")
    lines = dict.fromkeys(line for one in phones for line in one.lines)
    entries = [read_line(line, checked) for line in lines]
    found = strands_of(entries, chains_of(entries, ()).forks)
    lengths = {entry.id: len(found.get(entry.hash, ())) for entry in entries}
    assert lengths[id_of("right 0")] == 2
    assert lengths[id_of("right 7")] == 9
    assert lengths[id_of("right 9")] == 9


def test_first_lines_that_differ() -> None:
    one, two = Phone("a"), Phone("a")
    save(one, "a1", "a2")
    save(two, "b1")
    assert strands(one, two) == ids(a1="a1", a2="a1", b1="b1")


def test_one_id_in_two_places_splits_nothing() -> None:
    phone, other = Phone("a"), Phone("b")
    save(phone, "x", "y")
    save(other, "x")
    lines = [*phone.lines, *other.lines]
    entries = [read_line(line, checked) for line in lines]
    chains = chains_of(entries, ())
    assert [fork.why for fork in chains.forks] == ["id"]
    assert strands_of(entries, chains.forks) == {}
