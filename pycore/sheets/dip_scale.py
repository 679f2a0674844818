"""The dip scale: litres (or gallons) of this sump along the stick, with add and full."""

from __future__ import annotations

from dataclasses import dataclass, replace

from pycore.quantity.measured import Measured
from pycore.quantity.rounding import Shown, on_rule, shown, tidy
from pycore.quantity.units import UNITS, from_base
from pycore.sheets.ladder import marks, ruler
from pycore.sheets.language import Language
from pycore.sheets.paper import Paper
from pycore.sheets.scale_page import Said, Tank, scale_pages
from pycore.sheets.strip import Band, Line, Scale, pieces_of
from pycore.sump.sump import Sump

# A full sump of less than two buckets has no room for a whole one: half of it counts then.
_SMALLEST_ADD_SHARE = 0.5
# A band less high than this cannot be told from its edges, nor from the error of a dip.
_LEAST_BAND_MM = 10.0
# Marks nearer than this are one and the same.
_HAIR_MM = 1e-6
# A likely range is two standard uncertainties to either side.
_LIKELY_K = 2


@dataclass(frozen=True)
class DipScale:
    """What a dip scale is made of.

    plate, stick and pail are units, usable_l is one full bucket, code the machine's short code,
    never_above_mm the mark that may not be passed. is_true_running says that the marks hold while
    the pump runs. reference_mm is the height of the fixed point above the floor where the level is
    dipped from the top, offset_mm what has to be added to the numbers of the machine's own stick.
    """

    name: str
    sump: Sump
    plate: str
    stick: str
    pail: str
    usable_l: float
    code: str | None = None
    never_above_mm: float | None = None
    is_true_running: bool = False
    reference_mm: float | None = None
    offset_mm: float = 0.0


def add_depth_mm(sump: Sump, usable_l: float) -> float:
    """Depth below which one whole bucket fits under the full mark, mm; a visible way below it.

    In a sump of less than two buckets, half of it; never below the end of the stick.
    """
    full_l, full_mm = sump.full_volume_l, sump.full_depth_mm
    least_l = max(full_l * _SMALLEST_ADD_SHARE, sump.least_volume_l)
    bucket_mm = sump.depth_from_volume(max(full_l - usable_l, least_l), "full_depth")
    half_mm = sump.depth_from_volume(least_l, "full_depth")
    return max(min(bucket_mm, full_mm - _LEAST_BAND_MM), min(half_mm, bucket_mm))


def read_off(volume_l: float, unit: str) -> Shown:
    """Litres as they are read off: whole, or a decimal where the unit is as large as a gallon."""
    return shown(volume_l, unit, 0 if float(UNITS[unit].factor) <= 1 else 1)


def _place_mm(sump: Sump, unit: str, amount: float) -> float:
    volume_l = min(amount * float(UNITS[unit].factor), sump.rim_volume_l)
    volume_l = max(volume_l, sump.least_volume_l)
    return sump.depth_from_volume(volume_l, "rim_depth")


def scale_of(ask: DipScale, language: Language) -> Scale:
    """The scale from the stick's end, marked where the curve puts each amount: up to the rim, or
    turned round up to the fixed point at the top that the level is dipped from.
    """
    scale = _innage(ask, language)
    height_mm = ask.reference_mm
    return scale if height_mm is None else _outage(scale, height_mm, ask.stick)


def _outage(scale: Scale, height_mm: float, stick: str) -> Scale:
    """The scale of a stick whose end touches the surface: less above it, the more there is."""
    marks = [replace(mark, at_mm=height_mm - mark.at_mm) for mark in scale.marks]
    bands = [
        replace(band, low_mm=height_mm - band.high_mm, high_mm=height_mm - band.low_mm)
        for band in scale.bands
    ]
    end = next(line for line in scale.lines if line.at_mm == 0)
    lines = [replace(line, at_mm=height_mm - line.at_mm) for line in scale.lines if line is not end]
    return replace(
        scale,
        length_mm=height_mm,
        ruler=ruler(height_mm, stick),
        # What lies above the fixed point cannot be read at it.
        marks=sorted((mark for mark in marks if mark.at_mm >= 0), key=lambda mark: mark.at_mm),
        bands=[replace(band, low_mm=max(0.0, band.low_mm)) for band in bands],
        lines=[*(line for line in lines if line.at_mm > 0), end],
    )


def _innage(ask: DipScale, language: Language) -> Scale:
    sump, plate, rim_mm = ask.sump, ask.plate, ask.sump.rim_depth_mm
    least, top = (from_base(v, UNITS[plate]) for v in (sump.least_volume_l, sump.rim_volume_l))
    full_mm, add_mm = sump.full_depth_mm, add_depth_mm(sump, ask.usable_l)

    def notes(depth_mm: float) -> tuple[str, str]:
        # At a shallow end the end of the stick says nothing but this: so much or less.
        volume_l = sump.least_volume_l
        if depth_mm > 0:
            volume_l = sump.volume_from_depth(depth_mm, "depth")
        on_stick_mm = depth_mm if ask.reference_mm is None else ask.reference_mm - depth_mm
        depth = language.amount(on_rule(on_stick_mm, ask.stick))
        return depth, language.amount(read_off(volume_l, plate))

    bucket = language.say(
        "add_note", bucket=language.amount(tidy(ask.usable_l, ask.pail, most_decimals=2))
    )
    lines = [
        Line(full_mm, language.say("full"), notes(full_mm)),
        Line(add_mm, language.say("add"), (*notes(add_mm), bucket), weight_mm=0.6),
        Line(0.0, language.say("zero"), (language.say("zero_note"),), weight_mm=0.35),
    ]
    never_mm = ask.never_above_mm
    if never_mm is not None and never_mm > full_mm + _HAIR_MM:
        lines.append(Line(never_mm, language.say("never_above"), notes(never_mm), weight_mm=0.6))
    return Scale(
        length_mm=rim_mm,
        ruler=ruler(rim_mm, ask.stick),
        marks=marks(
            top,
            rim_mm,
            lambda amount: _place_mm(sump, plate, amount),
            least,
            language.decimal_sign,
        ),
        unit=plate,
        ruler_unit="in" if ask.stick in ("in", "ft") else "mm",
        bands=[Band(0, add_mm, full_mm, "hatch")],
        lines=lines,
    )


def dip_scale(ask: DipScale, paper: Paper, language: Language) -> list[str]:
    """The pages of the dip scale as SVG.

    Errors: none of its own; the sump's depths lie between the floor and the rim.
    """
    scale = scale_of(ask, language)
    sump = ask.sump
    full = sump.volume_measured(Measured(sump.full_depth_mm, 0.0), "full_depth")
    likely = language.number(shown(100 * _LIKELY_K * full.u / full.value, "%", 0))
    facts = [
        language.say("small_numbers", unit=scale.ruler_unit),
        language.say("large_numbers", unit=ask.plate),
        language.say("likely_within", percent=likely),
    ]
    is_top = ask.reference_mm is not None
    if is_top:
        facts.append(language.say("from_the_top"))
    if ask.offset_mm:
        offset = language.amount(on_rule(ask.offset_mm, ask.stick))
        facts.append(language.say("own_zero", offset=offset))
    if ask.code is not None:
        facts.insert(0, language.say("code_is", code=ask.code))
    # What is in one piece has nothing to glue.
    keys = [f"dip_step_{i}" for i in range(1, 5) if i != 2 or len(pieces_of(scale, paper)) > 1]
    dip = "dip_step_top" if is_top else "dip_step_5"
    keys.append(f"{dip}_running" if ask.is_true_running else dip)
    steps = [language.say(key) for key in keys]
    depth = language.amount(on_rule(sump.full_depth_mm, ask.stick))
    tank = Tank(sump.height_share(sump.full_depth_mm), depth)
    said = Said(language.say("dip_scale"), ask.name, facts, steps, tank=tank)
    return scale_pages(scale, said, paper, language)
