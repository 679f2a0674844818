"""Frozen dataclasses from checked messages, and back.

A few lines instead of a library: attrs, cattrs and typing-extensions would add some sixty
modules to what the phone loads (figures in DEVELOPERS.md), and the schema has already checked
everything that they would check.
"""

from __future__ import annotations

import types
from dataclasses import fields, is_dataclass
from functools import cache
from typing import Any, TypeVar, Union, cast, get_args, get_origin, get_type_hints

Message = TypeVar("Message")


@cache
def _hints(kind: Any) -> dict[str, Any]:
    return get_type_hints(kind)


def _value(kind: Any, value: Any) -> Any:
    origin = get_origin(kind)
    if origin in (Union, types.UnionType):
        kind = next(part for part in get_args(kind) if part is not type(None))
        return None if value is None else _value(kind, value)
    if origin is list:
        return [_value(get_args(kind)[0], item) for item in value]
    if is_dataclass(kind):
        return built(kind, value)  # type: ignore[arg-type]
    # JSON of a page writes 2 for 2.0, and another's 2.0 for 2: the schema takes both for either.
    return kind(value) if kind in (float, int) else value


def built(kind: type[Message], message: dict[str, Any]) -> Message:
    """A message that has passed its schema as the frozen dataclass ``kind``.

    Optional fields that are absent become None.
    """
    hints = _hints(cast(Any, kind))
    names = [field.name for field in fields(kind)]  # type: ignore[arg-type]
    return kind(**{name: _value(hints[name], message[name]) for name in names if name in message})


def plain(value: Any) -> Any:
    """A dataclass as plain JSON values; fields that are None are left out."""
    if is_dataclass(value) and not isinstance(value, type):
        pairs = ((field.name, getattr(value, field.name)) for field in fields(value))
        return {name: plain(part) for name, part in pairs if part is not None}
    if isinstance(value, list | tuple):
        return [plain(part) for part in value]
    if isinstance(value, dict):
        return {name: plain(part) for name, part in value.items()}
    return value
