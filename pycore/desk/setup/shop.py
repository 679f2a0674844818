"""What a shop allows and knows beside the ordinary set-up, every contradiction named."""

from __future__ import annotations

from dataclasses import dataclass

from pycore.desk.contract.messages import MachineTyped, PailTyped, SumpTyped, UnitTyped, WaysTyped
from pycore.desk.contract.reader import Reader, placed
from pycore.desk.contract.records import Typed
from pycore.desk.setup.machine import Machine
from pycore.quantity.fault import Fault
from pycore.recipe.request import (
    Bucket,
    DrawOff,
    Effort,
    Losses,
    MixingUnit,
    OwnFluid,
    Pail,
    refuse_contradicting_pail,
    refuse_contradicting_unit,
)
from pycore.sump.sump import Sump


@dataclass(frozen=True)
class Shop:
    """The optional parts of a question to the planner; None where nothing is known."""

    draw_off: DrawOff
    never_above_l: float | None = None
    pail: Pail | None = None
    effort: Effort | None = None
    unit: MixingUnit | None = None
    own_fluid: OwnFluid | None = None
    losses: Losses | None = None


def read_never_above(reader: Reader, typed: SumpTyped, sump: Sump, path: str) -> float | None:
    """Litres at the mark that may not be passed with the pump stopped, or None without one.

    Errors: those of ``read_typed``; ``order`` below the full mark; ``out_of_range`` above the
    rim; limits in the unit that was typed.
    """
    given, place = typed.never_above_depth, f"{path}.never_above_depth"
    if given is None:
        return None
    read = reader.read(given, "never_above_mm", place)
    limit = {"minimum": sump.full_depth_mm, "maximum": sump.rim_depth_mm, "unit": "mm"}
    if not sump.full_depth_mm <= read.value <= sump.rim_depth_mm:
        code = "order" if read.value < sump.full_depth_mm else "out_of_range"
        raise placed(Fault(code, place, read.value, limit), place, read.unit.name)
    return sump.volume_from_depth(read.value, place)


def read_shop(reader: Reader, typed: MachineTyped, machine: Machine, path: str) -> Shop:
    """Everything optional of a machine.

    Errors: those of ``read_typed`` and ``read_never_above``; ``mark_above_bucket`` for a first
    mark above bucket or jug; ``order`` for a mixing unit upside down; ``not_whole`` for part of a
    bucket to carry.
    """
    ways = typed.ways or WaysTyped()
    pail = _pail(reader, typed.pail, machine.bucket, f"{path}.pail")
    carry_out = ways.carry_out
    return Shop(
        draw_off=DrawOff(bool(ways.draw_off), machine.bucket.water_mark_l),
        never_above_l=read_never_above(reader, typed.sump, machine.sump, f"{path}.sump"),
        pail=pail,
        effort=_effort(reader, ways, f"{path}.ways"),
        unit=_unit(reader, ways.unit, f"{path}.ways.unit"),
        own_fluid=None if ways.own_fluid is None else OwnFluid(ways.own_fluid),
        losses=None
        if carry_out is None
        else Losses(reader.value(carry_out, "carry_out_l_d", f"{path}.ways.carry_out")),
    )


def _pail(reader: Reader, pail: PailTyped | None, bucket: Bucket, path: str) -> Pail | None:
    if pail is None:
        return None

    units: dict[str, str] = {}

    def read(given: Typed | None, quantity: str, name: str) -> float | None:
        if given is None:
            return None
        reading = reader.read(given, quantity, f"{path}.{name}")
        units[name] = reading.unit.name
        return reading.value

    known = Pail(
        first_mark_l=read(pail.first_mark, "first_mark_l", "first_mark"),
        jug_first_mark_l=read(pail.jug_first_mark, "jug_first_mark_l", "jug_first_mark"),
        jug_max_l=read(pail.jug_size, "jug_max_l", "jug_size"),
        measure_by=pail.measure_by,
    )
    try:
        refuse_contradicting_pail(known, bucket)
    except Fault as fault:
        name = fault.path.removeprefix("pail.").removesuffix("_l")
        raise placed(fault, f"{path}.{name}", units[name]) from None
    return known


def _effort(reader: Reader, ways: WaysTyped, path: str) -> Effort | None:
    if ways.most_buckets is None and ways.heaviest is None:
        return None
    most = heaviest_kg = None
    if ways.most_buckets is not None:
        place = f"{path}.most_buckets"
        number = reader.read(ways.most_buckets, "most_buckets", place).number
        if number.denominator != 1:
            raise Fault("not_whole", place, ways.most_buckets.text)
        most = int(number)
    if ways.heaviest is not None:
        heaviest_kg = reader.value(ways.heaviest, "heaviest_kg", f"{path}.heaviest")
    return Effort(most_buckets=most, heaviest_kg=heaviest_kg)


def _unit(reader: Reader, typed: UnitTyped | None, path: str) -> MixingUnit | None:
    if typed is None:
        return None
    unit = MixingUnit(
        reader.value(typed.lowest, "lowest_pct", f"{path}.lowest"),
        reader.value(typed.highest, "highest_pct", f"{path}.highest"),
        reader.value(typed.step, "step_pct", f"{path}.step"),
    )
    try:
        refuse_contradicting_unit(unit)
    except Fault as fault:
        place = fault.path.removeprefix("unit.").removesuffix("_pct")
        raise Fault(fault.code, f"{path}.{place}", fault.got, fault.limit) from None
    return unit
