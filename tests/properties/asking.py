"""Asking pycore through its one door, and what a valid answer looks like."""

import json
from collections.abc import Callable
from functools import cache
from typing import Any

import fastjsonschema

from pycore.desk import handle
from web.build.paths import SHARED

SCHEMAS = SHARED / "schema"


@cache
def validator(file: str, definition: str) -> Callable[[Any], Any]:
    """A check of one definition, made here from the contract and not from generated code."""
    schema = {
        "$schema": "http://json-schema.org/draft-07/schema#",
        "$ref": f"{file}#/definitions/{definition}",
    }
    return fastjsonschema.compile(
        schema, handlers={"": lambda name: json.loads((SCHEMAS / name).read_text(encoding="utf-8"))}
    )


def answer(text: str) -> dict[str, Any]:
    """The reply to a text; it must fit the envelope, whatever the text was."""
    reply = json.loads(handle(text), parse_constant=_refuse)
    validator("envelope.schema.json", "reply")(reply)
    return reply


def _refuse(name: str) -> float:
    raise ValueError(f"a reply holds {name}")


def ask(op: str, body: dict[str, Any]) -> dict[str, Any]:
    """The result of an operation, checked against its schema; a refusal is an error here."""
    reply = answer(json.dumps({"v": 1, "id": "t", "op": op, "body": body}))
    assert reply["ok"], reply
    file = next(
        path.name for path in SCHEMAS.glob("*.json") if f'"{op}_result"' in path.read_text("utf-8")
    )
    validator(file, f"{op}_result")(reply["result"])
    return reply["result"]


def refusal(op: str, body: dict[str, Any]) -> dict[str, Any]:
    """The error with which an operation refuses a body."""
    reply = answer(json.dumps({"v": 1, "id": "t", "op": op, "body": body}))
    assert not reply["ok"], reply
    return reply["error"]
