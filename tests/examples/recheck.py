"""Example requests about looks and second readings."""

from __future__ import annotations

from typing import Any

from tests.examples.workshop import WHEEL_LATHE, ask, check

_POURED_AT = "2026-11-25T09:45:00+01:00"


_LOOK = {
    "seen": ["floating_oil", "foam"],
    "fluid_type": "semi_synthetic",
    "ph": {"text": "8.7", "unit": "1"},
    "first_fill_ph": {"text": "9.3", "unit": "1"},
    "nitrite": {"text": "9", "unit": "mg/L"},
}


def _litres(text: str) -> dict[str, str]:
    return {"text": text, "unit": "L"}


def _recheck(shows: str = "5.3", **more: Any) -> dict[str, Any]:
    mix = {"count": 5, "kind": "mix", "water": _litres("7"), "concentrate": _litres("1.2")}
    return {
        "check": check(),
        "machine": WHEEL_LATHE,
        "pours": [mix],
        "poured_at": _POURED_AT,
        "reading": {"shows": {"text": shows, "unit": "Brix"}, "how": "optical"},
        "now": "2026-11-25T10:20:00+01:00",
        **more,
    }


def answered() -> dict[str, Any]:
    """Second readings that fit, that do not, and one that nothing can be said about."""
    dip = {"depth": {"text": "432", "unit": "mm"}, "how": "hard_floor"}
    unknown = {"count": 1, "kind": "unknown", "about": True}
    return {
        "recheck": ask("recheck", _recheck(dip=dip)),
        "recheck_weaker": ask("recheck", _recheck("4.2")),
        "judge_look": ask("judge_look", _LOOK),
        "judge_look_smell": ask("judge_look", {"seen": ["smell"], "smell_again": "still"}),
        "judge_look_foam": ask("judge_look", {"seen": ["foam"], "foam_from": "cleaner"}),
        "advise_mishap": ask("advise_mishap", {"mishap": "neat_poured", "fluid_type": "synthetic"}),
        "recheck_unknown_poured": ask("recheck", _recheck(pours=[unknown])),
    }


def refused() -> dict[str, Any]:
    """A second reading before the pour, and a look that contradicts itself."""
    early = _recheck(now="2026-11-25T09:40:00+01:00")
    odd = {"seen": ["normal", "rust"]}
    return {
        "error_order_read_before_the_pour": ask("recheck", early),
        "error_order_normal_and_odd": ask("judge_look", odd),
        "error_not_for_kind_foam": ask("judge_look", {"seen": ["rust"], "foam_from": "water"}),
    }
