"""pycore.journal.state: what is taken back, in doubt or only looked at, and what that leaves."""

import pytest

from pycore.journal.state import SHOP_FACTS, Since, of_this_charge
from tests.phones import LATHE, Phone, check, id_of, pour, setup, typed
from tests.unit.journal.reading import dispute, fold, machine

GRINDER = id_of("axle grinder")


def withdraw(phone: Phone, target: str) -> None:
    phone.save("withdrawal", {"retracts": target, "reason": "x"}, 7200, machine="")


@pytest.mark.parametrize("part", ["dip", "reading"])
def test_a_dip_or_a_reading_alone_begins_anew_and_a_look_does_not(part: str) -> None:
    phone = Phone("a")
    phone.save("pour", pour(2), 0)
    phone.save("check", {"look": ["normal"]}, 60)
    phone.save("pour", pour(1), 120)
    assert machine(phone).since.buckets == 3
    phone.save("check", {part: check()[part]}, 180)
    assert machine(phone).since == Since(0, 0, 0, 0, 0.0, 0.0)


def test_another_bucket_counts_from_its_set_up_on() -> None:
    water = {"pours": [{"count": 1, "kind": "water"}], "finished": True}
    larger = setup()
    larger["bucket"]["usable"] = typed("12", "L")
    phone = Phone("a")
    phone.save("machine_set", {"machine": setup()}, 0)
    phone.save("check", check(), 60)
    phone.save("pour", water, 120)
    phone.save("machine_set", {"machine": larger}, 180)
    phone.save("pour", water, 240)
    assert machine(phone).since.water_l == pytest.approx(22.0)


@pytest.mark.parametrize("checks", [1, 2])
def test_the_charge_begins_after_its_clean_out(checks: int) -> None:
    phone = Phone("a")
    phone.save("clean_out", {"finished": True}, 0)
    saved = [phone.save("check", check(), 60 + place) for place in range(checks)]
    assert [entry.id for entry in of_this_charge(machine(phone).ordered)] == saved


def test_what_was_withdrawn_was_not_poured_and_is_not_open() -> None:
    phone = Phone("a")
    gone = phone.save("pour", pour(2, finished=False), 0)
    phone.save("pour", pour(1), 60, machine=GRINDER)
    assert len(machine(phone).open_pours) == 1
    withdraw(phone, gone)
    now = machine(phone)
    assert (now.since.buckets, now.open_pours, now.ordered) == (0, (), ())


def test_a_state_that_was_withdrawn_is_none() -> None:
    phone = Phone("a")
    tag = phone.save("machine_state", {"state": "stopped"}, 0)
    withdraw(phone, tag)
    now = machine(phone)
    assert (now.state, now.is_stopped) == (None, False)


def test_two_tags_in_doubt_are_both_told_the_later_one_first() -> None:
    one, two = Phone("a"), Phone("b")
    tags = [
        one.save("machine_state", {"state": state}, after_s)
        for after_s, state in ((0, "watch"), (60, "in_use"), (120, "on_hold"))
    ]
    one.save("check", check(), 180)
    for tag in tags:
        for phone, state in ((one, "watch"), (two, "in_use")):
            body = {"corrects": tag, "reason": "x", "kind": "machine_state"}
            phone.save("correction", {**body, "content": {"state": state}}, 900)
    now = machine(one, two)
    assert now.state is not None
    assert [now.state.entry.id, *(other.id for other in now.state.others)] == [tags[2], *tags[:2]]
    assert now.conflicts == tuple(sorted(tags))


def test_machines_stand_by_their_ids() -> None:
    phone = Phone("a")
    names = sorted([LATHE, *(id_of(f"machine {number}") for number in range(4))])
    for name in reversed(names):
        phone.save("check", check(), 0, machine=name)
    assert [one.machine for one in fold(phone).machines] == names


def test_every_fact_of_the_shop_is_found() -> None:
    facts = {
        "who_to_ask": "Bay 3",
        "look_limits": {"ph_low": typed("8.2", "1")},
        "check_every_d": typed("7", "1"),
        "clean_out_every_d": typed("180", "1"),
        "most_lost_pct_d": typed("8", "%"),
    }
    assert tuple(facts) == SHOP_FACTS
    phone = Phone("a")
    for name, fact in facts.items():
        phone.save("shop_set", {name: fact}, 0, machine="")
    assert {name: one.entry.content[name] for name, one in fold(phone).shop.items()} == facts


def test_pours_in_doubt_stand_in_their_place_and_nothing_else_that_is_in_doubt() -> None:
    one, two = phones = Phone("a"), Phone("b")
    first = one.save("pour", pour(1), 0)
    assert machine(*phones).with_doubtful_pours == machine(*phones).ordered
    poured = one.save("pour", pour(3), 60)
    unknown = one.save("unknown_addition", {"remarks": "Seen wet."}, 120)
    checked = one.save("check", check(), 180)
    last = two.save("pour", pour(2), 240)
    dispute(phones, poured, "pour", [pour(4), pour(2)])
    dispute(phones, unknown, "unknown_addition", [{"remarks": "p"}, {"remarks": "q"}])
    dispute(phones, checked, "check", [check("300"), check("310")])
    now = machine(*phones)
    assert now.conflicts == tuple(sorted((poured, unknown, checked)))
    assert [entry.id for entry in now.ordered] == [first, last]
    assert [entry.id for entry in now.with_doubtful_pours] == [first, poured, unknown, last]


def test_a_pour_in_doubt_went_in_since_and_nobody_knows_how_much() -> None:
    one, two = Phone("a"), Phone("b")
    one.save("machine_set", {"machine": setup()}, 0)
    one.save("check", check(), 60)
    poured = one.save("pour", pour(6), 120)
    one.save("pour", pour(2), 180)
    dispute((one, two), poured, "pour", [pour(7), pour(5)])
    # Two buckets of 10 L at 3 % are known; of the other pour only that there was one.
    since = machine(one, two).since
    assert (since.pours, since.buckets, since.unknown_buckets) == (2, 3, 1)
    assert (since.water_l, since.concentrate_l) == pytest.approx((19.4, 0.6))
