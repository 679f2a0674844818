"""pycore.reading.strength. Worked values stand in shared/checks."""

import pytest

from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured
from pycore.reading.strength import state_of, strength_from_reading


def test_zero_is_taken_off_before_the_factor() -> None:
    # DGUV/IFA, "Gebrauchskonzentration": reading × factor; the zero of the glass by hand.
    got = strength_from_reading(Measured(4.4, 0.0), Measured(1.5, 0.0), 0.4, "reading")
    assert got.value == pytest.approx(6.0)


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
