"""What makes one set of buckets better than another: where it lands, then how it is carried."""

from __future__ import annotations

from dataclasses import dataclass

from pycore.recipe.band import inside_pct, is_wrong_side, near_enough_pct, outside_pct
from pycore.recipe.marks import Pours, Space

# Two plans whose results differ by less cannot be told apart by any refractometer in use
# (resolution 0.1 Brix at best: common practice, no source).
SAME_PCT = 0.05

# What a glass shows: refractometers in use resolve 0.1 Brix at best (common practice, no source).
CLEARLY_PCT = 0.1

# Buckets all alike are worth one bucket in five more to carry, never more than these.
_MORE_ALIKE_SHARE = 5
MORE_ALIKE = 12

# More than any result can lie outside the band: on the wrong side of it is behind all others.
_WRONG_SIDE_PCT = 100.0


@dataclass(frozen=True)
class Candidate:
    """A set of pours with what decides between it and others."""

    pours: Pours
    outside_pct: float
    excess_pct: float
    distance_pct: float
    half_marks: int

    @property
    def buckets(self) -> int:
        """How many buckets are carried."""
        return sum(group.count for group in self.pours)

    @property
    def is_near(self) -> bool:
        """Inside the band and near enough to the aim."""
        return self.outside_pct == 0 and self.excess_pct == 0

    def effort(self) -> tuple[int, int, int, float]:
        """What decides among equally close plans."""
        return len(self.pours), self.buckets, self.half_marks, self.distance_pct


def weigh(space: Space, pours: Pours) -> Candidate:
    """A set of pours with its distance from the aim and from the band, in points."""
    strength = space.strength_pct(pours)
    target = space.ask.target
    outside = outside_pct(space.ask, strength)
    if is_wrong_side(space.ask, strength):
        outside += _WRONG_SIDE_PCT
    distance = abs(strength - target.aim_pct)
    excess = max(0.0, distance - near_enough_pct(space.ask))
    whole = space.limits.marks_to_whole
    half_marks = sum(group.water % whole > 0 for group in pours)
    return Candidate(pours, outside, excess, distance, half_marks)


def least_effort(equal: list[Candidate]) -> Candidate:
    """The fewest different buckets, unless they are many more to carry."""
    fewest = min(candidate.buckets for candidate in equal)
    worth = [c for c in equal if c.buckets <= fewest + more_alike(fewest)]
    return min(worth, key=Candidate.effort)


def more_alike(fewest: int) -> int:
    """How many buckets more are worth carrying when they are all alike."""
    return min(1 + fewest // _MORE_ALIKE_SHARE, MORE_ALIKE)


def is_much_more(buckets: int, fewer: int) -> bool:
    """Whether so many are more to carry than is worth it beside fewer of them."""
    return buckets > fewer + more_alike(fewer)


def best_of(space: Space, seen: list[Candidate]) -> Candidate:
    """The best of all that were seen, at least one: nearest, then what is easily carried."""
    near = [candidate for candidate in seen if candidate.is_near]
    if near:
        best = least_effort(near)
        return _less_to_carry(space, best, seen) or best
    outside = min(candidate.outside_pct for candidate in seen)
    inside = [c for c in seen if c.outside_pct <= (outside + SAME_PCT if outside > 0 else 0)]
    nearest = min(candidate.excess_pct for candidate in inside)
    best = least_effort([c for c in inside if c.excess_pct <= nearest + SAME_PCT])
    return _less_to_carry(space, best, seen) or best


def _less_to_carry(space: Space, best: Candidate, seen: list[Candidate]) -> Candidate | None:
    """The nearest that spares one bucket in five and one, where it is hardly any worse for it.

    That is no further off than a glass shows. Where the aim is out of reach but not the band, it is
    well inside, and no further from the aim by more than is near enough.
    """
    low, high = inside_pct(space.ask)
    more_pct = CLEARLY_PCT if best.is_near else near_enough_pct(space.ask)

    def is_hardly_worse(other: Candidate) -> bool:
        if best.outside_pct > 0:
            return other.outside_pct <= best.outside_pct + CLEARLY_PCT
        is_well_inside = low <= space.strength_pct(other.pours) <= high
        return is_well_inside and other.excess_pct <= best.excess_pct + more_pct

    fewer = [c for c in seen if is_much_more(best.buckets, c.buckets)]
    return min(
        filter(is_hardly_worse, fewer),
        key=lambda c: (c.outside_pct, c.excess_pct, c.effort()),
        default=None,
    )
