"""What a sump loses in a day, from the balance of its own log.

Between two checks that have a dip and a reading, what was there and what was poured in, less what
is there now, is what was lost: litres of coolant, and litres of concentrate. Concentrate is taken
to leave as coolant, so what oil is skimmed, sticks to chips or is eaten by germs counts as
carry-out: it is an upper limit, and evaporation a lower one. The strength of the top-up that holds
the aim needs only the two losses and not how they are parted.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from statistics import median

from pycore.quantity.measured import Measured
from pycore.recipe.outlook import VESSEL_U_SHARE

# A straight line through fewer checks is no trend (judgement, no source).
LEAST_CHECKS = 3
# Litres of minutes, such as a splash at a second reading, are no rate (judgement, no source).
_LEAST_DAYS = 1.0
# Hampel identifier: three scaled median deviations (F. R. Hampel, J. Am. Stat. Assoc. 69, 1974,
# 383); 1.4826 makes the median deviation of a normal distribution its standard deviation.
_HAMPEL = 3.0
_TO_SIGMA = 1.4826
# Fewer steps have no usual one to lie apart from.
_LEAST_TO_COMPARE = 5


@dataclass(frozen=True)
class State:
    """A dip and a reading of one check: litres of the whole circuit, per cent by volume.

    Their uncertainties are those of this dip and this reading alone.
    """

    volume_l: Measured
    strength_pct: Measured


@dataclass(frozen=True)
class Shared:
    """Relative standard uncertainties that all checks share: the sump's scale, the factor."""

    scale_share: float = 0.0
    factor: float = 0.0


@dataclass(frozen=True)
class Step:
    """From one check to the next: days between, and litres poured in and taken out.

    out_l left as coolant of the strength at the start.
    """

    lasted_d: float
    start: State
    end: State
    water_l: float
    concentrate_l: float
    out_l: float = 0.0

    @property
    def lost_l(self) -> float:
        """Litres that are gone; negative where more is there than was written down."""
        came_l = self.water_l + self.concentrate_l - self.out_l
        return self.start.volume_l.value + came_l - self.end.volume_l.value

    @property
    def lost_u_l(self) -> float:
        """Standard uncertainty of ``lost_l`` by the two dips."""
        return math.hypot(self.start.volume_l.u, self.end.volume_l.u)

    @property
    def concentrate_lost_l(self) -> float:
        """Litres of concentrate that are gone."""
        start, end = self.start, self.end
        left_l = start.volume_l.value - self.out_l
        begun_l = left_l * start.strength_pct.value / 100 + self.concentrate_l
        return begun_l - end.volume_l.value * end.strength_pct.value / 100

    @property
    def mean_pct(self) -> float:
        """Strength half-way from what the pours made of the sump to what was found at the end."""
        left_l = self.start.volume_l.value - self.out_l
        filled_l = left_l + self.water_l + self.concentrate_l
        neat_l = left_l * self.start.strength_pct.value / 100 + self.concentrate_l
        return (100 * neat_l / filled_l + self.end.strength_pct.value) / 2

    @property
    def carried_l(self) -> float:
        """Coolant that would hold the concentrate that is gone.

        Within 1 % of the closed form of a steady loss, V·(1 - share)^(D/(E + D)), where a sixth
        of the sump is lost.
        """
        return 100 * self.concentrate_lost_l / self.mean_pct


@dataclass(frozen=True)
class Losses:
    """Litres a day of calendar days, and the top-up that holds the aim, per cent by volume.

    unusual: steps that were left out since far more or less was lost than usual: something was
    poured or spilled that nobody wrote down. top_up_pct is None where no loss is seen.
    """

    over_d: float
    steps: int
    unusual: int
    lost_l_d: Measured
    concentrate_l_d: Measured
    carry_out_l_d: Measured
    evaporation_l_d: Measured
    top_up_pct: Measured | None


def usual_steps(steps: Sequence[Step]) -> list[Step]:
    """Steps whose loss is not far from the usual one, nor less than nothing.

    More in the sump than was written down says that somebody poured: such a step goes first. Of
    the others one goes that lies three scaled median deviations from the median, and further than
    three standard uncertainties of its dips.
    """
    kept = [step for step in steps if step.lost_l > -2 * step.lost_u_l]
    if len(kept) < _LEAST_TO_COMPARE:
        return kept
    middle = median(step.lost_l / step.lasted_d for step in kept)
    spread = _TO_SIGMA * median(abs(step.lost_l / step.lasted_d - middle) for step in kept)

    def is_usual(step: Step) -> bool:
        off_l = abs(step.lost_l - middle * step.lasted_d)
        return off_l <= _HAMPEL * max(spread * step.lasted_d, step.lost_u_l)

    return [step for step in kept if is_usual(step)]


def _scatter(values: Sequence[float], days: Sequence[float]) -> float:
    """Standard error of the sum of the values over the sum of the days, from their scatter."""
    total_d, n = math.fsum(days), len(values)
    rate = math.fsum(values) / total_d
    squares = math.fsum((value - rate * d) ** 2 for value, d in zip(values, days, strict=True))
    return math.sqrt(squares * n / (n - 1)) / total_d


def _ends_u(steps: Sequence[Step], volume_share: float, strength_share: float) -> float:
    """Standard uncertainty of a sum over steps by the dips and readings at its loose ends.

    A check that ends one step and starts the next drops out. The weights say what a litre of
    volume and a litre of concentrate in the sump count.
    """
    counts: dict[int, int] = {}
    states: dict[int, State] = {}
    for step in steps:
        for state, sign in ((step.start, 1), (step.end, -1)):
            states[id(state)] = state
            counts[id(state)] = counts.get(id(state), 0) + sign
    parts = []
    for key, count in counts.items():
        volume, strength = states[key].volume_l, states[key].strength_pct
        by_dip = (volume_share + strength_share * strength.value / 100) * volume.u
        parts.append((count * by_dip) ** 2)
        parts.append((count * strength_share * volume.value * strength.u / 100) ** 2)
    return math.sqrt(math.fsum(parts))


def _held(steps: Sequence[Step], volume_share: float, strength_share: float) -> float:
    """How much less the sump holds at the ends than at the starts; weights as in ``_ends_u``."""
    states = [(step.start, 1) for step in steps] + [(step.end, -1) for step in steps]
    return math.fsum(
        sign * s.volume_l.value * (volume_share + strength_share * s.strength_pct.value / 100)
        for s, sign in states
    )


@dataclass(frozen=True)
class _Sums:
    """The steps that count, and what every uncertainty needs of them."""

    steps: Sequence[Step]
    shared: Shared

    @property
    def days(self) -> list[float]:
        return [step.lasted_d for step in self.steps]

    @property
    def water_l(self) -> float:
        return math.fsum(step.water_l for step in self.steps)

    @property
    def neat_l(self) -> float:
        return math.fsum(step.concentrate_l for step in self.steps)

    def measured(
        self, values: Sequence[float], volume_share: float, strength_share: float
    ) -> Measured:
        """The sum of the values a day. Weights: what a litre, and one of concentrate, counts."""
        total_d = math.fsum(self.days)
        scatter = _scatter(values, self.days)
        ends = _ends_u(self.steps, volume_share, strength_share) / total_d
        pail = VESSEL_U_SHARE * volume_share * self.water_l / total_d
        jug = VESSEL_U_SHARE * (volume_share + strength_share) * self.neat_l / total_d
        scale = self.shared.scale_share * _held(self.steps, volume_share, strength_share) / total_d
        u = math.hypot(max(scatter, ends), pail, jug, scale)
        return Measured(math.fsum(values) / total_d, u)


def losses(steps: Sequence[Step], aim_pct: float, shared: Shared) -> Losses | None:
    """Losses a day over all usual steps; None where fewer than two are left, or less than a day.

    Two steps are three checks. The uncertainty is the larger of what the steps' own scatter and
    what their dips and readings say, with 3 % of each vessel (one error of all buckets), the
    sump's scale and the factor. aim_pct: above 0, per cent by volume.

    >>> full, low = (State(Measured(v, 1.0), Measured(c, 0.1)) for v, c in ((200, 8), (180, 8.4)))
    >>> day = Step(4, full, low, 0, 0)
    >>> round(losses([day, Step(4, low, full, 19, 0.9), day], 8, Shared()).lost_l_d.value, 3)
    3.325
    """
    used = usual_steps(steps)
    if len(used) < LEAST_CHECKS - 1:
        return None
    sums = _Sums(used, shared)
    total_d = math.fsum(sums.days)
    if total_d < _LEAST_DAYS:
        return None
    per_l = 100 * total_d / math.fsum(step.mean_pct * step.lasted_d for step in used)
    lost = [step.lost_l for step in used]
    carried = [step.carried_l for step in used]
    air = [one - other for one, other in zip(lost, carried, strict=True)]
    lost_l_d = sums.measured(lost, 1, 0)
    carry_out = sums.measured(carried, 0, per_l)
    by_factor = shared.factor * carry_out.value
    evaporation = sums.measured(air, 1, -per_l)
    return Losses(
        over_d=total_d,
        steps=len(used),
        unusual=len(steps) - len(used),
        lost_l_d=lost_l_d,
        concentrate_l_d=sums.measured([step.concentrate_lost_l for step in used], 0, 1),
        carry_out_l_d=_more(carry_out, by_factor),
        evaporation_l_d=_more(evaporation, by_factor),
        top_up_pct=_top_up(sums, aim_pct, lost, carried, per_l),
    )


def _more(number: Measured, u: float) -> Measured:
    return Measured(number.value, math.hypot(number.u, u))


def _top_up(
    sums: _Sums, aim_pct: float, lost: Sequence[float], carried: Sequence[float], per_l: float
) -> Measured | None:
    """aim × carry-out / loss, the steady state of the balance; None where no loss is seen."""
    loss = sums.measured(lost, 1, 0)
    if loss.value <= 2 * loss.u:
        return None
    share = math.fsum(carried) / math.fsum(lost)
    # What each step's carry-out lies off this share of its loss: the error of a ratio.
    off = [part - share * whole for part, whole in zip(carried, lost, strict=True)]
    u = sums.measured(off, -share, per_l).u / loss.value
    return Measured(aim_pct * share, aim_pct * math.hypot(u, share * sums.shared.factor))
