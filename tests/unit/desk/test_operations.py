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
