"""Numbered steps from an older schema of entries to the next one.

A step changes only what was read into memory; the stored line stays as it is.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from types import MappingProxyType
from typing import Any

from pycore.journal.strict import short
from pycore.quantity.fault import Fault

# Of the entries that this version writes; held equal to the schema by tests/unit/journal.
ENTRY_SCHEMA = 2

Message = dict[str, Any]

_FIELDS_1 = frozenset(
    ("id", "log", "seq", "schema", "kind", "machine", "measured_at", "wall", "body", "shown")
) | {"versions", "way"}


def from_1(old: Message) -> Message:
    """Schema 1 knew no chain and no clock flags, and called setting up a machine ``machine``.

    The number of the way that was chosen stood beside the body.

    Error: ``unknown_field`` for a field that schema 1 did not have.
    """
    surplus = old.keys() - _FIELDS_1
    if surplus:
        raise Fault("unknown_field", "line", short(min(surplus)))
    new = {**old, "prev": "", "clock_flags": [], "schema": 2}
    if old["kind"] == "machine":
        new["kind"] = "machine_set"
    if "way" in new and isinstance(new["body"], dict):
        new["body"] = {**new["body"], "way": new.pop("way")}
    return new


MIGRATIONS: Mapping[int, Callable[[Message], Message]] = MappingProxyType({1: from_1})
KINDS_BEFORE: Mapping[int, frozenset[str]] = MappingProxyType({1: frozenset({"machine", "check"})})


def migrated(message: Message) -> Message:
    """An entry of schema 1 or later as one of this version; the message itself is not changed.

    Raises ``KeyError`` for a schema that no step starts from.

    >>> migrated({"schema": 1, "kind": "machine"})["kind"]
    'machine_set'
    """
    while message["schema"] != ENTRY_SCHEMA:
        message = MIGRATIONS[message["schema"]](message)
    return message
