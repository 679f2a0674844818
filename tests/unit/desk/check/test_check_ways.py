"""plan_check as people see it: a sump that stays as it is, and the level that is waited for."""

from typing import Any

import pytest

from tests.unit.desk.lathe import WHEEL_LATHE, ask, changed, check


@pytest.mark.parametrize("reading", ["0.7", "1.9", "3.3", "4.3", "5.3", "6.1", "7.1"])
def test_a_sump_into_which_nothing_goes_keeps_the_strength_that_was_shown(reading: str) -> None:
    # 3.3 × 1.5 is 4.949999999999999 in a float: "5.0 %" beside the reading, "it stays at 4.9 %".
    got = ask("plan_check", check(WHEEL_LATHE, depth="440", shows=reading))
    assert got["plan"]["pours"] == []
    assert got["shown"]["strength"] == got["assessment"]["strength"]["shown"]["strength"]


def waited_for(machine: Any) -> Any:
    (way,) = (
        way
        for way in ask("plan_check", check(machine, depth="440", shows="3.4"))["ways"]
        if way["why"] == "leave_room"
    )
    return way


def test_a_level_to_wait_for_is_said_as_the_stick_shows_it() -> None:
    # 198 L at 5.1 % hold 10.098 L and want 15.84 L: 28.71 L of 20 % from 169.29 L, and 198 L are
    # 440 mm.
    way = waited_for(WHEEL_LATHE)
    assert (way["level"]["value"], way["level_depth"]["value"]) == (169, 376)
    assert way["level_depth"]["unit"] == "mm"


def test_a_level_that_a_gauge_shows_has_no_depth() -> None:
    machine = changed("sump", {**WHEEL_LATHE["sump"], "read_as": "gauge"})
    body = check(machine, shows="3.4", dip={"depth": {"text": "1", "unit": "1"}})
    found = ask("plan_check", body)["ways"]
    ways = [way for way in found if way["why"] == "leave_room"]
    assert len(ways) == 1
    assert "level_depth" not in ways[0]
