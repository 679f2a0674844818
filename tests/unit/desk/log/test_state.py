"""pycore.desk.log.state: the last dip and reading by the set-up of their day."""

from typing import Any

import pytest

from tests.phones import LATHE, NOW, Phone, check, id_of, moment, setup, typed
from tests.properties.asking import ask


def machine(phone: Phone, name: str = LATHE) -> dict[str, Any]:
    told = ask("fold_log", {"lines": phone.lines, "now": NOW})
    return next(one for one in told["machines"] if one["machine"] == name)


def test_level_and_strength_are_those_of_an_assessment() -> None:
    phone = Phone("a")
    phone.save("machine_set", {"machine": setup(), "code": "7K3F4"}, 0)
    phone.save("check", check("342", "4.8"), 7200)
    now = machine(phone)
    wanted = ask(
        "assess_sump",
        {
            **{name: setup()[name] for name in ("sump", "fluid", "target", "units")},
            **check("342", "4.8"),
        },
    )
    assert now["level"]["level"] == wanted["level"]
    assert now["strength"]["strength"] == wanted["strength"]
    assert now["level"]["age_d"] == pytest.approx(0.25)
    assert (now["name"], now["setup"]["code"]) == ("Wheel lathe", "7K3F4")


def test_an_old_reading_keeps_its_factor() -> None:
    phone = Phone("a")
    phone.save("machine_set", {"machine": setup(factor="1.5")}, 0)
    phone.save("check", check("342", "4.0"), 60)
    phone.save("machine_set", {"machine": setup(factor="2.0")}, 120)
    now = machine(phone)
    assert now["strength"]["strength"]["strength_pct"]["value"] == pytest.approx(6.0)
    assert now["setup"]["machine"]["fluid"]["factor"]["text"] == "2.0"


def test_without_a_set_up_it_says_so() -> None:
    phone = Phone("a")
    phone.save("check", check(), 0)
    now = machine(phone)
    assert now["name"] == ""
    assert now["level"]["trouble"]["code"] == "missing"
    assert "level" not in now["level"]


def test_a_dip_above_the_rim_is_told_with_its_limit() -> None:
    phone = Phone("a")
    phone.save("machine_set", {"machine": setup()}, 0)
    phone.save("check", check("3420"), 60)
    now = machine(phone)
    assert now["level"]["trouble"]["code"] == "out_of_range"
    assert now["level"]["trouble"]["limit"]["unit"] == "mm"
    assert "strength" in now["strength"]


def test_shop_settings_come_with_their_age() -> None:
    phone = Phone("a")
    fluid = {"fluid": id_of("mix"), "definition": {"type": "synthetic"}, "lot": "24-118"}
    phone.save("fluid_set", fluid, 0, machine="")
    instrument = {"instrument": id_of("r1"), "name": "Red case", "shows": "brix"}
    phone.save("instrument_set", instrument, 0, machine="")
    told = ask("fold_log", {"lines": phone.lines, "now": NOW})
    assert [one["fluid"] for one in told["fluids"]] == [fluid]
    assert [one["instrument"] for one in told["instruments"]] == [instrument]
    assert told["fluids"][0]["age_d"] == pytest.approx(1 / 3)


def low_sumps(
    depth: str, usable: dict[str, str] | None = None, state: str = "watch"
) -> list[dict[str, Any]]:
    phone = Phone("a")
    made = setup()
    if usable:
        made["bucket"]["usable"] = usable
    phone.save("machine_set", {"machine": made}, 0)
    phone.save("check", check(depth), 60)
    phone.save("machine_state", {"state": state}, 90)
    body = {"lines": phone.lines, "now": NOW, "since": moment(0)}
    return ask("handover", body)["low_sumps"]


def test_a_sump_is_low_when_a_whole_bucket_fits() -> None:
    # 198 L at 440 mm: 0.45 L a millimetre, so that 10 L are 22.3 mm.
    assert low_sumps("418") == []
    assert [one["level"]["level"]["room_l"] for one in low_sumps("417")] == [pytest.approx(10.35)]
    assert len(low_sumps("342", typed("20", "L"))) == 1
    assert low_sumps("342", typed("45", "L")) == []


def test_a_sump_is_not_low_by_a_dip_of_before_the_pour() -> None:
    phone = Phone("a")
    phone.save("machine_set", {"machine": setup()}, 0)
    phone.save("check", check("342"), 60)
    phone.save("pour", {"pours": [{"count": 4, "kind": "water"}], "finished": True}, 90)
    body = {"lines": phone.lines, "now": NOW, "since": moment(0)}
    assert ask("handover", body)["low_sumps"] == []


@pytest.mark.parametrize("state", ["stopped", "clean_out", "out_of_service", "shutdown"])
def test_where_nothing_may_be_poured_in_no_sump_is_low(state: str) -> None:
    assert low_sumps("342", state=state) == []


def test_what_cannot_be_told_is_not_low() -> None:
    assert low_sumps("3420") == []
    assert low_sumps("342", typed("ten", "L")) == []
    assert low_sumps("470") == []
