"""A sump as typed, read into its curve, its stick and what does not show on it."""

from __future__ import annotations

from dataclasses import dataclass, fields
from fractions import Fraction

from pycore.desk.contract.messages import SumpTyped, Units
from pycore.desk.contract.reader import Reader, placed
from pycore.desk.contract.records import Typed
from pycore.desk.contract.results import Doubt
from pycore.desk.setup.measures import shape_of
from pycore.quantity.fault import Fault
from pycore.quantity.known import KNOWN
from pycore.quantity.measured import Measured
from pycore.quantity.rounding import Shown, decimals_for, shown, tidy
from pycore.quantity.units import UNITS, from_base, to_base
from pycore.sump.shapes import RIM_OVER_FULL
from pycore.sump.stick import Stick
from pycore.sump.sump import Sump

# Relative standard uncertainty of what does not show on the stick: common practice, no source.
HIDDEN_U_SHARE = 0.25
# Litres of a whole circuit, however they are divided.
MOST_L = KNOWN["circuit_volume_l"].maximum or 0.0

# Fields of each kind of sump; the others belong to every kind.
_MEASURED = ("obstacles",)
FIELDS: dict[str, tuple[str, ...]] = {
    "proportional": ("full_volume",),
    "box": ("length", "width", *_MEASURED),
    "sloped_box": ("length", "width", "rise", "dipped_end", *_MEASURED),
    "stepped": ("steps", *_MEASURED),
    "upright_cylinder": ("diameter", *_MEASURED),
    "horizontal_cylinder": ("diameter", "length", *_MEASURED),
    "frustum": ("bottom_diameter", "top_diameter", "height", *_MEASURED),
    "table": ("points",),
}
_OF_A_KIND = {name for names in FIELDS.values() for name in names}

# What one division is worth is said for a division that people dip to.
_ONE_OF = {"m": "cm", "ft": "in"}


@dataclass(frozen=True)
class Hidden:
    """Coolant that does not show on the stick while the pump runs."""

    volume_l: Measured
    drains_back: bool


@dataclass(frozen=True)
class Tank:
    """A sump with the way it is dipped and what belongs to its circuit."""

    sump: Sump
    stick: Stick
    read_as: str
    is_true_running: bool
    hidden: Hidden | None = None
    rest_l: float | None = None

    @property
    def beside_l(self) -> Measured | None:
        """What is beside the sump at a dip that tells the true level; None where nothing is.

        What drains back at a standstill is in the sump then.
        """
        if self.hidden is None or (self.hidden.drains_back and not self.is_true_running):
            return None
        return self.hidden.volume_l

    @property
    def circuit_full_l(self) -> float:
        """What the whole circuit holds at the full mark, litres."""
        beside_l = self.beside_l
        return self.sump.full_volume_l + (0.0 if beside_l is None else beside_l.value)


def worth_of_one(litres_per_mm: float, units: Units) -> dict[str, Shown]:
    """One unit of the stick and about how much it holds, to two digits."""
    stick = _ONE_OF.get(units.stick, units.stick)
    held_l = litres_per_mm * float(to_base(Fraction(1), UNITS[stick]))
    in_plate = from_base(held_l, UNITS[units.plate])
    decimals = decimals_for(in_plate, 2) if in_plate > 0 else 0
    return {"one": Shown(1.0, 0, stick), "one_holds": shown(held_l, units.plate, decimals)}


def read_stick(
    reader: Reader,
    dip_from: str | None,
    reference_height: Typed | None,
    zero_offset: Typed | None,
    path: str,
) -> Stick:
    """How the level is dipped. Errors: ``missing``, ``not_for_kind`` for the reference height."""
    is_top = dip_from == "top"
    place = f"{path}.reference_height"
    if is_top and reference_height is None:
        raise Fault("missing", place)
    if not is_top and reference_height is not None:
        raise Fault("not_for_kind", place, reference_height.text, {"allowed": ["dip_from: top"]})
    return Stick(
        reader.optional(zero_offset, "zero_offset_mm", f"{path}.zero_offset") or 0.0,
        reader.optional(reference_height, "reference_height_mm", place),
    )


def read_tank(reader: Reader, typed: SumpTyped, path: str) -> Tank:
    """The sump's curve and all that belongs to it.

    Errors: those of ``read_typed``; ``not_for_kind`` for a field of another kind of sump; those
    of the shapes (``order``, ``not_rising``, ``obstacle_too_large``); ``out_of_range`` for a shape
    that holds less or more litres than any sump, also with what is hidden; ``order`` for a rest as
    large as the sump. Paths begin with ``path``.
    """
    _refuse_other_kinds(typed, path)
    sump = _read_sump(reader, typed, path)
    stick = read_stick(reader, typed.dip_from, typed.reference_height, typed.zero_offset, path)
    for name in ("wait_min", "mix_min"):
        _doubt_minutes(reader, name, getattr(typed, name), path)
    rest_l = reader.optional(typed.rest, "rest_l", f"{path}.rest")
    if rest_l is not None and rest_l >= sump.full_volume_l:
        limit = {"below": sump.full_volume_l, "unit": "L"}
        raise Fault("order", f"{path}.rest", rest_l, limit)
    return Tank(
        sump,
        stick,
        typed.read_as or "depth",
        typed.level_true == "running",
        _hidden(reader, typed, sump, path),
        rest_l,
    )


def _doubt_minutes(reader: Reader, name: str, minutes: int | None, path: str) -> None:
    """Asks once about a time that few machines need; it is a count, so it has no unit."""
    low, high = KNOWN[name].usual_low or 0.0, KNOWN[name].usual_high
    if minutes is not None and high is not None and not low <= minutes <= high:
        got = Shown(float(minutes), 0, "1")
        reader.doubts.append(Doubt(f"{path}.{name}", "unusual", got, low, high))


def _refuse_other_kinds(typed: SumpTyped, path: str) -> None:
    own = FIELDS[typed.kind]
    for name in (field.name for field in fields(typed)):
        value = getattr(typed, name)
        if name in _OF_A_KIND and name not in own and value is not None:
            got = value.text if isinstance(value, Typed) else None
            raise Fault("not_for_kind", f"{path}.{name}", got, {"allowed": list(own)})


def _hidden(reader: Reader, typed: SumpTyped, sump: Sump, path: str) -> Hidden | None:
    if typed.hidden is None:
        return None
    place = f"{path}.hidden.volume"
    read = reader.read(typed.hidden.volume, "hidden_l", place)
    volume_l, most_l = read.value, max(0.0, MOST_L - sump.full_volume_l)
    if volume_l > most_l:
        limit = {"minimum": 0.0, "maximum": most_l, "unit": "L"}
        raise placed(Fault("out_of_range", place, volume_l, limit), place, read.unit.name)
    u_l = reader.optional(typed.hidden.u, "hidden_u_l", f"{path}.hidden.u")
    u_l = HIDDEN_U_SHARE * volume_l if u_l is None else u_l
    return Hidden(Measured(volume_l, u_l), typed.hidden.drains_back)


def _read_sump(reader: Reader, typed: SumpTyped, path: str) -> Sump:
    full = reader.read(typed.full_depth, "full_depth_mm", f"{path}.full_depth")
    rim_mm = reader.optional(typed.rim_depth, "rim_depth_mm", f"{path}.rim_depth")
    try:
        sump = _within_volume(shape_of(reader, typed, path, full.value, rim_mm))
    except Fault as fault:
        if fault.path.startswith(path):
            raise
        worked_out = placed(fault, f"{path}.{fault.path}", full.unit.name)
        raise worked_out from None
    if typed.kind not in ("proportional", "table"):
        _doubt_worked_out(reader, sump, path)
    return sump


def _doubt_worked_out(reader: Reader, sump: Sump, path: str) -> None:
    """Asks about litres that follow from measures and that few sumps hold: a slip of a unit."""
    known, full_l = KNOWN["full_volume_l"], sump.full_volume_l
    low, high = known.usual_low or 0.0, known.usual_high or full_l
    if not low <= full_l <= high:
        got = tidy(full_l, "L")
        reader.doubts.append(Doubt(f"{path}.full_volume", "unusual", got, low, high))


def _within_volume(sump: Sump) -> Sump:
    """The sump, refused where its shape would hold more or less than any sump does."""
    known = KNOWN["full_volume_l"]
    least_l, most_l = known.minimum or 0.0, known.maximum or 0.0
    limit = {"minimum": least_l, "maximum": most_l, "unit": "L"}
    for mark, held_l in (("full_depth", sump.full_volume_l), ("rim_depth", sump.rim_volume_l)):
        # The rim that nobody gave lies 10 % over the full mark; a float's last digit is no excess.
        room = (RIM_OVER_FULL if mark == "rim_depth" else 1.0) + 1e-9
        if not least_l * (1 - 1e-9) <= held_l <= most_l * room:
            raise Fault("out_of_range", mark, held_l, limit)
    return sump
