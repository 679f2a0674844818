"""Asking about fluid, instrument, water and jugs; the records are those of the examples."""

import json
from typing import Any

from tests.examples.fluid import DEPOT_MIX, HAND_GLASS, JUGS, PER_CENT_GLASS, brix, jug
from tests.examples.workshop import t
from tests.properties.asking import ask, refusal
from tests.unit.desk.lathe import WHEEL_LATHE, changed, check

NOW = "2026-11-25T14:00"


def with_fields(record: dict[str, Any], **fields: Any) -> dict[str, Any]:
    """A record with fields replaced, or taken away where the value is None."""
    whole: dict[str, Any] = {**json.loads(json.dumps(record)), **fields}
    return {name: value for name, value in whole.items() if value is not None}


def assess(reading: dict[str, Any], **more: Any) -> dict[str, Any]:
    """The body of an assessment of a reading alone, on the lathe's fluid."""
    body = {name: WHEEL_LATHE[name] for name in ("sump", "fluid", "target")}
    return {**body, "reading": reading, **more}


def fluid_body(**more: Any) -> dict[str, Any]:
    """The body of read_fluid on the depot's fluid with some fields changed."""
    return {"fluid": with_fields(DEPOT_MIX, **more), "today": NOW}


__all__ = [
    "DEPOT_MIX", "HAND_GLASS", "JUGS", "NOW", "PER_CENT_GLASS", "WHEEL_LATHE", "ask", "assess",
    "brix", "changed", "check", "fluid_body", "jug", "refusal", "t", "with_fields",
]  # fmt: skip
