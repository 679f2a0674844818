"""pycore.desk.setup.fluid: the fluid's record."""

from typing import Any

import pytest

from tests.unit.desk.asked import HAND_GLASS, ask, fluid_body, refusal, t


def test_everything_on_the_record_is_read() -> None:
    got = ask("read_fluid", {**fluid_body(), "instrument": HAND_GLASS})
    assert (got["strong_pct"], got["weak_pct"], got["first_fill_ph"]) == (20, 1, 9.2)
    assert (got["low_pct"], got["aim_pct"], got["high_pct"]) == (7, 8, 9)
    assert got["density_kg_l"] == 0.98
    assert got["shown"]["water_high"] == {"value": 15.0, "decimals": 0, "unit": "°dH"}
    assert got["drum"] == {"delivered_d": 205, "opened_d": 44, "best_before": "2027-05-04"}
    assert got["zero_age_d"] == pytest.approx((7 + 50 / 60) / 24)
    assert (got["cautions"], got["notes"], got["doubts"]) == ([], [], [])


@pytest.mark.parametrize(
    ("fields", "code", "path"),
    [
        ({"type": "neat_oil"}, "neat_oil", "type"),
        ({"weak": t("20", "%")}, "order", "weak"),
        ({"first_fill_ph": t("4.9", "1")}, "out_of_range", "first_fill_ph"),
        ({"first_fill_ph": t("12.1", "1")}, "out_of_range", "first_fill_ph"),
        ({"density": {"text": "0.98"}}, "missing_unit", "density"),
        ({"density": t("98", "kg/L")}, "out_of_range", "density"),
        ({"opened_on": "2026-11-26"}, "order", "opened_on"),
        ({"delivered_on": "2026-11-01"}, "order", "delivered_on"),
        ({"metals": ["gold"]}, "not_allowed", "metals[0]"),
        ({"shelf_life_months": 0}, "out_of_range", "shelf_life_months"),
        ({"titration_factor": t("0", "1")}, "out_of_range", "titration_factor"),
    ],
)
def test_refused_at_the_field(fields: dict[str, Any], code: str, path: str) -> None:
    error = refusal("read_fluid", fluid_body(**fields))
    assert (error["code"], error["path"]) == (code, f"body.fluid.{path}")


@pytest.mark.parametrize(
    ("low", "aim", "high", "path"),
    [("9", "8", "9", "low"), ("7", "6.9", "9", "aim"), ("7", "9.1", "9", "aim")],
)
def test_band_that_cannot_be(low: str, aim: str, high: str, path: str) -> None:
    target = {"low": t(low, "%"), "aim": t(aim, "%"), "high": t(high, "%")}
    error = refusal("read_fluid", fluid_body(target=target))
    assert (error["code"], error["path"]) == ("order", f"body.fluid.target.{path}")


def test_density_in_pounds_per_gallon() -> None:
    # NIST Handbook 44: 0.453 592 37 kg in 3.785 411 784 L.
    got = ask("read_fluid", fluid_body(density=t("8.2", "lb/US gal")))
    assert got["density_kg_l"] == pytest.approx(8.2 * 0.45359237 / 3.785411784)


def test_ph_outside_the_usual_is_asked_about() -> None:
    # Common practice, no source: 8.3 to 9.8.
    doubts = ask("read_fluid", fluid_body(first_fill_ph=t("8.2", "1")))["doubts"]
    assert [(d["path"], d["usual_low"], d["usual_high"]) for d in doubts] == [
        ("body.fluid.first_fill_ph", 8.3, 9.8)
    ]


def test_magnesium_is_asked_about_until_it_is_answered() -> None:
    asked = ask("read_fluid", fluid_body(metals=None))["cautions"]
    assert asked == ["magnesium_not_asked"]
    worked = ask("read_fluid", fluid_body(metals=["magnesium"]))["cautions"]
    assert worked == ["magnesium", "not_made_for_magnesium"]
