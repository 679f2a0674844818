"""pycore.quantity.known, which is generated from shared/quantities.json."""

import json

import pytest

from pycore.quantity.known import KNOWN
from pycore.quantity.units import UNITS
from web.build.paths import SHARED

QUANTITIES = json.loads((SHARED / "quantities.json").read_text(encoding="utf-8"))["quantities"]


def test_same_names_in_the_same_order() -> None:
    assert list(KNOWN) == list(QUANTITIES)


@pytest.mark.parametrize("name", QUANTITIES)
def test_range_and_unit_are_those_of_the_list(name: str) -> None:
    sides = ("minimum", "maximum", "above", "below", "usual_low", "usual_high")
    assert {side: getattr(KNOWN[name], side) for side in sides} == {
        side: QUANTITIES[name].get(side) for side in sides
    }
    assert (KNOWN[name].unit, KNOWN[name].typed) == (
        QUANTITIES[name]["unit"],
        QUANTITIES[name]["typed"],
    )


@pytest.mark.parametrize("name", [name for name, known in KNOWN.items() if known.typed])
def test_typed_quantity_has_a_base_unit_and_both_ends(name: str) -> None:
    known = KNOWN[name]
    unit = UNITS[known.unit]
    assert (unit.factor, unit.offset) == (1, 0)
    assert known.minimum is not None or known.above is not None
    assert known.maximum is not None or known.below is not None
