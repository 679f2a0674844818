"""pycore.desk.look_back.unlike by look_back: a reading beside the last one and the aim."""

from typing import Any

import pytest

from pycore.desk.contract.messages import DipTyped
from pycore.desk.contract.records import ReadingTyped, Typed
from pycore.desk.look_back.look_back import LookBackBody, look_back
from pycore.quantity.fault import Fault
from tests.phones import LATHE, Phone, check, moment, pour, setup, typed

DAY_S = 86_400


def lathe() -> Phone:
    """Factor 1.5, target 7 to 9, aim 8 %: 5.33 Brix. 198 L at the full mark."""
    phone = Phone("a")
    phone.save("machine_set", {"machine": setup()}, -90 * DAY_S)
    return phone


def asked(phone: Phone, shows: str, days: float = 2, unit: str = "Brix") -> list[Any]:
    reading = ReadingTyped(Typed(shows, unit), how="optical")
    body = LookBackBody(phone.lines, LATHE, moment(int(days * DAY_S)), reading=reading)
    return list(look_back(body)["doubts"])


def last(shows: str = "4.1") -> Phone:
    phone = lathe()
    phone.save("check", check("342", shows), 0)
    return phone


@pytest.mark.parametrize("shows", ["4.1", "3.8", "4.6", "5.0"])
def test_what_a_sump_does_in_two_days_is_not_asked_about(shows: str) -> None:
    assert asked(last(), shows) == []


def test_a_decimal_sign_left_out_is_asked_about_with_the_last_reading() -> None:
    (doubt,) = asked(last(), "0.4")
    assert (doubt.code, doubt.path) == ("unlike_last", "body.reading.shows")
    assert (doubt.got.value, doubt.last.value, doubt.last_at) == (0.4, 4.1, moment(0))
    assert doubt.slip.value == pytest.approx(4.0)
    assert asked(last("1.7"), "17")[0].slip.value == pytest.approx(1.7)


def test_a_diluted_sample_counts_as_the_coolant_it_was() -> None:
    # 2.1 of a sample one to one is 4.2 of the coolant.
    reading = ReadingTyped(Typed("2.1", "Brix"), how="optical", diluted=Typed("1", "1"))
    body = LookBackBody(last().lines, LATHE, moment(DAY_S), reading=reading)
    assert look_back(body)["doubts"] == []
    assert asked(last(), "2.1", days=1)[0].code == "unlike_last"


def test_what_was_poured_since_moves_what_is_expected() -> None:
    phone = last("6.0")
    water = {"count": 4, "kind": "water"}
    phone.save("pour", {"pours": [water], "finished": True}, DAY_S)
    # 342 mm are 153.9 L; with 40 L of water 6.0 Brix become 4.76.
    assert asked(phone, "4.8") == []
    (doubt,) = asked(phone, "9.5")
    assert doubt.code == "unlike_last_poured"
    assert doubt.usual_low < 4.76 < doubt.usual_high


def test_a_bucket_that_nobody_can_tell_leaves_the_strong_side_open() -> None:
    phone = last()
    phone.save("unknown_addition", {"what": "concentrate"}, DAY_S)
    assert asked(phone, "9.0") == []
    assert asked(phone, "0.4")[0].code == "unlike_last_poured"


def with_pipes(drains_back: bool, shows: str) -> Phone:
    """99 L in the sump, and 400 L in its pipes while the pump runs."""
    phone, machine = Phone("a"), setup()
    machine["sump"]["hidden"] = {"volume": typed("400", "L"), "drains_back": drains_back}
    phone.save("machine_set", {"machine": machine}, -DAY_S)
    phone.save("check", check("220", shows), 0)
    return phone


@pytest.mark.parametrize(
    ("drains_back", "fits", "other"), [(False, "4.65", "8.3"), (True, "8.3", "4.65")]
)
def test_coolant_that_does_not_show_on_the_stick_mixes_too(
    drains_back: bool, fits: str, other: str
) -> None:
    phone = with_pipes(drains_back, "3.0")
    row = {"count": 9, "water": typed("7", "L"), "concentrate": typed("2", "L")}
    phone.save("pour", {"pours": [row], "finished": True}, DAY_S)
    # 499 L at 3.0 Brix with 18 L at 66.7 Brix in 580 L. What drained back is among the 99 L: 180 L.
    assert asked(phone, fits) == []
    (doubt,) = asked(phone, other)
    assert doubt.code == "unlike_last_poured"


def test_a_full_sump_has_its_pipes_full_too() -> None:
    phone = with_pipes(False, "6.0")
    phone.save("unknown_addition", {"what": "water"}, DAY_S)
    # 99 L of water fit into 499 L, not into 99 L: 6.0 Brix become 5.0, and 3.0 are too few.
    assert asked(phone, "5.0") == []
    assert [doubt.code for doubt in asked(phone, "2.8")] == ["unlike_last_poured"]


def test_a_first_reading_is_held_against_the_aim() -> None:
    # Half of 8 % is 2.67 Brix, twice 10.67.
    assert asked(lathe(), "2.8") == asked(lathe(), "10.5") == []
    (doubt,) = asked(lathe(), "0.5")
    assert doubt.code == "unlike_target"
    assert (doubt.usual_low, doubt.usual_high) == pytest.approx((2.667, 10.667), abs=0.001)
    assert doubt.slip.value == pytest.approx(5.0)
    assert doubt.last is None


def test_after_a_clean_out_the_first_reading_is_a_first_one() -> None:
    phone = last("9.0")
    phone.save("clean_out", {"finished": True}, DAY_S)
    assert asked(phone, "5.2") == []
    assert asked(phone, "0.5")[0].code == "unlike_target"


def test_without_a_factor_there_is_no_aim_and_the_last_one_still_counts() -> None:
    phone, machine = Phone("a"), setup()
    del machine["fluid"]["factor"], machine["fluid"]["factor_known_by"]
    phone.save("machine_set", {"machine": machine}, -DAY_S)
    assert asked(phone, "0.4") == []
    phone.save("check", check("342", "4.1"), 0)
    assert asked(phone, "0.4")[0].code == "unlike_last"
    phone.save("pour", pour(2), DAY_S)
    assert asked(phone, "0.4") == []


def test_a_corrected_reading_is_the_last_one() -> None:
    phone = lathe()
    wrong = phone.save("check", check("342", "0.4"), 0)
    body = {"corrects": wrong, "reason": "misread", "kind": "check", "content": check("342", "4.0")}
    phone.save("correction", body, 60)
    assert asked(phone, "4.1") == []
    assert asked(phone, "0.4")[0].last.value == 4.0


def test_five_steps_of_its_own_make_the_limit_of_a_level() -> None:
    phone = lathe()
    for day, depth in enumerate(("430", "426", "422", "418", "414", "410")):
        phone.save("check", check(depth, "4.0"), day * DAY_S)

    def level(lines: list[str]) -> dict[str, Any]:
        dip = DipTyped(Typed("350", "mm"), how="hard_floor")
        body = LookBackBody(lines, LATHE, moment(8 * DAY_S), dip)
        return dict(look_back(body)["level"])

    # 4 mm are 1.8 L a day; three days at twice that are 10.8 L, and 27 L are missing.
    own = level(phone.lines)
    assert (own["limit_by"], own["verdict"]) == ("own", "lost")
    assert own["most_lost_l"] == pytest.approx(10.8)
    short = [phone.lines[0], *phone.lines[-1:]]
    assert level(short)["limit_by"] == "practice"
    phone.save("shop_set", {"most_lost_pct_d": typed("2", "%")}, 6 * DAY_S, machine="")
    shop = level([*short, phone.lines[-1]])
    assert (shop["limit_by"], shop["most_lost_l"]) == ("shop", pytest.approx(11.88))


def test_what_cannot_be_read_is_no_doubt_but_a_fault() -> None:
    with pytest.raises(Fault) as found:
        asked(last(), "4,0,0")
    assert found.value.path == "body.reading.shows"
