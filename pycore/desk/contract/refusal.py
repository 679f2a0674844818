"""A message that does not fit its schema, in the form that the generated validators raise."""

from __future__ import annotations

import ast
import re
from typing import Any

from pycore.journal.strict import short
from pycore.quantity.fault import Fault

_PATH_PART = re.compile(r"[^.\[\]]+")

_SURPLUS = re.compile(r"must not contain (\{.*\}) properties$", re.DOTALL)

_BOUNDS = {
    "minimum": "minimum",
    "maximum": "maximum",
    "exclusiveMinimum": "above",
    "exclusiveMaximum": "below",
}
_SIZES = {
    "maxLength": ("too_long", "most"),
    "minLength": ("empty", "least"),
    "maxItems": ("too_many", "most"),
    "minItems": ("too_few", "least"),
}


class SchemaRefusal(ValueError):
    """Same arguments and attributes as fastjsonschema's exception, without that package."""

    def __init__(
        self,
        message: str,
        value: Any = None,
        name: str | None = None,
        definition: Any = None,
        rule: str | None = None,
    ) -> None:
        super().__init__(message)
        self.message = message
        self.value = value
        self.name = name or ""
        self.definition = definition
        self.rule = rule

    @property
    def path(self) -> list[str]:
        """Names and numbers from the message's root to the place, the root itself first."""
        return _PATH_PART.findall(self.name)

    @property
    def rule_definition(self) -> Any:
        """What the broken rule says, such as the limit itself."""
        return (self.definition or {}).get(self.rule)


def _join(root: str, parts: list[str]) -> str:
    return root + "".join(f"[{part}]" if part.isdigit() else f".{part}" for part in parts)


def error_of(fault: Fault) -> dict[str, Any]:
    """A refusal as it is sent: code, path, got, limit and a sentence in English."""
    return {
        "code": fault.code,
        "path": fault.path,
        "got": fault.got,
        "limit": fault.limit,
        "message": fault.sentence(),
    }


def fault_from(refusal: SchemaRefusal, root: str) -> Fault:
    """The refusal as a fault with a code, the path below ``root``, and what is allowed."""
    path = _join(root, refusal.path[1:])
    rule, allowed, value = refusal.rule or "", refusal.rule_definition, refusal.value
    if rule == "required":
        missing = next(name for name in allowed if name not in value)
        return Fault("missing", f"{path}.{missing}")
    if rule == "additionalProperties":
        # The validator names the surplus fields only in its sentence, as a set.
        found = _SURPLUS.search(refusal.message)
        unknown = min(ast.literal_eval(found[1])) if found else ""
        return Fault("unknown_field", f"{path}.{unknown}"[:200], short(unknown))
    if rule in _BOUNDS:
        return Fault("out_of_range", path, value, {_BOUNDS[rule]: allowed})
    if rule in _SIZES:
        code, side = _SIZES[rule]
        return Fault(code, path, short(value), {side: allowed})
    if rule in ("enum", "const"):
        choices = allowed if isinstance(allowed, list) else [allowed]
        return Fault("not_allowed", path, short(value), {"allowed": [str(c) for c in choices]})
    if rule == "pattern":
        return Fault("wrong_form", path, short(value), {"type": allowed})
    kind = allowed if isinstance(allowed, str) else "a fitting value"
    return Fault("wrong_type", path, short(value), {"type": kind})
