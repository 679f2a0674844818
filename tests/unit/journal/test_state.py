"""pycore.journal.state: the fold. That it does not depend on order stands in tests/properties."""

import pytest

from pycore.journal.state import AT_REST, Since
from tests.phones import LATHE, NOW_S, Phone, check, id_of, newer_phone, pour, setup, typed
from tests.unit.journal.reading import fold, machine

GRINDER = id_of("axle grinder")


def test_the_latest_of_each_kind() -> None:
    phone = Phone("a")
    phone.save("machine_set", {"machine": setup("Old name")}, 0)
    named = phone.save("machine_set", {"machine": setup("Wheel lathe")}, 60)
    dipped = phone.save("check", {"dip": check()["dip"]}, 120)
    read = phone.save("recheck", {"reading": check()["reading"]}, 180)
    looked = phone.save("check", {"look": ["foam"]}, 240)
    state = phone.save("machine_state", {"state": "watch"}, 300)
    now = machine(phone)
    found = (now.definition, now.level, now.strength, now.checked, now.state)
    assert [one and one.entry.id for one in found] == [named, dipped, read, looked, state]
    assert all(one is not None and one.is_certain for one in found)


@pytest.mark.parametrize(
    ("state", "stopped"),
    [("in_use", False), ("watch", False), *((one, True) for one in ("on_hold", "stopped"))]
    + [(one, True) for one in ("clean_out", "out_of_service", "shutdown")],
)
def test_nothing_is_poured_in_on_hold_stopped_or_at_rest(state: str, stopped: bool) -> None:
    phone = Phone("a")
    assert not any(one.is_stopped for one in fold(phone).machines)
    phone.save("check", check(), 0)
    assert not machine(phone).is_stopped
    assert machine(phone).rests is False
    phone.save("machine_state", {"state": state}, 60)
    assert machine(phone).is_stopped is stopped
    assert machine(phone).rests is (state in AT_REST)


def test_what_is_about_no_machine_makes_none() -> None:
    phone = Phone("a")
    phone.save("note", {"text": "x"}, 0, machine="")
    assert fold(phone).machines == ()
    assert fold(phone).counts == {"as_written": 1, "lines": 1, "newer": 0, "quarantined": 0}


def test_lines_in_quarantine_are_counted() -> None:
    phone = Phone("a")
    phone.save("note", {"text": "x"}, 0, machine="")
    phone.lines.append("nonsense")
    counts = fold(phone).counts
    assert (counts["lines"], counts["quarantined"]) == (2, 1)


def test_fluids_by_id_and_a_withdrawn_one_is_none() -> None:
    phone = Phone("a")
    fluid = {"type": "synthetic", "factor": typed("1.5", "1")}
    names = sorted(id_of(name) for name in ("b mix", "c mix", "d mix", "e mix"))
    for name in reversed(names):
        body = {"fluid": name, "definition": fluid}
        last = phone.save("fluid_set", body, 0, machine="")
    found = fold(phone).fluids
    assert [one.entry.content["fluid"] for one in found] == names
    phone.save("withdrawal", {"retracts": last, "reason": "x"}, 60, machine="")
    assert [one.entry.content["fluid"] for one in fold(phone).fluids] == names[1:]


def test_what_nobody_entered_is_not_there() -> None:
    phone = Phone("a")
    phone.save("unknown_addition", {}, 0)
    now = machine(phone)
    assert (now.definition, now.level, now.strength, now.checked, now.state) == (None,) * 5
    assert now.recheck is None
    assert now.since == Since(0, 0, 0, 1, 0.0, 0.0)


def test_corrected_to_another_machine_and_withdrawn() -> None:
    phone = Phone("a")
    phone.save("check", check("300"), 0)
    wrong = phone.save("check", check("310"), 60)
    body = {"corrects": wrong, "reason": "label", "kind": "check", "content": check("311")}
    phone.save("correction", {**body, "machine": GRINDER}, 120, machine="")
    assert [one.machine for one in fold(phone).machines] == sorted([LATHE, GRINDER])
    moved = machine(phone, name=GRINDER).level
    assert moved is not None
    assert moved.entry.content["dip"] == check("311")["dip"]
    left = machine(phone).level
    assert left is not None
    assert left.entry.content["dip"] == check("300")["dip"]
    phone.save("withdrawal", {"retracts": wrong, "reason": "no"}, 180, machine="")
    assert fold(phone).counts["withdrawn"] == 1


def test_poured_since_the_last_measurement() -> None:
    phone = Phone("a")
    phone.save("pour", pour(7), 0)
    phone.save("check", check(), 60)
    phone.save("check", {"look": ["normal"]}, 90)
    phone.save("pour", pour(2), 120)
    phone.save("pour", pour(1), 180)
    phone.save("unknown_addition", {}, 240)
    assert machine(phone).since == Since(2, 3, 3, 1, 0.0, 0.0)


def test_litres_since_by_the_bucket_of_the_set_up() -> None:
    phone = Phone("a")
    phone.save("machine_set", {"machine": setup()}, 0)
    phone.save("check", check(), 60)
    phone.save("pour", pour(2), 120)
    phone.save("pour", {"pours": [{"count": 1, "kind": "water"}], "finished": True}, 180)
    since = machine(phone).since
    assert (since.pours, since.buckets, since.unknown_buckets) == (2, 3, 0)
    # Two buckets of 10 L at 3 % hold 19.4 L and 0.6 L, one of water 10 L.
    assert (since.water_l, since.concentrate_l) == pytest.approx((29.4, 0.6))


def test_an_old_reading_keeps_its_set_up() -> None:
    phone = Phone("a")
    phone.save("machine_set", {"machine": setup(factor="1.5")}, 0)
    phone.save("check", check(), 60)
    phone.save("machine_set", {"machine": setup(factor="2.0")}, 120)
    now = machine(phone)
    assert now.strength is not None
    factor = now.setup_at(now.strength.entry)
    assert factor is not None
    assert factor["fluid"]["factor"]["text"] == "1.5"


def test_a_copy_in_the_entry_comes_before_the_set_up_in_force() -> None:
    phone = Phone("a")
    phone.save("machine_set", {"machine": setup(factor="1.5")}, 0)
    phone.save("check", {**check(), "machine": setup(factor="1.7")}, 60)
    now = machine(phone)
    assert now.strength is not None
    assert (now.setup_at(now.strength.entry) or {})["fluid"]["factor"]["text"] == "1.7"


def test_before_any_set_up_there_is_none() -> None:
    phone = Phone("a")
    phone.save("check", check(), 0)
    phone.save("machine_set", {"machine": setup()}, 60)
    now = machine(phone)
    assert now.strength is not None
    assert now.setup_at(now.strength.entry) is None


def test_after_a_clean_out_the_old_readings_are_of_another_fluid() -> None:
    phone = Phone("a")
    phone.save("check", check(), 0)
    phone.save("clean_out", {"finished": False}, 60)
    assert machine(phone).strength is not None
    phone.save("clean_out", {"finished": True}, 120)
    assert (machine(phone).strength, machine(phone).level) == (None, None)
    again = phone.save("check", check(), 180)
    now = machine(phone)
    assert now.strength is not None
    assert now.strength.entry.id == again


@pytest.mark.parametrize("state", ["in_use", "watch", "stopped", *sorted(AT_REST)])
def test_due_checks_rest_while_a_machine_does(state: str) -> None:
    phone = Phone("a")
    phone.save("pour", pour(recheck_due_at="2026-11-25T07:00:00+01:00"), 0)
    phone.save("machine_state", {"state": state}, 60)
    now = machine(phone)
    assert now.recheck is not None
    assert (now.recheck.resting, now.recheck.overdue) == (state in AT_REST, state not in AT_REST)


def test_fluids_and_instruments_by_their_id() -> None:
    phone = Phone("a")
    for factor in ("1.4", "1.5"):
        fluid = {"type": "synthetic", "factor": typed(factor, "1")}
        phone.save("fluid_set", {"fluid": id_of("mix"), "definition": fluid}, 0, machine="")
    body = {"instrument": id_of("r1"), "name": "Red case", "shows": "per_cent"}
    phone.save("instrument_set", body, 60, machine="")
    now = fold(phone)
    assert [one.entry.content["definition"]["factor"]["text"] for one in now.fluids] == ["1.5"]
    assert [one.entry.content["name"] for one in now.instruments] == ["Red case"]


def test_newer_lines_are_counted_and_not_used() -> None:
    now = fold(newer_phone())
    assert (now.counts["newer"], now.counts["as_written"], now.counts["lines"]) == (2, 1, 3)
    assert len(now.entries) == 1


def test_clocks_ahead_are_flagged_by_the_time_given() -> None:
    phone = Phone("a")
    phone.save("check", check(), 8 * 3600 + 601)
    assert [flag.flag for flag in fold(phone).flags] == ["future"]
    assert NOW_S == 1_795_586_400 + 8 * 3600


def test_what_was_poured_into_the_old_charge_is_gone_with_it() -> None:
    phone = Phone("a")
    phone.save("pour", pour(2), 0)
    phone.save("clean_out", {"finished": False}, 60)
    assert machine(phone).since.buckets == 2
    phone.save("clean_out", {"finished": True}, 120)
    assert machine(phone).since.buckets == 0
    phone.save("pour", pour(3), 180)
    assert machine(phone).since.buckets == 3
