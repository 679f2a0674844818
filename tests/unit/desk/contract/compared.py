"""Dataclasses of messages beside the contract."""

from dataclasses import MISSING, fields
from typing import Any

Pairs = list[tuple[type, dict[str, Any]]]


def names_of(pairs: Pairs) -> list[str]:
    """What the rows of a test over all pairs are called."""
    return [kind.__name__ for kind, _ in pairs]


def needed_in(kind: type) -> set[str]:
    """Fields that a message of this kind cannot be built without."""
    own = fields(kind)
    return {f.name for f in own if f.default is MISSING and f.default_factory is MISSING}


def assert_same_fields(kind: type, definition: dict[str, Any]) -> None:
    """The same fields as in the contract, and the same ones required."""
    assert {field.name for field in fields(kind)} == set(definition["properties"])
    assert needed_in(kind) == set(definition["required"])


def assert_all_compared(module: Any, pairs: Pairs) -> None:
    """Every dataclass that a module of messages defines is among the pairs."""
    own = {kind for kind in vars(module).values() if isinstance(kind, type)}
    mine = {kind for kind in own if kind.__module__ == module.__name__}
    assert mine == {kind for kind, _ in pairs if kind.__module__ == module.__name__}
