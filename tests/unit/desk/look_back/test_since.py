"""pycore.desk.look_back.since: what went out and in, and what a machine loses; by hand."""

from typing import Any

import pytest

from pycore.desk.look_back.since import after, own_losses_l_d, went_since
from pycore.journal.state import MachineNow
from tests.phones import LATHE, Phone, check, pour, setup, typed
from tests.unit.journal.reading import machine

DAY_S = 86_400
USABLE_L = 10.0


def lathe(*told: tuple[str, dict[str, Any]]) -> MachineNow:
    phone = Phone("a")
    phone.save("machine_set", {"machine": setup()}, -DAY_S)
    phone.save("check", check(), 0)
    for at, (kind, body) in enumerate(told, 1):
        phone.save(kind, body, 60 * at)
    return machine(phone, name=LATHE)


def went(*told: tuple[str, dict[str, Any]]) -> Any:
    now = lathe(*told)
    assert now.checked is not None
    return went_since(after(now, now.checked.entry), USABLE_L)


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
