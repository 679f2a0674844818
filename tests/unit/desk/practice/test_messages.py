"""pycore.desk.practice.messages: field for field as in the contract."""

from typing import Any

import pytest

from pycore.desk.practice import messages
from tests.contract import DEFINITIONS
from tests.unit.desk.contract.compared import (
    Pairs,
    assert_same_fields,
    names_of,
)

PAIRS: Pairs = [
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


@pytest.mark.parametrize(("kind", "definition"), PAIRS, ids=names_of(PAIRS))
def test_same_fields_and_the_same_ones_required(kind: type, definition: dict[str, Any]) -> None:
    assert_same_fields(kind, definition)
