"""pycore.desk.trend.rows: what each check found, what went in, and which steps count."""

import pytest

from tests.phones import Phone, pour, typed
from tests.unit.desk.trend.logs import DAY_S, checked, falling, lathe, poured, trend_of
from tests.unit.journal.reading import dispute, lines_of


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


@pytest.mark.parametrize(("depth", "shows"), [("380", "0"), ("0", "5")])
def test_plain_water_and_an_empty_sump_are_no_steps(depth: str, shows: str) -> None:
    phone = lathe()
    for day in range(4):
        checked(phone, day, depth, shows)
    found = trend_of(phone, 5)
    assert found["losses"] == {"steps": 0, "needed": 2, "left_out": [], "shown": {}}
    assert len(found["rows"]) == 4


def test_more_taken_out_than_there_was_is_not_known() -> None:
    phone = lathe()
    for day in range(3):
        checked(phone, day, "1" if day else "440", "5")
        poured(phone, day, "0", "0", draw_off=typed("198", "L"))
    losses = trend_of(phone, 4)["losses"]
    assert losses["left_out"] == [{"why": "unknown_taken", "count": 2}]


def test_steps_that_are_all_unusual_are_not_told_as_usable() -> None:
    phone = lathe()
    for day, depth in enumerate(("300", "380", "440")):
        checked(phone, day, depth, "5")
    losses = trend_of(phone, 4)["losses"]
    assert (losses["steps"], losses["left_out"]) == (0, [{"why": "unusual", "count": 2}])


def test_a_pour_over_which_two_phones_differ_takes_its_step_out_of_the_balance() -> None:
    one, two = falling(), Phone("b")
    doubtful = one.save("pour", pour(6), 13 * DAY_S)
    checked(one, 16, "380", "4.2")
    dispute((one, two), doubtful, "pour", [pour(7), pour(5)])
    found = trend_of(one, 17, lines=lines_of(one, two))
    assert found["losses"]["left_out"] == [{"why": "unknown_added", "count": 1}]
    # Three steps of 18 L in four days each are left.
    assert found["losses"]["steps"] == 3
    assert found["losses"]["lost_l_d"]["value"] == pytest.approx(18 / 4)
    assert found["rows"][-1]["added_unknown"] == 1
    # How much a day was poured in is not known either.
    assert "added" not in found["strength"]["shown"]
