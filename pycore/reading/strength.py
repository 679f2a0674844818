"""Strength from a refractometer reading.

strength = (reading − zero) × dilution × factor, the working-concentration rule of the DGUV/IFA
portal on metalworking fluids ("Gebrauchskonzentration": reading times the product's own factor; a
blurred sample is diluted with the same amount of water and the reading doubled).
"""

from __future__ import annotations

from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured, result, variable
from pycore.quantity.rounding import settled

# Standard uncertainty of a reading in Brix: common practice, no source.
READING_U_BRIX = {"digital": 0.1, "optical": 0.2, "optical_oily": 0.4, "blurred": 0.8}

# Relative standard uncertainty of the factor: common practice, no source.
FACTOR_U_SHARE = {"sheet": 0.03, "own_jugs": 0.02, "old_fluid": 0.10}

# Above this no water-mixed fluid is run; it is a slip: common practice, no source.
STRENGTH_BELOW_PCT = 40.0


def strength_from_reading(
    reading_brix: Measured,
    factor: Measured,
    zero_brix: float,
    path: str,
    diluted: float = 0.0,
) -> Measured:
    """Strength in per cent by volume with its standard uncertainty, to first order.

    Parameters
    ----------
    reading_brix : Measured
        What the instrument shows, Brix, 0 to 95.
    factor : Measured
        The fluid's factor, above 0.3 to 8, per cent for one Brix.
    zero_brix : float
        What the instrument shows in water, Brix, −5 to 5.
    path : str
        Where the reading stood in the request, for the error.
    diluted : float
        Parts of water to one part of the sample, 0 to 9; the uncertainty grows with the dilution.
        One vessel measures both, so that its own error falls out.

    Error: ``out_of_range`` when the strength would lie below 0 or at 40 % and above; the limits
    are then given in Brix, as the person reads them.

    >>> s = strength_from_reading(Measured(5.2, 0.1), Measured(1.5, 0.05), 0.0, "reading")
    >>> round(s.value, 9), round(s.u, 4)
    (7.8, 0.3002)
    >>> strength_from_reading(Measured(2.6, 0.2), Measured(1.5, 0.0), 0.0, "reading", 1.0).u
    0.6000000000000001
    """
    reading = variable(reading_brix, "reading")
    grown = 1 + diluted
    noisy = result((reading - zero_brix) * grown * variable(factor, "factor"))
    # (2.8 + 0.4) times 2.5 is 8, on the edge of a band, and not a hair below it.
    strength = Measured(settled(noisy.value), noisy.u)
    if not 0 <= strength.value < STRENGTH_BELOW_PCT:
        highest = zero_brix + STRENGTH_BELOW_PCT / (factor.value * grown)
        limit = {"minimum": zero_brix, "below": highest, "unit": "Brix"}
        raise Fault("out_of_range", path, reading_brix.value, limit)
    return strength


def state_of(strength_pct: float, low_pct: float, high_pct: float) -> str:
    """weak, in_range or strong against a target band whose edges belong to it."""
    if strength_pct < low_pct:
        return "weak"
    return "strong" if strength_pct > high_pct else "in_range"
