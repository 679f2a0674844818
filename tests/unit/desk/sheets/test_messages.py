"""pycore.desk.sheets.messages: field for field as in the contract."""

from typing import Any

import pytest

from pycore.desk.sheets import messages
from tests.contract import DEFINITIONS
from tests.unit.desk.contract.compared import (
    Pairs,
    assert_same_fields,
    names_of,
)

PAIRS: Pairs = [
    (messages.DrawSheetBody, DEFINITIONS["draw_sheet_body"]),
    (messages.DrawSheetResult, DEFINITIONS["draw_sheet_result"]),
    (messages.PailShapeTyped, DEFINITIONS["pail_shape_typed"]),
    (messages.FillTyped, DEFINITIONS["fill_typed"]),
    (messages.UsualBucketTyped, DEFINITIONS["usual_bucket_typed"]),
    (messages.SlipRecipe, DEFINITIONS["slip_recipe"]),
    (messages.ReadCodeBody, DEFINITIONS["read_code_body"]),
    (messages.MakeCodeBody, DEFINITIONS["make_code_body"]),
    (messages.CodeResult, DEFINITIONS["read_code_result"]),
    (messages.CodeResult, DEFINITIONS["make_code_result"]),
]


@pytest.mark.parametrize(("kind", "definition"), PAIRS, ids=names_of(PAIRS))
def test_same_fields_and_the_same_ones_required(kind: type, definition: dict[str, Any]) -> None:
    assert_same_fields(kind, definition)
