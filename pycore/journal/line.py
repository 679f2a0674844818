"""A line of the log: its stored text and, at the very end, the SHA-256 of that text.

The text is never parsed and written anew: 2.0 becomes 2 on the way through JavaScript, and then
the hash would no longer fit.
"""

from __future__ import annotations

import hashlib
import json
import re
from typing import Any

from pycore.quantity.fault import Fault

# The contract's largest number of a line in its log.
MOST_SEQ = 1_000_000_000
_SEAL = re.compile(r'(.*),"hash":"([0-9a-f]{64})"\}', re.DOTALL)
# The first schema knew no seal. Its lines were written by one program, in this order.
_SCHEMA_1 = re.compile(r'\{"id":"[0-9a-f]{32}","log":"[0-9a-f]{32}","seq":[0-9]+,"schema":1,.*\}')


def hash_of(text: str) -> str:
    """SHA-256 of a text as UTF-8, as 64 hexadecimal digits.

    Error: ``not_json`` for half of a surrogate pair, which no UTF-8 can hold.

    >>> hash_of("")[:16]
    'e3b0c44298fc1c14'
    """
    try:
        return hashlib.sha256(text.encode()).hexdigest()
    except UnicodeEncodeError:
        raise Fault("not_json", "line", "half of a surrogate pair") from None


def sealed(text: str) -> str:
    """The text of an entry with its hash as the last field.

    Error: ``wrong_type`` for a text that is not a JSON object with fields.
    """
    if not (text.startswith('{"') and text.endswith("}")):
        raise Fault("wrong_type", "line", None, {"type": "object"})
    return f'{text[:-1]},"hash":"{hash_of(text)}"}}'


def opened(line: str) -> tuple[str, str]:
    """The text of a sealed line and its hash.

    Errors: ``seal_missing`` where the line does not end with a hash, ``seal_broken`` where the
    hash is that of another text, ``not_json`` for half of a surrogate pair.

    >>> opened(sealed('{"a":1}'))[0]
    '{"a":1}'
    """
    found = _SEAL.fullmatch(line)
    if found is None:
        raise Fault("seal_missing", "line")
    text = found[1] + "}"
    if hash_of(text) != found[2]:
        raise Fault("seal_broken", "line", found[2])
    return text, found[2]


def is_sealed(line: str) -> bool:
    """Whether the line ends as a sealed one does; its hash may be wrong."""
    return _SEAL.fullmatch(line) is not None


def from_store(stored: str) -> str:
    """A row of a store as a line: rows of the first schema get their seal, others have it."""
    if _SCHEMA_1.fullmatch(stored) and not is_sealed(stored):
        return sealed(stored)
    return stored


def written(content: dict[str, Any], log: str, seq: int, prev: str) -> str:
    """A new sealed line from an entry's content, which holds neither log, seq, prev nor hash.

    ``prev`` is the hash of the line before, empty for the first. Errors: ``ValueError`` for
    numbers that are not finite.

    >>> written({"id": "a", "schema": 2}, "b", 1, "")[:44]
    '{"id":"a","log":"b","seq":1,"prev":"","schem'
    """
    first = {"id": content["id"], "log": log, "seq": seq, "prev": prev}
    text = json.dumps(
        {**first, **content}, ensure_ascii=False, allow_nan=False, separators=(",", ":")
    )
    return sealed(text)
