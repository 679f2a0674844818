"""A machine as typed, read into the rooms' own types, with every contradiction named."""

from __future__ import annotations

from dataclasses import dataclass

from pycore.desk.factor import read_factor
from pycore.desk.instrument import Glass, read_glass
from pycore.desk.messages import MachineTyped, SumpTyped
from pycore.desk.reader import Reader, placed
from pycore.desk.records import FluidTyped, TargetTyped, Typed
from pycore.desk.water import read_water_numbers
from pycore.quantity.fault import Fault
from pycore.quantity.known import KNOWN
from pycore.quantity.typed import Reading
from pycore.reading.factor import Factor
from pycore.recipe.request import Bucket, Mixing, Pail, Target, refuse_contradictions
from pycore.sump.shapes import RIM_OVER_FULL, VOLUME_U_SHARE, Sump, box, proportional, table


def read_sump(reader: Reader, typed: SumpTyped, path: str) -> Sump:
    """The sump's curve from depth to litres.

    Errors: those of ``read_typed``; ``order`` for a rim below the full mark or a full mark above
    the table; ``not_rising`` for a table that does not rise; ``out_of_range`` for a shape that
    holds less or more litres than any sump; paths begin with ``path``.
    """
    full = reader.read(typed.full_depth, "full_depth_mm", f"{path}.full_depth")
    rim_mm = None
    if typed.rim_depth is not None:
        rim_mm = reader.value(typed.rim_depth, "rim_depth_mm", f"{path}.rim_depth")
    try:
        return _within_volume(_shape(reader, typed, path, full, rim_mm))
    except Fault as fault:
        if fault.path.startswith(path):
            raise
        raise placed(fault, f"{path}.{fault.path}", full.unit.name) from None


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


def _shape(
    reader: Reader, typed: SumpTyped, path: str, full: Reading, rim_mm: float | None
) -> Sump:
    u_share = VOLUME_U_SHARE[typed.volume_known_by]
    if typed.kind == "table":
        rows = [
            (
                reader.value(point.depth, "depth_mm", f"{path}.points[{i}].depth"),
                reader.value(point.volume, "volume_l", f"{path}.points[{i}].volume"),
            )
            for i, point in enumerate(typed.points or [])
        ]
        return table([row[0] for row in rows], [row[1] for row in rows], full.value, u_share)
    if typed.kind == "box":
        length = reader.value(_given(typed.length), "length_mm", f"{path}.length")
        width = reader.value(_given(typed.width), "length_mm", f"{path}.width")
        return box(length, width, full.value, u_share, rim_mm)
    volume = reader.value(_given(typed.full_volume), "full_volume_l", f"{path}.full_volume")
    return proportional(full.value, volume, u_share, rim_mm)


def _given(typed: Typed | None) -> Typed:
    # The schema asks for it wherever this is called.
    if typed is None:
        raise Fault("missing", "body")
    return typed


def refuse_neat_oil(fluid: FluidTyped, path: str) -> None:
    """Raises ``neat_oil``: water in such a machine does damage and can start a fire."""
    if fluid.type == "neat_oil":
        allowed = {"allowed": ["soluble_oil", "semi_synthetic", "synthetic"]}
        raise Fault("neat_oil", f"{path}.type", fluid.type, allowed)


def read_target(reader: Reader, typed: TargetTyped, path: str) -> Target:
    """The target band and aim, per cent by volume, not yet compared with each other."""
    return Target(
        reader.value(typed.low, "low_pct", f"{path}.low"),
        reader.value(typed.aim, "aim_pct", f"{path}.aim"),
        reader.value(typed.high, "high_pct", f"{path}.high"),
    )


@dataclass(frozen=True)
class Machine:
    """A machine in the rooms' own types."""

    sump: Sump
    factor: Factor | None
    glass: Glass
    target: Target
    mixing: Mixing
    bucket: Bucket


def read_machine(reader: Reader, typed: MachineTyped, path: str) -> Machine:
    """The whole machine. Errors: every fault of its parts, at the path of the field."""
    refuse_neat_oil(typed.fluid, f"{path}.fluid")
    if typed.water is not None:
        read_water_numbers(reader, typed.water, f"{path}.water")
    value = reader.value
    machine = Machine(
        read_sump(reader, typed.sump, f"{path}.sump"),
        read_factor(reader, typed.fluid, f"{path}.fluid"),
        read_glass(reader, typed.instrument, typed.fluid, path),
        read_target(reader, typed.target, f"{path}.target"),
        Mixing(
            value(typed.mixing.strong, "strong_pct", f"{path}.mixing.strong"),
            value(typed.mixing.weak, "weak_pct", f"{path}.mixing.weak"),
            value(typed.mixing.closeness, "closeness_pct", f"{path}.mixing.closeness"),
        ),
        Bucket(
            value(typed.bucket.usable, "usable_l", f"{path}.bucket.usable"),
            value(typed.bucket.water_mark, "water_mark_l", f"{path}.bucket.water_mark"),
            value(typed.bucket.jug_mark, "jug_mark_l", f"{path}.bucket.jug_mark"),
        ),
    )
    pail = Pail(measure_by=typed.pail.measure_by) if typed.pail else None
    try:
        refuse_contradictions(machine.target, machine.mixing, machine.bucket, pail)
    except Fault as fault:
        # The typed fields carry no unit in their names.
        place = fault.path.removesuffix("_pct").removesuffix("_l")
        unit = typed.units.jug if place == "bucket.jug_mark" else typed.units.pail
        raise placed(fault, f"{path}.{place}", unit) from None
    return machine
