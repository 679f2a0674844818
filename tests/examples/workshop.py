"""The invented workshop of a tram depot, in which every example is set."""

from __future__ import annotations

from typing import Any


def t(text: str, unit: str) -> dict[str, str]:
    """What a person typed, and the unit beside it."""
    return {"text": text, "unit": unit}


WHEEL_LATHE: dict[str, Any] = {
    "name": "Wheel lathe",
    "sump": {
        "kind": "proportional",
        "full_depth": t("440", "mm"),
        "full_volume": t("198", "L"),
        "volume_known_by": "poured",
    },
    "fluid": {
        "type": "semi_synthetic",
        "name": "Depot mix",
        "factor": t("1.5", "1"),
        "factor_known_by": "sheet",
    },
    "target": {"low": t("7", "%"), "aim": t("8", "%"), "high": t("9", "%")},
    "mixing": {"strong": t("20", "%"), "weak": t("1", "%"), "closeness": t("0.5", "%")},
    "bucket": {"usable": t("10", "L"), "water_mark": t("1", "L"), "jug_mark": t("50", "mL")},
    "units": {"plate": "L", "stick": "mm", "pail": "L", "jug": "mL"},
}
# The same machine with everything that a shop may know and allow.
WITH_SHOP: dict[str, Any] = {
    **WHEEL_LATHE,
    "sump": {**WHEEL_LATHE["sump"], "never_above_depth": t("470", "mm")},
    "pail": {
        "first_mark": t("2", "L"),
        "jug_first_mark": t("100", "mL"),
        "jug_size": t("1000", "mL"),
        "measure_by": "jug",
    },
    "ways": {
        "draw_off": True,
        "own_fluid": True,
        "carry_out": t("2", "L"),
        "most_buckets": t("8", "1"),
        "heaviest": t("12", "kg"),
        "unit": {"lowest": t("1", "%"), "highest": t("10", "%"), "step": t("0.5", "%")},
    },
}
PLAN: dict[str, Any] = {
    "sump": {
        "volume_l": {"value": 154, "u": 4.7},
        "strength_pct": {"value": 6.0, "u": 0.3},
    },
    "fill_to_l": 198,
    "target": {"low_pct": 7, "aim_pct": 8, "high_pct": 9},
    "mixing": {"strong_pct": 20, "weak_pct": 1, "closeness_pct": 0.5},
    "bucket": {"usable_l": 10, "water_mark_l": 1, "jug_mark_l": 0.05},
    "draw_off": {"allowed": False, "mark_l": 1},
}
# The 55 US gal sump of shared/checks/common_practice.json.
PLAN_55_US_GAL: dict[str, Any] = {
    "sump": {
        "volume_l": {"value": 81.79193319, "u": 8.99},
        "strength_pct": {"value": 3.0, "u": 0.3},
    },
    "fill_to_l": 208.19764812,
    "target": {"low_pct": 6, "aim_pct": 7, "high_pct": 10},
    "mixing": {"strong_pct": 20, "weak_pct": 1, "closeness_pct": 0.5},
    "bucket": {"usable_l": 18.92705892, "water_mark_l": 3.785411784, "jug_mark_l": 0.2070147069375},
    "draw_off": {"allowed": False, "mark_l": 3.785411784},
}
LEAN_AND_FULL: dict[str, Any] = {
    **PLAN,
    "sump": {
        "volume_l": {"value": 198, "u": 5.9},
        "strength_pct": {"value": 5.0, "u": 0.3},
    },
    "draw_off": {"allowed": True, "mark_l": 1},
    "own_fluid": {"allowed": True},
    "never_above_l": 212,
}
RICH_AND_FULL: dict[str, Any] = {
    **PLAN,
    "sump": {
        "volume_l": {"value": 198, "u": 5.9},
        "strength_pct": {"value": 11.0, "u": 0.4},
    },
    "losses": {"carry_out_l_d": 2},
}
# Only plain water can be measured, and that would do harm.
COARSE_MARKS: dict[str, Any] = {
    **PLAN,
    "mixing": {"strong_pct": 20, "weak_pct": 0, "closeness_pct": 0.5},
    "bucket": {"usable_l": 10, "water_mark_l": 5, "jug_mark_l": 3},
}
TABLE_SUMP: dict[str, Any] = {
    "kind": "table",
    "full_depth": t("300", "mm"),
    "volume_known_by": "poured",
    "points": [
        {"depth": t("60", "mm"), "volume": t("12", "L")},
        {"depth": t("180", "mm"), "volume": t("60", "L")},
        {"depth": t("320", "mm"), "volume": t("116", "L")},
    ],
}


def ask(op: str, body: Any) -> dict[str, Any]:
    """The request for an operation."""
    return {"v": 1, "id": op, "op": op, "body": body}


def check(
    machine: dict[str, Any] = WHEEL_LATHE, depth: str = "342", shows: str = "4.0"
) -> dict[str, Any]:
    """The body of a check: a dip in millimetres and a reading in Brix."""
    return {
        "machine": machine,
        "dip": {"depth": t(depth, "mm"), "how": "hard_floor"},
        "reading": {"shows": t(shows, "Brix"), "how": "optical"},
    }
