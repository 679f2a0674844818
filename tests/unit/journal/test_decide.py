"""pycore.journal.decide: what a person decided about a fork."""

from pycore.desk.contract.checked import checked
from pycore.journal.chain import chains_of
from pycore.journal.decide import decisions, unusable
from pycore.journal.union import read_lines
from tests.phones import Phone, check, id_of
from tests.unit.journal.reading import lines_of


def forked() -> tuple[Phone, Phone, frozenset[str]]:
    old = Phone("a")
    old.save("check", check(), 0)
    clone = old.clone()
    old.save("check", check("300"), 60, id=id_of("on the old phone"))
    clone.save("check", check("301"), 60, id=id_of("on the clone"))
    return old, clone, frozenset([old.hash_of(2), clone.hash_of(2)])


def found(*phones: Phone) -> tuple[frozenset[str], frozenset[str]]:
    entries, _ = read_lines(lines_of(*phones), checked)
    forks = chains_of(entries, ()).forks
    disputed = frozenset(name for fork in forks for name in fork.hashes)
    return unusable(forks, decisions(entries, disputed))


def office(use: list[str], leave: list[str], title: str = "office") -> Phone:
    phone = Phone(title)
    phone.save("decision", {"use": use, "leave": leave, "reason": "asked both"}, 900, machine="")
    return phone


def test_without_a_decision_both_are_open() -> None:
    old, clone, both = forked()
    assert found(old, clone) == (both, frozenset())


def test_one_line_counts_and_the_other_is_left_out() -> None:
    old, clone, _ = forked()
    mine, theirs = old.hash_of(2), clone.hash_of(2)
    assert found(old, clone, office([mine], [theirs])) == (frozenset(), {theirs})


def test_both_may_count() -> None:
    old, clone, both = forked()
    assert found(old, clone, office(sorted(both), [])) == (frozenset(), frozenset())


def test_a_decision_that_does_not_name_all_lines_decides_nothing() -> None:
    old, clone, both = forked()
    assert found(old, clone, office([old.hash_of(2)], [])) == (both, frozenset())


def test_the_later_decision_of_one_log_holds() -> None:
    old, clone, _ = forked()
    mine, theirs = old.hash_of(2), clone.hash_of(2)
    phone = office([mine], [theirs])
    phone.save("decision", {"use": [theirs], "leave": [mine], "reason": "no"}, 950, machine="")
    assert found(old, clone, phone) == (frozenset(), {mine})


def test_decisions_of_two_logs_hold_only_where_they_agree() -> None:
    old, clone, both = forked()
    mine, theirs = old.hash_of(2), clone.hash_of(2)
    first = office([mine], [theirs])
    assert found(old, clone, first, office([mine], [theirs], "b")) == (frozenset(), {theirs})
    assert found(old, clone, first, office([theirs], [mine], "b")) == (both, frozenset())


def test_a_withdrawn_decision_decides_nothing() -> None:
    old, clone, both = forked()
    phone = office([old.hash_of(2)], [clone.hash_of(2)])
    phone.save("withdrawal", {"retracts": id_of("office 1"), "reason": "no"}, 999, machine="")
    assert found(old, clone, phone) == (both, frozenset())


def test_a_decision_that_is_itself_disputed_decides_nothing() -> None:
    old, clone, both = forked()
    phone = Phone("office")
    twin = phone.clone()
    for one, text in ((phone, "x"), (twin, "y")):
        body = {"use": [old.hash_of(2)], "leave": [clone.hash_of(2)], "reason": text}
        one.save("decision", body, 900, machine="")
    open_lines, left_out = found(old, clone, phone, twin)
    assert (both <= open_lines, left_out) == (True, frozenset())
