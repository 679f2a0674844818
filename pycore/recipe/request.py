"""What a plan is asked with, and the refusal of settings that contradict each other."""

from __future__ import annotations

from dataclasses import dataclass, replace

from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured, moves_with, result, variable
from pycore.recipe.pours import mix_minutes

# Room for the last digit of a float where marks are added up.
_HAIR_L = 1e-9


@dataclass(frozen=True)
class SumpState:
    """What is in the sump now: litres and per cent by volume, with standard uncertainties."""

    volume_l: Measured
    strength_pct: Measured


@dataclass(frozen=True)
class MixedState(SumpState):
    """The same with hidden coolant mixed in; one error moves both where it has its own strength.

    per_l_pct: points by which the strength moves with a litre of the volume's error.
    """

    per_l_pct: float


@dataclass(frozen=True)
class HiddenState:
    """What does not show on the stick, in litres; None for the sump's own coolant and strength.

    One coolant has one error of the reading: a strength of its own is another measurement.
    """

    volume_l: Measured
    strength_pct: Measured | None = None


@dataclass(frozen=True)
class Target:
    """Target band in per cent by volume, edges included, and the strength to aim for."""

    low_pct: float
    aim_pct: float
    high_pct: float


@dataclass(frozen=True)
class Mixing:
    """Strongest premix and weakest mix of this fluid, and how near to the aim is near enough."""

    strong_pct: float
    weak_pct: float
    closeness_pct: float


@dataclass(frozen=True)
class Bucket:
    """What one bucket holds at the most and the distance between marks of bucket and jug, L."""

    usable_l: float
    water_mark_l: float
    jug_mark_l: float


@dataclass(frozen=True)
class DrawOff:
    """Whether coolant may be taken out, the marks of the vessel that takes it, and how much can be.

    Without most_l, all that is in the sump.
    """

    allowed: bool
    mark_l: float
    most_l: float | None = None


@dataclass(frozen=True)
class Pail:
    """How a real pail and jug are read: lowest marks, size of the jug, what measures concentrate.

    With measure_by "pail" the concentrate is measured by the pail's own marks on top of the
    water, so that it comes in whole water marks.
    """

    first_mark_l: float | None = None
    jug_first_mark_l: float | None = None
    jug_max_l: float | None = None
    measure_by: str | None = None


@dataclass(frozen=True)
class Effort:
    """What one person carries in a check; beyond it another way comes first."""

    most_buckets: int | None = None
    heaviest_kg: float | None = None


@dataclass(frozen=True)
class MixingUnit:
    """A mixing unit (proportioner): its range and the steps of its setting, per cent by volume."""

    lowest_pct: float
    highest_pct: float
    step_pct: float


@dataclass(frozen=True)
class ReadyMix:
    """A mix that stands ready on the cart."""

    strength_pct: float
    volume_l: float


@dataclass(frozen=True)
class Stock:
    """What is at hand; None where there is enough."""

    concentrate_l: float | None = None
    water_l: float | None = None
    ready_mixes: list[ReadyMix] | None = None


@dataclass(frozen=True)
class OwnFluid:
    """Whether the sump's own healthy fluid may carry concentrate back into it."""

    allowed: bool


@dataclass(frozen=True)
class Losses:
    """What leaves the sump with parts and chips, litres a day."""

    carry_out_l_d: float


@dataclass(frozen=True)
class PlanRequest:
    """One question to the planner; fill_to_l is the mark that is filled to.

    level_u_l is the standard uncertainty of a rough level alone: what a plate or a table is out by
    moves that mark as well.
    """

    sump: SumpState
    fill_to_l: float
    target: Target
    mixing: Mixing
    bucket: Bucket
    draw_off: DrawOff
    never_above_l: float | None = None
    hidden: HiddenState | None = None
    pail: Pail | None = None
    effort: Effort | None = None
    unit: MixingUnit | None = None
    stock: Stock | None = None
    own_fluid: OwnFluid | None = None
    losses: Losses | None = None
    density_kg_l: float | None = None
    level_u_l: float | None = None
    mix_min: int | None = None

    @property
    def run_min(self) -> float:
        """Minutes that the pump runs before the second reading, its own or usual ones."""
        return self.mix_min or mix_minutes(self.fill_to_l)


def with_sump(ask: PlanRequest, volume_l: float, strength_pct: float) -> PlanRequest:
    """The same question for another state of the sump; its uncertainties stay."""
    volume = Measured(volume_l, ask.sump.volume_l.u)
    strength = Measured(strength_pct, ask.sump.strength_pct.u)
    return replace(ask, sump=replace(ask.sump, volume_l=volume, strength_pct=strength))


def whole_circuit(ask: PlanRequest) -> PlanRequest:
    """The question with hidden liquid (pipes, filters, a second tank) mixed into the sump.

    Volumes add, strengths mix; the mark to fill to rises by the hidden litres, since they do not
    show on the stick. Nor can they be taken out: what is in the pipes stays there.
    """
    if ask.hidden is None:
        return ask
    seen, hidden = variable(ask.sump.volume_l, "volume"), variable(ask.hidden.volume_l, "hidden")
    volume = seen + hidden
    strength, per_l_pct = ask.sump.strength_pct, 0.0
    if ask.sump.volume_l.value + ask.hidden.volume_l.value > 0:
        seen_pct, own_pct = variable(strength, "strength"), ask.hidden.strength_pct
        hidden_pct = seen_pct if own_pct is None else variable(own_pct, "hidden_strength")
        mixed = (seen * seen_pct + hidden * hidden_pct) / volume
        strength = result(mixed)
        # Of one strength it is as strong however much there is.
        per_l_pct = 0.0 if own_pct is None else moves_with(mixed, volume)
    above_l = ask.hidden.volume_l.value
    never = None if ask.never_above_l is None else ask.never_above_l + above_l
    seen_l, most_l = ask.sump.volume_l.value, ask.draw_off.most_l
    drainable_l = seen_l if most_l is None else min(seen_l, most_l)
    return replace(
        ask,
        sump=MixedState(result(volume), strength, per_l_pct),
        fill_to_l=ask.fill_to_l + above_l,
        never_above_l=never,
        draw_off=replace(ask.draw_off, most_l=drainable_l),
        hidden=None,
    )


def measured_by(ask: PlanRequest) -> PlanRequest:
    """The question with concentrate measured by what the shop measures it with."""
    if ask.pail is None or ask.pail.measure_by != "pail":
        return ask
    mark_l = ask.bucket.water_mark_l
    return replace(ask, bucket=replace(ask.bucket, jug_mark_l=mark_l))


def refuse_contradictions(
    target: Target, mixing: Mixing, bucket: Bucket, pail: Pail | None = None
) -> None:
    """Raises for settings that cannot all hold, naming the field to change, such as target.low_pct.

    Errors: ``order`` for a band upside down, an aim outside it and a weakest mix that is not
    weaker than the strongest; ``mark_above_bucket`` for marks wider than the bucket, and for
    marks so wide that one of water and one of concentrate do not fit into it together.
    """
    if target.low_pct >= target.high_pct:
        limit = {"below": target.high_pct, "unit": "%"}
        raise Fault("order", "target.low_pct", target.low_pct, limit)
    if not target.low_pct <= target.aim_pct <= target.high_pct:
        limit = {"minimum": target.low_pct, "maximum": target.high_pct, "unit": "%"}
        raise Fault("order", "target.aim_pct", target.aim_pct, limit)
    if mixing.weak_pct >= mixing.strong_pct:
        limit = {"below": mixing.strong_pct, "unit": "%"}
        raise Fault("order", "mixing.weak_pct", mixing.weak_pct, limit)
    marks_l = {"water_mark_l": bucket.water_mark_l, "jug_mark_l": bucket.jug_mark_l}
    for name, mark_l in marks_l.items():
        _refuse_above(f"bucket.{name}", mark_l, bucket.usable_l)
    _refuse_coarse(bucket, by_pail=pail is not None and pail.measure_by == "pail")


def _refuse_coarse(bucket: Bucket, *, by_pail: bool) -> None:
    """Raises where one mark of water and one of concentrate overfill the bucket.

    The wider mark is the one to change: the other may well fit.
    """
    water_l = bucket.water_mark_l
    # The pail's own marks measure both then, and the jug's nothing.
    measure_l = water_l if by_pail else bucket.jug_mark_l
    if water_l + measure_l <= bucket.usable_l + _HAIR_L:
        return
    name, wide_l = ("jug_mark_l", measure_l) if measure_l > water_l else ("water_mark_l", water_l)
    most_l = bucket.usable_l / 2 if by_pail else bucket.usable_l - min(water_l, measure_l)
    raise Fault("mark_above_bucket", f"bucket.{name}", wide_l, {"maximum": most_l, "unit": "L"})


def refuse_contradicting_options(ask: PlanRequest) -> None:
    """Raises for optional fields that contradict the others.

    Errors: ``order`` for a never-above mark below the mark that is filled to; those of
    ``refuse_contradicting_unit`` and ``refuse_contradicting_pail``.
    """
    if ask.never_above_l is not None and ask.never_above_l < ask.fill_to_l:
        limit = {"minimum": ask.fill_to_l, "unit": "L"}
        raise Fault("order", "never_above_l", ask.never_above_l, limit)
    if ask.unit is not None:
        refuse_contradicting_unit(ask.unit)
    if ask.pail is not None:
        refuse_contradicting_pail(ask.pail, ask.bucket)


def refuse_contradicting_unit(unit: MixingUnit) -> None:
    """Raises ``order`` at unit.lowest_pct for a mixing unit whose range is upside down."""
    if unit.lowest_pct > unit.highest_pct:
        limit = {"maximum": unit.highest_pct, "unit": "%"}
        raise Fault("order", "unit.lowest_pct", unit.lowest_pct, limit)


def refuse_contradicting_pail(pail: Pail, bucket: Bucket) -> None:
    """Raises ``mark_above_bucket`` for a first mark above the bucket or above the jug's size."""
    _refuse_above("pail.first_mark_l", pail.first_mark_l or 0.0, bucket.usable_l)
    jug_max_l = pail.jug_max_l or bucket.usable_l
    _refuse_above("pail.jug_first_mark_l", pail.jug_first_mark_l or 0.0, jug_max_l)


def _refuse_above(path: str, mark_l: float, most_l: float) -> None:
    if mark_l > most_l:
        raise Fault("mark_above_bucket", path, mark_l, {"maximum": most_l, "unit": "L"})
