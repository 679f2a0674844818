"""pycore.reading.refraction. Published rows stand in shared/checks/refractometer.json."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from pycore.quantity.fault import Fault
from pycore.reading.refraction import BRIX_PER_INDEX, brix_from_index, index_from_brix


@given(st.floats(-5, 35))
def test_there_and_back(brix: float) -> None:
    assert brix_from_index(index_from_brix(brix, "x"), "x") == pytest.approx(brix, abs=1e-9)


@pytest.mark.parametrize("index_nd", [1.3258, 1.3904, 0.0])
def test_outside_is_refused_with_limits(index_nd: float) -> None:
    with pytest.raises(Fault) as caught:
        brix_from_index(index_nd, "shows")
    assert caught.value.limit == {"minimum": 1.32584, "maximum": 1.39032, "unit": "nD"}


@pytest.mark.parametrize("brix", [-5.1, 35.1])
def test_brix_outside_is_refused(brix: float) -> None:
    with pytest.raises(Fault) as caught:
        index_from_brix(brix, "shows")
    assert caught.value.code == "out_of_range"
    assert caught.value.limit == {"minimum": -5.0, "maximum": 35.0, "unit": "Brix"}


@pytest.mark.parametrize("brix", [-5.0, 35.0])
def test_the_ends_themselves_are_on_the_scale(brix: float) -> None:
    assert brix_from_index(index_from_brix(brix, "x"), "x") == pytest.approx(brix, abs=1e-9)


def test_slope_at_water() -> None:
    # By hand: 1/0.00143.
    assert pytest.approx(699.3, abs=0.1) == BRIX_PER_INDEX
