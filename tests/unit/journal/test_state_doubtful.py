"""pycore.journal.state where the log contradicts itself: what is in doubt, and what holds then."""

import pytest

from tests.phones import Phone, check, id_of
from tests.unit.journal.reading import both_count, dispute, machine


def test_two_phones_within_ten_minutes_are_both_shown() -> None:
    one, two = Phone("a"), Phone("b")
    first, second = one.save("check", check("300"), 0), two.save("check", check("310"), 300)
    now = machine(one, two)
    assert now.strength is not None
    assert now.strength.entry.id == second
    assert [other.id for other in now.strength.others] == [first]
    office = Phone("office")
    body = {"use": [one.hash_of(1)], "leave": [two.hash_of(1)], "reason": "stood at the machine"}
    office.save("decision", body, 900, machine="")
    decided = machine(one, two, office).strength
    assert decided is not None
    assert (decided.entry.id, decided.is_certain) == (first, True)


def test_a_phone_whose_clock_was_wrong_does_not_win_in_silence() -> None:
    one, two = Phone("a"), Phone("b")
    one.save("check", check("300"), 0)
    # Its clock had jumped back by a day before this entry was made.
    two.save("note", {"text": "x"}, 86_400, machine="")
    late = two.save("check", check("310"), 7200)
    now = machine(one, two)
    assert now.level is not None
    assert now.level.entry.id == late
    assert not now.level.is_certain


def test_an_entry_in_conflict_is_named_and_not_used() -> None:
    one, two = Phone("a"), Phone("b")
    target = one.save("check", check("300"), 0)
    for phone, depth in ((one, "301"), (two, "302")):
        body = {"corrects": target, "reason": "x", "kind": "check", "content": check(depth)}
        phone.save("correction", body, 60, machine="")
    now = machine(one, two)
    assert (now.level, now.conflicts) == (None, (target,))


def test_what_is_in_doubt_makes_the_latest_uncertain() -> None:
    phone = Phone("a")
    first = phone.save("check", check("300"), 0)
    twin = phone.clone()
    phone.save("check", check("310"), 60, id=id_of("x"))
    twin.save("check", check("320"), 60, id=id_of("y"))
    now = machine(phone, twin)
    assert now.level is not None
    assert now.level.entry.id == first
    assert {other.id for other in now.level.others} == {id_of("x"), id_of("y")}
    phone.save("check", check("330"), 120)
    later = machine(phone, twin).level
    assert later is not None
    # That one was written after x on the same phone; between the phones time has to tell.
    assert id_of("x") not in {other.id for other in later.others}
    assert id_of("y") in {other.id for other in later.others}
    phone.save("check", check("340"), 661)
    later = machine(phone, twin).level
    assert later is not None
    assert later.is_certain


@pytest.mark.parametrize("decided", [False, True])
def test_a_clock_that_was_ahead_before_a_split_takes_no_tag_off_after_it(decided: bool) -> None:
    phone = Phone("a")
    phone.save("machine_state", {"state": "in_use"}, 7200)
    copy = phone.clone()
    stop = phone.save("machine_state", {"state": "stopped"}, 600, id=id_of("stop"))
    copy.save("note", {"text": "x"}, 700, id=id_of("note"))
    phones = [phone, copy]
    if decided:
        phones.append(both_count(phone, copy))
    now = machine(*phones)
    assert now.is_stopped
    if decided:
        assert now.state is not None
        assert (now.state.entry.id, now.state.others) == (stop, ())


def test_a_doubt_from_before_a_split_is_older_than_what_was_said_after_it() -> None:
    phone, other = Phone("a"), Phone("b")
    # The clock was ahead until the split.
    hold = phone.save("machine_state", {"state": "on_hold"}, 7200)
    dispute((phone, other), hold, "machine_state", [{"state": "watch"}, {"state": "stopped"}])
    copy = phone.clone()
    phone.save("machine_state", {"state": "in_use"}, 1200, id=id_of("in use"))
    copy.save("note", {"text": "x"}, 1300, id=id_of("note"))
    decider = both_count(phone, copy)
    now = machine(phone, copy, other, decider)
    assert now.conflicts == (hold,)
    assert now.state is not None
    assert (now.state.entry.id, now.state.others) == (id_of("in use"), ())


@pytest.mark.parametrize("decided", [False, True])
def test_a_tag_on_the_shorter_part_of_a_copied_phone_is_not_lost(decided: bool) -> None:
    phone = Phone("a")
    phone.save("check", check(), 0)
    copy = phone.clone()
    # The longer part says last that the machine is in use, before the other one stops it.
    for number in range(3):
        phone.save("machine_state", {"state": "watch"}, 60 * number, id=id_of(f"watch {number}"))
    phone.save("machine_state", {"state": "in_use"}, 600, id=id_of("in use"))
    stop = copy.save("machine_state", {"state": "stopped"}, 7200, id=id_of("stop"))
    now = machine(phone, copy, *([both_count(phone, copy)] if decided else []))
    assert now.state is not None
    assert now.is_stopped
    if decided:
        assert now.state.entry.id == stop
        assert now.state.is_certain


def test_what_is_in_doubt_elsewhere_is_told_within_ten_minutes() -> None:
    for behind_s, others in ((600, 2), (601, 0)):
        one, two = Phone("a"), Phone("b")
        twin = two.clone()
        two.save("check", check("310"), 0, id=id_of("x"))
        twin.save("check", check("320"), 0, id=id_of("y"))
        one.save("check", check("300"), behind_s)
        level = machine(one, two, twin).level
        assert level is not None
        assert len(level.others) == others


def test_a_clean_out_in_doubt_does_not_take_the_readings_away() -> None:
    phone = Phone("a")
    phone.save("check", check(), 0)
    twin = phone.clone()
    phone.save("clean_out", {"finished": True}, 60, id=id_of("x"))
    twin.save("clean_out", {"finished": True, "lot": "1"}, 60, id=id_of("y"))
    assert machine(phone).strength is None
    assert machine(phone, twin).strength is not None


def test_a_tag_about_which_two_phones_disagree_still_holds() -> None:
    a, b = Phone("a"), Phone("b")
    tag = a.save("machine_state", {"state": "on_hold", "reason": "lab_sample"}, 0)
    for phone, state in ((a, "watch"), (b, "in_use")):
        body = {"corrects": tag, "reason": "misheard", "kind": "machine_state"}
        phone.save("correction", {**body, "content": {"state": state}}, 900)
    now = machine(a, b)
    assert now.conflicts == (tag,)
    assert now.is_stopped
    # A later word that is certain takes its place, as with any other tag.
    b.save("machine_state", {"state": "in_use"}, 4 * 3600)
    assert not machine(a, b).is_stopped
