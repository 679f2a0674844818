"""pycore.desk.trend.due: when a machine is checked next."""

import pytest

from tests.phones import MORNING_S, Phone, pour, typed
from tests.unit.desk.trend.logs import DAY_S, checked, falling, lathe, poured, trend_of
from tests.unit.journal.reading import dispute, lines_of


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


def renewed(*taken: str) -> Phone:
    """198 L of 4.995 %, so much taken out, and nine buckets of 8.9 L water and 1.1 L neat."""
    phone = lathe()
    checked(phone, 0, "440", "3.33")
    row = {"count": 9, "water": typed("8.9", "L"), "concentrate": typed("1100", "mL")}
    for after_s, out in enumerate(taken[:-1]):
        body = {"pours": [], "finished": True, "draw_off": typed(out, "L")}
        phone.save("pour", body, 120 + after_s)
    body = {"pours": [row], "finished": True, "draw_off": typed(taken[-1], "L")}
    phone.save("pour", body, 180)
    return phone


@pytest.mark.parametrize("taken", [("100",), ("40", "60")])
def test_what_was_taken_out_counts_in_the_strength_of_now(taken: tuple[str, ...]) -> None:
    # 98 L of 4.995 % and 9.9 L of concentrate in 188 L are 7.87 %, in the band of 7 to 9 %.
    found = trend_of(renewed(*taken), 1)["next_check"]
    assert (found["why"], found["overdue"]) == ("interval", False)


@pytest.mark.parametrize("taken", ["half", "500"])
def test_where_nobody_knows_what_was_taken_out_the_strength_of_now_is_none(taken: str) -> None:
    phone = lathe()
    checked(phone, 0, "440", "3.33")
    assert trend_of(phone, 1)["next_check"]["why"] == "out_of_band"
    assert trend_of(renewed(taken), 1)["next_check"]["why"] == "interval"


def test_what_two_phones_say_was_taken_out_is_not_known() -> None:
    one, two = lathe(), Phone("b")
    checked(one, 0, "440", "3.33")
    body = {"pours": [], "finished": True, "draw_off": typed("100", "L")}
    doubtful = one.save("pour", body, 120)
    dispute((one, two), doubtful, "pour", [pour(2), pour(3)])
    found = trend_of(one, 1, lines=lines_of(one, two))
    assert found["next_check"]["why"] == "interval"
