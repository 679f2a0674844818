"""pycore.desk.check.recheck_messages: field for field as in the contract."""

from dataclasses import MISSING, fields
from typing import Any

import pytest

from pycore.desk.check import recheck_messages as messages
from pycore.journal import recheck
from tests.unit.desk.contract.test_messages import DEFINITIONS

PAIRS: list[tuple[type, dict[str, Any]]] = [
    (messages.RecheckBody, DEFINITIONS["recheck_body"]),
    (messages.BucketRow, DEFINITIONS["bucket_row"]),
    (messages.RecheckResult, DEFINITIONS["recheck_result"]),
    (recheck.Comparison, DEFINITIONS["recheck_strength"]),
    (recheck.LevelCompared, DEFINITIONS["recheck_level"]),
]


@pytest.mark.parametrize(("kind", "definition"), PAIRS, ids=[kind.__name__ for kind, _ in PAIRS])
def test_fields_and_what_is_needed(kind: type, definition: dict[str, Any]) -> None:
    own = fields(kind)
    needed = {field.name for field in own if field.default is MISSING}
    assert {field.name for field in own} == set(definition["properties"])
    assert needed == set(definition["required"])
