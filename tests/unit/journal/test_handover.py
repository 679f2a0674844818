"""pycore.journal.handover."""

import pytest

from pycore.journal.handover import Handover, Said, handed_over, moved_since, poured_since
from pycore.journal.state import AT_REST
from tests.phones import LATHE, MORNING_S, NOW_S, Phone, check, id_of, moment, pour, typed
from tests.unit.journal.reading import fold

SHIFT_S = MORNING_S + 3600
GRINDER = id_of("axle grinder")


def page(*phones: Phone) -> Handover:
    return handed_over(fold(*phones), SHIFT_S, NOW_S)


def test_open_pours_and_second_readings_count_however_old() -> None:
    phone = Phone("a")
    plan = phone.save("plan", {"pours": [{"count": 3}]}, -86_400)
    phone.save("pour", pour(1, False, plan=plan, recheck_due_at=moment(-80_000)), -86_000)
    phone.save("check", check(), -85_000, machine=GRINDER)
    found = page(phone)
    assert [(machine, one.plan) for machine, one in found.open_pours] == [(LATHE, plan)]
    assert [(machine, one.overdue) for machine, one in found.rechecks] == [(LATHE, True)]


def test_machines_that_are_not_simply_in_use() -> None:
    phone = Phone("a")
    phone.save("machine_state", {"state": "stopped", "reason": "split"}, 0)
    phone.save("machine_state", {"state": "in_use"}, 0, machine=GRINDER)
    assert [one.machine for one in page(phone).states] == [LATHE]


def test_a_reading_holds_until_something_is_poured() -> None:
    phone, names = Phone("a"), [id_of(f"as read {n}") for n in range(7)]
    for after_s, name in enumerate(names):
        phone.save("pour", pour(), after_s, machine=name)
        phone.save("check", check(), 100 + after_s, machine=name)
    poured, unknown, given_up, dipped, taken_back, begun, untouched = names
    phone.save("plan", {"pours": [{"count": 3}]}, 200, machine=begun)
    phone.save("pour", pour(), 200, machine=poured)
    phone.save("unknown_addition", {}, 200, machine=unknown)
    phone.save("pour", {"pours": [], "finished": True}, 200, machine=given_up)
    phone.save("pour", pour(), 200, machine=dipped)
    phone.save("check", {"dip": check()["dip"]}, 300, machine=dipped)
    wrong = phone.save("pour", pour(), 200, machine=taken_back)
    phone.save("withdrawal", {"retracts": wrong, "reason": "x"}, 300, machine="")
    found = [one.machine for one in page(phone).as_read]
    assert found == sorted([given_up, taken_back, untouched])
    # The dip of the last check is newer than its pour.
    levels = [one.machine for one in page(phone).as_dipped]
    assert levels == sorted([given_up, dipped, taken_back, untouched])


def test_the_last_pour_after_the_last_reading_is_found() -> None:
    phone = Phone("a")
    phone.save("pour", pour(), 0)
    assert poured_since(fold(phone).machines[0]) is None
    phone.save("check", check(), 100)
    assert poured_since(fold(phone).machines[0]) is None
    phone.save("pour", pour(recheck_due_at=moment(1_000)), 200)
    last = phone.save("unknown_addition", {}, 300)
    phone.save("pour", {"pours": [], "finished": True}, 400)
    found = poured_since(fold(phone).machines[0])
    assert found is not None
    assert found.id == last
    # A second reading before its time is still a reading.
    phone.save("recheck", {"of": id_of("a 3"), "reading": check()["reading"]}, 500)
    assert poured_since(fold(phone).machines[0]) is None


def test_a_pour_over_which_two_phones_differ_went_in() -> None:
    one, two = Phone("a"), Phone("b")
    one.save("check", check(), 0)
    poured = one.save("pour", pour(3), 100)
    for phone, count in ((one, 4), (two, 2)):
        said = {"corrects": poured, "reason": "miscounted", "kind": "pour", "content": pour(count)}
        phone.save("correction", said, 200, machine="")
    (found,) = fold(one, two).machines
    assert found.conflicts == (poured,)
    # It counted as never poured: the room of before stood there as the present one.
    since = poured_since(found)
    assert since is not None
    assert since.id == poured
    assert moved_since(found) is True
    now = page(one, two)
    assert (now.as_read, now.as_dipped) == ((), ())


def test_a_level_is_moved_by_hand_after_its_dip_alone() -> None:
    phone = Phone("a")
    phone.save("pour", pour(), 0)
    assert moved_since(fold(phone).machines[0]) is False
    phone.save("check", check(), 100)
    phone.save("note", {"text": "Seen."}, 150)
    assert moved_since(fold(phone).machines[0]) is False
    phone.save("pour", {"pours": [], "draw_off": typed("60", "L"), "finished": True}, 200)
    phone.save("note", {"text": "Seen."}, 250)
    assert moved_since(fold(phone).machines[0]) is True


def test_what_was_taken_out_changes_the_level_and_not_the_reading() -> None:
    phone = Phone("a")
    phone.save("check", check(), 0)
    phone.save("pour", {"pours": [], "draw_off": typed("60", "L"), "finished": True}, 100)
    assert [one.machine for one in page(phone).as_read] == [LATHE]
    assert page(phone).as_dipped == ()


def test_a_recipe_that_was_to_take_out_and_was_given_up_took_out_nothing() -> None:
    phone = Phone("a")
    phone.save("check", check(), 0)
    plan = phone.save("plan", {"pours": [{"count": 3}], "draw_off": typed("60", "L")}, 100)
    phone.save("pour", {"plan": plan, "pours": [], "finished": True}, 200)
    assert [one.machine for one in page(phone).as_dipped] == [LATHE]


def test_words_of_a_state_that_is_told_stand_there_alone() -> None:
    phone = Phone("a")
    phone.save("machine_state", {"state": "watch", "remarks": "Under the tray."}, 4000)
    assert [m.machine for m in page(phone).states] == [LATHE]
    assert page(phone).said == ()
    # Once it is in use again nothing else tells them.
    phone.save("machine_state", {"state": "in_use"}, 5000)
    assert [said.text for said in page(phone).said] == ["Under the tray."]


def test_a_reading_of_the_last_charge_is_none_any_more() -> None:
    phone = Phone("a")
    phone.save("check", check(), 0)
    phone.save("clean_out", {"finished": True}, 100)
    assert page(phone).as_read == ()


@pytest.mark.parametrize(
    ("state", "told"),
    [("watch", True), ("on_hold", True), ("stopped", True)]
    + [(one, False) for one in sorted(AT_REST)],
)
def test_readings_rest_with_the_machine(state: str, told: bool) -> None:
    phone = Phone("a")
    phone.save("check", check(), 0)
    phone.save("machine_state", {"state": state}, 100)
    assert [one.machine for one in page(phone).as_read] == [LATHE] * told


@pytest.mark.parametrize("state", ["watch", "on_hold", "stopped", *sorted(AT_REST)])
def test_every_state_but_in_use_is_told(state: str) -> None:
    phone = Phone("a")
    phone.save("machine_state", {"state": state}, 0)
    assert [one.machine for one in page(phone).states] == [LATHE]


def test_words_of_several_phones_are_told_in_the_order_of_time() -> None:
    # The log of the first phone comes after that of the second.
    one, two = sorted([Phone("a"), Phone("b")], key=lambda phone: phone.log, reverse=True)
    first = one.save("note", {"text": "first"}, 4000, machine="")
    second = two.save("unknown_addition", {"remarks": "second"}, 5000, by="RO")
    third = one.save("unknown_addition", {}, 6000)
    found = page(one, two)
    assert found.said == (
        Said(first, "note", "", moment(4000), "", "first"),
        Said(second, "unknown_addition", LATHE, moment(5000), "RO", "second"),
    )
    assert [added.id for added in found.unknown_additions] == [second, third]


def test_words_of_this_shift_and_those_that_still_hold() -> None:
    phone = Phone("a")
    phone.save("note", {"text": "before the shift"}, 3599, machine="")
    phone.save("note", {"text": "holds on", "until": moment(9 * 3600)}, 100, machine="")
    phone.save("note", {"text": "to the second", "until": moment(8 * 3600)}, 105, machine="")
    phone.save("note", {"text": "has passed", "until": moment(7200)}, 110, machine="")
    phone.save("check", {**check(), "remarks": "oil on top"}, 3600, by="RO")
    phone.save("check", check(), 3660)
    gone = phone.save("note", {"text": "withdrawn"}, 3700, machine="")
    phone.save("withdrawal", {"retracts": gone, "reason": "x"}, 3800, machine="")
    assert [(said.text, said.by) for said in page(phone).said] == [
        ("holds on", ""),
        ("to the second", ""),
        ("oil on top", "RO"),
    ]


def test_unknown_additions_of_this_shift() -> None:
    phone = Phone("a")
    phone.save("unknown_addition", {}, 0)
    edge = phone.save("unknown_addition", {}, 3600)
    late = phone.save("unknown_addition", {}, 4000)
    gone = phone.save("unknown_addition", {}, 4100)
    phone.save("withdrawal", {"retracts": gone, "reason": "x"}, 4200, machine="")
    assert [one.id for one in page(phone).unknown_additions] == [edge, late]


def test_machines_in_doubt() -> None:
    one, two = Phone("a"), Phone("b")
    target = one.save("check", check("300"), 0)
    two.save("check", check("300"), 0, machine=GRINDER)
    for phone, depth in ((one, "301"), (two, "302")):
        body = {"corrects": target, "reason": "x", "kind": "check", "content": check(depth)}
        phone.save("correction", body, 60, machine="")
    assert page(one, two).in_doubt == (LATHE,)


def test_an_empty_log_has_an_empty_page() -> None:
    assert page() == Handover((), (), (), (), (), (), (), ())
