"""Example requests about second readings, for shared/examples; called by tests/examples.py."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

Ask = Callable[[str, Any], dict[str, Any]]
_POURED_AT = "2026-11-25T09:45:00+01:00"


def _litres(text: str) -> dict[str, str]:
    return {"text": text, "unit": "L"}


def _recheck(check: dict[str, Any], shows: str = "5.3", **more: Any) -> dict[str, Any]:
    mix = {"count": 5, "kind": "mix", "water": _litres("7"), "concentrate": _litres("1.2")}
    return {
        "check": check,
        "machine": check["machine"],
        "pours": [mix],
        "poured_at": _POURED_AT,
        "reading": {"shows": {"text": shows, "unit": "Brix"}, "how": "optical"},
        "now": "2026-11-25T10:20:00+01:00",
        **more,
    }


def answered(ask: Ask, check: dict[str, Any]) -> dict[str, Any]:
    """Second readings that fit, that do not, and one that nothing can be said about."""
    dip = {"depth": {"text": "432", "unit": "mm"}, "how": "hard_floor"}
    unknown = {"count": 1, "kind": "unknown", "about": True}
    return {
        "recheck": ask("recheck", _recheck(check, dip=dip)),
        "recheck_weaker": ask("recheck", _recheck(check, "4.2")),
        "recheck_unknown_poured": ask("recheck", _recheck(check, pours=[unknown])),
    }


def refused(ask: Ask, check: dict[str, Any]) -> dict[str, Any]:
    """A second reading before the pour."""
    early = _recheck(check, now="2026-11-25T09:40:00+01:00")
    return {"error_order_read_before_the_pour": ask("recheck", early)}
