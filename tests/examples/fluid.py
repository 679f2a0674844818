"""Example requests about instrument, fluid, water and factor, in the tram depot's workshop."""

from __future__ import annotations

from typing import Any

from tests.examples.workshop import WHEEL_LATHE, ask, check, t


def brix(text: str) -> dict[str, str]:
    """A typed number of Brix."""
    return t(text, "Brix")


# Zeroed in the morning in the water of the tap, without compensation of its own.
HAND_GLASS: dict[str, Any] = {
    "shows": "brix",
    "name": "Glass of the wheel shop",
    "kind": "optical",
    "compensation": "none",
    "resolution": brix("0.2"),
    "highest": brix("18"),
    "zero": {
        "shows": brix("0.2"),
        "on": "2026-11-25T06:10",
        "temperature": t("20", "°C"),
        "water": "mains",
    },
}
# Shows per cent with the factor of the depot's fluid inside.
PER_CENT_GLASS: dict[str, Any] = {
    "shows": "per_cent",
    "kind": "digital",
    "compensation": "automatic",
    "factor_inside": t("1.5", "1"),
    "zero": {"shows": t("0.0", "%"), "on": "2026-11-25T06:10", "water": "demineralised"},
}
DEPOT_MIX: dict[str, Any] = {
    "type": "semi_synthetic",
    "name": "Depot mix",
    "factor": t("0.67", "1"),
    "factor_direction": "divide",
    "factor_known_by": "sheet",
    "titration_factor": t("0.5", "1"),
    "metals": ["steel", "cast_iron"],
    "batch": "D-2611",
    "target": {"low": t("7", "%"), "aim": t("8", "%"), "high": t("9", "%")},
    "strong": t("20", "%"),
    "weak": t("1", "%"),
    "first_fill_ph": t("9.2", "1"),
    "water_limits": {"scheme": "the fluid's sheet", "low": t("5", "°dH"), "high": t("15", "°dH")},
    "density": t("0.98", "kg/L"),
    "delivered_on": "2026-05-04",
    "opened_on": "2026-10-12",
    "shelf_life_months": 12,
}
CHART = [
    {"strength": t("2", "%"), "reading": brix("1.6")},
    {"strength": t("5", "%"), "reading": brix("4.0")},
    {"strength": t("10", "%"), "reading": brix("8.1")},
]
CHART_MIX: dict[str, Any] = {
    "type": "soluble_oil",
    "factor_chart": CHART,
    "metals": ["magnesium"],
    "opened_on": "2025-09-01",
}


def jug(water: str, concentrate: str, shows: str) -> dict[str, Any]:
    """One jug, mixed from a litre."""
    return {
        "water": t(water, "mL"),
        "concentrate": t(concentrate, "mL"),
        "shows": brix(shows),
    }


JUGS = {
    "jugs": [jug("970", "30", "2.2"), jug("940", "60", "4.4"), jug("910", "90", "6.2")],
    "measured_with": "syringe",
    "how": "optical",
    "instrument": HAND_GLASS,
    "fluid_type": "semi_synthetic",
    "on": "2026-11-25",
}
# One jug misread, and the factor far from the last one.
DOUBTFUL_JUGS = {
    **JUGS,
    "jugs": [jug("970", "30", "2.2"), jug("940", "60", "6.0"), jug("910", "90", "6.2")],
    "last_factor": t("1.6", "1"),
}


def _assessed(**more: Any) -> dict[str, Any]:
    return ask(
        "assess_sump", {**{part: WHEEL_LATHE[part] for part in ("sump", "target", "fluid")}, **more}
    )


def answered() -> dict[str, Any]:
    """Name of each example that has a result to its request."""
    warm = {"shows": brix("5.0"), "how": "optical", "temperature": t("28", "°C")}
    thrice = {**warm, "again": [brix("5.2"), brix("5.0")]}
    blurred = {"shows": brix("2.6"), "how": "blurred", "diluted": t("1", "1")}
    per_cent = {"shows": t("6.3", "%")}
    now = {"now": "2026-11-25T14:00"}
    titration = {"method": "titration", "shows": t("8", "1"), "factor": t("0.5", "1")}
    today = {"today": "2026-11-25T14:00"}
    return {
        "assess_sump_warm_prism": _assessed(instrument=HAND_GLASS, reading=thrice, **now),
        "assess_sump_diluted": _assessed(reading=blurred),
        "assess_sump_per_cent": _assessed(
            instrument=PER_CENT_GLASS, reading=per_cent, now="2026-11-27T06:00"
        ),
        "plan_check_two_methods": ask("plan_check", {**check(), "second": titration}),
        "read_fluid": ask("read_fluid", {"fluid": DEPOT_MIX, "instrument": HAND_GLASS, **today}),
        "read_fluid_chart": ask("read_fluid", {"fluid": CHART_MIX, **today}),
        "read_water": ask(
            "read_water",
            {
                "water": {
                    "kind": "mains",
                    "hardness": t("18", "°dH"),
                    "chloride": t("40", "mg/L"),
                    "nitrate": t("55", "mg/L"),
                },
                "limits": DEPOT_MIX["water_limits"],
            },
        ),
        "fit_factor": ask("fit_factor", JUGS),
        "fit_factor_doubtful": ask("fit_factor", DOUBTFUL_JUGS),
    }


def refused() -> dict[str, Any]:
    """Name of each example that is refused."""
    beyond = {**check()["reading"], "shows": brix("18.5")}
    machine = {**WHEEL_LATHE, "instrument": HAND_GLASS}
    fluid = {**DEPOT_MIX, "opened_on": "12.10.2026"}
    return {
        "error_off_scale": ask("plan_check", {**check(), "machine": machine, "reading": beyond}),
        "error_not_a_date": ask("read_fluid", {"fluid": fluid, "today": "2026-11-25"}),
    }
