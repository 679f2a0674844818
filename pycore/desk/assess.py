"""Dip to litres, and litres and strength together, with what the page shows of them."""

from __future__ import annotations

from pycore.desk.messages import DipTyped, Units
from pycore.desk.reader import Reader, placed
from pycore.desk.records import FluidTyped, ReadingTyped
from pycore.desk.results import AssessSumpResult, Level, Section, Strength
from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured
from pycore.quantity.rounding import on_rule, shown, shown_with_u
from pycore.quantity.typed import Reading
from pycore.quantity.units import UNITS, from_base
from pycore.sump.shapes import DIP_U_MM, Sump

# One dot of the section drawing stands for this much of the full sump.
DOT_PCT = 0.5


def _dip_read(reader: Reader, sump: Sump, dip: DipTyped, path: str) -> Reading:
    """The dip as typed, refused outside this sump's own limits, in the unit that was typed."""
    try:
        read = reader.read(dip.depth, "depth_mm", path)
    except Fault as fault:
        if fault.code != "out_of_range":
            raise
        unit = UNITS[str(fault.limit["unit"])]
        limit = {"minimum": 0.0, "maximum": from_base(sump.rim_depth_mm, unit), "unit": unit.name}
        raise Fault(fault.code, path, fault.got, limit) from None
    try:
        sump.volume_from_depth(read.value, path)
    except Fault as fault:
        raise placed(fault, path, read.unit.name) from None
    return read


def level_from(reader: Reader, sump: Sump, dip: DipTyped, units: Units, path: str) -> Level:
    """What the dip says. Error: ``out_of_range`` above the rim, limits in the typed unit."""
    read = _dip_read(reader, sump, dip, f"{path}.depth")
    u_mm = DIP_U_MM[dip.how or "hard_floor"]
    if dip.u is not None:
        u_mm = reader.value(dip.u, "depth_u_mm", f"{path}.u")
    depth = Measured(read.value, u_mm)
    volume = sump.volume_measured(depth, f"{path}.depth")
    full_l = sump.full_volume_l
    room_l = full_l - volume.value
    about = shown_with_u(volume.value, volume.u, units.plate)
    return Level(
        depth_mm=depth,
        volume_l=volume,
        full_volume_l=full_l,
        room_l=room_l,
        litres_per_mm=sump.litres_per_mm(depth.value),
        shown={
            "depth": read.shown,
            "volume": about,
            "volume_u": shown(volume.u, units.plate, about.decimals),
            "room": shown(room_l, units.plate, about.decimals),
            "full_volume": shown(full_l, units.plate, about.decimals),
            "full_depth": on_rule(sump.full_depth_mm, units.stick),
        },
    )


def section_of(sump: Sump, depth_mm: float, volume_l: float, strength_pct: float | None) -> Section:
    """The section drawing of a sump that stands at this depth with this strength."""
    dots = None
    if strength_pct is not None:
        dots = round(volume_l * strength_pct / (DOT_PCT * sump.full_volume_l))
    rim_mm = sump.rim_depth_mm
    return Section(depth_mm / rim_mm, sump.full_depth_mm / rim_mm, dots)


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
    level: Level | None,
    strength: Strength | None,
    blurry: bool,
    reader: Reader,
    notes: list[str],
) -> AssessSumpResult:
    """The result message of an assessment; notes come after those of level and strength."""
    section = None
    if level is not None:
        pct = strength.strength_pct.value if strength and strength.strength_pct else None
        section = section_of(sump, level.depth_mm.value, level.volume_l.value, pct)
    return AssessSumpResult(
        [*notes_on(level, strength, blurry), *notes], level, strength, section, reader.doubts
    )


def is_customary(unit: str) -> bool:
    """Whether a unit belongs to the customary (US or imperial) ones."""
    return UNITS[unit].customary
