"""What is asked about a machine's trend and what is answered, field for field as in the schema."""

from __future__ import annotations

from dataclasses import dataclass, field

from pycore.desk.check.look import LookLimitsTyped
from pycore.desk.log.clean_due import CleanOutNow
from pycore.desk.log.spells import BandSpell, Spell
from pycore.journal.file import Head
from pycore.quantity.measured import Measured
from pycore.quantity.rounding import Shown


@dataclass(frozen=True)
class TrendBody:
    """The store, the device's clock, the machine, and the shop's own limits.

    days: only what was measured in so many days before now; absent for all of it.
    """

    lines: list[str]
    now: str
    machine: str
    heads: list[Head] = field(default_factory=list)
    days: int | None = None
    limits: LookLimitsTyped | None = None


@dataclass(frozen=True)
class TrendRow:
    """One check, second reading, look or clean-out, and what went in since the row before.

    added_unknown: additions since the row before of which nobody wrote down how much.
    """

    entry: str
    kind: str
    measured_at: str
    at_s: int
    water_l: float
    concentrate_l: float
    added_unknown: int
    trouble: list[str]
    shown: dict[str, Shown]
    strength_pct: Measured | None = None
    state: str | None = None
    volume_l: Measured | None = None
    ph: float | None = None


@dataclass(frozen=True)
class Addition:
    """What one pour brought; unknown counts buckets of which nobody knows what was in them."""

    measured_at: str
    at_s: int
    water_l: float
    concentrate_l: float
    unknown: int


@dataclass(frozen=True)
class StrengthTrend:
    """From the first to the last reading of this charge: the words of ``direction``.

    too_few: there are fewer than three readings, so nothing is said about a direction. shown.error:
    points by which two of the readings can lie apart by themselves, where no direction is sure.
    """

    readings: int
    below: int
    above: int
    over_d: float
    direction: str
    shown: dict[str, Shown]
    slope_pct_d: float | None = None


@dataclass(frozen=True)
class LeftOut:
    """Steps from check to check that could not be used, and why."""

    why: str
    count: int


@dataclass(frozen=True)
class LossesShown:
    """What is lost a day; without ``steps`` there are too few checks to say."""

    steps: int
    needed: int
    left_out: list[LeftOut]
    shown: dict[str, Shown]
    over_d: float | None = None
    lost_l_d: Measured | None = None
    concentrate_l_d: Measured | None = None
    carry_out_l_d: Measured | None = None
    evaporation_l_d: Measured | None = None
    top_up_pct: Measured | None = None


@dataclass(frozen=True)
class NextCheck:
    """When the next check is due, seconds since 1970, and why then; resting: not while it is."""

    due_s: int
    overdue: bool
    every_d: float
    why: str
    resting: bool


@dataclass(frozen=True)
class TrendResult:
    """Rows in order, what went in, and what the shop learns from it."""

    name: str
    unit: str
    from_s: int
    now_s: int
    rows: list[TrendRow]
    added: list[Addition]
    bands: list[BandSpell]
    rests: list[Spell]
    losses: LossesShown
    clean_out: CleanOutNow
    full_volume_l: float | None = None
    strength: StrengthTrend | None = None
    next_check: NextCheck | None = None
