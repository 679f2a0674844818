"""A second method as typed, beside the refractometer's strength: agreement or disagreement."""

from __future__ import annotations

from pycore.desk.check.strength import strength_shown
from pycore.desk.contract.reader import Reader
from pycore.desk.contract.records import FluidTyped, SecondTyped
from pycore.desk.contract.results import SecondStrength
from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured, result, variable
from pycore.quantity.rounding import tidy
from pycore.reading.second import (
    SECOND_FACTOR_U_SHARE,
    SECOND_U,
    normalised_error,
    refuse_useless,
)
from pycore.reading.strength import STRENGTH_BELOW_PCT

# Which field of the fluid's record holds each method's own factor.
_FACTOR_FIELDS = {"titration": "titration_factor", "acid_split": "split_factor"}


def read_second(
    reader: Reader, typed: SecondTyped, fluid: FluidTyped, first_pct: Measured, path: str
) -> SecondStrength:
    """The second method's strength, compared with the first, whose u is above 0.

    Errors: ``not_allowed`` for a method that is blind for this type of fluid; ``no_factor``
    without that method's factor; ``out_of_range`` for a strength that no fluid is run at.
    """
    refuse_useless(typed.method, fluid.type, f"{path}.method")
    name = _FACTOR_FIELDS[typed.method]
    factor_typed = typed.factor or getattr(fluid, name)
    if factor_typed is None:
        raise Fault("no_factor", f"{path}.factor")
    place = f"{path}.factor" if typed.factor else f"body.machine.fluid.{name}"
    shows = reader.read(typed.shows, "second_shows", f"{path}.shows")
    factor = reader.read(factor_typed, "second_factor", place)
    u = SECOND_U[typed.method]
    if typed.u is not None:
        u = reader.value(typed.u, "second_u", f"{path}.u")
    factor_u = factor.value * SECOND_FACTOR_U_SHARE
    strength = result(
        variable(Measured(shows.value, u), "second")
        * variable(Measured(factor.value, factor_u), "second_factor")
    )
    if strength.value >= STRENGTH_BELOW_PCT:
        below = STRENGTH_BELOW_PCT / factor.value
        raise Fault("out_of_range", f"{path}.shows", shows.value, {"below": below, "unit": "1"})
    score = normalised_error(first_pct, strength)
    return SecondStrength(
        method=typed.method,
        strength_pct=strength,
        normalised_error=score,
        agrees=abs(score) <= 1,
        cautions=["strong_acid"] if typed.method == "acid_split" else [],
        shown={
            "shows": shows.shown,
            "factor": tidy(factor.value, "1"),
            **strength_shown(strength),
        },
    )
