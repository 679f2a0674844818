"""A message compared with its schema by the generated validators."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from pycore.desk.refusal import SchemaRefusal, fault_from
from pycore.desk.validators import VALIDATORS


def checked(name: str, message: Any, root: str) -> Any:
    """The message, when it fits the definition ``name``; otherwise a Fault at a path below root.

    >>> checked("note_content", {"text": "Skimmer is off."}, "body")
    {'text': 'Skimmer is off.'}
    """
    try:
        validate: Callable[[Any], Any] = VALIDATORS[name]
        return validate(message)
    except SchemaRefusal as refusal:
        raise fault_from(refusal, root) from None
