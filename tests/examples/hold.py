"""The example requests of a dip without a reading."""

from typing import Any

from tests.examples.workshop import WHEEL_LATHE, ask

# The lathe a week before, in range and low.
LAST_AT = "2026-11-18T07:40:00+01:00"
HOLDING: dict[str, Any] = {
    "volume_l": {"value": 154, "u": 4.7},
    "fill_to_l": 198,
    "usual_pct": 3,
    "target": {"low_pct": 7, "aim_pct": 8, "high_pct": 9},
    "mixing": {"strong_pct": 20, "weak_pct": 1, "closeness_pct": 0.5},
    "bucket": {"usable_l": 10, "water_mark_l": 1, "jug_mark_l": 0.05},
    "last": {"strength_pct": {"value": 8.2, "u": 0.3}, "age_d": 5, "drift_pct_d": 0.1},
}
_STRONG = {"text": "25", "unit": "%"}
_USUAL = {"text": "3", "unit": "%"}
_DIP = {"depth": {"text": "342", "unit": "mm"}, "how": "hard_floor"}


def _last() -> dict[str, Any]:
    check = {
        "machine": WHEEL_LATHE,
        "dip": {"depth": {"text": "380", "unit": "mm"}, "how": "hard_floor"},
        "reading": {"shows": {"text": "5.4", "unit": "Brix"}, "how": "optical"},
    }
    return {"check": check, "at": LAST_AT}


def _hold(**more: Any) -> dict[str, Any]:
    return {"machine": WHEEL_LATHE, "dip": _DIP, "now": "2026-11-25T22:10:00+01:00", **more}


def answered() -> dict[str, Any]:
    """Requests that get a holding top-up."""
    last = _last()
    # A reading without a dip, five days after the last whole check.
    later = {
        "machine": WHEEL_LATHE,
        "reading": {"shows": {"text": "5.6", "unit": "Brix"}, "how": "optical"},
        "at": "2026-11-23T06:05:00+01:00",
    }
    return {
        "hold_check": ask("hold_check", _hold(last=last)),
        "hold_check_later_reading": ask("hold_check", _hold(last=last, read=later)),
        "hold_check_usual_typed": ask("hold_check", _hold(usual=_USUAL)),
    }


def refused() -> dict[str, Any]:
    """Requests that are refused, each with the code that its name says."""
    early = _hold(last=_last(), now="2026-11-17T22:10:00+01:00")
    above = {"text": "441", "unit": "mm"}
    return {
        "error_missing_usual": ask("hold_check", _hold()),
        "error_order_now_before_last": ask("hold_check", early),
        "error_order_usual_too_strong": ask("hold_check", _hold(usual=_STRONG)),
        "error_order_above_full_mark": ask("hold_check", _hold(usual=_USUAL, fill_to_depth=above)),
        "error_not_a_date_now": ask("hold_check", _hold(now="22:10")),
    }
