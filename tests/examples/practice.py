"""Example requests about practice."""

from __future__ import annotations

from typing import Any

from tests.examples.workshop import ask, check, t

_BUCKETS = {"count": t("4", "1"), "water": t("8", "L"), "concentrate": t("1500", "mL")}
# The factor forgotten, and worked on with that.
_ANSWERS = {
    "volume": t("154", "L"),
    "strength": t("4", "%"),
    "room": t("44", "L"),
    "top_up": t("22", "%"),
    "pours": [_BUCKETS],
}
_CHANGES = [
    {"kind": "evaporate", "volume": t("20", "L")},
    {"kind": "carry_out", "volume": t("5", "L")},
    {"kind": "pour", "count": 2, "water": t("9", "L"), "concentrate": t("500", "mL")},
]


def answered() -> dict[str, Any]:
    """A deal of each kind, what was worked out for a sump, and what becomes of one."""
    return {
        "deal_practice": ask("deal_practice", {"level": "alike", "number": t("7", "1")}),
        "deal_practice_full": ask("deal_practice", {"level": "full", "number": t("3", "1")}),
        "judge_practice": ask("judge_practice", {"check": check(), "answers": _ANSWERS}),
        "try_sump": ask("try_sump", {"check": check(), "changes": _CHANGES}),
    }
