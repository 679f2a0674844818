"""Results about fluid, water and factor, field for field as in the schema."""

from __future__ import annotations

from dataclasses import dataclass

from pycore.desk.contract.records import Typed
from pycore.desk.contract.results import Doubt
from pycore.quantity.measured import Measured
from pycore.quantity.rounding import Shown


@dataclass(frozen=True)
class Drum:
    """Whole days since delivery and opening, and the last day of the shelf life."""

    delivered_d: int | None = None
    opened_d: int | None = None
    best_before: str | None = None


@dataclass(frozen=True)
class ReadFluidResult:
    """A fluid's record, read."""

    cautions: list[str]
    notes: list[str]
    shown: dict[str, Shown]
    doubts: list[Doubt]
    factor: Measured | None = None
    offset_brix: float | None = None
    slopes: list[float] | None = None
    strong_pct: float | None = None
    weak_pct: float | None = None
    low_pct: float | None = None
    aim_pct: float | None = None
    high_pct: float | None = None
    first_fill_ph: float | None = None
    density_kg_l: float | None = None
    drum: Drum | None = None
    zero_age_d: float | None = None


@dataclass(frozen=True)
class Hardness:
    """One hardness in every unit."""

    hardness_mg_l: float
    hardness_dh: float
    hardness_fh: float
    hardness_gpg: float
    hardness_mmol_l: float
    shown: list[Shown]


@dataclass(frozen=True)
class ReadWaterResult:
    """Mixing water, read."""

    kind: str
    cautions: list[str]
    shown: dict[str, Shown]
    doubts: list[Doubt]
    hardness: Hardness | None = None
    chloride_mg_l: float | None = None
    nitrate_mg_l: float | None = None
    scheme: str | None = None


@dataclass(frozen=True)
class FittedJug:
    """One jug beside the fitted line."""

    strength_pct: Measured
    reading_brix: Measured
    off_brix: float
    score: float
    shown: dict[str, Shown]


@dataclass(frozen=True)
class Interval:
    """Ends of a 95 % interval."""

    low: float
    high: float


@dataclass(frozen=True)
class Keep:
    """Fields for the fluid's record, ready to be kept."""

    factor: Typed
    factor_u: Typed
    factor_known_by: str
    factor_on: str
    factor_offset: Typed | None = None


@dataclass(frozen=True)
class FitFactorResult:
    """A factor found with known jugs."""

    on: str
    model: str
    factor: Measured
    interval: Interval
    jugs: list[FittedJug]
    keep: Keep
    shown: dict[str, Shown]
    doubts: list[Doubt]
    offset_brix: Measured | None = None
