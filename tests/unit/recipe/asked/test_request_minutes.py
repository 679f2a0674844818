"""pycore.recipe.request: how long the pump runs before the second reading."""

from dataclasses import replace

import pytest

from tests.unit.recipe.shop import question


@pytest.mark.parametrize(
    ("circuit_l", "mix_min", "minutes"),
    [(198.0, None, 30.0), (2000.0, None, 60.0), (198.0, 90, 90), (2000.0, 15, 15)],
)
def test_a_machine_may_have_a_time_of_its_own(
    circuit_l: float, mix_min: int | None, minutes: float
) -> None:
    # By the size of the circuit otherwise (common practice, no source).
    assert replace(question(), fill_to_l=circuit_l, mix_min=mix_min).run_min == minutes
