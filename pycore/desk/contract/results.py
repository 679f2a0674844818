"""The results as frozen dataclasses, field for field as in ``shared/schema``.

They carry full precision beside what is shown.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from pycore.desk.contract.messages import SumpTyped
from pycore.quantity.measured import Measured
from pycore.quantity.rounding import Shown
from pycore.recipe.holding import Holding, HoldingRequest
from pycore.recipe.outcome import Plan
from pycore.recipe.request import PlanRequest
from pycore.sump.outline import Drawing


@dataclass(frozen=True)
class Doubt:
    """Possible but unusual: asked once, never refused.

    last and last_at: what it is unlike. slip: what it would be with its decimal sign moved.
    """

    path: str
    code: str
    got: Shown
    usual_low: float
    usual_high: float
    last: Shown | None = None
    last_at: str | None = None
    slip: Shown | None = None


@dataclass(frozen=True)
class Level:
    """What the dip says."""

    depth_mm: Measured
    volume_l: Measured
    full_volume_l: float
    room_l: float
    litres_per_mm: float
    shown: dict[str, Shown]
    circuit_l: Measured | None = None
    pumpable_l: float | None = None
    sides_mm: float | None = None


@dataclass(frozen=True)
class Strength:
    """What the reading says; no strength without a factor."""

    reading_brix: Measured
    shown: dict[str, Shown]
    strength_pct: Measured | None = None
    state: str | None = None
    corrected_brix: Measured | None = None
    spread_brix: float | None = None
    temperature_change_brix: float | None = None
    cures: list[str] | None = None


@dataclass(frozen=True)
class Section:
    """The section drawing: level and full mark as shares of its height, dots of concentrate."""

    level: float
    full_mark: float
    dots: int | None = None
    drawing: Drawing | None = None


@dataclass(frozen=True)
class AssessSumpResult:
    """Litres and strength."""

    notes: list[str]
    level: Level | None = None
    strength: Strength | None = None
    section: Section | None = None
    doubts: list[Doubt] | None = None


@dataclass(frozen=True)
class Jugs:
    """Concentrate as full jugs and a rest."""

    count: int
    rest: Shown


@dataclass(frozen=True)
class PourShown:
    """One kind of bucket in the tools' units."""

    count: int
    water: Shown
    concentrate: Shown
    total: Shown
    strength: Shown
    weight: Shown
    water_share: float
    concentrate_share: float
    fluid: Shown | None = None
    jugs: Jugs | None = None
    pail_mark: Shown | None = None
    kind: str | None = None


@dataclass(frozen=True)
class WayShown:
    """Another way, ready to show."""

    why: str
    verdict: str
    pours: list[PourShown]
    strength: Shown
    low: Shown
    high: Shown
    volume: Shown
    after: Section
    cautions: list[str]
    chance: str | None = None
    take_out: Shown | None = None
    level: Shown | None = None
    level_strength: Shown | None = None
    days: int | None = None
    run_in: Shown | None = None
    setting: Shown | None = None


@dataclass(frozen=True)
class SecondStrength:
    """The second method's own result."""

    method: str
    strength_pct: Measured
    normalised_error: float
    agrees: bool
    cautions: list[str]
    shown: dict[str, Shown]


@dataclass(frozen=True)
class Disagreement:
    """Two methods that differ by more than their uncertainties allow."""

    low_pct: float
    high_pct: float
    planned_for: str
    codes: list[str]
    shown: dict[str, Shown]
    other: PlanCheckResult


@dataclass(frozen=True)
class PlanCheckResult:
    """The recipe of a check, ready to show."""

    assessment: AssessSumpResult
    request: PlanRequest
    plan: Plan
    shown: dict[str, Any]
    after: Section
    ways: list[WayShown]
    doubts: list[Doubt]
    second: SecondStrength | None = None
    disagreement: Disagreement | None = None


@dataclass(frozen=True)
class HoldCheckResult:
    """A holding top-up, ready to show; assumed names what was taken for granted."""

    assessment: AssessSumpResult
    request: HoldingRequest
    holding: Holding
    shown: dict[str, Any]
    assumed: list[str]
    after: Section
    doubts: list[Doubt]


@dataclass(frozen=True)
class CalibratedRow:
    """One row of a calibrated depth table."""

    depth_mm: float
    volume_l: Measured
    poorly_known: bool
    shown: dict[str, Shown]


@dataclass(frozen=True)
class CalibratedStep:
    """A step of the pour test beside what the curve says at its dip."""

    depth_mm: float
    poured_l: float
    volume_l: float
    shown: dict[str, Shown]


@dataclass(frozen=True)
class CalibrateSumpResult:
    """A depth table from pours; sump is ready to be stored."""

    notes: list[str]
    sump: SumpTyped
    rows: list[CalibratedRow]
    steps: list[CalibratedStep]
    gaps: list[dict[str, Shown]]
    full_volume_l: Measured
    shown: dict[str, Shown]
    drawing: Drawing
    doubts: list[Doubt]
    rest_l: Measured | None = None
    maker_difference_l: float | None = None
