"""pycore.desk.setup.measures: every kind of sump from its typed measures."""

from typing import Any

import pytest

from tests.unit.desk.lathe import ask, refusal
from tests.unit.desk.sumps import AT_100_MM, BLOCK, BOX, KINDS, litres, mm


def _volume_l(sump: dict[str, Any], depth: str) -> float:
    got = ask("assess_sump", {"sump": sump, "dip": {"depth": mm(depth)}})
    return got["level"]["volume_l"]["value"]


@pytest.mark.parametrize("kind", KINDS)
def test_litres_at_100_mm(kind: str) -> None:
    assert _volume_l(KINDS[kind], "100") == pytest.approx(AT_100_MM[kind], rel=1e-6)


def test_same_in_inches() -> None:
    inches = {"text": "10", "unit": "in"}
    sump = {**BOX, "length": {"text": "36", "unit": "in"}, "width": {"text": "24", "unit": "in"}}
    got = ask("assess_sump", {"sump": sump, "dip": {"depth": inches}})
    # 36 × 24 × 10 in³ = 37.402597 US gal = 141.584233 L.
    assert got["level"]["volume_l"]["value"] == pytest.approx(141.584233, abs=1e-6)


@pytest.mark.parametrize(
    ("thing", "less_l"),
    [
        (BLOCK, 7.5),
        ({"from_depth": mm("80"), "diameter": mm("200")}, 3.14159265),
        ({"from_depth": mm("80"), "to_depth": mm("280"), "volume": litres("15")}, 7.5),
        ({"from_depth": mm("0"), "length": mm("300"), "width": mm("250")}, 13.5),
    ],
)
def test_things_in_the_liquid(thing: dict[str, Any], less_l: float) -> None:
    # By hand: what each displaces below 180 mm.
    assert _volume_l({**BOX, "obstacles": [thing]}, "180") == pytest.approx(129.6 - less_l)


@pytest.mark.parametrize(
    ("change", "code", "end"),
    [
        ({"obstacles": [{"from_depth": mm("80")}]}, "missing", "obstacles[0].length"),
        (
            {"obstacles": [{"from_depth": mm("80"), "length": mm("9")}]},
            "missing",
            "obstacles[0].width",
        ),
        (
            {"obstacles": [{**BLOCK, "diameter": mm("9")}]},
            "not_for_kind",
            "obstacles[0].diameter",
        ),
        (
            {"obstacles": [{"from_depth": mm("0"), "diameter": mm("9"), "width": mm("9")}]},
            "not_for_kind",
            "obstacles[0].width",
        ),
        (
            {"obstacles": [{"from_depth": mm("0"), "volume": litres("9")}]},
            "missing",
            "obstacles[0].to_depth",
        ),
        (
            {"obstacles": [{"from_depth": mm("5"), "to_depth": mm("5"), "volume": litres("9")}]},
            "order",
            "obstacles[0].to_depth",
        ),
        (
            {"obstacles": [{**BLOCK, "length": mm("1200"), "width": mm("600")}]},
            "obstacle_too_large",
            "obstacles[0]",
        ),
        ({"length": mm("0")}, "out_of_range", "length"),
        ({"length": litres("5")}, "wrong_dimension", "length"),
        ({"length": mm("x")}, "not_a_number", "length"),
    ],
)
def test_refused_at_the_field(change: dict[str, Any], code: str, end: str) -> None:
    error = refusal("assess_sump", {"sump": {**BOX, **change}})
    assert (error["code"], error["path"]) == (code, f"body.sump.{end}")


@pytest.mark.parametrize(
    ("kind", "field", "value", "code", "limit"),
    [
        ("horizontal_cylinder", "full_depth", mm("601"), "order", {"maximum": 600}),
        ("horizontal_cylinder", "rim_depth", mm("601"), "order", {"minimum": 400, "maximum": 600}),
        ("frustum", "full_depth", mm("501"), "order", {"maximum": 500}),
        ("stepped", "rim_depth", mm("399"), "order", {"minimum": 400}),
        ("table", "rim_depth", mm("439"), "order", {"minimum": 440, "maximum": 484}),
        ("table", "rim_depth", mm("485"), "order", {"minimum": 440, "maximum": 484}),
    ],
)
def test_marks_that_the_tank_cannot_have(
    kind: str, field: str, value: dict[str, Any], code: str, limit: dict[str, float]
) -> None:
    error = refusal("assess_sump", {"sump": {**KINDS[kind], field: value}})
    assert (error["code"], error["path"]) == (code, f"body.sump.{field}")
    assert error["limit"] == pytest.approx({**limit, "unit": "mm"})


@pytest.mark.parametrize(
    ("floors", "place"), [(("5", "120"), 0), (("0", "-1"), 1), (("0", "120", "119"), 2)]
)
def test_floors_of_a_stepped_sump(floors: tuple[str, ...], place: int) -> None:
    steps = [{"floor": mm(f), "length": mm("400"), "width": mm("600")} for f in floors]
    error = refusal("assess_sump", {"sump": {**KINDS["stepped"], "steps": steps}})
    assert error["code"] in ("order", "out_of_range")
    assert error["path"] == f"body.sump.steps[{place}].floor"


def test_rim_a_little_above_the_table_is_reached_with_its_last_slope() -> None:
    sump = {**KINDS["table"], "rim_depth": mm("474")}
    got = ask("assess_sump", {"sump": sump, "dip": {"depth": mm("474")}})["level"]
    # By hand: 160 L over 340 mm, 34 mm further.
    assert got["volume_l"]["value"] == pytest.approx(196)


def test_rows_know_their_uncertainty_all_or_none() -> None:
    points = [{**point, "u": litres("2")} for point in KINDS["table"]["points"]]
    dip = {"depth": mm("100"), "u": mm("0")}
    got = ask("assess_sump", {"sump": {**KINDS["table"], "points": points}, "dip": dip})
    assert got["level"]["volume_l"]["u"] == pytest.approx(2)
    del points[1]["u"]
    error = refusal("assess_sump", {"sump": {**KINDS["table"], "points": points}})
    assert (error["code"], error["path"]) == ("missing", "body.sump.points[1].u")
