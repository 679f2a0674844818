"""Every example's request by its name."""

from __future__ import annotations

import json
from typing import Any

from tests.examples import fluid, hold, log, practice, recheck, sheets, sumps
from tests.examples.workshop import (
    COARSE_MARKS,
    LEAN_AND_FULL,
    PLAN,
    PLAN_55_US_GAL,
    RICH_AND_FULL,
    TABLE_SUMP,
    WHEEL_LATHE,
    WITH_SHOP,
    ask,
    check,
    t,
)


def _with(base: dict[str, Any], path: str, value: Any) -> dict[str, Any]:
    changed: dict[str, Any] = json.loads(json.dumps(base))
    *parents, last = path.split(".")
    place: Any = changed
    for part in parents:
        place = place[int(part)] if part.isdigit() else place[part]
    place[int(last) if last.isdigit() else last] = value
    return changed


def _depth(text: str, unit: str | None = "mm") -> dict[str, Any]:
    beside = {} if unit is None else {"unit": unit}
    return ask("read_quantity", {"text": text, "quantity": "depth_mm", **beside})


def _answered() -> dict[str, Any]:
    """Name of each example that has a result to its request."""
    lathe = WHEEL_LATHE
    return {
        "describe": ask("describe", {}),
        "read_quantity": _depth("13 7/16", "in"),
        "read_quantity_unusual": ask(
            "read_quantity", {"text": "40", "quantity": "reading_brix", "unit": "Brix"}
        ),
        "read_machine": ask("read_machine", {"machine": lathe}),
        "assess_sump": ask(
            "assess_sump",
            {
                "sump": TABLE_SUMP,
                "fluid": lathe["fluid"],
                "target": lathe["target"],
                "units": lathe["units"],
                "dip": {"depth": t("150", "mm")},
                "reading": {"shows": t("5,2", "Brix"), "how": "digital"},
            },
        ),
        "plan_recipe": ask("plan_recipe", PLAN),
        "plan_recipe_55_us_gal": ask("plan_recipe", PLAN_55_US_GAL),
        "plan_recipe_lean_and_full": ask("plan_recipe", LEAN_AND_FULL),
        "plan_recipe_rich_and_full": ask("plan_recipe", RICH_AND_FULL),
        "plan_recipe_short_of_concentrate": ask(
            "plan_recipe", {**PLAN, "stock": {"concentrate_l": 3}}
        ),
        "plan_recipe_short_of_water": ask("plan_recipe", {**PLAN, "stock": {"water_l": 20}}),
        "plan_recipe_coarse_marks": ask("plan_recipe", COARSE_MARKS),
        "plan_holding": ask("plan_holding", hold.HOLDING),
        "plan_check": ask("plan_check", check()),
        "plan_check_rich_and_low": ask("plan_check", check(lathe, "342", "8.0")),
        "plan_check_own_shop": ask("plan_check", check(WITH_SHOP, "420", "2.0")),
        "plan_check_full": ask("plan_check", check(lathe, "440", "5.3")),
        "plan_check_short_and_lower": ask(
            "plan_check",
            {
                **check(),
                "fill_to_depth": t("400", "mm"),
                "concentrate_at_hand": t("2", "L"),
            },
        ),
    }


def _refused_messages() -> dict[str, Any]:
    """Messages that are refused; a text where the text itself is what is wrong."""
    long_list = [{"depth": t(str(i), "mm"), "volume": t(str(i), "L")} for i in range(1, 202)]
    return {
        "error_not_json": "{",
        "error_duplicate_key": '{"v": 1, "v": 1, "id": "a", "op": "describe", "body": {}}',
        "error_not_finite": '{"v": NaN, "id": "a", "op": "describe", "body": {}}',
        "error_too_deep": "[" * 40,
        "error_unknown_version": {"v": 2, "id": "a", "op": "describe", "body": {}},
        "error_unknown_op": ask("brew", {}),
        "error_missing": ask("plan_recipe", {k: v for k, v in PLAN.items() if k != "fill_to_l"}),
        "error_unknown_field": ask("plan_recipe", {**PLAN, "colour": "blue"}),
        "error_wrong_type": ask("plan_recipe", {**PLAN, "fill_to_l": True}),
        "error_too_long": _depth("1" * 41),
        "error_too_few": ask("assess_sump", {"sump": _with(TABLE_SUMP, "points", [])}),
        "error_too_many": ask("assess_sump", {"sump": _with(TABLE_SUMP, "points", long_list)}),
        "error_not_allowed": ask("read_quantity", {"text": "4", "quantity": "fill_to_l"}),
    }


def _refused_numbers() -> dict[str, Any]:
    """Typed numbers and settings that are refused."""
    lathe = WHEEL_LATHE
    no_factor = json.loads(json.dumps(lathe))
    del no_factor["fluid"]["factor"]
    flat = _with(TABLE_SUMP, "points.1.volume", t("12", "L"))
    return {
        "error_out_of_range": ask("plan_check", check(lathe, "3420")),
        "error_empty": _depth(" "),
        "error_not_a_number": _depth("1_000"),
        "error_not_whole": ask(
            "read_machine",
            {"machine": _with(WITH_SHOP, "ways.most_buckets", t("7.5", "1"))},
        ),
        "error_two_separators": _depth("1.234,5"),
        "error_missing_unit": _depth("70", None),
        "error_ambiguous_unit": ask("read_quantity", {"text": "55 gal", "quantity": "volume_l"}),
        "error_unknown_unit": _depth("70 cubits"),
        "error_wrong_dimension": _depth("70 L"),
        "error_order": ask("read_machine", {"machine": _with(lathe, "target.low", t("10", "%"))}),
        "error_not_rising": ask("assess_sump", {"sump": flat}),
        "error_mark_above_bucket": ask(
            "read_machine", {"machine": _with(lathe, "bucket.water_mark", t("12", "L"))}
        ),
        "error_no_factor": ask("plan_check", check(no_factor)),
        "error_neat_oil": ask("read_machine", {"machine": _with(lathe, "fluid.type", "neat_oil")}),
    }


def requests() -> dict[str, Any]:
    """A request, or a text where the text itself is what is wrong."""
    return {
        **_answered(),
        **hold.answered(),
        **sumps.answered(),
        **fluid.answered(),
        **recheck.answered(),
        **practice.answered(),
        **sheets.answered(),
        **log.answered(),
        **_refused_messages(),
        **_refused_numbers(),
        **hold.refused(),
        **sumps.refused(),
        **fluid.refused(),
        **recheck.refused(),
        **sheets.refused(),
        **log.refused(),
    }
