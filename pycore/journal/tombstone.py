"""A line whose content was taken out because a law demands it: what is left keeps its chain whole.

A tombstone has the id, log, number, predecessor and hash of the line it stands for, so that every
other line verifies as before, and the reason in words. Its hash is that of a text which is gone,
so it carries a seal of its own.
"""

from __future__ import annotations

import json
import re
from dataclasses import dataclass

from pycore.journal.line import hash_of
from pycore.quantity.fault import Fault

KIND = "tombstone"
# Of the form of the line, as ENTRY_SCHEMA is of the others.
SCHEMA = 2
MOST_REASON = 200
# A sign beyond the basic plane is written with twelve of JSON.
_FORM = re.compile(
    r'(\{"id":"([0-9a-f]{32})","log":"([0-9a-f]{32})","seq":([1-9][0-9]{0,8}),'
    r'"prev":"([0-9a-f]{64}|)","schema":2,"kind":"tombstone","reason":"[^\n\r]{1,2400}"),'
    r'"seal":"([0-9a-f]{64})"(,"hash":"([0-9a-f]{64})"\})'
)


@dataclass(frozen=True, slots=True)
class Tombstone:
    """Where the line stood: ``hash`` is that of the text that was taken out."""

    id: str
    log: str
    seq: int
    prev: str
    hash: str


def is_tombstone(line: str) -> bool:
    """Whether the line has the form of a tombstone; its seal may be wrong."""
    return _FORM.fullmatch(line) is not None


def tombstone_of(place: Tombstone, reason: str) -> str:
    """The line that takes the place of another.

    Errors: ``missing`` without a reason, ``too_large`` for one of more than 200 characters.

    >>> place = Tombstone("a" * 32, "b" * 32, 1, "", "c" * 64)
    >>> is_tombstone(tombstone_of(place, "asked for by the person"))
    True
    """
    if not reason.strip():
        raise Fault("missing", "reason")
    if len(reason) > MOST_REASON:
        raise Fault("too_large", "reason", len(reason), {"most": MOST_REASON})
    content = {
        "id": place.id,
        "log": place.log,
        "seq": place.seq,
        "prev": place.prev,
        "schema": SCHEMA,
        "kind": KIND,
        "reason": reason,
    }
    text = json.dumps(content, separators=(",", ":"))[:-1]
    end = f',"hash":"{place.hash}"}}'
    return f'{text},"seal":"{hash_of(text + end)}"{end}'


def read_tombstone(line: str) -> Tombstone:
    """What a line of this form says.

    Errors: ``wrong_form`` for another form, ``seal_broken`` where its own seal does not fit.
    """
    found = _FORM.fullmatch(line)
    if found is None:
        raise Fault("wrong_form", "line", None, {"type": "tombstone"})
    text, identity, log, seq, prev, seal, end, digest = found.groups()
    if hash_of(text + end) != seal:
        raise Fault("seal_broken", "line", seal)
    return Tombstone(identity, log, int(seq), prev, digest)
