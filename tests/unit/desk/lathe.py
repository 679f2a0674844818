"""The machine of the examples, and asking about it."""

import json
from typing import Any

from tests.examples.workshop import WHEEL_LATHE
from tests.properties.asking import ask, refusal


def changed(path: str, value: Any) -> dict[str, Any]:
    """The machine with one field replaced, or taken away when ``value`` is None."""
    machine: dict[str, Any] = json.loads(json.dumps(WHEEL_LATHE))
    *parents, last = path.split(".")
    place = machine
    for parent in parents:
        place = place[parent]
    if value is None:
        del place[last]
    else:
        place[last] = value
    return machine


def check(
    machine: dict[str, Any], depth: str = "342", shows: str = "4.0", **more: Any
) -> dict[str, Any]:
    """The body of a check."""
    return {
        "machine": machine,
        "dip": {"depth": {"text": depth, "unit": "mm"}},
        "reading": {"shows": {"text": shows, "unit": "Brix"}},
        **more,
    }


__all__ = ["WHEEL_LATHE", "ask", "changed", "check", "refusal"]
