"""pycore.desk.contract.validators, generated: same verdict as the contract read afresh."""

import json
from typing import Any

import fastjsonschema
import pytest

from pycore.desk.contract.refusal import SchemaRefusal
from pycore.desk.contract.validators import VALIDATORS
from tests.contract import DEFINITIONS, OPERATIONS, validator
from tests.examples.files import examples

EXAMPLES = [example["request"] for example in examples().values()]
BODIES = [
    request for request in EXAMPLES if isinstance(request, dict) and request["op"] in OPERATIONS
]


def _accepts(check: Any, message: Any, refusal: type[Exception]) -> bool:
    try:
        check(json.loads(json.dumps(message)))
    except refusal:
        return False
    return True


def test_every_validator_belongs_to_a_definition() -> None:
    assert set(VALIDATORS) <= set(DEFINITIONS)
    assert {f"{op}_body" for op in OPERATIONS} <= set(VALIDATORS)


@pytest.mark.parametrize("request_", BODIES, ids=lambda request: request["id"])
def test_same_verdict_as_the_contract(request_: dict[str, Any]) -> None:
    name = f"{request_['op']}_body"
    afresh = validator(name)
    for message in (request_["body"], {}, [], {**request_["body"], "x": 1}):
        theirs = _accepts(afresh, message, fastjsonschema.JsonSchemaException)
        assert _accepts(VALIDATORS[name], message, SchemaRefusal) is theirs
