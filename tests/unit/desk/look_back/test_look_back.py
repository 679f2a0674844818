"""pycore.desk.look_back.look_back: earlier results of a charge, the level beside the last dip."""

from typing import Any

import pytest

from pycore.desk.contract.messages import DipTyped
from pycore.desk.contract.records import ReadingTyped, Typed
from pycore.desk.look_back.look_back import LookBackBody, look_back
from pycore.quantity.fault import Fault
from tests.phones import LATHE, Phone, check, moment, pour, setup, typed
from tests.unit.journal.reading import dispute, lines_of

HOUR_S = 3600
DAY_S = 24 * HOUR_S


def asked(*phones: Phone, dip_mm: str | None = None, shows: str | None = None) -> dict[str, Any]:
    dip = None if dip_mm is None else DipTyped(Typed(dip_mm, "mm"), how="hard_floor")
    reading = None if shows is None else ReadingTyped(Typed(shows, "Brix"), how="optical")
    return look_back(LookBackBody(lines_of(*phones), LATHE, moment(8 * HOUR_S), dip, reading))


def lathe(ph: str = "") -> Phone:
    phone = Phone("a")
    machine = setup()
    if ph:
        machine["fluid"]["first_fill_ph"] = typed(ph, "1")
    phone.save("machine_set", {"machine": machine}, -90 * DAY_S)
    return phone


def nitrite(text: str, **more: Any) -> dict[str, Any]:
    return {**check(), "nitrite": typed(text, "mg/L"), **more}


def test_a_machine_without_lines_has_nothing_to_tell() -> None:
    nothing = {"nitrite_before": [], "topped_up": False, "doubts": []}
    assert asked() == nothing
    assert asked(lathe(), dip_mm="300") == nothing


def test_nitrite_of_this_charge_the_oldest_first_from_two_phones() -> None:
    one, two = lathe(), Phone("b")
    one.save("check", nitrite("14"), -40 * DAY_S)
    one.save("clean_out", {"finished": True}, -30 * DAY_S)
    two.save("check", nitrite("9"), -8 * DAY_S)
    one.save("check", nitrite("8"), -15 * DAY_S)
    gone = one.save("check", nitrite("70"), -7 * DAY_S)
    one.save("withdrawal", {"retracts": gone, "reason": "wrong strip"}, -7 * DAY_S + 60)
    for phones in ((one, two), (two, one)):
        found = [row["nitrite"]["text"] for row in asked(*phones)["nitrite_before"]]
        assert found == ["8", "9"]


# Full 440 mm, 198 L: 0.45 L for each mm. 400 mm are 180 L, 300 mm 135 L.
@pytest.mark.parametrize(
    ("dip", "verdict"),
    [("400", "as_expected"), ("385", "explained"), ("300", "lost"), ("430", "gained")],
)
def test_the_level_beside_the_last_dip(dip: str, verdict: str) -> None:
    phone = lathe()
    phone.save("check", check("400"), 0)
    level = asked(phone, dip_mm=dip)["level"]
    assert level["verdict"] == verdict
    assert level["since"] == moment(0)
    assert level["expected_l"] == pytest.approx(180.0)


def test_what_was_poured_since_counts_and_what_was_before_does_not() -> None:
    phone = lathe()
    phone.save("pour", pour(5), -HOUR_S)
    phone.save("check", check("400"), 0)
    phone.save("pour", pour(1), HOUR_S)
    found = asked(phone, dip_mm="422")
    assert found["level"]["expected_l"] == pytest.approx(190.0)
    assert found["level"]["verdict"] == "as_expected"
    assert found["topped_up"] is True


def test_an_unknown_addition_explains_a_gain() -> None:
    phone = lathe()
    phone.save("check", check("400"), 0)
    phone.save("unknown_addition", {"what": "unknown"}, HOUR_S)
    assert asked(phone, dip_mm="430")["level"]["verdict"] == "unknown_poured"


def test_a_pour_over_which_two_phones_differ_was_poured() -> None:
    one, two = lathe(), Phone("b")
    one.save("check", check("200", "3.0"), 0)
    row = {"water": typed("8", "L"), "concentrate": typed("2", "L")}
    six, seven, five = ({"pours": [{"count": n, **row}], "finished": True} for n in (6, 7, 5))
    poured = one.save("pour", six, 60)
    dispute((one, two), poured, "pour", [seven, five])
    found = asked(one, two, dip_mm="330", shows="7.2")
    assert found["level"]["verdict"] == "unknown_poured"
    assert found["topped_up"] is True
    # Nobody can say how strong it is now; one thing is sure, that something was poured.
    assert found["doubts"] == []
    (doubt,) = asked(one, two, shows="0.3")["doubts"]
    assert doubt.code == "unlike_last_poured"


def test_a_rise_while_a_recipe_is_open_is_no_gain_that_nobody_knows() -> None:
    phone = lathe()
    phone.save("check", check("400"), 0)
    plan = phone.save("plan", {"pours": [{"count": 6}]}, 60)
    assert asked(phone, dip_mm="430")["level"]["verdict"] == "unknown_poured"
    # "Nothing poured since" would be more than anybody knows.
    assert asked(phone, shows="0.3")["doubts"][0].code == "unlike_last_poured"
    phone.save("pour", {"pours": [], "plan": plan, "finished": True}, 120)
    assert asked(phone, dip_mm="430")["level"]["verdict"] == "gained"


def test_a_recipe_names_its_water_and_nobody_is_asked() -> None:
    phone = lathe()
    phone.save("check", check("400"), 0)
    plan = phone.save("plan", {"pours": [{"count": 1}]}, HOUR_S)
    phone.save("pour", pour(1, plan=plan), HOUR_S + 60)
    assert asked(phone)["topped_up"] is False


def test_a_dip_of_another_charge_is_not_compared() -> None:
    phone = lathe()
    phone.save("check", check("400"), 0)
    phone.save("clean_out", {"finished": True}, HOUR_S)
    assert "level" not in asked(phone, dip_mm="300")


def test_what_was_poured_before_a_clean_out_is_gone_with_it() -> None:
    phone = lathe()
    phone.save("check", check("400"), 0)
    phone.save("pour", pour(1), 60)
    assert asked(phone)["topped_up"] is True
    phone.save("clean_out", {"finished": True}, HOUR_S)
    assert asked(phone)["topped_up"] is False


@pytest.mark.parametrize(
    ("kind", "body"),
    [
        ("pour", {"pours": [], "finished": True, "draw_off": typed("half", "L")}),
        ("pour", {"pours": [], "finished": True, "draw_off": typed("500", "L")}),
        ("clean_out", {"finished": False}),
    ],
)
def test_a_level_is_not_compared_where_nobody_knows_what_went_out(
    kind: str, body: dict[str, Any]
) -> None:
    phone = lathe()
    phone.save("check", check("400"), 0)
    phone.save(kind, body, HOUR_S)
    assert "level" not in asked(phone, dip_mm="100")


def test_a_set_up_that_cannot_be_read_says_nothing_of_the_level() -> None:
    phone = lathe()
    phone.save("check", check("400"), 0)
    machine = setup()
    machine["sump"]["full_depth"] = typed("deep", "mm")
    phone.save("machine_set", {"machine": machine}, HOUR_S)
    assert "level" not in asked(phone, dip_mm="100")


def test_bad_input_names_its_field() -> None:
    phone = lathe()
    phone.save("check", check("400"), 0)
    with pytest.raises(Fault) as refused:
        asked(phone, dip_mm="4000")
    assert refused.value.path == "body.dip.depth"
    with pytest.raises(Fault) as refused:
        look_back(LookBackBody([], LATHE, "noon"))
    assert (refused.value.code, refused.value.path) == ("not_a_date", "body.now")
