"""Readings to strength, with what the page shows of them."""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction

from pycore.desk.contract.reader import Reader, placed
from pycore.desk.contract.records import FluidTyped, ReadingTyped
from pycore.desk.contract.results import Strength
from pycore.desk.setup.factor import ask_about_inside
from pycore.desk.setup.instrument import Glass, how_read
from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured
from pycore.quantity.rounding import Shown, decimals_apart, decimals_for, shown, tidy
from pycore.reading.averaging import Mean, mean_reading
from pycore.reading.factor import Factor
from pycore.reading.instrument import TemperatureChange, cures_of, temperature_change
from pycore.reading.strength import (
    FACTOR_U_SHARE,
    READING_U_BRIX,
    state_of,
    strength_from_reading,
)
from pycore.recipe.outlook import LIKELY_K
from pycore.recipe.request import Target

# A line of arithmetic with more decimals is read as noise.
_MOST_DIGITS = 3
# Room for the last digit of a product of two typed numbers.
_HAIR = 1e-9


@dataclass(frozen=True)
class Corrected:
    """Readings on their way: the mean, what the temperature did, and the dilution."""

    mean: Mean
    change: TemperatureChange
    diluted: float
    zero_brix: float

    @property
    def raw(self) -> Measured:
        """The mean as it was read; u with the temperature's share."""
        u_brix = (self.mean.brix.u**2 + self.change.u_brix**2) ** 0.5
        return Measured(self.mean.brix.value, u_brix)

    @property
    def brix(self) -> Measured:
        """What the factor is applied to."""
        grown = 1 + self.diluted
        taken = self.raw.value - self.zero_brix + self.change.change_brix
        return Measured(taken * grown, self.raw.u * grown)


def _corrected(
    reader: Reader, reading: ReadingTyped, glass: Glass, shown_brix: list[float], path: str
) -> Corrected:
    u_brix = READING_U_BRIX[how_read(reading.how, glass)]
    if reading.u is not None:
        u_brix = reader.value(reading.u, "reading_u_brix", f"{path}.u")
    mean = mean_reading(shown_brix, u_brix, glass.instrument.resolution_brix)
    if mean.scatters:
        spread = shown(mean.spread_brix, "Brix", 2)
        reader.doubt("readings_scatter", f"{path}.again", spread, (0.0, u_brix))
    change = _temperature(reader, reading, glass, mean, f"{path}.temperature")
    diluted = 0.0
    if reading.diluted is not None:
        diluted = reader.value(reading.diluted, "diluted", f"{path}.diluted")
    return Corrected(mean, change, diluted, glass.zero_brix)


def _temperature(
    reader: Reader, reading: ReadingTyped, glass: Glass, mean: Mean, path: str
) -> TemperatureChange:
    if reading.temperature is None:
        no_prism = temperature_change(glass.instrument, mean.brix.value, None, path, path)
        return no_prism if glass.is_recorded else TemperatureChange()
    prism = reader.read(reading.temperature, "temperature_c", path)
    zero_path = f"{glass.path}.zero.temperature"
    try:
        return temperature_change(glass.instrument, mean.brix.value, prism.value, path, zero_path)
    except Fault as fault:
        raise placed(fault, fault.path, prism.unit.name) from None


def _shown(
    corrected: Corrected, glass: Glass, first: Shown, count: int, path: str
) -> dict[str, Shown]:
    """The numbers between what was typed and what the factor is applied to, where they differ."""
    said = {"reading": first}
    brix = corrected.mean.brix
    decimals = min(2, decimals_for(brix.u, 2)) if brix.u > 0 else 2
    if count > 1:
        said["mean"] = glass.said(brix.value, path)
        said["spread"] = shown(corrected.mean.spread_brix, "Brix", 2)
    if corrected.zero_brix:
        said["zero"] = glass.shown.get("zero") or tidy(corrected.zero_brix, "Brix", 2)
    if corrected.change.change_brix:
        said["temperature_change"] = shown(corrected.change.change_brix, "Brix", 2)
    if corrected.brix.value != brix.value or glass.unit != "Brix":
        said["corrected"] = tidy(round(corrected.brix.value, 9), "Brix", max(1, decimals))
    return said


def _factor_of(
    reader: Reader, factor: Factor | None, glass: Glass
) -> tuple[Factor | None, list[str]]:
    """The fluid's factor, else the one inside the instrument, whose per cent then stands."""
    inside = glass.instrument.factor_inside
    if factor is not None:
        ask_about_inside(reader, factor.factor.value, inside, f"{glass.path}.factor_inside")
        return factor, []
    if inside is None:
        return None, []
    return Factor(Measured(inside, inside * FACTOR_U_SHARE["sheet"])), ["no_fluid_factor"]


def strength_from(
    reader: Reader,
    reading: ReadingTyped,
    glass: Glass,
    factor: Factor | None,
    target: Target | None,
    path: str,
) -> tuple[Strength, list[str]]:
    """What the reading says, and notes on it; without any factor there is no per cent.

    Errors: those of ``read_typed``; ``off_scale``; ``out_of_range`` for a strength that cannot be
    or a temperature outside the table; all at fields below ``path``.
    """
    place = f"{path}.shows"
    texts = [(reading.shows, place)]
    texts += [(typed, f"{path}.again[{i}]") for i, typed in enumerate(reading.again or [])]
    read = [glass.read(reader, typed, at) for typed, at in texts]
    corrected = _corrected(reader, reading, glass, [brix for _, brix in read], path)
    said = _shown(corrected, glass, read[0][0].shown, len(read), place)
    notes = [corrected.change.note] if corrected.change.note else []
    parts = Strength(
        reading_brix=corrected.mean.brix,
        shown=said,
        corrected_brix=corrected.brix if "corrected" in said else None,
        spread_brix=corrected.mean.spread_brix if len(read) > 1 else None,
        temperature_change_brix=corrected.change.change_brix or None,
        cures=cures_of(how_read(reading.how, glass), corrected.diluted > 0) or None,
    )
    used, more = _factor_of(reader, factor, glass)
    if used is None:
        return parts, notes
    if used.at(corrected.brix.value).is_beyond:
        more.append("beyond_chart")
    strength = _multiplied(corrected, used, glass, place)
    said["factor"] = tidy(_plain_factor(corrected, used, strength), "1")
    edges = (target.low_pct, target.high_pct) if target else ()
    said.update(strength_shown(strength, edges))
    worked_out = _worked_out(said, strength.value)
    if worked_out is not None:
        said["worked_out"] = worked_out
    state = state_of(strength.value, target.low_pct, target.high_pct) if target else None
    return replace(parts, strength_pct=strength, state=state), [*notes, *more]


def _multiplied(corrected: Corrected, used: Factor, glass: Glass, path: str) -> Measured:
    segment, grown = used.at(corrected.brix.value), 1 + corrected.diluted
    zero_brix = corrected.zero_brix - corrected.change.change_brix + segment.offset_brix / grown
    try:
        return strength_from_reading(
            corrected.raw, segment.factor, zero_brix, path, corrected.diluted
        )
    except Fault as fault:
        raise glass.in_own_unit(fault, path) from None


def _plain_factor(corrected: Corrected, used: Factor, strength: Measured) -> float:
    """The factor in the line "corrected × factor = strength"; with a chart or an offset it is the
    quotient of the two, so that the line on the page stays true."""
    is_plain = not used.chart and not used.offset_brix
    if is_plain or corrected.brix.value == 0:
        return used.at(corrected.brix.value).factor.value
    return strength.value / corrected.brix.value


def _worked_out(said: dict[str, Shown], strength_pct: float) -> Shown | None:
    """What the reading on the page times the factor on the page makes, digit for digit.

    None where that takes more than three decimals, or is not the strength itself.
    """
    reading = said.get("corrected") or said.get("mean") or said["reading"]
    product = Fraction(repr(reading.value)) * Fraction(repr(said["factor"].value))
    least = said["strength"].decimals
    if abs(float(product) - strength_pct) > _HAIR:
        return None
    for decimals in range(least, max(least, _MOST_DIGITS) + 1):
        if (product * 10**decimals).denominator == 1:
            return Shown(float(product), decimals, "%")
    return None


def strength_shown(strength_pct: Measured, edges: tuple[float, ...] = ()) -> dict[str, Shown]:
    """A strength and its likely range for people, in per cent, never on the wrong side of an edge
    of the band."""
    decimals = decimals_for(strength_pct.u, 1) if strength_pct.u > 0 else 3
    # 3.3 × 1.5 is 4.949999999999999 here, and 4.95 for everybody else.
    value = round(strength_pct.value, 9)
    apart = decimals_apart(value, decimals, edges)
    spread = LIKELY_K * strength_pct.u
    return {
        "strength": shown(value, "%", apart),
        "low": shown(max(0.0, strength_pct.value - spread), "%", decimals),
        "high": shown(strength_pct.value + spread, "%", decimals),
    }


def fluid_notes(fluid: FluidTyped | None) -> list[str]:
    """Codes about the fluid that stand beside every reading: magnesium is a danger with water."""
    return ["magnesium"] if fluid is not None and "magnesium" in (fluid.metals or []) else []
