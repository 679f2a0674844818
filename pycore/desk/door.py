"""The one door: JSON text in, JSON text out. It never raises and keeps no state."""

from __future__ import annotations

import json
import re
from collections.abc import Callable
from typing import Any

from pycore.desk.build import built, plain
from pycore.desk.operations import OPERATIONS
from pycore.desk.refusal import SchemaRefusal, fault_from, short
from pycore.desk.validators import VALIDATORS
from pycore.quantity.fault import Fault

VERSION = 1
# A whole check is some 2,000 characters; a request of 1 MB is an accident or an attack.
MOST_CHARACTERS = 1_000_000
# The deepest message of the contract is 7 levels deep, the envelope included.
MOST_DEPTH = 12
# Python parses longer numbers slowly, and no float needs them.
MOST_DIGITS = 24

# Strings are skipped, so that brackets and digits inside them do not count. One that never ends is
# skipped too: looking for its end again from every quote inside it would take hours.
_STRING = re.compile(r'"(?:[^"\\]|\\.)*(?:"|\\?\Z)', re.DOTALL)
_LONG_NUMBER = re.compile(rf"[0-9.eE+-]{{{MOST_DIGITS + 8},}}")
_SURROGATE = re.compile("[\ud800-\udfff]")


def _refuse_constant(name: str) -> float:
    raise Fault("not_finite", "request", name, {"type": "a finite number"})


def _finite(text: str) -> float:
    number = float(text)
    if number in (float("inf"), float("-inf")):
        raise Fault("not_finite", "request", text, {"type": "a finite number"})
    return number


def _once(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    message: dict[str, Any] = {}
    for name, value in pairs:
        if name in message:
            raise Fault("duplicate_key", "request", short(name))
        message[name] = value
    return message


def _depth(text: str) -> int:
    deepest = depth = 0
    for sign in _STRING.sub("", text):
        if sign in "[{":
            depth += 1
            deepest = max(deepest, depth)
        elif sign in "]}":
            depth -= 1
    return deepest


def _parsed(text: str) -> dict[str, Any]:
    # Mail programs and editors put a byte order mark in front.
    text = text.removeprefix("\ufeff")
    if len(text) > MOST_CHARACTERS:
        raise Fault("too_large", "request", len(text), {"most": MOST_CHARACTERS})
    if _depth(text) > MOST_DEPTH:
        raise Fault("too_deep", "request", None, {"most": MOST_DEPTH})
    if _LONG_NUMBER.search(_STRING.sub("", text)):
        raise Fault("too_long", "request", None, {"most": MOST_DIGITS})
    try:
        message = json.loads(
            text, parse_constant=_refuse_constant, parse_float=_finite, object_pairs_hook=_once
        )
    except json.JSONDecodeError as error:
        raise Fault("not_json", "request", f"character {error.pos}") from None
    if not isinstance(message, dict):
        raise Fault("wrong_type", "request", short(message), {"type": "object"})
    if _SURROGATE.search(json.dumps(message, ensure_ascii=False)):
        raise Fault("not_json", "request", "half of a surrogate pair")
    return message


def _checked(name: str, message: Any, root: str) -> Any:
    try:
        validate: Callable[[Any], Any] = VALIDATORS[name]
        return validate(message)
    except SchemaRefusal as refusal:
        raise fault_from(refusal, root) from None


def _answer(message: dict[str, Any]) -> Any:
    version = message.get("v")
    if "v" in message and (isinstance(version, bool) or version != VERSION):
        raise Fault("unknown_version", "v", short(version), {"allowed": [str(VERSION)]})
    _checked("request", message, "request")
    op = message["op"]
    if op not in OPERATIONS:
        raise Fault("unknown_op", "op", op, {"allowed": sorted(OPERATIONS)})
    kind, answer = OPERATIONS[op]
    body = _checked(f"{op}_body", message["body"], "body")
    return plain(answer(built(kind, body)))


def _written(reply: dict[str, Any]) -> str:
    return json.dumps(reply, ensure_ascii=False, allow_nan=False)


def _error(identity: str, fault: Fault) -> str:
    error = {
        "code": fault.code,
        "path": fault.path,
        "got": fault.got,
        "limit": fault.limit,
        "message": fault.sentence(),
    }
    return _written({"v": VERSION, "id": identity, "ok": False, "error": error})


def handle(text: str) -> str:
    """Answers one request.

    Parameters
    ----------
    text : str
        A request as of ``shared/schema/envelope.schema.json``, at most 1,000,000 characters.

    Returns
    -------
    str
        A reply as of the same schema. A refusal carries code, path, got, limit and message; its
        id is that of the request where one could be read, else empty.

    >>> handle('{"v": 1, "id": "a", "op": "nothing", "body": {}}')[:44]
    '{"v": 1, "id": "a", "ok": false, "error": {"'
    """
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
