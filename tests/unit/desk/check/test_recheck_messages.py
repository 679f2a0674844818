"""pycore.desk.check.recheck_messages: field for field as in the contract."""

from typing import Any

import pytest

from pycore.desk.check import recheck_messages as messages
from pycore.journal import recheck
from tests.contract import DEFINITIONS
from tests.unit.desk.contract.compared import (
    Pairs,
    assert_same_fields,
    names_of,
)

PAIRS: Pairs = [
    (messages.RecheckBody, DEFINITIONS["recheck_body"]),
    (messages.BucketRow, DEFINITIONS["bucket_row"]),
    (messages.RecheckResult, DEFINITIONS["recheck_result"]),
    (recheck.Comparison, DEFINITIONS["recheck_strength"]),
    (recheck.LevelCompared, DEFINITIONS["recheck_level"]),
]


@pytest.mark.parametrize(("kind", "definition"), PAIRS, ids=names_of(PAIRS))
def test_same_fields_and_the_same_ones_required(kind: type, definition: dict[str, Any]) -> None:
    assert_same_fields(kind, definition)
