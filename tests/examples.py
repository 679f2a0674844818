"""The example requests in shared/examples: ``python3 -m tests.examples`` writes their replies.

An example is documentation that cannot rot: a test answers each request again and compares. The
requests are set in the invented workshop of a tram depot.
"""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

from pycore.desk import handle
from tests import (
    fluid_examples,
    hold_examples,
    log_examples,
    practice_examples,
    recheck_examples,
    sheet_examples,
    sump_examples,
)

EXAMPLES = Path(__file__).resolve().parent.parent / "shared" / "examples"

# No file can show the first two: one needs a megabyte, the other a defect in pycore. The seals are
# codes of a line in quarantine, which never is a reply's error: read_export_damaged shows one.
WITHOUT_EXAMPLE = {"too_large", "internal", "seal_broken", "seal_missing"}


def _t(text: str, unit: str) -> dict[str, str]:
    return {"text": text, "unit": unit}


WHEEL_LATHE: dict[str, Any] = {
    "name": "Wheel lathe",
    "sump": {
        "kind": "proportional",
        "full_depth": _t("440", "mm"),
        "full_volume": _t("198", "L"),
        "volume_known_by": "poured",
    },
    "fluid": {
        "type": "semi_synthetic",
        "name": "Depot mix",
        "factor": _t("1.5", "1"),
        "factor_known_by": "sheet",
    },
    "target": {"low": _t("7", "%"), "aim": _t("8", "%"), "high": _t("9", "%")},
    "mixing": {"strong": _t("20", "%"), "weak": _t("1", "%"), "closeness": _t("0.5", "%")},
    "bucket": {"usable": _t("10", "L"), "water_mark": _t("1", "L"), "jug_mark": _t("50", "mL")},
    "units": {"plate": "L", "stick": "mm", "pail": "L", "jug": "mL"},
}
# The same machine with everything that a shop may know and allow.
WITH_SHOP: dict[str, Any] = {
    **WHEEL_LATHE,
    "sump": {**WHEEL_LATHE["sump"], "never_above_depth": _t("470", "mm")},
    "pail": {
        "first_mark": _t("2", "L"),
        "jug_first_mark": _t("100", "mL"),
        "jug_size": _t("1000", "mL"),
        "measure_by": "jug",
    },
    "ways": {
        "draw_off": True,
        "own_fluid": True,
        "carry_out": _t("2", "L"),
        "most_buckets": _t("8", "1"),
        "heaviest": _t("12", "kg"),
        "unit": {"lowest": _t("1", "%"), "highest": _t("10", "%"), "step": _t("0.5", "%")},
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
    "full_depth": _t("300", "mm"),
    "volume_known_by": "poured",
    "points": [
        {"depth": _t("60", "mm"), "volume": _t("12", "L")},
        {"depth": _t("180", "mm"), "volume": _t("60", "L")},
        {"depth": _t("320", "mm"), "volume": _t("116", "L")},
    ],
}


def _with(base: dict[str, Any], path: str, value: Any) -> dict[str, Any]:
    changed: dict[str, Any] = json.loads(json.dumps(base))
    *parents, last = path.split(".")
    place: Any = changed
    for part in parents:
        place = place[int(part)] if part.isdigit() else place[part]
    place[int(last) if last.isdigit() else last] = value
    return changed


def _check(machine: dict[str, Any], depth: str = "342", shows: str = "4.0") -> dict[str, Any]:
    return {
        "machine": machine,
        "dip": {"depth": _t(depth, "mm"), "how": "hard_floor"},
        "reading": {"shows": _t(shows, "Brix"), "how": "optical"},
    }


def _ask(op: str, body: Any) -> dict[str, Any]:
    return {"v": 1, "id": op, "op": op, "body": body}


def _depth(text: str, unit: str | None = "mm") -> dict[str, Any]:
    beside = {} if unit is None else {"unit": unit}
    return _ask("read_quantity", {"text": text, "quantity": "depth_mm", **beside})


def _answered() -> dict[str, Any]:
    """Name of each example that has a result to its request."""
    lathe = WHEEL_LATHE
    return {
        "describe": _ask("describe", {}),
        "read_quantity": _depth("13 7/16", "in"),
        "read_quantity_unusual": _ask(
            "read_quantity", {"text": "40", "quantity": "reading_brix", "unit": "Brix"}
        ),
        "read_machine": _ask("read_machine", {"machine": lathe}),
        "assess_sump": _ask(
            "assess_sump",
            {
                "sump": TABLE_SUMP,
                "fluid": lathe["fluid"],
                "target": lathe["target"],
                "units": lathe["units"],
                "dip": {"depth": _t("150", "mm")},
                "reading": {"shows": _t("5,2", "Brix"), "how": "digital"},
            },
        ),
        "plan_recipe": _ask("plan_recipe", PLAN),
        "plan_recipe_55_us_gal": _ask("plan_recipe", PLAN_55_US_GAL),
        "plan_recipe_lean_and_full": _ask("plan_recipe", LEAN_AND_FULL),
        "plan_recipe_rich_and_full": _ask("plan_recipe", RICH_AND_FULL),
        "plan_recipe_short_of_concentrate": _ask(
            "plan_recipe", {**PLAN, "stock": {"concentrate_l": 3}}
        ),
        "plan_recipe_short_of_water": _ask("plan_recipe", {**PLAN, "stock": {"water_l": 20}}),
        "plan_recipe_coarse_marks": _ask("plan_recipe", COARSE_MARKS),
        "plan_holding": _ask("plan_holding", hold_examples.HOLDING),
        "plan_check": _ask("plan_check", _check(lathe)),
        "plan_check_rich_and_low": _ask("plan_check", _check(lathe, "342", "8.0")),
        "plan_check_own_shop": _ask("plan_check", _check(WITH_SHOP, "420", "2.0")),
        "plan_check_full": _ask("plan_check", _check(lathe, "440", "5.3")),
        "plan_check_short_and_lower": _ask(
            "plan_check",
            {
                **_check(lathe),
                "fill_to_depth": _t("400", "mm"),
                "concentrate_at_hand": _t("2", "L"),
            },
        ),
        **hold_examples.answered(_ask, lathe),
        **sump_examples.answered(_ask, _check(lathe)),
    }


def _refused_messages() -> dict[str, Any]:
    """Messages that are refused; a text where the text itself is what is wrong."""
    long_list = [{"depth": _t(str(i), "mm"), "volume": _t(str(i), "L")} for i in range(1, 202)]
    return {
        "error_not_json": "{",
        "error_duplicate_key": '{"v": 1, "v": 1, "id": "a", "op": "describe", "body": {}}',
        "error_not_finite": '{"v": NaN, "id": "a", "op": "describe", "body": {}}',
        "error_too_deep": "[" * 40,
        "error_unknown_version": {"v": 2, "id": "a", "op": "describe", "body": {}},
        "error_unknown_op": _ask("brew", {}),
        "error_missing": _ask("plan_recipe", {k: v for k, v in PLAN.items() if k != "fill_to_l"}),
        "error_unknown_field": _ask("plan_recipe", {**PLAN, "colour": "blue"}),
        "error_wrong_type": _ask("plan_recipe", {**PLAN, "fill_to_l": True}),
        "error_too_long": _depth("1" * 41),
        "error_too_few": _ask("assess_sump", {"sump": _with(TABLE_SUMP, "points", [])}),
        "error_too_many": _ask("assess_sump", {"sump": _with(TABLE_SUMP, "points", long_list)}),
        "error_not_allowed": _ask("read_quantity", {"text": "4", "quantity": "fill_to_l"}),
    }


def _refused_numbers() -> dict[str, Any]:
    """Typed numbers and settings that are refused."""
    lathe = WHEEL_LATHE
    no_factor = json.loads(json.dumps(lathe))
    del no_factor["fluid"]["factor"]
    flat = _with(TABLE_SUMP, "points.1.volume", _t("12", "L"))
    return {
        "error_out_of_range": _ask("plan_check", _check(lathe, "3420")),
        "error_empty": _depth(" "),
        "error_not_a_number": _depth("1_000"),
        "error_not_whole": _ask(
            "read_machine",
            {"machine": _with(WITH_SHOP, "ways.most_buckets", _t("7.5", "1"))},
        ),
        "error_two_separators": _depth("1.234,5"),
        "error_missing_unit": _depth("70", None),
        "error_ambiguous_unit": _ask("read_quantity", {"text": "55 gal", "quantity": "volume_l"}),
        "error_unknown_unit": _depth("70 cubits"),
        "error_wrong_dimension": _depth("70 L"),
        "error_order": _ask("read_machine", {"machine": _with(lathe, "target.low", _t("10", "%"))}),
        "error_not_rising": _ask("assess_sump", {"sump": flat}),
        "error_mark_above_bucket": _ask(
            "read_machine", {"machine": _with(lathe, "bucket.water_mark", _t("12", "L"))}
        ),
        "error_no_factor": _ask("plan_check", _check(no_factor)),
        "error_neat_oil": _ask("read_machine", {"machine": _with(lathe, "fluid.type", "neat_oil")}),
        **hold_examples.refused(_ask, WHEEL_LATHE),
        **sump_examples.refused(_ask, _check(WHEEL_LATHE)),
    }


def request_text(request: Any) -> str:
    """The text that the desk is handed for an example's request."""
    return request if isinstance(request, str) else json.dumps(request, ensure_ascii=False)


def main() -> None:
    """Writes every example with the reply that pycore gives now, and removes others."""
    EXAMPLES.mkdir(exist_ok=True)
    of_fluid = WHEEL_LATHE, _check(WHEEL_LATHE)
    requests = {
        **_answered(),
        **fluid_examples.answered(*of_fluid),
        **recheck_examples.answered(_ask, of_fluid[1]),
        **recheck_examples.refused(_ask, of_fluid[1]),
        **practice_examples.answered(_ask, of_fluid[1]),
        **sheet_examples.answered(_ask, *of_fluid),
        **_refused_messages(),
        **_refused_numbers(),
        **fluid_examples.refused(*of_fluid),
        **sheet_examples.refused(_ask, WHEEL_LATHE),
        **log_examples.answered(),
        **log_examples.refused(),
    }
    for path in EXAMPLES.glob("*.json"):
        if path.stem not in requests:
            path.unlink()
    for name, request in requests.items():
        reply = json.loads(handle(request_text(request)))
        if reply["ok"] == name.startswith("error_"):
            raise SystemExit(f"{name} answers the wrong way: {reply}")
        if not reply["ok"] and not name.startswith(f"error_{reply['error']['code']}"):
            raise SystemExit(f"{name} is refused with {reply['error']['code']}")
        text = json.dumps({"request": request, "reply": reply}, ensure_ascii=False, indent=1)
        (EXAMPLES / f"{name}.json").write_text(text + "\n", encoding="utf-8")
    print(f"{len(requests)} examples written")


if __name__ == "__main__":
    main()
