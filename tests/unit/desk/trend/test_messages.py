"""pycore.desk.trend.messages: field for field as in the contract."""

from typing import Any

import pytest

from pycore.desk.log import spells
from pycore.desk.trend import messages as told
from tests.contract import DEFINITIONS
from tests.unit.desk.contract.compared import (
    Pairs,
    assert_all_compared,
    assert_same_fields,
    names_of,
)

PAIRS: Pairs = [
    (told.TrendBody, DEFINITIONS["trend_body"]),
    (told.TrendRow, DEFINITIONS["trend_row"]),
    (told.Addition, DEFINITIONS["trend_addition"]),
    (told.StrengthTrend, DEFINITIONS["trend_strength"]),
    (told.LeftOut, DEFINITIONS["trend_left_out"]),
    (told.LossesShown, DEFINITIONS["trend_losses"]),
    (told.NextCheck, DEFINITIONS["trend_next_check"]),
    (told.CleanOutNow, DEFINITIONS["trend_clean_out"]),
    (told.TrendResult, DEFINITIONS["trend_result"]),
    (spells.Spell, DEFINITIONS["trend_spell"]),
    (spells.BandSpell, DEFINITIONS["trend_band"]),
]


@pytest.mark.parametrize(("kind", "definition"), PAIRS, ids=names_of(PAIRS))
def test_same_fields_and_the_same_ones_required(kind: type, definition: dict[str, Any]) -> None:
    assert_same_fields(kind, definition)


def test_every_dataclass_is_compared() -> None:
    assert_all_compared(told, PAIRS)
