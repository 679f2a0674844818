"""The one door: JSON text in, JSON text out. It never raises and keeps no state."""

from __future__ import annotations

import json
import re
from typing import Any

from pycore.desk.collector import collector_paused
from pycore.desk.contract.build import built, plain
from pycore.desk.contract.checked import checked
from pycore.desk.contract.refusal import error_of
from pycore.desk.operations import OPERATIONS, WITH_A_LOG
from pycore.journal.file import PHONE
from pycore.journal.strict import parsed_object, short
from pycore.quantity.fault import Fault

VERSION = 1
# A whole check is some 2,000 characters; a request of 1 MB is an accident or an attack.
MOST_CHARACTERS = 1_000_000
# A whole log travels inside a request. 20 MiB of it, the most that a phone takes, grow by the
# escapes of its quotation marks, at worst to twice as much.
MOST_CHARACTERS_OF_A_LOG = 2 * PHONE.characters + MOST_CHARACTERS
# The deepest request of the contract is 9 levels deep, the envelope included.
MOST_DEPTH = 12

# Programs write the operation before the body; one that does not is held to the lower limit.
_EARLY_OP = re.compile(r'"op" ?: ?"([a-z_]{1,40})"')
_HEAD = slice(200)


def _parsed(text: str) -> dict[str, Any]:
    # Mail programs and editors put a byte order mark in front.
    text = text.removeprefix("\ufeff")
    if len(text) <= MOST_CHARACTERS:
        return parsed_object(text, "request", MOST_DEPTH)
    found = _EARLY_OP.search(text[_HEAD])
    op = found[1] if found and found[1] in WITH_A_LOG else None
    most = MOST_CHARACTERS if op is None else MOST_CHARACTERS_OF_A_LOG
    if len(text) > most:
        raise Fault("too_large", "request", len(text), {"most": most})
    message = parsed_object(text, "request", MOST_DEPTH)
    if message.get("op") != op:
        raise Fault("too_large", "request", len(text), {"most": MOST_CHARACTERS})
    return message


def _answer(message: dict[str, Any]) -> Any:
    version = message.get("v")
    if "v" in message and (isinstance(version, bool) or version != VERSION):
        raise Fault("unknown_version", "v", short(version), {"allowed": [str(VERSION)]})
    checked("request", message, "request")
    op = message["op"]
    if op not in OPERATIONS:
        raise Fault("unknown_op", "op", op, {"allowed": sorted(OPERATIONS)})
    kind, answer = OPERATIONS[op]
    body = checked(f"{op}_body", message["body"], "body")
    return plain(answer(built(kind, body)))


def _written(reply: dict[str, Any]) -> str:
    return json.dumps(reply, ensure_ascii=False, allow_nan=False)


def _error(identity: str, fault: Fault) -> str:
    return _written({"v": VERSION, "id": identity, "ok": False, "error": error_of(fault)})


def handle(text: str) -> str:
    """Answers one request.

    Parameters
    ----------
    text : str
        A request as of ``shared/schema/contract/envelope.schema.json``, at most 1,000,000
        characters, or 42,943,040 where it carries a log.

    Returns
    -------
    str
        A reply as of the same schema. A refusal carries code, path, got, limit and message; its
        id is that of the request where one could be read, else empty.

    >>> handle('{"v": 1, "id": "a", "op": "nothing", "body": {}}')[:44]
    '{"v": 1, "id": "a", "ok": false, "error": {"'
    """
    with collector_paused():
        return _reply(text)


def _reply(text: str) -> str:
    identity = ""
    try:
        message = _parsed(text)
        if isinstance(message.get("id"), str):
            identity = message["id"][:80]
        return _written({"v": VERSION, "id": identity, "ok": True, "result": _answer(message)})
    except Fault as fault:
        return _error(identity, fault)
    except Exception as error:  # The promise is that the door never raises.
        return _error(identity, Fault("internal", "request", type(error).__name__))
