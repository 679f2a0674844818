"""An instrument as typed, read into Brix, with the ends of its scale in its own unit."""

from __future__ import annotations

from dataclasses import dataclass, field

from pycore.desk.contract.reader import Reader, placed
from pycore.desk.contract.records import FluidTyped, InstrumentTyped, Typed, ZeroTyped
from pycore.quantity.dates import days_between, moment_from
from pycore.quantity.fault import Fault
from pycore.quantity.rounding import Shown, tidy
from pycore.quantity.typed import Reading
from pycore.quantity.units import UNITS
from pycore.reading.instrument import SCALE_UNITS, Instrument, refuse_off_scale, zero_notes
from pycore.reading.refraction import HIGHEST_BRIX

# How the names of the quantities end that are read in the scale's own unit.
_ENDINGS = {"brix": "brix", "refractive_index": "nd", "per_cent": "pct"}
# A scale begins at nothing: 0 Brix or 0 %; water has 1.333 nD, and warm water less.
_LOWEST = {"brix": 0.0, "refractive_index": 1.3, "per_cent": 0.0}


@dataclass(frozen=True)
class Glass:
    """The instrument in Brix and the ends of its scale; without a record, a Brix scale.

    low and high are in the scale's own unit; shown holds zero and resolution as they were typed.
    """

    instrument: Instrument
    low: float = 0.0
    high: float | None = None
    zero_on: str | None = None
    path: str = ""
    kind: str | None = None
    is_recorded: bool = False
    shown: dict[str, Shown] = field(default_factory=dict)

    @property
    def unit(self) -> str:
        """Unit of the scale."""
        return SCALE_UNITS[self.instrument.scale]

    @property
    def zero_brix(self) -> float:
        """What to take off every reading, Brix; 0 for an instrument that was set to 0."""
        return self.instrument.zero_brix or 0.0

    def read(self, reader: Reader, typed: Typed, path: str) -> tuple[Reading, float]:
        """A reading as typed, and in Brix. Errors: of ``read_typed``, ``off_scale``."""
        scale = self.instrument.scale
        read = _read(reader, typed, f"reading_{_ENDINGS[scale]}", self.unit, path)
        refuse_off_scale(read.value, self.low, self.high, self.unit, path)
        return read, self.instrument.brix_from(read.value, path)

    def said(self, brix: float, path: str) -> Shown:
        """What the instrument would show at a Brix value, in its unit.

        Error: ``out_of_range`` where its scale does not go so far.
        """
        decimals = 4 if self.unit == "nD" else 2
        return tidy(self.instrument.shown_from(brix, path), self.unit, decimals)

    def in_own_unit(self, fault: Fault, path: str) -> Fault:
        """A room's fault about Brix with its numbers as the instrument shows them."""
        if self.unit == "Brix" or fault.limit.get("unit") != "Brix":
            return placed(fault, path, self.unit)
        limit: dict[str, object] = {"unit": self.unit}
        for side, bound in fault.limit.items():
            # A bound beyond the table of indices cannot be met by any reading and is left out.
            if isinstance(bound, float) and (self.unit != "nD" or bound <= HIGHEST_BRIX):
                limit[side] = self.instrument.shown_from(bound, path)
        got = fault.got
        if isinstance(got, float):
            got = self.instrument.shown_from(got, path)
        return Fault(fault.code, path, got, limit)

    def zero_age_d(self, now: str | None, path: str) -> float | None:
        """Days from the zero to now; None where either is not known.

        Errors: ``not_a_date``; ``order`` for a zero that lies ahead.
        """
        if self.zero_on is None or now is None:
            return None
        place = f"{self.path}.zero.on"
        return days_between(moment_from(self.zero_on, place), moment_from(now, path), place)

    def notes(self, now: str | None, path: str) -> list[str]:
        """Codes about the zero: of a recorded instrument, or one that stands with the fluid."""
        if not self.is_recorded and self.instrument.zero_brix is None:
            return []
        return zero_notes(self.instrument, self.zero_age_d(now, path))


def how_read(how: str | None, glass: Glass) -> str:
    """How the line was read: as it was said, else by the kind of instrument."""
    return how or ("digital" if glass.kind == "digital" else "optical")


def _read(reader: Reader, typed: Typed, quantity: str, unit: str, path: str) -> Reading:
    """A number in the scale's unit. A unit beside the field that is not the scale's is refused."""
    if typed.unit is not None and typed.unit != unit:
        own = UNITS[typed.unit]
        if own.dimension != UNITS[unit].dimension:
            raise Fault("wrong_dimension", path, typed.unit, {"allowed": [unit]})
    return reader.read(typed, quantity, path)


def _zero(
    reader: Reader, plain: Instrument, zero: ZeroTyped, ending: str, path: str
) -> tuple[float, float | None, Shown]:
    unit = SCALE_UNITS[plain.scale]
    read = _read(reader, zero.shows, f"zero_{ending}", unit, f"{path}.shows")
    zero_c = None
    if zero.temperature is not None:
        zero_c = reader.value(zero.temperature, "temperature_c", f"{path}.temperature")
    if zero.on is not None:
        moment_from(zero.on, f"{path}.on")
    return plain.brix_from(read.value, f"{path}.shows"), zero_c, read.shown


def _ends(
    reader: Reader, typed: InstrumentTyped, ending: str, path: str
) -> tuple[float, float | None]:
    """Ends of the scale in its own unit. Error: ``order`` when the low end is not below."""
    low, high = _LOWEST[typed.shows], None
    unit = SCALE_UNITS[typed.shows]
    if typed.lowest is not None:
        low = _read(reader, typed.lowest, f"scale_{ending}", unit, f"{path}.lowest").value
    if typed.highest is not None:
        high = _read(reader, typed.highest, f"scale_{ending}", unit, f"{path}.highest").value
        if high <= low:
            raise Fault("order", f"{path}.highest", high, {"above": low, "unit": unit})
    return low, high


def read_glass(
    reader: Reader, typed: InstrumentTyped | None, fluid: FluidTyped | None, path: str
) -> Glass:
    """The instrument of a machine or an assessment, whose message stands at ``path``.

    Errors: those of ``read_typed`` and ``moment_from``; ``order`` for a zero that stands both
    with the fluid and with the instrument, or a scale that ends before it begins.
    """
    fluid_zero = fluid.zero if fluid is not None else None
    if typed is None:
        zero_brix = None
        if fluid_zero is not None:
            zero_brix = reader.value(fluid_zero, "zero_brix", f"{path}.fluid.zero")
        return Glass(Instrument(zero_brix=zero_brix))
    place = f"{path}.instrument"
    if fluid_zero is not None:
        raise Fault("order", f"{path}.fluid.zero", fluid_zero.text, {"allowed": ["only one zero"]})
    inside = None
    if typed.shows == "per_cent" and typed.factor_inside is not None:
        inside = reader.value(typed.factor_inside, "factor_inside", f"{place}.factor_inside")
    elif typed.factor_inside is not None:
        # A factor that is set but not in what is shown would be applied once too often or never.
        raise Fault("order", f"{place}.factor_inside", typed.shows, {"allowed": ["per_cent"]})
    ending = _ENDINGS[typed.shows]
    plain = Instrument(typed.shows, inside)
    zero_brix = zero_c = None
    shown: dict[str, Shown] = {}
    if typed.zero is not None:
        zero_brix, zero_c, shown["zero"] = _zero(reader, plain, typed.zero, ending, f"{place}.zero")
    resolution_brix = 0.0
    if typed.resolution is not None:
        quantity, at = f"resolution_{ending}", f"{place}.resolution"
        step = _read(reader, typed.resolution, quantity, SCALE_UNITS[plain.scale], at)
        resolution_brix, shown["resolution"] = plain.step_brix(step.value), step.shown
    low, high = _ends(reader, typed, ending, place)
    instrument = Instrument(
        typed.shows, inside, zero_brix, zero_c, typed.compensation, resolution_brix
    )
    zero_on = typed.zero.on if typed.zero is not None else None
    return Glass(instrument, low, high, zero_on, place, typed.kind, True, shown)
