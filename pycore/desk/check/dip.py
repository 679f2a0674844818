"""What was read at the sump to litres: stick, tape, printed scale or gauge, pump on or off."""

from __future__ import annotations

import math
from dataclasses import dataclass

from pycore.desk.contract.messages import DipTyped, Units
from pycore.desk.contract.reader import Reader, placed
from pycore.desk.contract.records import Typed
from pycore.desk.contract.results import Level
from pycore.desk.setup.bounds import refuse_too_many_litres, refuse_unsure_litres
from pycore.desk.setup.tank import Hidden, Tank, worth_of_one
from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured
from pycore.quantity.rounding import on_rule, shown, shown_with_u
from pycore.quantity.typed import Reading
from pycore.quantity.units import UNITS, from_base
from pycore.recipe.outlook import LIKELY_K, NEW_CHARGE_SHARE
from pycore.sump.shapes import DIP_U_MM
from pycore.sump.stick import SIDES_MOST_MM, both_sides, gauge_depth
from pycore.sump.sump import Sump

# A level is rough whose likely error is more of the full sump than this (judgement, no source).
ROUGH_LEVEL_SHARE = 0.03


@dataclass(frozen=True)
class Dipped:
    """A level, what the page says beside it, and what counts in the balance beside the sump.

    level_u_l: standard uncertainty of a rough level alone, litres; None where it is well known.
    """

    level: Level
    notes: list[str]
    hidden_l: Measured | None
    blocked: Fault | None
    level_u_l: float | None = None


def _stick_read(reader: Reader, tank: Tank, typed: Typed, path: str) -> tuple[float, Reading]:
    """Depth from the floor, refused outside this sump, with limits as its stick shows them."""
    quantity = "depth_mm" if tank.stick.reference_height_mm is None else "outage_mm"
    try:
        read = reader.read(typed, quantity, path)
    except Fault as fault:
        if fault.code != "out_of_range":
            raise
        unit = UNITS[str(fault.limit["unit"])]
        # A number that no sump could show: this sump's own limits say more than the general ones.
        sides = {"minimum": 0.0, "maximum": tank.sump.rim_depth_mm, "unit": "mm"}
        turned = tank.stick.as_shown(Fault(fault.code, path, 0.0, sides), path)
        limit = placed(turned, path, unit.name).limit
        raise Fault(fault.code, path, fault.got, limit) from None
    depth_mm = tank.stick.depth_mm(read.value)
    try:
        tank.sump.volume_from_depth(depth_mm, path)
    except Fault as fault:
        raise placed(tank.stick.as_shown(fault, path), path, read.unit.name) from None
    return depth_mm, read


def _scale_read(reader: Reader, tank: Tank, typed: Typed, path: str) -> tuple[float, Reading]:
    """Depth at which the sump holds what its printed scale shows."""
    read = reader.read(typed, "volume_l", path)
    try:
        return tank.sump.depth_from_volume(read.value, path), read
    except Fault as fault:
        raise placed(fault, path, read.unit.name) from None


def _is_running(tank: Tank, dip: DipTyped) -> bool:
    return tank.is_true_running if dip.pump is None else dip.pump == "running"


def _dip_u_mm(reader: Reader, tank: Tank, dip: DipTyped, path: str) -> float:
    if dip.u is not None:
        return reader.value(dip.u, "depth_u_mm", f"{path}.u")
    u_mm = DIP_U_MM[dip.how or "hard_floor"]
    # What still drains back or is pumped round has no still surface.
    is_still = dip.waited is not False and not _is_running(tank, dip)
    return u_mm if is_still else max(u_mm, DIP_U_MM["running"])


def _gauge_read(reader: Reader, tank: Tank, dip: DipTyped, path: str) -> tuple[Measured, Reading]:
    """The rough depth of a gauge. Errors: ``order``, ``not_for_kind`` for fields of a stick."""
    for name in ("clean_side", "u"):
        value = getattr(dip, name)
        if value is not None:
            raise Fault("not_for_kind", f"{path}.{name}", value.text, {"allowed": ["gauge_to"]})
    read = reader.read(dip.depth, "gauge", f"{path}.depth")
    high_share = reader.optional(dip.gauge_to, "gauge", f"{path}.gauge_to")
    try:
        depth = gauge_depth(read.value, high_share, tank.sump.full_depth_mm)
    except Fault as fault:
        raise Fault(fault.code, f"{path}.{fault.path}", fault.got, fault.limit) from None
    tank.sump.volume_from_depth(depth.value, f"{path}.depth")
    return depth, read


def _depth_read(
    reader: Reader, tank: Tank, dip: DipTyped, path: str
) -> tuple[Measured, Reading, float | None]:
    """Depth, what was read, and how much higher the dirty side of a divided tank stands, mm."""
    read_as = dip.read_as or tank.read_as
    if read_as == "gauge":
        return *_gauge_read(reader, tank, dip, path), None
    if dip.gauge_to is not None:
        allowed = {"allowed": ["read_as: gauge"]}
        raise Fault("not_for_kind", f"{path}.gauge_to", dip.gauge_to.text, allowed)
    one_side = _scale_read if read_as == "volume" else _stick_read
    depth_mm, read = one_side(reader, tank, dip.depth, f"{path}.depth")
    depth = Measured(depth_mm, _dip_u_mm(reader, tank, dip, path))
    if dip.clean_side is None:
        return depth, read, None
    clean_mm, _ = one_side(reader, tank, dip.clean_side, f"{path}.clean_side")
    sides = both_sides(depth, Measured(clean_mm, depth.u))
    return sides.depth, read, sides.difference_mm


def _ask_where_unusual(
    reader: Reader, tank: Tank, read: Reading, depth: Measured, path: str
) -> None:
    """Asks once about a level below a fifth of the full sump or above its mark.

    Without an earlier dip nothing else could notice a slip of a digit. Common practice, no source.
    """
    sump, unit = tank.sump, read.unit
    low_l = NEW_CHARGE_SHARE * sump.full_volume_l
    low_mm, high_mm = sump.depth_from_volume(low_l, path), sump.full_depth_mm
    is_asked_already = any(doubt.path == path for doubt in reader.doubts)
    if is_asked_already or low_mm <= depth.value <= high_mm + 2 * depth.u:
        return
    if read.quantity == "volume_l":
        ends = (low_l, sump.full_volume_l)
    else:
        ends = (tank.stick.shown_mm(low_mm), tank.stick.shown_mm(high_mm))
    usual = (from_base(min(ends), unit), from_base(max(ends), unit))
    reader.doubt("unusual_level", path, read.shown, usual)


def _blocked(sides_mm: float | None, is_running: bool, stick: str, path: str) -> Fault | None:
    """The refusal for sides that differ at rest; while the pump runs they always do."""
    if sides_mm is None or is_running or abs(sides_mm) <= SIDES_MOST_MM:
        return None
    limit = {"maximum": SIDES_MOST_MM, "unit": "mm"}
    fault = Fault("screen_blocked", path, abs(sides_mm), limit)
    return placed(fault, path, stick)


def _drained(volume: Measured, hidden: Hidden | None, tank: Tank, is_running: bool) -> Measured:
    """The litres in the pump state of the marks, where the dip was taken in the other one.

    Error: ``order`` where more would run into the pipes than there is.
    """
    if is_running == tank.is_true_running or hidden is None or not hidden.drains_back:
        return volume
    held = hidden.volume_l
    change_l = held.value if is_running else -held.value
    if volume.value + change_l < 0:
        limit = {"maximum": volume.value, "unit": "L"}
        raise Fault("order", "hidden.volume", held.value, limit)
    return Measured(volume.value + change_l, math.hypot(volume.u, held.u))


def level_from(
    reader: Reader, tank: Tank, dip: DipTyped, units: Units, path: str, sump_path: str
) -> Dipped:
    """What was read says about the sump.

    Errors: ``out_of_range`` outside the sump, limits as the stick or scale shows them in the unit
    that was typed; ``not_for_kind`` and ``order`` for fields that contradict each other;
    ``too_uncertain`` where the litres could be off by more than the sump holds.
    """
    sump = tank.sump
    depth, read, sides_mm = _depth_read(reader, tank, dip, path)
    if read.quantity != "gauge":
        _ask_where_unusual(reader, tank, read, depth, f"{path}.depth")
    is_running = _is_running(tank, dip)
    is_other = is_running != tank.is_true_running
    hidden = tank.hidden
    volume = sump.volume_measured(depth, f"{path}.depth")
    try:
        volume = _drained(volume, hidden, tank, is_running)
    except Fault as fault:
        raise placed(fault, f"{sump_path}.{fault.path}", units.plate) from None
    hidden_l = tank.beside_l
    beside = hidden_l or Measured(0.0, 0.0)
    circuit_l = volume.value + beside.value
    refuse_too_many_litres(tank, depth.value, circuit_l, f"{path}.depth", units.stick)
    try:
        refuse_unsure_litres(tank, volume, beside, dip, (path, sump_path))
    except Fault as fault:
        raise placed(fault, fault.path, units.plate) from None
    drains = hidden is not None and hidden.drains_back
    blocked = _blocked(sides_mm, is_running, units.stick, f"{path}.clean_side")
    said = {
        "screen_blocked": blocked is not None,
        "not_waited": dip.waited is False,
        "other_pump_state": is_other and not drains,
        "drain_back_counted": is_other and drains,
        "below_rest": tank.rest_l is not None and volume.value <= tank.rest_l,
        "rough_level": (dip.read_as or tank.read_as) == "gauge",
    }
    level = _level(tank, depth, volume, hidden_l, read, units, sides_mm)
    notes = [code for code, holds in said.items() if holds]
    moved_u_l = hidden.volume_l.u if is_other and hidden is not None and drains else 0.0
    return Dipped(level, notes, hidden_l, blocked, _rough_u_l(sump, depth, moved_u_l))


def _rough_u_l(sump: Sump, depth: Measured, moved_u_l: float) -> float | None:
    """Litres by which the level may be out, with what drains back; None where that is little.

    What plate or table are out by moves the mark too and does not count.
    """
    u_l = math.hypot(sump.mean_slope_l_per_mm(depth) * depth.u, moved_u_l)
    return u_l if LIKELY_K * u_l > ROUGH_LEVEL_SHARE * sump.full_volume_l else None


def _level(
    tank: Tank,
    depth: Measured,
    volume: Measured,
    hidden_l: Measured | None,
    read: Reading,
    units: Units,
    sides_mm: float | None,
) -> Level:
    sump, full_l = tank.sump, tank.sump.full_volume_l
    room_l = full_l - volume.value
    slope = sump.litres_per_mm(depth.value)
    about = shown_with_u(volume.value, volume.u, units.plate)
    is_dipped = read.quantity == "depth_mm" and sides_mm is None
    said = {
        "depth": read.shown if is_dipped else on_rule(depth.value, units.stick),
        "volume": about,
        "volume_u": shown(volume.u, units.plate, about.decimals),
        "room": shown(room_l, units.plate, about.decimals),
        # Above the mark there is no room but so much too much.
        **({"over": shown(-room_l, units.plate, about.decimals)} if room_l < 0 else {}),
        "full_volume": shown(full_l, units.plate, about.decimals),
        "full_depth": on_rule(sump.full_depth_mm, units.stick),
        **worth_of_one(slope, units),
    }
    circuit = None
    if hidden_l is not None:
        u_l = math.hypot(volume.u, hidden_l.u)
        circuit = Measured(volume.value + hidden_l.value, u_l)
        said["circuit"] = shown_with_u(circuit.value, circuit.u, units.plate)
    return Level(
        depth_mm=depth,
        volume_l=volume,
        full_volume_l=full_l,
        room_l=room_l,
        litres_per_mm=slope,
        shown=said,
        circuit_l=circuit,
        pumpable_l=None if tank.rest_l is None else volume.value - tank.rest_l,
        sides_mm=sides_mm,
    )
