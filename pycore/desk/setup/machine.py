"""A machine as typed, read into the rooms' own types, with every contradiction named."""

from __future__ import annotations

from dataclasses import dataclass

from pycore.desk.contract.messages import MachineTyped
from pycore.desk.contract.reader import Reader, placed
from pycore.desk.contract.records import FluidTyped, TargetTyped
from pycore.desk.setup.factor import read_factor
from pycore.desk.setup.instrument import Glass, read_glass
from pycore.desk.setup.tank import Tank, read_tank
from pycore.desk.setup.water import read_water_numbers
from pycore.quantity.fault import Fault
from pycore.reading.factor import Factor
from pycore.recipe.request import Bucket, Mixing, Pail, Target, refuse_contradictions
from pycore.sump.sump import Sump


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

    tank: Tank
    factor: Factor | None
    glass: Glass
    target: Target
    mixing: Mixing
    bucket: Bucket

    @property
    def sump(self) -> Sump:
        """The curve of its tank."""
        return self.tank.sump


def read_machine(reader: Reader, typed: MachineTyped, path: str) -> Machine:
    """The whole machine. Errors: every fault of its parts, at the path of the field."""
    refuse_neat_oil(typed.fluid, f"{path}.fluid")
    if typed.water is not None:
        read_water_numbers(reader, typed.water, f"{path}.water")
    value = reader.value
    machine = Machine(
        read_tank(reader, typed.sump, f"{path}.sump"),
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
