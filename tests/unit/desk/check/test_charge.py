"""pycore.desk.check.charge: an emptied sump to the recipe of its new charge."""

from typing import Any

import pytest

from tests.phones import setup, typed
from tests.properties.asking import ask, refusal

SOFT = "demineralised_first_fill"


def body(left: str = "6", pct: str = "1", **more: Any) -> dict[str, Any]:
    return {"machine": setup(), "left": typed(left, "L"), "left_strength": typed(pct, "%"), **more}


def test_rest_of_the_rinse_counts_with_its_strength() -> None:
    answer = ask("plan_charge", body())
    totals, final = answer["plan"]["totals"], answer["plan"]["final"]
    # 6 L of 1 % and what is poured.
    volume_l = 6 + totals["water_l"] + totals["concentrate_l"]
    assert final["volume_l"] == pytest.approx(volume_l)
    pct = 100 * (0.06 + totals["concentrate_l"]) / volume_l
    assert final["strength_pct"]["value"] == pytest.approx(pct)
    assert 7 <= pct <= 9
    assert answer["plan"]["case"] == "new_charge"
    assert answer["request"]["sump"]["volume_l"]["value"] == pytest.approx(6)
    assert answer["assessment"]["level"]["shown"]["volume"]["value"] == 6


def test_water_left_behind_and_a_dry_sump() -> None:
    for left in ("6", "0"):
        answer = ask("plan_charge", body(left, "0"))
        assert answer["plan"]["case"] == "emptied"
        assert 7 <= answer["plan"]["final"]["strength_pct"]["value"] <= 9


@pytest.mark.parametrize(
    ("water", "notes"),
    [
        ({"kind": "demineralised"}, [SOFT]),
        ({"kind": "demineralised", "hardness": typed("79", "mg/L CaCO₃")}, [SOFT]),
        ({"kind": "demineralised", "hardness": typed("80", "mg/L CaCO₃")}, []),
        ({"kind": "mains"}, []),
        ({"kind": "softened"}, []),
    ],
)
def test_first_fill_with_demineralised_water_is_warned_of(
    water: dict[str, Any], notes: list[str]
) -> None:
    # Common practice, no source.
    machine = {**setup(), "water": water}
    assert ask("plan_charge", {**body(), "machine": machine})["assessment"]["notes"] == notes


def test_every_bucket_at_the_strength_that_lands_on_the_aim() -> None:
    pours = ask("plan_charge", body())["plan"]["pours"]
    strengths = [100 * p["concentrate_l"] / (p["water_l"] + p["concentrate_l"]) for p in pours]
    assert max(strengths) < 10


def test_short_stock_fills_less_high() -> None:
    short = ask("plan_charge", body(concentrate_at_hand=typed("8", "L")))["plan"]
    assert short["totals"]["concentrate_l"] <= 8
    assert short["final"]["volume_l"] < 150


@pytest.mark.parametrize(
    ("change", "path", "code"),
    [
        ({"left": typed("999", "L")}, "body.left", "out_of_range"),
        ({"left": typed("six", "L")}, "body.left", "not_a_number"),
        ({"left_strength": typed("-1", "%")}, "body.left_strength", "out_of_range"),
        ({"left_strength": typed("", "%")}, "body.left_strength", "empty"),
    ],
)
def test_refusals_name_their_field(change: dict[str, Any], path: str, code: str) -> None:
    error = refusal("plan_charge", {**body(), **change})
    assert (error["path"], error["code"]) == (path, code)


def test_a_sump_shallower_than_the_stick_can_tell_is_refused_at_its_depth() -> None:
    # At 0.001 mm the litres came out less certain than any number in the contract may be.
    for depth in ("0.001", "9.9"):
        machine = setup()
        machine["sump"]["full_depth"] = typed(depth, "mm")
        error = refusal("plan_charge", {**body(), "machine": machine})
        assert (error["path"], error["code"]) == ("body.machine.sump.full_depth", "out_of_range")
        assert error["limit"]["minimum"] == 10
