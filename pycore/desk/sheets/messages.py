"""What is asked about sheets and answered, field for field as in ``shared/schema``."""

from __future__ import annotations

from dataclasses import dataclass

from pycore.desk.contract.messages import MachineTyped
from pycore.desk.contract.records import Typed
from pycore.desk.contract.results import Doubt, PourShown
from pycore.quantity.rounding import Shown


@dataclass(frozen=True)
class FillTyped:
    """A fill of a pail."""

    depth: Typed
    volume: Typed


@dataclass(frozen=True)
class PailShapeTyped:
    """A round pail by its inside measures or by two fills."""

    kind: str
    floor_diameter: Typed | None = None
    brim_diameter: Typed | None = None
    height: Typed | None = None
    fills: list[FillTyped] | None = None


@dataclass(frozen=True)
class UsualBucketTyped:
    """A bucket that is mixed often."""

    water: Typed
    concentrate: Typed


@dataclass(frozen=True)
class SlipRecipe:
    """A recipe just as it was shown."""

    pours: list[PourShown]
    strength: Shown
    low: Shown
    high: Shown
    volume: Shown
    cautions: list[str]
    depth: Shown | None = None
    reading: Shown | None = None
    now_strength: Shown | None = None
    now_volume: Shown | None = None
    take_out: Shown | None = None


@dataclass(frozen=True)
class DrawSheetBody:
    """One sheet; which fields it needs depends on its kind."""

    kind: str
    paper: str
    machine: MachineTyped | None = None
    measured_100_mm: Typed | None = None
    code: str | None = None
    address: str | None = None
    circuit_volume: Typed | None = None
    calibrated_on: str | None = None
    pail_shape: PailShapeTyped | None = None
    buckets: list[UsualBucketTyped] | None = None
    recipe: SlipRecipe | None = None
    when: str | None = None
    words: dict[str, str] | None = None
    decimal_sign: str | None = None


@dataclass(frozen=True)
class DrawSheetResult:
    """The pages, and the paper they are for."""

    kind: str
    paper: str
    page_width_mm: float
    page_height_mm: float
    width_mm: float
    height_mm: float
    pages: list[str]
    print_scale: float
    doubts: list[Doubt]
    line_passes: bool | None = None


@dataclass(frozen=True)
class ReadCodeBody:
    """A short code as typed."""

    text: str


@dataclass(frozen=True)
class MakeCodeBody:
    """A number drawn by chance."""

    code_number: int


@dataclass(frozen=True)
class CodeResult:
    """A short code as it is kept and as it is printed."""

    code: str
    printed: str
