"""What is asked about fluid, instrument, water and readings, field for field as in the schema."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Typed:
    """What a person typed and the unit that stood beside the field."""

    text: str
    unit: str | None = None


@dataclass(frozen=True)
class TargetTyped:
    """Target band and aim."""

    low: Typed
    aim: Typed
    high: Typed


@dataclass(frozen=True)
class ChartPairTyped:
    """One pair of a printed chart: a strength and what that mix reads."""

    strength: Typed
    reading: Typed


@dataclass(frozen=True)
class WaterLimitsTyped:
    """Hardness that the mixing water may have, and whose advice that is."""

    scheme: str
    low: Typed
    high: Typed


@dataclass(frozen=True)
class FluidTyped:
    """The fluid's type and, where known, its factor and what else its sheet and drum say."""

    type: str
    name: str | None = None
    factor: Typed | None = None
    factor_known_by: str | None = None
    zero: Typed | None = None
    factor_direction: str | None = None
    factor_u: Typed | None = None
    factor_offset: Typed | None = None
    factor_chart: list[ChartPairTyped] | None = None
    factor_on: str | None = None
    titration_factor: Typed | None = None
    split_factor: Typed | None = None
    metals: list[str] | None = None
    made_for_magnesium: bool | None = None
    batch: str | None = None
    target: TargetTyped | None = None
    strong: Typed | None = None
    weak: Typed | None = None
    first_fill_ph: Typed | None = None
    water_limits: WaterLimitsTyped | None = None
    density: Typed | None = None
    delivered_on: str | None = None
    opened_on: str | None = None
    shelf_life_months: int | None = None


@dataclass(frozen=True)
class ZeroTyped:
    """The zero in water: what it showed, when, how warm, with which water."""

    shows: Typed
    on: str | None = None
    temperature: Typed | None = None
    water: str | None = None


@dataclass(frozen=True)
class InstrumentTyped:
    """One refractometer, all numbers in its own unit."""

    shows: str
    name: str | None = None
    kind: str | None = None
    factor_inside: Typed | None = None
    compensation: str | None = None
    resolution: Typed | None = None
    lowest: Typed | None = None
    highest: Typed | None = None
    zero: ZeroTyped | None = None


@dataclass(frozen=True)
class ReadingTyped:
    """What the instrument shows, once or several times, and how it was read."""

    shows: Typed
    how: str | None = None
    u: Typed | None = None
    again: list[Typed] | None = None
    temperature: Typed | None = None
    diluted: Typed | None = None


@dataclass(frozen=True)
class SecondTyped:
    """The same coolant by another method."""

    method: str
    shows: Typed
    factor: Typed | None = None
    u: Typed | None = None


@dataclass(frozen=True)
class ReadFluidBody:
    """A fluid's record and the day on which it is looked at."""

    fluid: FluidTyped
    today: str
    instrument: InstrumentTyped | None = None
    last_factor: Typed | None = None


@dataclass(frozen=True)
class WaterTyped:
    """Mixing water."""

    kind: str
    name: str | None = None
    hardness: Typed | None = None
    chloride: Typed | None = None
    nitrate: Typed | None = None


@dataclass(frozen=True)
class ReadWaterBody:
    """Mixing water, and the limits of the fluid that it is for."""

    water: WaterTyped
    limits: WaterLimitsTyped | None = None


@dataclass(frozen=True)
class JugTyped:
    """One known mix and its reading."""

    water: Typed
    concentrate: Typed
    shows: Typed


@dataclass(frozen=True)
class FitFactorBody:
    """Two to five known mixes, read with one instrument."""

    jugs: list[JugTyped]
    measured_with: str
    on: str
    how: str | None = None
    instrument: InstrumentTyped | None = None
    fluid_type: str | None = None
    last_factor: Typed | None = None
