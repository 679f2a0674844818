"""pycore.desk.trend.due: when a machine is checked and cleaned out next."""

import pytest

from tests.phones import MORNING_S, typed
from tests.unit.desk.trend.logs import DAY_S, checked, falling, lathe, poured, trend_of


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
    phone.save("shop_set", {"check_every_d": typed("3", "1")}, 12 * DAY_S + 200, machine="")
    own = trend_of(phone, 12)["next_check"]
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
    phone.save("shop_set", {"clean_out_every_d": typed("90", "1")}, 14 * DAY_S, machine="")
    own = trend_of(phone, 15, limits={"dip_slide": band})
    assert own["clean_out"] == {"reasons": ["smells"], "every_d": 90}
