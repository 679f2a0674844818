"""pycore.desk.check.circuit: hidden coolant in every balance that the page shows."""

from typing import Any

import pytest

from pycore.desk.check.circuit import Circuit
from pycore.desk.check.dip import Dipped
from pycore.desk.contract.results import Level
from pycore.quantity.measured import Measured
from tests.unit.desk.balance import disagreements, litres
from tests.unit.desk.lathe import WHEEL_LATHE, ask, changed, check, refusal

HIDDEN = {"volume": {"text": "30", "unit": "L"}, "drains_back": False}
US = {"plate": "US gal", "stick": "mm", "pail": "L", "jug": "mL"}
UNIT = {"lowest": {"text": "0"}, "highest": {"text": "15"}, "step": {"text": "0.5"}}
WAYS = {
    "draw_off": True,
    "own_fluid": True,
    "carry_out": {"text": "2", "unit": "L"},
    "unit": UNIT,
}
# Depth in mm, reading in Brix: lean and low, lean and full, in range, rich and low, rich and full.
STATES = [("342", "4.0"), ("435", "3.0"), ("342", "5.3"), ("342", "8.0"), ("440", "8.5")]


def machine(**fields: Any) -> dict[str, Any]:
    """The lathe with hidden coolant."""
    return {**changed("sump.hidden", HIDDEN), **fields}


def recipes(result: dict[str, Any]) -> list[dict[str, Any]]:
    """The main recipe as the page takes it, and every other way."""
    shown = result["shown"]
    main = shown if shown["take_out"]["value"] > 0 else {**shown, "take_out": None}
    return [{k: v for k, v in main.items() if v is not None}, *result["ways"]]


def assert_balanced(result: dict[str, Any]) -> None:
    """Every recipe of an answer gives what it promises, and the drawing shows the sump alone."""
    for recipe in recipes(result):
        assert disagreements(result["shown"], recipe) == [], recipe.get("why")
    level, hidden = result["assessment"]["level"], result["request"]["hidden"]
    seen_l, hidden_l = level["volume_l"]["value"], hidden["volume_l"]["value"]
    unit_l = litres({**result["shown"]["now_volume"], "value": 1.0})
    assert litres(result["shown"]["now_volume"]) == pytest.approx(
        seen_l + hidden_l, abs=0.0005 * unit_l
    )


@pytest.mark.parametrize("units", [None, US])
@pytest.mark.parametrize("ways", [None, WAYS])
@pytest.mark.parametrize(("depth", "shows"), STATES)
def test_every_recipe_gives_what_it_promises(
    depth: str, shows: str, ways: dict[str, Any] | None, units: dict[str, str] | None
) -> None:
    fields = {k: v for k, v in {"units": units, "ways": ways}.items() if v is not None}
    for more in ({}, {"hidden_strength": {"text": "2"}}):
        got = ask("plan_check", check(machine(**fields), depth, shows, **more))
        assert_balanced(got)
        full_l = got["assessment"]["level"]["full_volume_l"]
        assert got["plan"]["final"]["volume_l"] <= max(
            full_l + 30, litres(got["shown"]["now_volume"]) + 0.001
        )


@pytest.mark.parametrize(("depth", "shows"), [("60", "14"), ("440", "14"), ("440", "1.0")])
def test_what_is_in_the_pipes_is_not_taken_out(depth: str, shows: str) -> None:
    pipes = {**HIDDEN, "volume": {"text": "300", "unit": "L"}}
    got = ask("plan_check", check({**changed("sump.hidden", pipes), "ways": WAYS}, depth, shows))
    seen_l = got["assessment"]["level"]["volume_l"]["value"]
    plans = [got["plan"], *got["plan"]["alternatives"]]
    assert max(plan["draw_off_l"] for plan in plans) <= seen_l
    assert_balanced(got)


@pytest.mark.parametrize(
    ("depth", "rest", "most_l"), [("440", "150", 48.0), ("435", "0", 195.75), ("60", "30", 0.0)]
)
def test_what_the_pump_cannot_reach_is_not_taken_out(depth: str, rest: str, most_l: float) -> None:
    # 0.45 L a millimetre: 198 L at the mark, 195.75 L, and 27 L, which are below a rest of 30 L.
    tank = changed("sump.rest", {"text": rest, "unit": "L"})
    got = ask("plan_check", check({**tank, "ways": WAYS}, depth, "3.0"))
    assert got["request"]["draw_off"]["most_l"] == pytest.approx(most_l)
    plans = [got["plan"], *got["plan"]["alternatives"]]
    assert max(plan["draw_off_l"] for plan in plans) <= most_l
    # Without a rest that is known all of it may come out.
    free = ask("plan_check", check(machine(ways=WAYS), depth, "3.0"))["request"]["draw_off"]
    assert "most_l" not in free


def test_a_rest_out_of_reach_leaves_too_little_to_take_out() -> None:
    # 198·(7.5 − 4.5)/(20 − 4.5) are 38.3 L to the band, and 28 L stand above the rest.
    ways = {**WAYS, "own_fluid": False}
    tank = {**changed("sump.rest", {"text": "170", "unit": "L"}), "ways": ways}
    got = ask("plan_check", check(tank, "440", "3.0"))["plan"]
    assert (got["draw_off_l"], got["verdict"]) == (0, "out_of_band")
    free = ask("plan_check", check({**WHEEL_LATHE, "ways": ways}, "440", "3.0"))["plan"]
    assert free["draw_off_l"] > 28
    # Its own coolant carries the concentrate: 190·3.5/92 = 7.2 L want 8 L of room.
    own = ask("plan_check", check({**tank, "ways": WAYS}, "440", "3.0"))["plan"]
    assert (own["draw_off_l"], own["verdict"]) == (8, "on_target")


def test_a_wrong_recipe_is_found() -> None:
    got = ask("plan_check", check(machine()))
    alone = {**got["shown"]["now_volume"], "value": got["assessment"]["level"]["volume_l"]["value"]}
    main = recipes(got)[0]
    assert disagreements({**got["shown"], "now_volume": alone}, main) == ["strength", "volume"]


def test_both_methods_count_what_is_hidden() -> None:
    fluid = {**machine()["fluid"], "titration_factor": {"text": "1"}}
    body = check(machine(fluid=fluid), second={"method": "titration", "shows": {"text": "7.5"}})
    got = ask("plan_check", body)
    assert got["disagreement"]["planned_for"] == "high"
    other = got["disagreement"]["other"]
    for result in (got, other):
        assert_balanced(result)
        pct = result["request"]["sump"]["strength_pct"]["value"]
        assert "strength_pct" not in result["request"]["hidden"]
        assert result["shown"]["now_strength"]["value"] == pytest.approx(pct, abs=0.0005)


def test_a_top_up_without_a_reading_counts_what_is_hidden() -> None:
    body = {
        "machine": machine(),
        "dip": {"depth": {"text": "342", "unit": "mm"}},
        "now": "2026-11-25T22:10:00+01:00",
        "usual": {"text": "3"},
    }
    got, plain = (
        ask("hold_check", body),
        ask("hold_check", {**body, "machine": changed("name", "P")}),
    )
    assert got["holding"]["pours"] == plain["holding"]["pours"]
    assert got["holding"]["volume_l"] == pytest.approx(plain["holding"]["volume_l"] + 30)
    assert got["after"] == plain["after"]
    shown = got["shown"]
    end_l = litres(shown["now_volume"]) + litres(shown["water"]) + litres(shown["concentrate"])
    assert litres(shown["volume"]) == pytest.approx(end_l, abs=0.5)
    blocked = {**body, "dip": {**body["dip"], "clean_side": {"text": "300", "unit": "mm"}}}
    assert refusal("hold_check", blocked)["code"] == "screen_blocked"


def test_error_of_the_same_coolant_and_of_another() -> None:
    level = Level(Measured(342, 3), Measured(150, 5), 200, 50, 0.5, {})
    dipped = Dipped(level, [], Measured(30, 3), None)
    sump, hidden = Circuit(dipped).at(Measured(6, 0.3))
    assert hidden is not None
    # One coolant, one reading: what is hidden has no number of its own that could be off.
    assert (hidden.volume_l, hidden.strength_pct) == (Measured(30, 3), None)
    own = Circuit(dipped, 2.0).at(Measured(6, 0.3))[1]
    assert own is not None
    assert own.strength_pct == Measured(2.0, 0.3)
    assert sump.volume_l == level.volume_l
    assert Circuit(Dipped(level, [], None, None)).at(Measured(6, 0.3))[1] is None
