"""pycore.desk.operations."""

import platform

import pytest

import pycore
from pycore.quantity.known import KNOWN
from tests.contract import OPERATIONS
from tests.examples.files import examples
from tests.unit.desk.lathe import WHEEL_LATHE, ask, changed, refusal


def test_describe_says_versions_and_operations() -> None:
    said = ask("describe", {})
    assert (said["pycore"], said["python"]) == (pycore.__version__, platform.python_version())
    assert set(said["operations"]) == OPERATIONS
    assert said["quantities"] == [name for name, known in KNOWN.items() if known.typed]


def test_read_quantity_shows_what_was_read() -> None:
    got = ask("read_quantity", {"text": "13 7/16", "unit": "in", "quantity": "depth_mm"})
    assert got["value"] == 341.3125
    assert got["read_as"]["fraction"] == {"whole": 13, "numerator": 7, "denominator": 16}
    assert got["doubts"] == []


def test_unusual_number_is_read_and_asked_about() -> None:
    got = ask("read_quantity", {"text": "6", "quantity": "factor"})
    assert got["value"] == 6
    (doubt,) = got["doubts"]
    assert (doubt["code"], doubt["usual_low"], doubt["usual_high"]) == ("unusual", 0.9, 3.5)


def test_read_quantity_says_another_unit_in_the_one_beside_the_field() -> None:
    got = ask("read_quantity", {"text": "44 cm", "unit": "mm", "quantity": "full_depth_mm"})
    assert got["value"] == 440
    assert got["read_as"] == {"value": 44.0, "decimals": 0, "unit": "cm"}
    assert got["in_unit"] == {"value": 440.0, "decimals": 0, "unit": "mm"}
    # Its own unit once more is no other one, and without a unit beside it there is none to say.
    for text, beside in (
        ("440 mm", {"unit": "mm"}),
        ("440", {"unit": "mm"}),
        ("44 cm", {}),
        ("44 cm", {"unit": "L"}),
    ):
        same = ask("read_quantity", {"text": text, "quantity": "full_depth_mm", **beside})
        assert "in_unit" not in same
    for text, in_unit in (("0.05 L", {"value": 50.0, "decimals": 0, "unit": "mL"}), ("2 L", None)):
        jug = ask("read_quantity", {"text": text, "unit": "mL", "quantity": "jug_max_l"})
        assert jug.get("in_unit") == in_unit
    assert "in_unit" not in ask(
        "read_quantity", {"text": "2000", "unit": "mL", "quantity": "jug_max_l"}
    )


@pytest.mark.parametrize(
    ("text", "beside", "quantity", "value"),
    [
        ("1 ft", "mm", "full_depth_mm", 304.8),
        ("17 1/4 in", "mm", "full_depth_mm", 438.15),
        # 44 cm are 17.3228… in, and 10 mL no 0.003 US gal: what is rounded is not called equal.
        ("44 cm", "in", "full_depth_mm", None),
        ("17 5/64 in", "mm", "full_depth_mm", None),
        ("10 mL", "US gal", "jug_mark_l", None),
    ],
)
def test_another_unit_is_said_only_where_it_is_the_same_number(
    text: str, beside: str, quantity: str, value: float | None
) -> None:
    got = ask("read_quantity", {"text": text, "unit": beside, "quantity": quantity})
    assert got.get("in_unit", {}).get("value") == value


@pytest.mark.parametrize("quantity", ["draw_off_l", "nothing"])
def test_read_quantity_refuses_what_nobody_types(quantity: str) -> None:
    error = refusal("read_quantity", {"text": "5", "unit": "L", "quantity": quantity})
    assert error["code"] == "not_allowed"
    assert "depth_mm" in error["limit"]["allowed"]


def test_read_machine_in_base_units_and_as_shown() -> None:
    got = ask("read_machine", {"machine": WHEEL_LATHE})
    assert (got["full_depth_mm"], got["rim_depth_mm"]) == pytest.approx((440, 484))
    assert (got["full_volume_l"], got["rim_volume_l"]) == pytest.approx((198, 217.8))
    assert got["litres_per_mm"] == pytest.approx(0.45)
    assert got["shown"]["jug_mark"] == {"value": 50, "decimals": 0, "unit": "mL"}
    assert got["doubts"] == []


def test_read_machine_without_a_factor_has_none() -> None:
    assert "factor" not in ask("read_machine", {"machine": changed("fluid.factor", None)})


def test_plan_recipe_names_the_path_from_the_body() -> None:
    body = examples()["plan_recipe"]["request"]["body"]
    body["target"]["low_pct"] = body["target"]["high_pct"]
    assert refusal("plan_recipe", body)["path"] == "body.target.low_pct"
