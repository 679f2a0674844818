"""pycore.desk.practice.messages: field for field as in the contract."""

from dataclasses import MISSING, fields
from typing import Any

import pytest

from pycore.desk.practice import messages as messages
from tests.unit.desk.contract.test_messages import DEFINITIONS

PAIRS: list[tuple[type, dict[str, Any]]] = [
    (messages.DealPracticeBody, DEFINITIONS["deal_practice_body"]),
    (messages.DealPracticeResult, DEFINITIONS["deal_practice_result"]),
    (messages.OwnBucketTyped, DEFINITIONS["own_bucket_typed"]),
    (messages.AnswersTyped, DEFINITIONS["practice_answers"]),
    (messages.JudgePracticeBody, DEFINITIONS["judge_practice_body"]),
    (messages.StepJudged, DEFINITIONS["step_judged"]),
    (messages.RecipeShown, DEFINITIONS["recipe_judged"]),
    (messages.OwnJudged, DEFINITIONS["own_judged"]),
    (messages.JudgePracticeResult, DEFINITIONS["judge_practice_result"]),
    (messages.ChangeTyped, DEFINITIONS["change_typed"]),
    (messages.TrySumpBody, DEFINITIONS["try_sump_body"]),
    (messages.Tried, DEFINITIONS["tried_state"]),
    (messages.TrySumpResult, DEFINITIONS["try_sump_result"]),
]


@pytest.mark.parametrize(("kind", "definition"), PAIRS, ids=[kind.__name__ for kind, _ in PAIRS])
def test_fields_and_what_is_needed(kind: type, definition: dict[str, Any]) -> None:
    own = fields(kind)
    needed = {field.name for field in own if field.default is MISSING}
    assert {field.name for field in own} == set(definition["properties"])
    assert needed == set(definition["required"])
