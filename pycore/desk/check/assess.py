"""Dip to litres, and litres and strength together, with what the page shows of them."""

from __future__ import annotations

from pycore.desk.check.dip import Dipped
from pycore.desk.contract.reader import Reader
from pycore.desk.contract.records import FluidTyped, ReadingTyped
from pycore.desk.contract.results import AssessSumpResult, Level, Section, Strength
from pycore.quantity.units import UNITS
from pycore.sump.outline import drawing_of
from pycore.sump.sump import Sump

# One dot of the section drawing stands for this much of the full sump.
DOT_PCT = 0.5


def section_of(sump: Sump, depth_mm: float, volume_l: float, strength_pct: float | None) -> Section:
    """The section drawing of a sump that stands at this depth with this strength."""
    dots = None
    if strength_pct is not None:
        dots = round(volume_l * strength_pct / (DOT_PCT * sump.full_volume_l))
    level, full_mark = sump.height_share(depth_mm), sump.height_share(sump.full_depth_mm)
    return Section(level, full_mark, dots, drawing_of(sump))


def notes_on(level: Level | None, strength: Strength | None, blurry: bool) -> list[str]:
    """Codes of what the page says beside the numbers."""
    said = {
        "no_factor": strength is not None and strength.strength_pct is None,
        "above_full_mark": level is not None and level.room_l < 0,
        "may_be_leaner": strength is not None and blurry,
    }
    return [code for code, holds in said.items() if holds]


def is_blurry(reading: ReadingTyped | None, fluid: FluidTyped | None) -> bool:
    """Whether the reading is of the kind that errs on the high side: oil, a blurred line, age."""
    seen = reading is not None and reading.how in ("optical_oily", "blurred")
    return seen or (fluid is not None and fluid.factor_known_by == "old_fluid")


def assessed(
    sump: Sump,
    dipped: Dipped | None,
    strength: Strength | None,
    blurry: bool,
    reader: Reader,
    notes: list[str],
) -> AssessSumpResult:
    """The result message of an assessment; notes come after those of level and strength."""
    section, level = None, None if dipped is None else dipped.level
    said = notes_on(level, strength, blurry)
    if dipped is not None and level is not None:
        said += dipped.notes
        pct = strength.strength_pct.value if strength and strength.strength_pct else None
        section = section_of(sump, level.depth_mm.value, level.volume_l.value, pct)
    return AssessSumpResult([*said, *notes], level, strength, section, reader.doubts)


def is_customary(unit: str) -> bool:
    """Whether a unit belongs to the customary (US or imperial) ones."""
    return UNITS[unit].customary
