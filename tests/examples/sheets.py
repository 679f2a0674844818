"""The example requests of sheets and short codes."""

import json
from typing import Any

from pycore.desk import handle
from tests.examples.workshop import WHEEL_LATHE, ask, check

_PAIL = {
    "kind": "fills",
    "fills": [
        {"depth": {"text": "92", "unit": "mm"}, "volume": {"text": "4", "unit": "L"}},
        {"depth": {"text": "214", "unit": "mm"}, "volume": {"text": "10", "unit": "L"}},
    ],
}
_CARD = {
    "code": "7k3f-4",
    "address": "https://depot.example/pailwright/",
    "calibrated_on": "2026-03-14",
}


def _recipe() -> dict[str, Any]:
    """The recipe of a check, as the page shows it."""
    got = json.loads(handle(json.dumps(ask("plan_check", check()))))["result"]
    shown, seen = got["shown"], got["assessment"]
    names = ("pours", "take_out", "strength", "low", "high", "volume")
    return {
        **{name: shown[name] for name in names},
        "depth": seen["level"]["shown"]["depth"],
        "reading": seen["strength"]["shown"]["reading"],
        "cautions": ["Wear gloves."],
    }


def answered() -> dict[str, Any]:
    """One of each sheet, and a code made and read."""
    sheets: dict[str, dict[str, Any]] = {
        "dip_scale": {},
        "bucket_scale": {"pail_shape": _PAIL},
        "machine_card": _CARD,
        "log_sheet": {"measured_100_mm": {"text": "97,5", "unit": "mm"}},
        "recipe_slip": {"recipe": _recipe(), "when": "14 March 2026, 09:42"},
    }
    drawn = {
        f"draw_sheet_{kind}": ask(
            "draw_sheet", {"kind": kind, "paper": "A4", "machine": WHEEL_LATHE, **more}
        )
        for kind, more in sheets.items()
    }
    return {
        **drawn,
        "make_code": ask("make_code", {"code_number": 149_723}),
        "read_code": ask("read_code", {"text": "7k3f 4"}),
    }


def refused() -> dict[str, Any]:
    """Requests that are refused, each with the code that its name says."""
    card = {"kind": "machine_card", "paper": "A4", "machine": WHEEL_LATHE, **_CARD}
    fitted = {"text": "80", "unit": "mm"}
    return {
        "error_not_a_code": ask("read_code", {"text": "7K3F"}),
        "error_code_mismatch": ask("read_code", {"text": "7K35-F"}),
        "error_not_a_date_calibrated": ask("draw_sheet", {**card, "calibrated_on": "14.3.2026"}),
        "error_out_of_range_check_line": ask("draw_sheet", {**card, "measured_100_mm": fitted}),
        "error_not_allowed_address": ask("draw_sheet", {**card, "address": "depot.example"}),
    }
