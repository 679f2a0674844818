"""A machine as typed, read into the rooms' own types, with every contradiction named."""

from __future__ import annotations

from dataclasses import dataclass

from pycore.desk.messages import FluidTyped, MachineTyped, TargetTyped
from pycore.desk.reader import Reader, placed
from pycore.desk.tank import Tank, read_tank
from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured
from pycore.reading.strength import FACTOR_U_SHARE
from pycore.recipe.request import Bucket, Mixing, Target, refuse_contradictions
from pycore.sump.sump import Sump


def refuse_neat_oil(fluid: FluidTyped, path: str) -> None:
    """Raises ``neat_oil``: water in such a machine does damage and can start a fire."""
    if fluid.type == "neat_oil":
        allowed = {"allowed": ["soluble_oil", "semi_synthetic", "synthetic"]}
        raise Fault("neat_oil", f"{path}.type", fluid.type, allowed)


def read_factor(reader: Reader, fluid: FluidTyped, path: str) -> Measured | None:
    """The fluid's factor with its standard uncertainty, or None when it is not known."""
    if fluid.factor is None:
        return None
    value = reader.value(fluid.factor, "factor", f"{path}.factor")
    return Measured(value, value * FACTOR_U_SHARE[fluid.factor_known_by or "sheet"])


def read_zero_brix(reader: Reader, fluid: FluidTyped, path: str) -> float:
    """What the instrument shows in water, Brix; 0 when it was set to 0."""
    return 0.0 if fluid.zero is None else reader.value(fluid.zero, "zero_brix", f"{path}.zero")


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
    factor: Measured | None
    zero_brix: float
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
    value = reader.value
    machine = Machine(
        read_tank(reader, typed.sump, f"{path}.sump"),
        read_factor(reader, typed.fluid, f"{path}.fluid"),
        read_zero_brix(reader, typed.fluid, f"{path}.fluid"),
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
    try:
        refuse_contradictions(machine.target, machine.mixing, machine.bucket)
    except Fault as fault:
        # The typed fields carry no unit in their names.
        place = fault.path.removesuffix("_pct").removesuffix("_l")
        raise placed(fault, f"{path}.{place}", typed.units.pail) from None
    return machine
