"""The pieces of a recipe: pours, steps and totals."""

from __future__ import annotations

from dataclasses import dataclass

# A large circuit takes longer to turn over some five times: up to so many litres, so many minutes
# for the pump to mix what was poured; beyond them half a shift. Between two halves of a recipe it
# need not be even. All common practice, no source.
_MIX_MINUTES = ((1000.0, 30.0), (2000.0, 60.0), (3000.0, 120.0))
_LONGEST_MIX_MINUTES = 240.0
HALF_WAY_MINUTES = 15.0


@dataclass(frozen=True)
class Pour:
    """So many buckets, each with this water and concentrate; fluid_l is the sump's own fluid.

    kind is "own_fluid" or "ready_mix" where the bucket is not mixed from water; of a ready mix
    water and concentrate say what is in it.
    """

    count: int
    water_l: float
    concentrate_l: float
    fluid_l: float | None = None
    kind: str | None = None

    @property
    def held_l(self) -> float:
        """All that is in one of the buckets, L."""
        return self.water_l + self.concentrate_l + (self.fluid_l or 0.0)


@dataclass(frozen=True)
class Step:
    """One step of the walk: take_out, bucket, own_fluid, unit, hose, run or read_again."""

    kind: str
    pour: int | None = None
    minutes: float | None = None
    volume_l: float | None = None
    setting_pct: float | None = None


@dataclass(frozen=True)
class Totals:
    """Everything that is carried or run in."""

    buckets: int
    water_l: float
    concentrate_l: float


def mix_minutes(circuit_l: float) -> float:
    """How long the pump runs before the second reading; circuit_l is what a full circuit holds."""
    fits = (minutes for most_l, minutes in _MIX_MINUTES if circuit_l <= most_l)
    return next(fits, _LONGEST_MIX_MINUTES)


def finish(minutes: float) -> list[Step]:
    """The end of every walk: run the pump, read again."""
    return [Step("run", minutes=minutes), Step("read_again")]


def steps_for(
    draw_off_l: float, pours: list[Pour], minutes: float, half_way_after: int = 0
) -> list[Step]:
    """The walk: take out, pour, run, read again; with a reading after the first few pours."""
    walk = [Step("take_out", volume_l=draw_off_l)] if draw_off_l > 0 else []
    for i, pour in enumerate(pours):
        walk.append(Step("own_fluid" if pour.kind == "own_fluid" else "bucket", pour=i))
        if i + 1 == half_way_after and i + 1 < len(pours):
            walk += [Step("run", minutes=HALF_WAY_MINUTES), Step("read_again")]
    return [*walk, *finish(minutes)] if walk else []


def totals_of(pours: list[Pour], run_in_l: tuple[float, float] = (0.0, 0.0)) -> Totals:
    """Sum of the pours and of what is run in by hose or unit, as litres (water, concentrate)."""
    return Totals(
        sum(pour.count for pour in pours),
        sum(pour.count * pour.water_l for pour in pours) + run_in_l[0],
        sum(pour.count * pour.concentrate_l for pour in pours) + run_in_l[1],
    )
