"""pycore.desk.trend.trend: what a machine's log tells, corrections and withdrawals respected."""

import pytest

from tests.phones import LATHE, check, id_of, moment, typed
from tests.properties.asking import refusal
from tests.unit.desk.trend.logs import DAY_S, checked, falling, lathe, trend_of


def test_nothing_measured_yet() -> None:
    found = trend_of(lathe(), 1)
    assert found["rows"] == []
    assert "strength" not in found
    assert "next_check" not in found
    assert found["losses"] == {"steps": 0, "needed": 2, "left_out": [], "shown": {}}
    assert found["clean_out"] == {"reasons": [], "due": False, "every_d": 182}
    assert (found["name"], found["unit"]) == ("Wheel lathe", "L")


def test_fall_is_told_from_first_to_last_reading() -> None:
    strength = trend_of(falling(), 13)["strength"]
    assert strength["direction"] == "falling"
    assert strength["shown"]["first"]["value"] == 8.1
    assert strength["shown"]["last"]["value"] == 6.3
    assert strength["over_d"] == pytest.approx(12)
    assert (strength["readings"], strength["below"], strength["above"]) == (4, 2, 0)
    # 0.6 points in four days.
    assert strength["slope_pct_d"] == pytest.approx(-0.15)
    assert strength["shown"]["per_week"]["value"] == 1.1
    assert "error" not in strength["shown"]
    # Three times 18 L in twelve days.
    assert strength["shown"]["added"]["value"] == 4.5


@pytest.mark.parametrize(
    ("shows", "way"),
    [
        (("5.4", "5.3", "5.2", "5.1"), "falling_little"),
        (("5.1", "5.2", "5.3", "5.4"), "rising_little"),
        (("5.2", "5.3", "5.2", "5.2"), "level"),
        (("5.2", "6.3", "5.1", "5.2"), "unsure"),
    ],
)
def test_readings_without_a_sure_direction_say_what_is_seen(
    shows: tuple[str, ...], way: str
) -> None:
    phone = lathe()
    for day, brix in enumerate(shows):
        checked(phone, 4 * day, "380", brix)
    found = trend_of(phone, 13)
    strength, rows = found["strength"], found["rows"]
    assert strength["direction"] == way
    assert "per_week" not in strength["shown"]
    # Two standard uncertainties of the difference of first and last reading.
    first_u, last_u = (rows[i]["strength_pct"]["u"] for i in (0, -1))
    error = 2 * (first_u**2 + last_u**2) ** 0.5
    assert strength["shown"]["error"]["value"] == pytest.approx(error, abs=0.005)
    # What is not sure foretells nothing.
    assert found["next_check"]["why"] == "interval"


def test_a_clock_that_was_put_back_gives_no_negative_span() -> None:
    phone = lathe()
    checked(phone, 4, "380", "5.4")
    checked(phone, 0, "380", "5.0")
    assert trend_of(phone, 5)["strength"]["over_d"] == pytest.approx(4)


def test_two_readings_have_no_direction() -> None:
    phone = lathe()
    checked(phone, 0, "380", "5.4")
    checked(phone, 4, "380", "3.4")
    found = trend_of(phone, 5)
    assert found["strength"]["direction"] == "too_few"
    assert "slope_pct_d" not in found["strength"]
    assert found["losses"]["steps"] == 1
    assert "lost_l_d" not in found["losses"]


def test_losses_of_three_checks_by_hand() -> None:
    found = trend_of(falling(), 13)["losses"]
    # 18 L went in between checks at one depth, each four days.
    assert found["lost_l_d"]["value"] == pytest.approx(18 / 4)
    # 171 L lost 0.6 % of them in each of the steps.
    assert found["concentrate_l_d"]["value"] == pytest.approx(171 * 0.006 / 4)
    assert found["steps"] == 3
    assert found["shown"]["lost"] == {"value": 4.5, "decimals": 1, "unit": "L"}


def test_correction_and_withdrawal_count() -> None:
    phone = falling()
    wrong = checked(phone, 12.5, "380", "9.9")
    assert trend_of(phone, 13)["strength"]["shown"]["last"]["value"] > 14
    content = {"corrects": wrong, "reason": "Read 9.9, it was 4.2.", "kind": "check"}
    corrected = phone.clone()
    corrected.save("correction", {**content, "content": check("380", "4.2")}, 13 * DAY_S, "")
    assert trend_of(corrected, 14)["strength"]["shown"]["last"]["value"] == 6.3
    phone.save("withdrawal", {"retracts": wrong, "reason": "Other machine."}, 13 * DAY_S, "")
    assert trend_of(phone, 14)["strength"]["readings"] == 4


def test_clean_out_begins_another_charge() -> None:
    phone = falling()
    body = {"finished": True, "left": typed("6", "L")}
    row = {"count": 18, "water": typed("9.2", "L"), "concentrate": typed("800", "mL")}
    phone.save("clean_out", {**body, "charge": [row]}, 13 * DAY_S)
    checked(phone, 13.1, "400", "5.3")
    found = trend_of(phone, 16)
    assert found["strength"]["readings"] == 1
    assert found["losses"]["steps"] == 0
    assert found["clean_out"]["age_d"] == pytest.approx(3)
    assert [row["kind"] for row in found["rows"]] == ["check"] * 4 + ["clean_out", "check"]
    cleaned = found["rows"][4]
    # The charge, and the last top-up of the old one.
    assert cleaned["water_l"] == pytest.approx(18 * 9.2 + 18)
    unfinished = falling()
    unfinished.save("clean_out", {"finished": False}, 13 * DAY_S)
    assert "age_d" not in trend_of(unfinished, 14)["clean_out"]


def test_period_holds_rows_and_learning_but_not_the_age() -> None:
    phone = falling()
    whole, short = trend_of(phone, 13), trend_of(phone, 13, days=6)
    assert (len(whole["rows"]), len(short["rows"])) == (4, 2)
    assert short["strength"]["direction"] == "too_few"
    # What is due next is not a question of what is looked at.
    assert short["next_check"] == whole["next_check"]
    assert short["bands"][0]["from_s"] == short["from_s"]


def test_refusals() -> None:
    phone = lathe()
    body = {"lines": phone.lines, "now": moment(0), "machine": id_of("nobody's")}
    assert refusal("trend", body)["path"] == "body.machine"
    body["machine"] = LATHE
    # The intervals are facts of the log, no part of the question.
    error = refusal("trend", {**body, "check_every": typed("3", "1")})
    assert (error["code"], error["path"]) == ("unknown_field", "body.check_every")
    assert refusal("trend", {**body, "now": "today"})["path"] == "body.now"
