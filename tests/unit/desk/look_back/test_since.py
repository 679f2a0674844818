"""pycore.desk.look_back.since: what went out and in, and what a machine loses; by hand."""

from typing import Any

import pytest

from pycore.desk.look_back.since import own_losses_l_d, went_since
from pycore.journal.state import MachineNow
from tests.phones import LATHE, Phone, check, id_of, pour, setup, typed
from tests.unit.journal.reading import dispute, machine

DAY_S = 86_400
USABLE_L = 10.0


def lathe(*told: tuple[str, dict[str, Any]]) -> MachineNow:
    phone = Phone("a")
    phone.save("machine_set", {"machine": setup()}, -DAY_S)
    phone.save("check", check(), 0)
    for at, (kind, body) in enumerate(told, 1):
        phone.save(kind, body, 60 * at)
    return machine(phone, name=LATHE)


def since(now: MachineNow) -> Any:
    assert now.checked is not None
    return went_since(now, now.checked.entry, USABLE_L)


def went(*told: tuple[str, dict[str, Any]]) -> Any:
    return since(lathe(*told))


def test_buckets_count_in_litres_and_what_was_taken_out_too() -> None:
    water = {"count": 2, "kind": "water"}
    body = {"pours": [water], "finished": True, "draw_off": typed("15", "L")}
    found = went(("pour", pour(1)), ("pour", body))
    assert found is not None
    # A bucket of about 3 %: 9.7 L water and 0.3 L concentrate; two of 10 L water.
    litres, unknown = found
    assert litres.water_l == pytest.approx(29.7)
    assert litres.concentrate_l == pytest.approx(0.3)
    assert (litres.draw_off_l, unknown) == (15.0, frozenset())


def test_what_nobody_can_put_into_litres_is_named() -> None:
    _, unknown = went(("unknown_addition", {"what": "water"}))
    assert unknown == {"water"}
    _, unknown = went(("pour", {"pours": [{"count": 1, "kind": "unknown"}], "finished": True}))
    assert unknown == {"unknown"}
    _, unknown = went(("pour", pour(1, finished=False)))
    assert unknown == {"unknown"}


def test_what_a_phone_with_an_open_pour_has_not_logged_yet_is_not_known() -> None:
    by_habit = ("pour", {"pours": [{"count": 1, "kind": "water"}], "finished": True})
    plan = ("plan", {"pours": [{"count": 6}]})
    # The third line of the log, after set-up and check.
    of_plan = {"plan": id_of("a 3")}
    begun = ("pour", pour(1, finished=False, **of_plan))
    done = ("pour", pour(5, **of_plan))
    assert went(plan)[1] == {"unknown"}
    assert went(plan, begun, by_habit)[1] == {"unknown"}
    assert went(plan, begun, by_habit, done)[1] == frozenset()


def test_a_pour_that_was_open_at_the_check_can_have_gone_on_after_it() -> None:
    phone = Phone("a")
    phone.save("machine_set", {"machine": setup()}, -DAY_S)
    phone.save("pour", pour(1, finished=False), -60)
    phone.save("check", check(), 0)
    assert since(machine(phone))[1] == {"unknown"}


def test_of_a_pour_in_doubt_nobody_knows_how_much_went_in_or_out() -> None:
    def found(**more: Any) -> Any:
        one, two = Phone("a"), Phone("b")
        one.save("machine_set", {"machine": setup()}, -DAY_S)
        one.save("check", check(), 0)
        doubtful = one.save("pour", pour(6, **more), 60)
        one.save("pour", pour(1), 120)
        dispute((one, two), doubtful, "pour", [pour(7), pour(5)])
        return since(machine(one, two))

    litres, unknown = found()
    # Of the pour that is certain alone.
    assert (litres.water_l, litres.concentrate_l) == pytest.approx((9.7, 0.3))
    assert unknown == {"unknown"}
    assert found(draw_off=typed("15", "L")) is None


def test_a_drained_sump_and_a_number_that_cannot_be_read_say_nothing() -> None:
    assert went(("clean_out", {"finished": False})) is None
    body = {"pours": [], "finished": True, "draw_off": typed("much", "L")}
    assert went(("pour", body)) is None


def test_own_losses_are_litres_a_day_from_check_to_check() -> None:
    phone = Phone("a")
    phone.save("machine_set", {"machine": setup()}, -DAY_S)
    for day, depth in enumerate(("430", "426", "420")):
        phone.save("check", check(depth), day * DAY_S)
    # 0.45 L for each mm: 4 and 6 mm.
    assert own_losses_l_d(machine(phone)) == pytest.approx([1.8, 2.7])


def test_a_long_log_is_read_from_its_latest_entries_by_the_set_up_before_them() -> None:
    phone = Phone("a")
    phone.save("machine_set", {"machine": setup()}, -DAY_S)
    for day in range(150):
        phone.save("check", check(str(430 - day)), day * DAY_S)
    losses = own_losses_l_d(machine(phone))
    assert len(losses) == 119
    assert losses == pytest.approx([0.45] * 119)


def test_a_step_with_a_pour_in_doubt_is_no_loss_of_its_own() -> None:
    one, two = Phone("a"), Phone("b")
    one.save("machine_set", {"machine": setup()}, -DAY_S)
    for day in range(130):
        one.save("check", check(str(430 - day)), day * DAY_S)
    doubtful = one.save("pour", pour(6), 129 * DAY_S + 60)
    one.save("check", check("300"), 130 * DAY_S)
    dispute((one, two), doubtful, "pour", [pour(7), pour(5)])
    # The pour and 119 checks are the latest 120 entries; the last step counts no more.
    assert own_losses_l_d(machine(one, two)) == pytest.approx([0.45] * 117)
