"""pycore.journal.amend: corrections and withdrawals."""

from typing import Any

import pytest

from pycore.desk.contract.checked import checked
from pycore.journal.amend import standings
from pycore.journal.union import read_lines
from tests.phones import LATHE, Phone, check, id_of, moment, newer_phone
from tests.unit.journal.reading import lines_of, standing_of

GRINDER = id_of("axle grinder")


def correct(
    phone: Phone, target: str, depth: str, settles: list[str] | None = None, **m: Any
) -> str:
    body = {"corrects": target, "reason": "misread", "kind": "check", "content": check(depth), **m}
    if settles:
        body["settles"] = settles
    return phone.save("correction", body, 900, machine="")


def withdraw(phone: Phone, target: str, settles: list[str] | None = None) -> str:
    body = {"retracts": target, "reason": "wrong machine"}
    return phone.save(
        "withdrawal", {**body, **({"settles": settles} if settles else {})}, 950, machine=""
    )


class Case:
    """One check of phone a, about which phones a and b write."""

    def __init__(self) -> None:
        self.a, self.b = Phone("a"), Phone("b")
        self.target = self.a.save("check", check("342"), 0)
        self.hash = self.a.hash_of(1)

    @property
    def now(self) -> Any:
        forth = standing_of(self.a, self.b)[self.hash]
        assert standing_of(self.b, self.a)[self.hash] == forth
        return forth

    @property
    def depth(self) -> str:
        return str(self.now.content["dip"]["depth"]["text"])


@pytest.fixture
def case() -> Case:
    return Case()


def test_as_written(case: Case) -> None:
    assert (case.now.standing, case.depth, case.now.by) == ("as_written", "342", ())
    assert case.now.is_used


def test_corrected_with_the_entry_itself_unchanged(case: Case) -> None:
    correction = correct(case.b, case.target, "324")
    assert (case.now.standing, case.depth) == ("corrected", "324")
    assert case.now.by == (correction,)
    assert case.now.entry.body == check("342")
    assert case.now.is_used


def test_machine_and_time_can_be_corrected(case: Case) -> None:
    correct(case.a, case.target, "342", machine=GRINDER, measured_at=moment(30))
    assert (case.now.machine, case.now.measured_at) == (GRINDER, moment(30))
    assert case.now.measured_s == case.now.entry.measured_s + 30
    assert case.now.entry.machine == LATHE


def test_withdrawn(case: Case) -> None:
    gone = withdraw(case.b, case.target)
    assert (case.now.standing, case.now.is_used) == ("withdrawn", False)
    assert (case.now.by, case.now.is_in_doubt) == ((gone,), False)


def test_place_kind_and_id_are_those_of_the_entry_itself(case: Case) -> None:
    correct(case.b, case.target, "324")
    now = case.now
    assert (now.place, now.kind, now.id) == ((case.a.log, 1, case.hash), "check", case.target)


def test_later_correction_of_one_log_takes_the_place_of_the_earlier(case: Case) -> None:
    correct(case.b, case.target, "324")
    correct(case.b, case.target, "325")
    assert (case.now.standing, case.depth) == ("corrected", "325")


def test_two_logs_correct_the_same_entry(case: Case) -> None:
    one, two = correct(case.a, case.target, "324"), correct(case.b, case.target, "325")
    assert (case.now.standing, case.now.is_used) == ("conflict", False)
    assert case.now.by == tuple(sorted([one, two]))
    assert case.now.is_in_doubt


def test_only_a_correction_that_names_the_others_resolves_a_conflict(case: Case) -> None:
    correct(case.a, case.target, "324")
    two = correct(case.b, case.target, "325")
    correct(case.a, case.target, "326")
    assert case.now.standing == "conflict"
    correct(case.a, case.target, "327", settles=[two])
    assert (case.now.standing, case.depth) == ("corrected", "327")


def test_a_correction_of_a_correction_names_it(case: Case) -> None:
    one = correct(case.a, case.target, "324")
    correct(case.b, one, "325")
    assert (case.now.standing, case.depth) == ("corrected", "325")


def test_a_correction_after_a_withdrawal_does_not_undo_it(case: Case) -> None:
    withdraw(case.a, case.target)
    correct(case.a, case.target, "324")
    assert (case.now.standing, case.now.is_used) == ("conflict", False)


def test_unless_it_names_the_withdrawal(case: Case) -> None:
    gone = withdraw(case.a, case.target)
    correct(case.a, case.target, "324", settles=[gone])
    assert (case.now.standing, case.depth) == ("corrected", "324")


def test_a_withdrawal_after_a_correction_in_one_log(case: Case) -> None:
    correct(case.a, case.target, "324")
    withdraw(case.a, case.target)
    assert case.now.standing == "withdrawn"


def test_a_withdrawn_entry_says_what_it_said_last(case: Case) -> None:
    correct(case.b, case.target, "324")
    correct(case.b, case.target, "325", machine=GRINDER, measured_at=moment(30))
    withdraw(case.b, case.target)
    assert (case.now.standing, case.depth) == ("withdrawn", "325")
    assert (case.now.machine, case.now.measured_at) == (GRINDER, moment(30))
    assert case.now.measured_s == case.now.entry.measured_s + 30


def test_a_withdrawn_entry_whose_corrections_do_not_agree_says_what_was_written(case: Case) -> None:
    both = [correct(case.a, case.target, "324"), correct(case.b, case.target, "325")]
    withdraw(case.a, case.target, settles=both)
    assert (case.now.standing, case.depth) == ("withdrawn", "342")


def test_a_withdrawn_entry_does_not_say_what_another_kind_would(case: Case) -> None:
    body = {"corrects": case.target, "reason": "x", "kind": "note", "content": {"text": "y"}}
    case.b.save("correction", body, 900, machine="")
    withdraw(case.b, case.target)
    assert (case.now.standing, case.depth) == ("withdrawn", "342")


def test_withdrawn_by_two(case: Case) -> None:
    withdraw(case.a, case.target)
    withdraw(case.b, case.target)
    assert case.now.standing == "withdrawn"


def test_a_withdrawn_correction_counts_as_not_written(case: Case) -> None:
    one = correct(case.a, case.target, "324")
    withdraw(case.b, one)
    assert (case.now.standing, case.depth) == ("as_written", "342")


def test_a_withdrawn_withdrawal_counts_as_not_written(case: Case) -> None:
    one = withdraw(case.a, case.target)
    two = withdraw(case.b, one)
    assert case.now.standing == "as_written"
    withdraw(case.a, two)
    assert case.now.standing == "withdrawn"


def test_a_circle_undoes_nothing(case: Case) -> None:
    # Ids are drawn before anything is written, so a circle can only be made on purpose.
    one, two = id_of("b 2"), id_of("b 1")
    withdraw(case.b, one)
    withdraw(case.b, two)
    withdraw(case.a, case.target)
    assert case.now.standing == "withdrawn"


def test_two_corrections_that_name_each_other_stay_a_conflict(case: Case) -> None:
    correct(case.a, case.target, "324", settles=[id_of("b 1")])
    correct(case.b, case.target, "325", settles=[id_of("a 2")])
    assert case.now.standing == "conflict"


def test_a_correction_of_one_that_names_it_stays_a_conflict_too(case: Case) -> None:
    one = correct(case.a, case.target, "324", settles=[id_of("b 1")])
    assert correct(case.b, one, "325") == id_of("b 1")
    assert case.now.standing == "conflict"


def test_a_disputed_correction_settles_nothing(case: Case) -> None:
    one = correct(case.a, case.target, "324")
    twin = case.b.clone()
    two = correct(case.b, case.target, "325", settles=[one])
    twin.save("note", {"text": "x"}, 900, machine="", id=id_of("y"))
    third = correct(case.a, case.target, "326")
    found = standing_of(case.a, case.b, twin)[case.hash]
    assert (found.standing, found.by) == ("conflict", tuple(sorted([one, two, third])))


def test_standings_come_by_log_and_number_and_newer_lines_not_at_all() -> None:
    phones = [Phone("a"), Phone("b"), newer_phone()]
    for after_s in range(0, 300, 60):
        for phone in phones[:2]:
            phone.save("check", check(), after_s)
    entries, _ = read_lines(lines_of(*phones), checked)
    found = standings(entries, frozenset(), frozenset())
    assert found == standings(entries[::-1], frozenset(), frozenset())
    places = [(phone.log, seq) for phone in phones for seq in range(1, 6)]
    assert [one.place[:2] for one in found] == sorted([*places[:10], places[10]])


def test_a_correction_that_names_itself_settles_nothing(case: Case) -> None:
    own = id_of("a 2")
    assert correct(case.a, case.target, "324", settles=[own]) == own
    correct(case.b, case.target, "325")
    assert case.now.standing == "conflict"


def test_a_correction_of_another_kind_is_a_conflict(case: Case) -> None:
    body = {"corrects": case.target, "reason": "x", "kind": "note", "content": {"text": "y"}}
    case.b.save("correction", body, 900, machine="")
    assert (case.now.standing, case.now.is_used) == ("conflict", False)


def test_a_correction_without_its_entry_does_no_harm() -> None:
    phone = Phone("a")
    correct(phone, id_of("elsewhere"), "324")
    assert standing_of(phone) == {}


def test_a_disputed_withdrawal_still_keeps_the_entry_out(case: Case) -> None:
    twin = case.b.clone()
    withdraw(case.b, case.target)
    correct(twin, case.target, "324")
    found = standing_of(case.a, case.b, twin)[case.hash]
    assert (found.standing, found.is_used) == ("conflict", False)


def test_a_disputed_withdrawal_of_a_withdrawal_takes_nothing_back(case: Case) -> None:
    gone = withdraw(case.a, case.target)
    twin = case.b.clone()
    withdraw(case.b, gone)
    withdraw(twin, id_of("something else"))
    assert standing_of(case.a, case.b, twin)[case.hash].standing == "withdrawn"


def test_a_disputed_withdrawal_keeps_out_what_either_version_names(case: Case) -> None:
    other = case.a.save("check", check("9"), 10)
    twin = case.b.clone()
    withdraw(case.b, case.target)
    withdraw(twin, other)
    found = standing_of(case.a, case.b, twin)
    assert [found[case.a.hash_of(seq)].standing for seq in (1, 2)] == ["conflict", "conflict"]


def test_lines_of_a_fork_are_disputed(case: Case) -> None:
    twin = case.a.clone()
    case.a.save("check", check("1"), 60, id=id_of("x"))
    twin.save("check", check("2"), 60, id=id_of("y"))
    correction = correct(case.b, id_of("x"), "3")
    found = standing_of(case.a, twin, case.b)
    assert {found[one.hash_of(2)].standing for one in (case.a, twin)} == {"disputed"}
    assert found[case.hash].standing == "as_written"
    disputed = found[case.a.hash_of(2)]
    assert (disputed.is_used, disputed.is_in_doubt, disputed.by) == (False, True, (correction,))
    assert disputed.content == check("1")


def decide(use: str, leave: str) -> Phone:
    office = Phone("office")
    body = {"use": [use], "leave": [leave], "reason": "asked both"}
    office.save("decision", body, 999, machine="")
    return office


def test_the_line_that_was_decided_against_is_left_out(case: Case) -> None:
    twin = case.a.clone()
    case.a.save("check", check("1"), 60, id=id_of("x"))
    twin.save("check", check("2"), 60, id=id_of("y"))
    mine, theirs = case.a.hash_of(2), twin.hash_of(2)
    found = standing_of(case.a, twin, decide(mine, theirs))
    assert (found[mine].standing, found[theirs].standing) == ("as_written", "left_out")
    assert (found[theirs].is_used, found[theirs].is_in_doubt) == (False, False)


def test_a_correction_that_was_decided_against_counts_as_not_written(case: Case) -> None:
    twin = case.b.clone()
    correct(case.b, case.target, "324")
    withdraw(twin, case.target)
    office = decide(case.b.hash_of(1), twin.hash_of(1))
    found = standing_of(case.a, case.b, twin, office)[case.hash]
    assert (found.standing, found.content) == ("corrected", check("324"))
