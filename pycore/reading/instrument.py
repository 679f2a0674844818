"""An instrument: its scale, its zero in water, and what it does about temperature."""

from __future__ import annotations

from dataclasses import dataclass

from pycore.quantity.fault import Fault
from pycore.reading.refraction import BRIX_PER_INDEX, brix_from_index, index_from_brix
from pycore.reading.temperature import change_brix, change_u_brix

# Unit of what each scale shows.
SCALE_UNITS = {"brix": "Brix", "refractive_index": "nD", "per_cent": "%"}
# Zeroing costs ten seconds, so an older zero is said to be old: common practice, no source.
ZERO_FRESH_D = 1.0
# Temperatures of zero and reading that differ by less change a reading by less than 0.1 Brix.
SAME_TEMPERATURE_C = 1.5


@dataclass(frozen=True)
class Instrument:
    """What an instrument shows and how it was zeroed; amounts in Brix and °C.

    factor_inside is the factor that an instrument showing per cent has applied already. zero_brix
    and zero_c are what it showed in water and how warm it was then; compensation is "automatic",
    "none" or None where nobody knows.
    """

    scale: str = "brix"
    factor_inside: float | None = None
    zero_brix: float | None = None
    zero_c: float | None = None
    compensation: str | None = None
    resolution_brix: float = 0.0

    def brix_from(self, shown: float, path: str) -> float:
        """What stands on the scale, in Brix. Errors: those of ``brix_from_index``."""
        if self.scale == "refractive_index":
            return brix_from_index(shown, path)
        return shown / self.factor_inside if self.factor_inside else shown

    def shown_from(self, brix: float, path: str) -> float:
        """A Brix value in the scale's own unit. Errors: those of ``index_from_brix``."""
        if self.scale == "refractive_index":
            return index_from_brix(brix, path)
        return brix * self.factor_inside if self.factor_inside else brix

    def step_brix(self, step: float) -> float:
        """A distance of two marks or digits, in Brix."""
        if self.scale == "refractive_index":
            return step * BRIX_PER_INDEX
        return step / self.factor_inside if self.factor_inside else step


def refuse_off_scale(shown: float, low: float, high: float | None, unit: str, path: str) -> None:
    """Raises ``off_scale`` for a reading beyond what the instrument can show, limits in its unit.

    A line at the end of the scale says only that there is more: dilute one to one and double.
    """
    if shown < low or (high is not None and shown > high):
        limit: dict[str, object] = {"minimum": low, "unit": unit}
        if high is not None:
            limit["maximum"] = high
        raise Fault("off_scale", path, shown, limit)


@dataclass(frozen=True)
class TemperatureChange:
    """What to add to a reading for the prism's temperature, in Brix; a note where it is open."""

    change_brix: float = 0.0
    u_brix: float = 0.0
    note: str | None = None


def temperature_change(
    instrument: Instrument,
    reading_brix: float,
    prism_c: float | None,
    path: str,
    zero_path: str,
) -> TemperatureChange:
    """The correction for a prism that was not as warm at the reading as at the zero.

    Only an instrument known to have no compensation of its own is corrected, and only for the
    difference. Where that cannot be known nothing is changed and a note says so. Errors: those of
    ``correction_brix``, at the paths of the two temperatures.
    """
    zero_c = instrument.zero_c
    if instrument.compensation == "automatic":
        return TemperatureChange()
    if zero_c is None or prism_c is None:
        return TemperatureChange(note="temperature_not_known")
    if zero_c == prism_c:
        return TemperatureChange()
    if instrument.compensation is None:
        is_near = abs(zero_c - prism_c) < SAME_TEMPERATURE_C
        return TemperatureChange(note=None if is_near else "compensation_not_known")
    return TemperatureChange(
        change_brix(reading_brix, zero_c, prism_c, path, zero_path), change_u_brix(zero_c, prism_c)
    )


def zero_notes(instrument: Instrument, zero_age_d: float | None) -> list[str]:
    """Codes about the zero: never taken, of unknown age, or older than a day."""
    if instrument.zero_brix is None:
        return ["zero_not_taken"]
    if zero_age_d is None:
        return ["zero_age_unknown"]
    return ["zero_old"] if zero_age_d > ZERO_FRESH_D else []


def cures_of(how: str, is_diluted: bool) -> list[str]:
    """What helps against a blurred line, the least work first; source: DGUV/IFA portal,
    "Gebrauchskonzentration" (filter, then dilute with the same amount of water and double)."""
    if how != "blurred":
        return []
    cures = ["filter_the_sample", "read_the_middle"]
    return [*cures, "use_the_second_method" if is_diluted else "dilute_and_double"]
