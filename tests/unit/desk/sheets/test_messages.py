"""pycore.desk.sheets.messages: field for field as in the contract."""

from dataclasses import MISSING, fields
from typing import Any

import pytest

from pycore.desk.sheets import messages as messages
from tests.unit.desk.contract.test_messages import DEFINITIONS

PAIRS: list[tuple[type, dict[str, Any]]] = [
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


@pytest.mark.parametrize(
    ("kind", "definition"), PAIRS, ids=lambda part: getattr(part, "__name__", "")
)
def test_fields_and_what_is_needed(kind: type, definition: dict[str, Any]) -> None:
    names = {field.name for field in fields(kind)}  # type: ignore[arg-type]
    needed = {
        field.name
        for field in fields(kind)  # type: ignore[arg-type]
        if field.default is MISSING and field.default_factory is MISSING
    }
    assert names == set(definition["properties"])
    assert needed == set(definition["required"])
