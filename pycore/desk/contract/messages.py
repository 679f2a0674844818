"""What is asked, as frozen dataclasses, field for field as in ``shared/schema``.

Numbers come in as typed text with a unit.
"""

from __future__ import annotations

from dataclasses import dataclass, field

from pycore.desk.contract.records import (
    FluidTyped,
    InstrumentTyped,
    ReadingTyped,
    SecondTyped,
    TargetTyped,
    Typed,
    WaterTyped,
)


@dataclass(frozen=True)
class PointTyped:
    """One row of a depth table, with its own standard uncertainty where it is known."""

    depth: Typed
    volume: Typed
    u: Typed | None = None


@dataclass(frozen=True)
class StepTyped:
    """One box of a stepped sump."""

    floor: Typed
    length: Typed
    width: Typed


@dataclass(frozen=True)
class ObstacleTyped:
    """Something that stands in the liquid."""

    from_depth: Typed
    to_depth: Typed | None = None
    length: Typed | None = None
    width: Typed | None = None
    diameter: Typed | None = None
    volume: Typed | None = None


@dataclass(frozen=True)
class HiddenTyped:
    """Coolant that does not show on the stick."""

    volume: Typed
    drains_back: bool
    u: Typed | None = None


@dataclass(frozen=True)
class SumpTyped:
    """How a dip becomes litres, by the fields of its kind."""

    kind: str
    full_depth: Typed
    volume_known_by: str
    full_volume: Typed | None = None
    length: Typed | None = None
    width: Typed | None = None
    points: list[PointTyped] | None = None
    rim_depth: Typed | None = None
    never_above_depth: Typed | None = None
    rise: Typed | None = None
    dipped_end: str | None = None
    steps: list[StepTyped] | None = None
    diameter: Typed | None = None
    bottom_diameter: Typed | None = None
    top_diameter: Typed | None = None
    height: Typed | None = None
    obstacles: list[ObstacleTyped] | None = None
    hidden: HiddenTyped | None = None
    rest: Typed | None = None
    dip_from: str | None = None
    reference_height: Typed | None = None
    zero_offset: Typed | None = None
    read_as: str | None = None
    level_true: str | None = None
    wait_min: int | None = None
    mix_min: int | None = None
    divided: bool | None = None


@dataclass(frozen=True)
class MixingTyped:
    """Strongest and weakest mix of the fluid and how near is near enough."""

    strong: Typed
    weak: Typed
    closeness: Typed


@dataclass(frozen=True)
class BucketTyped:
    """Usable fill of the bucket and the distances between the marks of bucket and jug."""

    usable: Typed
    water_mark: Typed
    jug_mark: Typed


@dataclass(frozen=True)
class PailTyped:
    """Lowest marks of pail and jug, size of the jug, and what measures the concentrate."""

    first_mark: Typed | None = None
    jug_first_mark: Typed | None = None
    jug_size: Typed | None = None
    measure_by: str | None = None


@dataclass(frozen=True)
class UnitTyped:
    """Range of a mixing unit and the step of its setting."""

    lowest: Typed
    highest: Typed
    step: Typed


@dataclass(frozen=True)
class WaysTyped:
    """What this shop allows and knows beside buckets of fresh mix."""

    draw_off: bool | None = None
    own_fluid: bool | None = None
    carry_out: Typed | None = None
    most_buckets: Typed | None = None
    heaviest: Typed | None = None
    unit: UnitTyped | None = None


@dataclass(frozen=True)
class Units:
    """One unit per tool."""

    plate: str = "L"
    stick: str = "mm"
    pail: str = "L"
    jug: str = "mL"


@dataclass(frozen=True)
class MachineTyped:
    """A machine as it was set up by hand."""

    name: str
    sump: SumpTyped
    fluid: FluidTyped
    target: TargetTyped
    mixing: MixingTyped
    bucket: BucketTyped
    units: Units
    pail: PailTyped | None = None
    ways: WaysTyped | None = None
    instrument: InstrumentTyped | None = None
    water: WaterTyped | None = None
    pour_here: str | None = None


@dataclass(frozen=True)
class DipTyped:
    """What was read and how it was taken, or its own uncertainty."""

    depth: Typed
    how: str | None = None
    u: Typed | None = None
    read_as: str | None = None
    gauge_to: Typed | None = None
    clean_side: Typed | None = None
    pump: str | None = None
    waited: bool | None = None


@dataclass(frozen=True)
class DescribeBody:
    """No fields."""


@dataclass(frozen=True)
class ReadQuantityBody:
    """One typed number of a known quantity."""

    text: str
    quantity: str
    unit: str | None = None


@dataclass(frozen=True)
class ReadMachineBody:
    """One machine to read as a whole."""

    machine: MachineTyped


@dataclass(frozen=True)
class AssessSumpBody:
    """Dip and reading, either alone or both."""

    sump: SumpTyped
    fluid: FluidTyped | None = None
    target: TargetTyped | None = None
    units: Units = field(default_factory=Units)
    dip: DipTyped | None = None
    reading: ReadingTyped | None = None
    instrument: InstrumentTyped | None = None
    now: str | None = None


@dataclass(frozen=True)
class PlanCheckBody:
    """A whole check as it was typed."""

    machine: MachineTyped
    dip: DipTyped
    reading: ReadingTyped
    aim: Typed | None = None
    fill_to_depth: Typed | None = None
    concentrate_at_hand: Typed | None = None
    hidden_strength: Typed | None = None
    second: SecondTyped | None = None
    now: str | None = None


@dataclass(frozen=True)
class LastCheck:
    """The last whole check as it was stored, and when it was taken."""

    check: PlanCheckBody
    at: str


@dataclass(frozen=True)
class LaterReading:
    """A reading without a dip, with the machine as it was then, and when it was taken."""

    machine: MachineTyped
    reading: ReadingTyped
    at: str


@dataclass(frozen=True)
class HoldCheckBody:
    """A dip without a reading; every time is ISO 8601 with its offset."""

    machine: MachineTyped
    dip: DipTyped
    now: str
    usual: Typed | None = None
    fill_to_depth: Typed | None = None
    last: LastCheck | None = None
    read: LaterReading | None = None


@dataclass(frozen=True)
class CalibrationStep:
    """One pour of a pour test and the dip after it; ``at`` is kept for the log alone."""

    poured: Typed
    depth: Typed
    at: str | None = None


@dataclass(frozen=True)
class CalibrationPair:
    """A top-up with a dip before and after."""

    before: Typed
    poured: Typed
    after: Typed


@dataclass(frozen=True)
class CalibrateSumpBody:
    """Pours of a known vessel with dips, on one day or on many."""

    full_depth: Typed
    rim_depth: Typed | None = None
    start: str | None = None
    start_depth: Typed | None = None
    steps: list[CalibrationStep] | None = None
    pairs: list[CalibrationPair] | None = None
    vessel_known_by: str | None = None
    how: str | None = None
    dip_u: Typed | None = None
    maker_volume: Typed | None = None
    dip_from: str | None = None
    reference_height: Typed | None = None
    zero_offset: Typed | None = None
    units: Units = field(default_factory=Units)
