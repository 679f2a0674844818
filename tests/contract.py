"""The contract as it stands in ``shared/schema``, read afresh and not from generated code."""

import json
from collections.abc import Callable
from functools import cache
from typing import Any

import fastjsonschema

from web.build.paths import SHARED, files_below

SCHEMAS = SHARED / "schema"
# By path below SCHEMAS, whose folder is the room of the desk that answers.
FILES: dict[str, dict[str, Any]] = {
    path.relative_to(SCHEMAS).as_posix(): json.loads(path.read_text(encoding="utf-8"))
    for path in files_below(SCHEMAS, ".json")
}
# No two files define the same name, which the generator refuses.
FILE_OF = {name: file for file, schema in FILES.items() for name in schema["definitions"]}
DEFINITIONS: dict[str, Any] = {
    name: definition
    for schema in FILES.values()
    for name, definition in schema["definitions"].items()
}
OPERATIONS = {name.removesuffix("_body") for name in DEFINITIONS if name.endswith("_body")}


@cache
def validator(definition: str) -> Callable[[Any], Any]:
    """A check of one definition."""
    schema = {
        "$schema": "http://json-schema.org/draft-07/schema#",
        "$ref": f"{FILE_OF[definition]}#/definitions/{definition}",
    }
    return fastjsonschema.compile(schema, handlers={"": FILES.__getitem__})


def room_of(op: str) -> str:
    """Room of the desk that answers an operation, by where the contract has its body."""
    return FILE_OF[f"{op}_body"].split("/")[0]
