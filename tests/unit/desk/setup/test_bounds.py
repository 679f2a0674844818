"""pycore.desk.setup.bounds: each number in its range, and yet too many litres or nothing known."""

import copy
import json
from typing import Any

import pytest

from tests.fuzz.verdict import judge
from tests.unit.desk.lathe import WHEEL_LATHE, check

Body = dict[str, Any]
LARGE = {"kind": "proportional", "volume_known_by": "plate"}
LARGE |= {"full_depth": {"text": "1000", "unit": "mm"}}
LARGE |= {"full_volume": {"text": "200000", "unit": "L"}}


def reply(op: str, body: Any) -> Any:
    """The answer, which fits the contract; ``judge`` raises where it does not."""
    return judge(json.dumps({"v": 1, "id": "a", "op": op, "body": body}))


def with_values(values: dict[str, Any], body: Body | None = None) -> Body:
    """The lathe's check with other values at dotted paths."""
    body = copy.deepcopy(check(WHEEL_LATHE) if body is None else body)
    for path, value in values.items():
        *parents, last = path.split(".")
        place = body
        for parent in parents:
            place = place.setdefault(parent, {})
        place[last] = value
    return body


def number(text: str, unit: str) -> dict[str, str]:
    return {"text": text, "unit": unit}


UNSURE = {"reading.shows": number("0.4", "Brix"), "reading.diluted": number("9", "1")}
HIDDEN = "machine.sump.hidden"
STEP = [
    {"depth": number("100", "mm"), "volume": number("40", "L"), "u": number("1", "L")},
    {"depth": number("440", "mm"), "volume": number("198", "L"), "u": number("200", "L")},
]
STEEP = [
    {"depth": number("10", "mm"), "volume": number("2", "L")},
    {"depth": number("20", "mm"), "volume": number("1000", "L")},
]
TABLE = {"kind": "table", "full_depth": number("440", "mm"), "volume_known_by": "poured"}


@pytest.mark.parametrize(
    ("values", "code", "path", "limit"),
    [
        # 10 Brix · 10 · 1.5 are 150 points.
        (UNSURE | {"reading.u": number("10", "Brix")}, "too_uncertain", "reading.u", 100.0),
        # Marks 5 Brix apart, ±1.44 Brix, times ten and a factor of 8: 115 points.
        (
            UNSURE
            | {"machine.fluid.factor": number("8", "1")}
            | {"machine.instrument": {"shows": "brix", "resolution": number("5", "Brix")}},
            "too_uncertain",
            "reading.shows",
            100.0,
        ),
        # 0.45 L/mm · 200 mm would be 90 L of 198; a tank of 10 mm and 198 L has 19.8 L/mm.
        (
            {"machine.sump.full_depth": number("10", "mm"), "dip.depth": number("5", "mm")}
            | {"dip.u": number("200", "mm")},
            "too_uncertain",
            "dip.u",
            198.0,
        ),
        (
            # 2 L at 10 mm and 1,000 L at 20 mm: (1,000 - 0) L / 20 mm · 10 mm.
            {"machine.sump": TABLE | {"full_depth": number("10", "mm"), "points": STEEP}}
            | {"dip.depth": number("10", "mm"), "dip.waited": False},
            "too_uncertain",
            "dip.depth",
            2.0,
        ),
        (
            {HIDDEN: {"volume": number("30", "L"), "u": number("9000", "L"), "drains_back": False}},
            "too_uncertain",
            "machine.sump.hidden.u",
            228.0,
        ),
        (
            {HIDDEN: {"volume": number("30", "L"), "u": number("9000", "L"), "drains_back": True}}
            | {"dip.pump": "running"},
            "too_uncertain",
            "machine.sump.hidden.u",
            228.0,
        ),
        (
            {HIDDEN: {"volume": number("199900", "L"), "drains_back": False}},
            "out_of_range",
            "machine.sump.hidden.volume",
            199802.0,
        ),
        (
            {"machine.sump": LARGE, "dip.depth": number("1050", "mm")},
            "out_of_range",
            "dip.depth",
            1000.0,
        ),
        (
            {"machine.sump": LARGE | {"never_above_depth": number("1050", "mm")}},
            "out_of_range",
            "machine.sump.never_above_depth",
            1000.0,
        ),
        ({"machine.sump": TABLE | {"points": STEP}}, "order", "machine.sump.points[1].u", 198.0),
        (
            {"machine.fluid.factor_u": number("1.6", "1")},
            "order",
            "machine.fluid.factor_u",
            1.5,
        ),
    ],
)
def test_the_field_that_brings_it_is_named(
    values: Body, code: str, path: str, limit: float
) -> None:
    error = reply("plan_check", with_values(values))["error"]
    assert (error["code"], error["path"]) == (code, f"body.{path}")
    assert error["limit"]["maximum"] == pytest.approx(limit)


@pytest.mark.parametrize(
    "values",
    [
        UNSURE | {"reading.u": number("6.6", "Brix")},
        {"machine.fluid.factor_u": number("1.5", "1")},
        {HIDDEN: {"volume": number("199802", "L"), "drains_back": False}},
        {"machine.sump": LARGE, "dip.depth": number("1000", "mm")},
        {"machine.sump": TABLE | {"points": [STEP[0], {**STEP[1], "u": number("198", "L")}]}},
    ],
)
def test_up_to_the_limit_there_is_an_answer(values: Body) -> None:
    assert reply("plan_check", with_values(values))["ok"]


@pytest.mark.parametrize("hidden_l", ["0.0001", "0.01", "1", "200"])
def test_little_hidden_coolant_beside_much_is_no_doubt_about_its_strength(hidden_l: str) -> None:
    large = {**LARGE, "hidden": {"volume": number(hidden_l, "L"), "drains_back": False}}
    body = with_values({"machine.sump": {**large, "full_volume": number("150000", "L")}})
    body["reading"]["u"] = number("3", "Brix")
    assert reply("plan_check", body)["ok"]


def test_a_last_recipe_of_which_nothing_is_known_is_no_last_strength() -> None:
    """Nearly nothing, ±190 L, and one mark poured: after it any strength could be there."""
    tank = {"full_depth": number("10", "mm"), "full_volume": number("1000", "L")}
    tank |= {"kind": "proportional", "volume_known_by": "plate"}
    unsure = {"machine.sump": tank, "dip.depth": number("0.01", "mm"), "dip.u": number("9", "mm")}
    body = with_values(unsure | {"concentrate_at_hand": number("0.1", "L")})
    plan = reply("plan_check", body)["result"]["plan"]
    assert plan["final"]["strength_pct"]["u"] > 100
    hold = {"machine": body["machine"], "dip": body["dip"], "usual": number("5", "%")}
    last = {"check": body, "at": "2026-11-25T10:00:00+01:00"}
    got = reply("hold_check", {**hold, "last": last, "now": "2026-11-26T10:00:00+01:00"})
    assert got["ok"], got
    assert "last" not in got["result"]["request"]
