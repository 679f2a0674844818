"""pycore.desk.trend: what a machine's log tells, corrections and withdrawals respected."""

import pytest

from tests.phones import LATHE, MORNING_S, Phone, check, id_of, moment, typed
from tests.properties.asking import refusal
from tests.unit.desk.trend_logs import DAY_S, checked, lathe, poured, trend_of


def falling() -> Phone:
    """Strength from 8.1 to 6.3 % in twelve days, topped up with water alone."""
    phone = lathe()
    for day, shows in ((0, "5.4"), (4, "5.0"), (8, "4.6"), (12, "4.2")):
        checked(phone, day, "380", shows)
        poured(phone, day, "18", "0")
    return phone


def test_nothing_measured_yet() -> None:
    found = trend_of(lathe(), 1)
    assert found["rows"] == []
    assert "strength" not in found
    assert "next_check" not in found
    assert found["losses"] == {"steps": 0, "needed": 2, "left_out": [], "shown": {}}
    assert found["clean_out"] == {"reasons": [], "every_d": 182}
    assert (found["name"], found["unit"]) == ("Wheel lathe", "L")


def test_rows_hold_what_was_found_and_what_went_in_before() -> None:
    phone = lathe()
    checked(phone, 0, "380", "5.2", ph=typed("9.1", "1"))
    poured(phone, 0, "9", "500")
    poured(phone, 1, "10", "0")
    phone.save("unknown_addition", {"what": "mix"}, 2 * DAY_S)
    checked(phone, 4, "400", "5.0")
    first, second = trend_of(phone, 5)["rows"]
    assert first["strength_pct"]["value"] == pytest.approx(7.8)
    assert first["state"] == "in_range"
    assert first["volume_l"]["value"] == pytest.approx(380 * 0.45)
    assert first["ph"] == 9.1
    assert (first["water_l"], first["concentrate_l"], first["added_unknown"]) == (0, 0, 0)
    assert (second["water_l"], second["concentrate_l"]) == (19, 0.5)
    assert second["added_unknown"] == 1
    assert second["shown"]["water"] == {"value": 19.0, "decimals": 1, "unit": "L"}


def test_look_without_a_number_is_no_row() -> None:
    phone = lathe()
    phone.save("check", {"look": ["normal"]}, 60)
    assert trend_of(phone, 1)["rows"] == []


def test_fall_is_told_from_first_to_last_reading() -> None:
    strength = trend_of(falling(), 13)["strength"]
    assert strength["direction"] == "falling"
    assert strength["shown"]["first"]["value"] == 8.1
    assert strength["shown"]["last"]["value"] == 6.3
    assert strength["days"] == pytest.approx(12)
    assert (strength["readings"], strength["below"], strength["above"]) == (4, 2, 0)
    # 0.6 points in four days.
    assert strength["per_day_pct"] == pytest.approx(-0.15)
    assert strength["shown"]["per_week"]["value"] == 1.1
    # Three times 18 L in twelve days.
    assert strength["shown"]["added"]["value"] == 4.5


def test_two_readings_have_no_direction() -> None:
    phone = lathe()
    checked(phone, 0, "380", "5.4")
    checked(phone, 4, "380", "3.4")
    found = trend_of(phone, 5)
    assert found["strength"]["direction"] == "too_few"
    assert "per_day_pct" not in found["strength"]
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


def test_unknown_rest_and_draw_off_break_or_enter_the_balance() -> None:
    phone = falling()
    phone.save("unknown_addition", {"what": "water"}, 13 * DAY_S)
    checked(phone, 16, "380", "4.2")
    phone.save("machine_state", {"state": "shutdown"}, 17 * DAY_S)
    phone.save("machine_state", {"state": "in_use"}, 19 * DAY_S)
    checked(phone, 20, "380", "4.2")
    poured(phone, 20, "45", "0", draw_off=typed("45", "L"))
    checked(phone, 24, "380", "3.1")
    losses = trend_of(phone, 25)["losses"]
    assert losses["left_out"] == [
        {"why": "unknown_added", "count": 1},
        {"why": "at_rest", "count": 1},
    ]
    # The step with the draw-off lost nothing else.
    assert losses["steps"] == 4
    assert losses["lost_l_d"]["value"] == pytest.approx(54 / 16)


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


def test_next_check_follows_drift_pours_and_the_shops_interval() -> None:
    found = trend_of(falling(), 13)["next_check"]
    assert found["why"] == "out_of_band"
    assert (found["due_s"], found["overdue"]) == (MORNING_S + 12 * DAY_S + 60, True)
    phone = lathe()
    for day, shows in ((0, "5.0"), (4, "5.3"), (8, "5.6"), (12, "5.9")):
        checked(phone, day, "380", shows)
    # 8.85 %, 0.1125 points a day: 1.3 days to 9 %.
    rising = trend_of(phone, 12)["next_check"]
    assert rising["why"] == "drifts_high"
    last_s = MORNING_S + 12 * DAY_S + 60
    assert rising["due_s"] == pytest.approx(last_s + 0.15 / 0.1125 * DAY_S, abs=2)
    assert rising["overdue"] is False
    poured(phone, 12, "18", "0")
    # 171 L of 8.85 % and 18 L of water: 8.007 %, so the interval comes first.
    watered = trend_of(phone, 12)["next_check"]
    assert watered["why"] == "interval"
    assert watered["due_s"] == last_s + 7 * DAY_S
    own = trend_of(phone, 12, check_every=typed("3", "1"))["next_check"]
    assert (own["due_s"], own["every_d"]) == (last_s + 3 * DAY_S, 3)
    phone.save("machine_state", {"state": "shutdown"}, 12 * DAY_S + 300)
    assert trend_of(phone, 13)["next_check"]["resting"] is True


def test_findings_speak_for_a_clean_out() -> None:
    phone = falling()
    slide = {"germs": typed("1000000", "CFU/mL")}
    phone.save("check", {"look": ["smell"], "dip_slide": slide}, 13 * DAY_S)
    phone.save("check", {"look": ["smell"]}, 14 * DAY_S)
    found = trend_of(phone, 15)["clean_out"]
    assert found["reasons"] == ["germs_act", "smells"]
    high, higher = (typed(text, "CFU/mL") for text in ("2000000", "3000000"))
    band = {"scheme": "Own", "review": high, "act": higher}
    own = trend_of(phone, 15, limits={"dip_slide": band}, clean_out_every=typed("90", "1"))
    assert own["clean_out"] == {"reasons": ["smells"], "every_d": 90}


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
    for name in ("check_every", "clean_out_every"):
        error = refusal("trend", {**body, name: typed("0", "1")})
        assert (error["code"], error["path"]) == ("out_of_range", f"body.{name}")
    assert refusal("trend", {**body, "now": "today"})["path"] == "body.now"
