"""What is asked and answered about practice, field for field as in ``shared/schema``."""

from __future__ import annotations

from dataclasses import dataclass

from pycore.desk.contract.messages import PlanCheckBody
from pycore.desk.contract.records import Typed
from pycore.desk.contract.results import Doubt, PourShown, Section
from pycore.quantity.rounding import Shown


@dataclass(frozen=True)
class DealPracticeBody:
    """Which sump to deal."""

    level: str
    number: Typed


@dataclass(frozen=True)
class DealPracticeResult:
    """A check of an invented sump, just as it would have been typed."""

    level: str
    number: int
    kind: str
    check: PlanCheckBody
    steps: list[str]


@dataclass(frozen=True)
class OwnBucketTyped:
    """Buckets alike, as somebody worked them out."""

    count: Typed
    water: Typed
    concentrate: Typed


@dataclass(frozen=True)
class AnswersTyped:
    """What somebody worked out by hand, as far as they have come."""

    volume: Typed | None = None
    strength: Typed | None = None
    room: Typed | None = None
    take_out: Typed | None = None
    top_up: Typed | None = None
    pours: list[OwnBucketTyped] | None = None


@dataclass(frozen=True)
class JudgePracticeBody:
    """A dealt check and what was worked out for it."""

    check: PlanCheckBody
    answers: AnswersTyped


@dataclass(frozen=True)
class StepJudged:
    """One step: the right number, and the person's own beside it."""

    step: str
    right: Shown
    allowed: Shown
    verdict: str | None = None
    given: Shown | None = None
    difference: Shown | None = None
    slip: str | None = None
    own: Shown | None = None


@dataclass(frozen=True)
class RecipeShown:
    """Buckets and where they end, ready to show."""

    verdict: str
    pours: list[PourShown]
    buckets: int
    strength: Shown
    low: Shown
    high: Shown
    volume: Shown
    after: Section | None = None
    take_out: Shown | None = None


@dataclass(frozen=True)
class OwnJudged:
    """A person's recipe beside ours."""

    standing: str
    faults: list[str]
    recipe: RecipeShown
    over: Shown
    left: Shown
    slip: str | None = None


@dataclass(frozen=True)
class JudgePracticeResult:
    """Every step with its right number, and our recipe to compare with."""

    working: dict[str, Shown]
    steps: list[StepJudged]
    solution: RecipeShown
    aim: Shown
    band_low: Shown
    band_high: Shown
    doubts: list[Doubt]
    before: Section | None = None
    recipe: OwnJudged | None = None


@dataclass(frozen=True)
class ChangeTyped:
    """evaporate or carry_out so many litres, or pour so many buckets."""

    kind: str
    volume: Typed | None = None
    count: int | None = None
    water: Typed | None = None
    concentrate: Typed | None = None


@dataclass(frozen=True)
class TrySumpBody:
    """A check and what happens to its sump."""

    check: PlanCheckBody
    changes: list[ChangeTyped]


@dataclass(frozen=True)
class Tried:
    """The sump at one moment."""

    volume: Shown
    strength: Shown
    state: str
    section: Section


@dataclass(frozen=True)
class TrySumpResult:
    """The sump before and after each change, and the buckets that were poured."""

    states: list[Tried]
    pours: list[PourShown]
    doubts: list[Doubt]
