"""Bodies of every sheet, set in the depot's workshop."""

import json
from typing import Any

from tests.examples.files import examples
from tests.examples.workshop import WHEEL_LATHE

KINDS = ("dip_scale", "bucket_scale", "machine_card", "log_sheet", "recipe_slip")
BODIES: dict[str, dict[str, Any]] = {
    kind: examples()[f"draw_sheet_{kind}"]["request"]["body"] for kind in KINDS
}


def body(sheet: str, **more: Any) -> dict[str, Any]:
    """The body of a sheet with fields replaced, or taken away when None."""
    changed = {**json.loads(json.dumps(BODIES[sheet])), **more}
    return {name: value for name, value in changed.items() if value is not None}


def typed(text: str, unit: str) -> dict[str, str]:
    """A typed number with its unit."""
    return {"text": text, "unit": unit}


__all__ = ["BODIES", "KINDS", "WHEEL_LATHE", "body", "typed"]
