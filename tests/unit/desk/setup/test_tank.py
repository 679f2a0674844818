"""pycore.desk.setup.tank: what belongs to a kind, and what belongs to the circuit."""

from typing import Any

import pytest

from tests.unit.desk.lathe import WHEEL_LATHE, ask, changed, refusal
from tests.unit.desk.sumps import BLOCK, BOX, KINDS, litres, mm

FOREIGN = {
    "full_volume": litres("200"),
    "rise": mm("60"),
    "diameter": mm("600"),
    "points": KINDS["table"]["points"],
    "steps": KINDS["stepped"]["steps"],
    "dipped_end": "deep",
}


@pytest.mark.parametrize("name", FOREIGN)
def test_field_of_another_kind_is_refused(name: str) -> None:
    error = refusal("assess_sump", {"sump": {**BOX, name: FOREIGN[name]}})
    assert (error["code"], error["path"]) == ("not_for_kind", f"body.sump.{name}")
    assert error["limit"]["allowed"] == ["length", "width", "obstacles"]


@pytest.mark.parametrize("kind", ["proportional", "table"])
def test_measured_litres_hold_their_obstacles_already(kind: str) -> None:
    error = refusal("assess_sump", {"sump": {**KINDS[kind], "obstacles": [BLOCK]}})
    assert (error["code"], error["path"]) == ("not_for_kind", "body.sump.obstacles")


def test_rest_must_be_less_than_the_sump() -> None:
    error = refusal("read_machine", {"machine": changed("sump.rest", litres("198"))})
    assert (error["code"], error["path"]) == ("order", "body.machine.sump.rest")
    assert error["limit"] == {"below": pytest.approx(198), "unit": "L"}


def test_machine_shows_its_tank() -> None:
    machine = changed("sump.rest", litres("12"))
    machine["sump"]["hidden"] = {"volume": litres("20"), "drains_back": True}
    got = ask("read_machine", {"machine": machine})
    assert got["rest_l"] == 12
    # A quarter, common practice, no source.
    assert got["hidden_l"] == {"value": 20, "u": 5}
    assert got["drawing"]["outline"]
    # By hand: 198 L over 440 mm.
    assert (got["shown"]["one"]["value"], got["shown"]["one_holds"]["value"]) == (1, 0.45)


def test_hidden_with_its_own_uncertainty() -> None:
    hidden = {"volume": litres("20"), "u": litres("2"), "drains_back": False}
    got = ask("read_machine", {"machine": changed("sump.hidden", hidden)})
    assert got["hidden_l"] == {"value": 20, "u": 2}


def test_litres_below_the_stick() -> None:
    sump = {**KINDS["sloped_box"], "dipped_end": "shallow"}
    got = ask("read_machine", {"machine": changed("sump", sump)})
    # By hand: the wedge 1.2·0.6·0.06/2 m³.
    assert got["least_volume_l"] == pytest.approx(21.6)
    assert "least_volume_l" not in ask("read_machine", {"machine": WHEEL_LATHE})


@pytest.mark.parametrize(
    ("change", "code"),
    [
        ({"dip_from": "top"}, "missing"),
        ({"reference_height": mm("600")}, "not_for_kind"),
        ({"dip_from": "bottom", "reference_height": mm("600")}, "not_for_kind"),
    ],
)
def test_reference_height_belongs_to_dips_from_the_top(change: dict[str, Any], code: str) -> None:
    error = refusal("assess_sump", {"sump": {**BOX, **change}})
    assert (error["code"], error["path"]) == (code, "body.sump.reference_height")


def test_litres_that_follow_from_measures_are_asked_about() -> None:
    # 120 × 60 mm instead of 1200 × 600: 2.88 L.
    sump = {**BOX, "length": mm("120"), "width": mm("60")}
    doubts = ask("assess_sump", {"sump": sump})["doubts"]
    assert "body.sump.full_volume" in [doubt["path"] for doubt in doubts]


@pytest.mark.parametrize(
    ("change", "field", "meant"),
    [
        ({"length": mm("1,200")}, "length", ["1.2", "1200"]),
        ({"full_depth": mm("1.100")}, "full_depth", ["1.1", "1100"]),
        ({"rim_depth": mm("1,100")}, "rim_depth", ["1.1", "1100"]),
    ],
)
def test_sign_that_may_part_thousands_is_refused_at_its_field(
    change: dict[str, Any], field: str, meant: list[str]
) -> None:
    error = refusal("assess_sump", {"sump": {**BOX, **change}})
    assert (error["code"], error["path"]) == ("thousands", f"body.sump.{field}")
    assert (error["got"], error["limit"]["allowed"]) == (change[field]["text"], meant)


@pytest.mark.parametrize(
    ("path", "text"),
    [
        ("full_depth", mm("40")),
        ("full_depth", mm("2600")),
        ("rim_depth", mm("4000")),
        ("length", mm("90")),
        ("zero_offset", mm("60")),
        ("wait_min", 61),
        ("mix_min", 9),
        ("mix_min", 481),
    ],
)
def test_unusual_is_asked_once(path: str, text: Any) -> None:
    doubts = ask("assess_sump", {"sump": {**BOX, path: text}})["doubts"]
    assert f"body.sump.{path}" in [doubt["path"] for doubt in doubts]


@pytest.mark.parametrize(
    ("path", "text"),
    [
        ("full_depth", mm("0")),
        ("full_depth", mm("5001")),
        ("length", mm("50001")),
        ("zero_offset", mm("1001")),
        ("rest", litres("-1")),
        ("wait_min", 241),
        ("wait_min", -1),
        ("mix_min", 0),
        ("mix_min", 1441),
    ],
)
def test_impossible_is_refused(path: str, text: Any) -> None:
    error = refusal("assess_sump", {"sump": {**BOX, path: text}})
    assert (error["code"], error["path"]) == ("out_of_range", f"body.sump.{path}")
