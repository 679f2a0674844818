"""One line of the log, read: an entry that can be used, or one of a newer version that is kept."""

from __future__ import annotations

import re
import sys
from collections.abc import Callable
from dataclasses import dataclass, field
from typing import Any

from pycore.journal.line import MOST_SEQ, opened
from pycore.journal.migrations import ENTRY_SCHEMA, KINDS_BEFORE, migrated
from pycore.journal.strict import parsed_object, short
from pycore.journal.times import moment_of
from pycore.journal.tombstone import KIND as TOMBSTONE
from pycore.journal.tombstone import SCHEMA as TOMBSTONE_SCHEMA
from pycore.journal.tombstone import is_tombstone, read_tombstone
from pycore.quantity.fault import Fault

# Checks a part of an entry: name of the definition, the part, what the part is called.
Valid = Callable[[str, Any, str], Any]

# A check with a depth table of 200 rows and the recipe as shown takes 27,000 characters.
MOST_LINE = 65_536
# As in a request; a check that shows a recipe with other ways is 7 levels deep.
MOST_DEPTH = 12
# Stands in every line of the invented example, so that it is never taken for a real one.
INVENTED = '"build":"example, invented"'
# Names with which a program of the page could be led astray.
_REFUSED_KEYS = frozenset({"__proto__", "constructor", "prototype"})

OF_A_MACHINE = frozenset(
    ("check", "recheck", "plan", "pour", "clean_out", "additive", "unknown_addition")
) | {"machine_set", "machine_state"}
CORRECTABLE = OF_A_MACHINE | {"fluid_set", "instrument_set", "calibration", "shop_set", "note"}
KINDS = CORRECTABLE | {"correction", "withdrawal", "decision"}
_ID = re.compile(r"[0-9a-f]{32}")
_HASH = re.compile(r"[0-9a-f]{64}")


@dataclass(frozen=True, slots=True)
class Entry:
    """What a line says. One without content has only the fields that stand outside it: a newer
    one, and one that was removed.

    Moments are text as stored and whole seconds since 1970. ``place`` is log, seq and hash: where
    the line stands in a file of lines. It is made once, since sorting asks for it again and again.
    """

    line: str
    hash: str
    id: str
    log: str
    seq: int
    prev: str
    schema: int
    kind: str
    wall_s: int | None
    offset_min: int | None
    usable: bool
    machine: str = ""
    measured_at: str = ""
    measured_s: int = 0
    clock_flags: tuple[str, ...] = ()
    by: str = ""
    content: dict[str, Any] | None = None
    place: tuple[str, int, str] = field(init=False)

    def __post_init__(self) -> None:
        object.__setattr__(self, "place", (self.log, self.seq, self.hash))

    @property
    def is_removed(self) -> bool:
        """Whether the line is a tombstone."""
        return self.kind == TOMBSTONE

    @property
    def is_newer(self) -> bool:
        """Whether this version does not know the line's schema or kind."""
        return not (self.usable or self.is_removed)

    @property
    def body(self) -> dict[str, Any]:
        """What the kind holds; empty for a line that cannot be used."""
        return {} if self.content is None else self.content


def _text(message: dict[str, Any], name: str, form: re.Pattern[str]) -> str:
    value = message.get(name)
    return value if isinstance(value, str) and form.fullmatch(value) else ""


def _newer(line: str, digest: str, message: dict[str, Any]) -> Entry:
    seq, wall_s, offset_min = message.get("seq"), None, None
    log = _text(message, "log", _ID)
    if type(seq) is not int or not 1 <= seq <= MOST_SEQ or not log:
        log, seq = "", 0
    wall = message.get("wall")
    if isinstance(wall, str):
        try:
            wall_s, offset_min = moment_of(wall, "line.wall")
        except Fault:
            wall_s = None
    schema, kind = message["schema"], message.get("kind")
    return Entry(
        line=line,
        hash=digest,
        id=_text(message, "id", _ID),
        log=log,
        seq=seq,
        prev=_text(message, "prev", _HASH),
        schema=schema,
        kind=str(short(kind)) if isinstance(kind, str) else "",
        wall_s=wall_s,
        offset_min=offset_min,
        usable=False,
    )


def _removed(line: str) -> Entry:
    place = read_tombstone(line)
    return Entry(
        line=line,
        hash=place.hash,
        id=place.id,
        log=place.log,
        seq=place.seq,
        prev=place.prev,
        schema=TOMBSTONE_SCHEMA,
        kind=TOMBSTONE,
        wall_s=None,
        offset_min=None,
        usable=False,
    )


def _is_newer(message: dict[str, Any]) -> bool:
    schema, kind = message.get("schema"), message.get("kind")
    if not isinstance(schema, int) or isinstance(schema, bool):
        raise Fault("wrong_type", "line.schema", short(schema), {"type": "integer"})
    if schema < 1:
        raise Fault("out_of_range", "line.schema", schema, {"minimum": 1})
    if schema > ENTRY_SCHEMA:
        return True
    if not isinstance(kind, str):
        raise Fault("wrong_type", "line.kind", short(kind), {"type": "string"})
    return kind not in KINDS_BEFORE.get(schema, KINDS)


def _refuse_contradictions(message: dict[str, Any], schema: int) -> None:
    kind = message["kind"]
    if kind in OF_A_MACHINE and "machine" not in message:
        raise Fault("missing", "line.machine")
    # Schema 1 had no chain.
    if schema > 1 and (message["seq"] == 1) != (message["prev"] == ""):
        raise Fault("wrong_form", "line.prev", message["prev"], {"type": "empty only in the first"})


def _check_moments(content: dict[str, Any], path: str) -> None:
    for name in ("measured_at", "recheck_due_at", "until"):
        if name in content:
            moment_of(content[name], f"{path}.{name}")


def _check_body(message: dict[str, Any], valid: Valid) -> None:
    kind, body = message["kind"], message["body"]
    valid(f"{kind}_content", body, "line.body")
    _check_moments(body, "line.body")
    if kind == "correction":
        if body["kind"] not in CORRECTABLE:
            raise Fault("not_allowed", "line.body.kind", body["kind"])
        valid(f"{body['kind']}_content", body["content"], "line.body.content")
        _check_moments(body["content"], "line.body.content")


def read_line(line: str, valid: Valid) -> Entry:
    """The entry in a sealed line of at most 65,536 characters.

    ``valid`` compares a part with its definition in the contract and raises Fault.
    Errors: ``too_large``; those of ``opened`` and of ``parsed_object``; those of ``valid``;
    ``not_a_date`` for a moment that is none; ``wrong_form`` for a first line that names one before;
    ``missing`` for a kind that belongs to a machine and names none.
    """
    if len(line) > MOST_LINE:
        raise Fault("too_large", "line", len(line), {"most": MOST_LINE})
    if is_tombstone(line):
        return _removed(line)
    text, digest = opened(line)
    message = parsed_object(text, "line", MOST_DEPTH, _REFUSED_KEYS)
    if _is_newer(message):
        return _newer(line, digest, message)
    schema = message["schema"]
    message = migrated(message)
    valid("log_entry", message, "line")
    _refuse_contradictions(message, schema)
    _check_body(message, valid)
    # A few texts that stand in every line: one object each, which stays in the processor's cache.
    log, kind, machine = map(
        sys.intern, (message["log"], message["kind"], message.get("machine", ""))
    )
    measured_s, _ = moment_of(message["measured_at"], "line.measured_at")
    wall_s, offset_min = moment_of(message["wall"], "line.wall")
    return Entry(
        line=line,
        hash=digest,
        id=message["id"],
        log=log,
        seq=message["seq"],
        prev=message["prev"],
        schema=schema,
        kind=kind,
        wall_s=wall_s,
        offset_min=offset_min,
        usable=True,
        machine=machine,
        measured_at=message["measured_at"],
        measured_s=measured_s,
        clock_flags=tuple(message["clock_flags"]),
        by=message.get("by", ""),
        content=message["body"],
    )
