"""pycore.journal.chain: forks, gaps, breaks, ends that are missing."""

from pycore.desk.contract.checked import checked
from pycore.journal.chain import Break, Chains, Fork, Gap, chains_of
from pycore.journal.entry import read_line
from pycore.journal.file import Head
from pycore.journal.line import from_store, sealed
from tests.phones import Phone, check, id_of, newer_phone, stored_in_schema_1


def phone_with(count: int, title: str = "a") -> Phone:
    phone = Phone(title)
    for place in range(count):
        phone.save("check", check(), 60 * place)
    return phone


def chains(lines: list[str], heads: list[Head] | None = None) -> Chains:
    return chains_of([read_line(line, checked) for line in lines], heads or [])


def test_a_whole_log_has_nothing_odd() -> None:
    phone = phone_with(4)
    assert chains(phone.lines, phone.head()) == Chains((), (), (), ())
    assert not chains(phone.lines).is_forked


def test_missing_lines_are_gaps_with_their_ends() -> None:
    phone = phone_with(8)
    kept = [line for place, line in enumerate(phone.lines, 1) if place in (2, 3, 7)]
    assert chains(kept).gaps == (Gap(phone.log, 1, 1), Gap(phone.log, 4, 6))


def test_gaps_of_many_logs_stand_in_one_order_whatever_that_of_the_lines() -> None:
    phone = phone_with(9)
    kept = [phone.lines[7], phone.lines[0]]
    others = sorted(phone_with(2, title).head()[0] for title in "bcdef")
    wanted = [Gap(head.log, 1, 2) for head in others] + [Gap(phone.log, 2, 7)]
    found = chains(kept, others[::-1])
    assert found.gaps == tuple(sorted(wanted, key=lambda gap: gap.log))
    assert found.missing_heads == tuple(others)


def test_after_a_gap_and_in_another_log_nobody_can_say_what_went_before() -> None:
    phone, other = phone_with(3), phone_with(2, "b")
    assert chains([phone.lines[0], phone.lines[2]]).breaks == ()
    for first, second in ((phone, other), (other, phone)):
        assert chains([first.lines[0], second.lines[1]]).breaks == ()


def test_missing_end_is_found_where_somebody_knew_of_it() -> None:
    phone = phone_with(4)
    assert chains(phone.lines[:2]).gaps == ()
    found = chains(phone.lines[:2], phone.head())
    assert found.gaps == (Gap(phone.log, 3, 4),)
    assert found.missing_heads == tuple(phone.head())


def test_a_log_that_is_only_known_of() -> None:
    phone = phone_with(2)
    assert chains([], phone.head()).gaps == (Gap(phone.log, 1, 2),)


def test_an_older_head_that_no_longer_occurs() -> None:
    phone = phone_with(4)
    lost = Head(phone.log, 2, "0" * 64)
    found = chains(phone.lines, [lost])
    assert (found.missing_heads, found.gaps) == ((lost,), ())


def test_clone_that_goes_on_is_a_fork() -> None:
    phone = phone_with(2)
    clone = phone.clone()
    phone.save("check", check("300"), 300, id=id_of("first"))
    clone.save("check", check("301"), 300, id=id_of("second"))
    found = chains([*phone.lines, *clone.lines[2:]])
    hashes = tuple(sorted([phone.hash_of(3), clone.hash_of(3)]))
    assert found.forks == (Fork("number", phone.log, 3, "", hashes),)
    assert found.is_forked


def test_all_lines_of_a_fork_are_named() -> None:
    phone = phone_with(1)
    clones = [phone.clone() for _ in range(3)]
    for clone, depth in zip(clones, ("300", "301", "302"), strict=True):
        clone.save("check", check(depth), 300, id=id_of(depth))
    found = chains([*phone.lines, *(clone.lines[1] for clone in clones)])
    hashes = tuple(sorted(clone.hash_of(2) for clone in clones))
    assert found.forks == (Fork("number", phone.log, 2, "", hashes),)


def test_one_id_with_other_content_is_a_fork() -> None:
    one, two = Phone("a"), Phone("b")
    one.save("check", check("300"), 60, id=id_of("x"))
    two.save("check", check("301"), 60, id=id_of("x"))
    found = chains(one.lines + two.lines)
    hashes = tuple(sorted([one.hash_of(1), two.hash_of(1)]))
    assert found.forks == (Fork("id", "", 0, id_of("x"), hashes),)


def test_forks_and_their_lines_stand_in_one_order_whatever_that_of_the_lines() -> None:
    phones = [Phone(title) for title in "abcde"]
    for phone in phones:
        twin = phone.clone()
        phone.save("check", check("300"), 60, id=id_of("x"))
        twin.save("check", check(phone.title), 60, id=id_of(f"twin of {phone.title}"))
        phone.lines += twin.lines
    lines = [line for phone in phones for line in phone.lines]
    found = chains(lines)
    assert chains(lines[::-1]) == chains([*lines[5:], *lines[:5]]) == found
    assert [fork.why for fork in found.forks] == ["id", *["number"] * 5]
    assert [fork.log for fork in found.forks[1:]] == sorted(phone.log for phone in phones)
    assert all(list(fork.hashes) == sorted(fork.hashes) for fork in found.forks)


def test_lines_of_which_nobody_can_read_the_place_are_no_fork() -> None:
    strange = [sealed('{"schema":9,"kind":"a"}'), sealed('{"schema":9,"kind":"b"}')]
    assert chains(strange) == Chains((), (), (), ())
    phone = phone_with(1)
    clone = Phone("a")
    clone.save("check", check("300"), 60, id=id_of("second"))
    found = chains([*strange, *phone.lines, *clone.lines])
    assert [(fork.why, fork.seq) for fork in found.forks] == [("number", 1)]


def test_line_whose_predecessor_was_changed() -> None:
    phone, other = phone_with(3), Phone("a")
    other.save("check", check("1"), 0)
    lines = [other.lines[0], *phone.lines[1:]]
    found = chains(lines)
    assert chains(lines[::-1]) == found
    assert found.breaks == (Break(phone.log, 2, phone.hash_of(2)),)
    assert found.is_forked


def test_a_changed_predecessor_is_seen_behind_a_log_that_ends_under_its_number() -> None:
    short, phone = sorted((phone_with(1, "a"), phone_with(2, "b")), key=lambda one: one.log)
    short.lines, later = short.lines[:1], phone.clone()
    later.save("check", check(), 300)
    changed = Phone(phone.title)
    changed.save("check", check("1"), 0)
    lines = [*short.lines, changed.lines[0], later.lines[1]]
    assert [found.seq for found in chains(lines).breaks] == [2]


def test_lines_of_the_first_schema_have_no_chain_but_are_followed() -> None:
    rows = [from_store(stored_in_schema_1("check", check(), seq)) for seq in (1, 2)]
    phone = Phone("old", lines=list(rows), seq=2, prev=read_line(rows[1], checked).hash)
    phone.save("check", check(), 300)
    assert chains(phone.lines) == Chains((), (), (), ())
    phone.prev = "0" * 64
    phone.save("check", check(), 400)
    assert [found.seq for found in chains(phone.lines).breaks] == [4]


def test_newer_lines_are_links_too() -> None:
    phone = newer_phone()
    assert chains(phone.lines, phone.head()) == Chains((), (), (), ())
    assert chains([phone.lines[0], phone.lines[2]]).gaps == (Gap(phone.log, 2, 2),)
