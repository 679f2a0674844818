"""pycore.desk.contract.records: what is asked is frozen, and what was left out is None.

That the fields are those of the contract stands in test_messages.py.
"""

from dataclasses import FrozenInstanceError, fields, is_dataclass

import pytest

from pycore.desk.contract import records
from pycore.desk.contract.build import built
from tests.unit.desk.asked import DEPOT_MIX, HAND_GLASS

KINDS = [kind for kind in vars(records).values() if isinstance(kind, type)]


@pytest.mark.parametrize("kind", KINDS, ids=lambda kind: kind.__name__)
def test_frozen(kind: type) -> None:
    assert is_dataclass(kind)
    assert kind.__dataclass_params__.frozen  # type: ignore[attr-defined]


def test_a_whole_record_is_built_and_nothing_is_made_up() -> None:
    fluid = built(records.FluidTyped, DEPOT_MIX)
    assert fluid.water_limits is not None
    assert fluid.water_limits.high == records.Typed("15", "°dH")
    left_out = {f.name for f in fields(fluid) if f.name not in DEPOT_MIX}
    assert {getattr(fluid, name) for name in left_out} == {None}
    with pytest.raises(FrozenInstanceError):
        fluid.name = "other"  # type: ignore[misc]


def test_zero_keeps_its_text() -> None:
    glass = built(records.InstrumentTyped, HAND_GLASS)
    assert glass.zero is not None
    assert glass.zero.on == "2026-11-25T06:10"
