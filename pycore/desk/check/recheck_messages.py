"""What is asked about a second reading and what is answered, field for field as in the schema."""

from __future__ import annotations

from dataclasses import dataclass

from pycore.desk.contract.messages import DipTyped, MachineTyped, PlanCheckBody
from pycore.desk.contract.records import ReadingTyped, Typed
from pycore.desk.contract.results import AssessSumpResult, Doubt
from pycore.journal.recheck import Comparison, LevelCompared
from pycore.quantity.rounding import Shown


@dataclass(frozen=True)
class BucketRow:
    """Buckets that are alike, as the log has them."""

    count: int
    kind: str | None = None
    each: Typed | None = None
    water: Typed | None = None
    concentrate: Typed | None = None
    strength: Typed | None = None
    about: bool | None = None


@dataclass(frozen=True)
class RecheckBody:
    """The first check as it was stored, what really went in, and the second reading."""

    check: PlanCheckBody
    machine: MachineTyped
    pours: list[BucketRow]
    poured_at: str
    reading: ReadingTyped
    now: str
    draw_off: Typed | None = None
    dip: DipTyped | None = None


@dataclass(frozen=True)
class RecheckResult:
    """Expected against found; reasons are codes, the likeliest first."""

    assessment: AssessSumpResult
    minutes: float
    reasons: list[str]
    shown: dict[str, Shown]
    doubts: list[Doubt]
    strength: Comparison | None = None
    level: LevelCompared | None = None
