"""pycore.desk.trend.messages: field for field as in the contract."""

from dataclasses import MISSING, fields
from typing import Any

import pytest

from pycore.desk.log import spells
from pycore.desk.trend import messages as told
from tests.unit.desk.contract.test_messages import DEFINITIONS

PAIRS: list[tuple[type, dict[str, Any]]] = [
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


@pytest.mark.parametrize(("kind", "definition"), PAIRS, ids=[kind.__name__ for kind, _ in PAIRS])
def test_same_fields_and_the_same_ones_required(kind: type, definition: dict[str, Any]) -> None:
    own = fields(kind)
    assert {field.name for field in own} == set(definition["properties"])
    free = {f.name for f in own if f.default is not MISSING or f.default_factory is not MISSING}
    assert {field.name for field in own} - free == set(definition["required"])


def test_every_dataclass_is_compared() -> None:
    own = {kind for kind in vars(told).values() if isinstance(kind, type)}
    mine = {kind for kind in own if kind.__module__ == told.__name__}
    assert mine == {kind for kind, _ in PAIRS if kind.__module__ == told.__name__}
