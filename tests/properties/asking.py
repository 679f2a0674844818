"""Asking pycore through its one door, and what a valid answer looks like."""

import json
from typing import Any

from pycore.desk import handle
from tests.contract import validator


def answer(text: str) -> dict[str, Any]:
    """The reply to a text; it must fit the envelope, whatever the text was."""
    reply = json.loads(handle(text), parse_constant=_refuse)
    validator("reply")(reply)
    return reply


def _refuse(name: str) -> float:
    raise ValueError(f"a reply holds {name}")


def ask(op: str, body: dict[str, Any]) -> dict[str, Any]:
    """The result of an operation, checked against its schema; a refusal is an error here."""
    reply = answer(json.dumps({"v": 1, "id": "t", "op": op, "body": body}))
    assert reply["ok"], reply
    validator(f"{op}_result")(reply["result"])
    return reply["result"]


def refusal(op: str, body: dict[str, Any]) -> dict[str, Any]:
    """The error with which an operation refuses a body."""
    reply = answer(json.dumps({"v": 1, "id": "t", "op": op, "body": body}))
    assert not reply["ok"], reply
    return reply["error"]
