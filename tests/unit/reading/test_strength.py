"""pycore.reading.strength. Worked values stand in shared/checks."""

from fractions import Fraction
from itertools import product

import pytest

from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured
from pycore.reading.strength import (
    FACTOR_U_SHARE,
    READING_U_BRIX,
    state_of,
    strength_from_reading,
)


def test_zero_is_taken_off_before_the_factor() -> None:
    # DGUV/IFA, "Gebrauchskonzentration": reading × factor; the zero of the glass by hand.
    got = strength_from_reading(Measured(4.4, 0.0), Measured(1.5, 0.0), 0.4, "reading")
    assert got.value == pytest.approx(6.0)


@pytest.mark.parametrize("factor", ["0.7", "1.1", "1.5", "2.5"])
def test_a_strength_is_the_number_that_its_digits_make(factor: str) -> None:
    """Else a sump exactly on the edge of its band would be called weak."""
    for zero, reading in product(range(-5, 6), range(20, 90)):
        exact = Fraction(reading - zero, 10) * Fraction(factor)
        got = strength_from_reading(
            Measured(reading / 10, 0.1), Measured(float(factor), 0.0), zero / 10, "x"
        )
        assert got.value == float(exact)


@pytest.mark.parametrize(("reading", "zero"), [(0.1, 0.2), (26.7, 0.0)])
def test_outside_is_refused_with_limits_in_brix(reading: float, zero: float) -> None:
    with pytest.raises(Fault) as caught:
        strength_from_reading(Measured(reading, 0.1), Measured(1.5, 0.05), zero, "body.reading")
    fault = caught.value
    assert (fault.code, fault.path, fault.got) == ("out_of_range", "body.reading", reading)
    assert fault.limit["minimum"] == zero
    assert fault.limit["below"] == pytest.approx(zero + 40 / 1.5)


def test_water_alone_is_nothing() -> None:
    assert strength_from_reading(Measured(0.2, 0.1), Measured(1.5, 0.05), 0.2, "x").value == 0.0


@pytest.mark.parametrize(
    ("strength", "state"),
    [(6.999, "weak"), (7.0, "in_range"), (8, "in_range"), (9.0, "in_range"), (9.001, "strong")],
)
def test_edges_belong_to_the_band(strength: float, state: str) -> None:
    assert state_of(strength, 7.0, 9.0) == state


def test_forty_per_cent_is_refused_and_a_hair_less_is_not() -> None:
    # 20 Brix times 2.0; in a sample with one part of water to one already 10 Brix.
    for reading, diluted in ((20.0, 0.0), (10.0, 1.0)):
        exact = Measured(2.0, 0.0)
        with pytest.raises(Fault) as caught:
            strength_from_reading(Measured(reading, 0.1), exact, 0.0, "x", diluted)
        assert caught.value.limit == {"minimum": 0.0, "below": reading, "unit": "Brix"}
        below = strength_from_reading(Measured(reading - 0.01, 0.1), exact, 0.0, "x", diluted)
        assert below.value == pytest.approx(40 - 0.02 * (1 + diluted))


def test_errors_of_reading_and_factor() -> None:
    # Common practice, no source.
    assert READING_U_BRIX == {"digital": 0.1, "optical": 0.2, "optical_oily": 0.4, "blurred": 0.8}
    assert FACTOR_U_SHARE == {"sheet": 0.03, "own_jugs": 0.02, "old_fluid": 0.10}
