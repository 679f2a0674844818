"""Example requests about practice, for ``tests.examples``."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

Ask = Callable[[str, Any], dict[str, Any]]


def _t(text: str, unit: str) -> dict[str, str]:
    return {"text": text, "unit": unit}


_BUCKETS = {"count": _t("4", "1"), "water": _t("8", "L"), "concentrate": _t("1500", "mL")}
# The factor forgotten, and worked on with that.
_ANSWERS = {
    "volume": _t("154", "L"),
    "strength": _t("4", "%"),
    "room": _t("44", "L"),
    "top_up": _t("22", "%"),
    "pours": [_BUCKETS],
}
_CHANGES = [
    {"kind": "evaporate", "volume": _t("20", "L")},
    {"kind": "carry_out", "volume": _t("5", "L")},
    {"kind": "pour", "count": 2, "water": _t("9", "L"), "concentrate": _t("500", "mL")},
]


def answered(ask: Ask, check: dict[str, Any]) -> dict[str, Any]:
    """A deal of each kind, what was worked out for a sump, and what becomes of one."""
    return {
        "deal_practice": ask("deal_practice", {"level": "alike", "number": _t("7", "1")}),
        "deal_practice_full": ask("deal_practice", {"level": "full", "number": _t("3", "1")}),
        "judge_practice": ask("judge_practice", {"check": check, "answers": _ANSWERS}),
        "try_sump": ask("try_sump", {"check": check, "changes": _CHANGES}),
    }
