"""The best set of buckets: near the aim, then few different ones, then few, then nearest.

Three families are tried, the simplest first, each by closed form in the number of buckets, so
the work does not grow with the size of the tank:

* alike: n buckets of one kind;
* part: n of one kind and a smaller one last when room is left;
* split: some of one kind, the rest with one jug mark less, and a smaller one last when needed.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import groupby

from pycore.recipe.band import is_wrong_side, near_enough_pct
from pycore.recipe.choice import (
    MORE_ALIKE,
    SAME_PCT,
    Candidate,
    best_of,
    least_effort,
    more_alike,
    weigh,
)
from pycore.recipe.marks import Group, Pours, Space, ceil_marks, floor_marks, nearest_two
from pycore.recipe.totals import pours_between

# How many sizes of whole bucket are tried, the fullest first.
_MOST_WHOLE = 12

# Whole buckets below this share of the fullest one are not worth carrying.
_LEAST_WHOLE_SHARE = 0.5


def _alike(space: Space, count: int) -> Iterator[Pours]:
    least, most = space.least_l / count, space.room_l / count
    for water in space.water_range(least, most):
        low, high = space.jug_range(water, least, most)
        if low <= high:
            for jug in space.jugs_near(space.jug_for_aim(count * water) / count, low, high):
                yield (Group(count, water, jug),)


@dataclass(frozen=True)
class _Whole:
    """A full or nearly full bucket: water marks and jug marks, not rounded, that suit the fill."""

    water: int
    jug: float
    total_l: float

    def count_in(self, room_l: float) -> int:
        """How many fit into the room."""
        return floor_marks(room_l / self.total_l)


def _whole_buckets(space: Space) -> list[_Whole]:
    """Buckets near the strength that the fill needs, the fullest first."""
    most = min(space.usable_l, space.room_l)
    wanted = space.wanted_pct
    bucket = space.ask.bucket
    found = []
    for water in space.water_range(_LEAST_WHOLE_SHARE * most, most):
        low, high = space.jug_range(water, 0.0, most)
        if low <= high:
            ideal = wanted / max(100 - wanted, 1e-9) * water * bucket.water_mark_l
            jug = min(max(ideal / bucket.jug_mark_l, low), high)
            whole = _Whole(water, jug, space.bucket_l(water, 0) + jug * bucket.jug_mark_l)
            found += [whole, *_fitted(space, whole, low, high)]
    return sorted(found, key=lambda whole: -whole.total_l)[:_MOST_WHOLE]


def _fitted(space: Space, whole: _Whole, low: int, high: int) -> list[_Whole]:
    """The same bucket with the jug marks for the water that really fits.

    The strength that suits the whole room is too weak a guide where coarse water marks leave a
    part of the room open that no further bucket can fill.
    """
    mark_l = space.ask.bucket.water_mark_l
    count = whole.count_in(space.room_l)
    if space.room_l - count * whole.total_l >= mark_l:
        return []
    jug = min(max(space.jug_for_aim(count * whole.water) / count, low), high)
    total_l = space.bucket_l(whole.water, 0) + jug * space.ask.bucket.jug_mark_l
    return [_Whole(whole.water, jug, total_l)] if math.floor(jug) != math.floor(whole.jug) else []


def _parts(space: Space, poured: Pours, largest_l: float) -> Iterator[Group]:
    """Last buckets, not larger than the ones before, that fill what is left of the room."""
    done_l = sum(group.count * space.bucket_l(group.water, group.jug) for group in poured)
    water_done = sum(group.count * group.water for group in poured)
    jug_done = sum(group.count * group.jug for group in poured)
    least, most = space.least_l - done_l, min(space.room_l - done_l, largest_l)
    for water in space.water_range(least, most):
        low, high = space.jug_range(water, least, most)
        if low <= high:
            alike = poured[0].jug * water / poured[0].water
            exact = space.jug_for_aim(water_done + water) - jug_done
            near = {*space.jugs_near(alike, low, high), *space.jugs_near(exact, low, high)}
            for jug in sorted(near):
                yield Group(1, water, jug)


def _with_part(space: Space, whole: _Whole) -> Iterator[Pours]:
    low, high = space.jug_range(whole.water, 0.0, space.usable_l)
    for jug in space.jugs_near(whole.jug, low, high):
        size_l = space.bucket_l(whole.water, jug)
        count = floor_marks(space.room_l / size_l)
        if count:
            group = Group(count, whole.water, jug)
            if count * size_l >= space.least_l:
                yield (group,)
            for part in _parts(space, (group,), size_l):
                if (part.water, part.jug) != (whole.water, jug):
                    yield (group, part)


def _split(space: Space, whole: _Whole) -> Iterator[Pours]:
    """Some buckets one jug mark stronger than the rest, and a smaller one when room is left."""
    count = whole.count_in(space.room_l)
    jug = math.floor(whole.jug)
    low, high = space.jug_range(whole.water, 0.0, space.usable_l)
    # Below the first mark of the jug the neighbours are none and that mark.
    weak, strong = (jug, jug + 1) if jug >= space.limits.first_jug else (0, space.limits.first_jug)
    if weak < low or strong > high:
        return
    size_l = space.bucket_l(whole.water, weak)
    more_l = (strong - weak) * space.ask.bucket.jug_mark_l
    most = min(count - 1, floor_marks((space.room_l - count * size_l) / more_l))
    if most < 1:
        return
    for stronger in nearest_two((whole.jug - weak) / (strong - weak) * count, 1, most):
        both = (Group(stronger, whole.water, strong), Group(count - stronger, whole.water, weak))
        if count * size_l + stronger * more_l >= space.least_l:
            yield both
        for part in _parts(space, both, size_l):
            if (part.water, part.jug) != (whole.water, weak):
                yield (*both, part)


def _nearest(space: Space, all_pours: Iterable[Pours]) -> list[Candidate]:
    return [weigh(space, pours) for pours in all_pours]


def _families(space: Space) -> Iterator[tuple[list[Candidate], int]]:
    """Candidates in rising effort: each list holds the plans of one family and one count.

    Beside it so many buckets as are worth carrying for it; with more a later family may do better.
    """
    fewest = max(1, ceil_marks(space.least_l / space.usable_l))
    most = fewest + more_alike(fewest)
    for count in range(fewest, most + 1):
        yield _nearest(space, _alike(space, count)), most
    wholes = _whole_buckets(space)
    if not wholes:
        return
    # No bucket near the strength that is needed is fuller than the first.
    fewest = max(1, ceil_marks(space.least_l / wholes[0].total_l))
    most = fewest + more_alike(fewest)
    for family in (_with_part, _split):
        for _, same in groupby(wholes, key=lambda whole: whole.count_in(space.room_l)):
            found = (pours for whole in same for pours in family(space, whole))
            yield _nearest(space, found), most


def _search_window(space: Space) -> Candidate | None:
    seen: list[Candidate] = []
    if space.least_l <= 0:
        nothing = weigh(space, ())
        if nothing.is_near:
            return nothing
        seen.append(nothing)
    for candidates, most in _families(space):
        near = [candidate for candidate in candidates if candidate.is_near]
        if any(candidate.buckets <= most for candidate in near):
            return least_effort(near)
        seen.extend(candidates)
    if not any(candidate.is_near for candidate in seen):
        seen += _nearest(space, _by_totals(space, seen))
    return best_of(space, seen) if seen else None


def _by_totals(space: Space, seen: list[Candidate]) -> list[Pours]:
    """Pours that are clearly better than all that were seen, where marks are coarse.

    Not near enough is what brought us here: near the aim first, then the band, then beyond it.
    """
    target, close = space.ask.target, near_enough_pct(space.ask)
    low, high, aim = target.low_pct, target.high_pct, target.aim_pct
    best = min(seen, key=lambda c: (c.outside_pct, c.excess_pct), default=None)
    if best is not None and best.distance_pct <= SAME_PCT:
        return []
    found = pours_between(space, max(low, aim - close), min(high, aim + close), aim)
    if found:
        return found
    if best is None:
        return pours_between(space, 0.0, 100.0, aim)
    if best.outside_pct > 0:
        beyond = max(best.outside_pct - SAME_PCT, 0.0)
        ends = (end for end in (low - beyond, high + beyond) if not is_wrong_side(space.ask, end))
        allowed = [low, high, *ends]
        return pours_between(space, min(allowed), max(allowed), aim)
    reach = close + best.excess_pct - SAME_PCT
    return pours_between(space, max(low, aim - reach), min(high, aim + reach), aim)


def alike_pours(space: Space) -> Pours | None:
    """Buckets of one kind only, inside the band and nearest to the aim, or None."""
    fewest = max(1, ceil_marks(space.least_l / space.usable_l))
    most = fewest + MORE_ALIKE
    tried = (_nearest(space, _alike(space, count)) for count in range(fewest, most + 1))
    inside = [c for candidates in tried for c in candidates if c.outside_pct == 0]
    return (
        min(inside, key=lambda c: (c.excess_pct, c.buckets, c.distance_pct)).pours
        if inside
        else None
    )


def strongest_bucket(space: Space) -> Group | None:
    """The fullest bucket among the strongest that may be mixed."""
    best: tuple[float, float, Group] | None = None
    for water in space.water_range(0.0, space.usable_l):
        low, high = space.jug_range(water, 0.0, space.usable_l)
        if max(low, space.limits.first_jug) <= high:
            total_l = space.bucket_l(water, high)
            strength = high * space.ask.bucket.jug_mark_l / total_l
            # Of two buckets that differ by less than a tenth of a point the fuller one.
            rank = (round(strength, 3), total_l, Group(1, water, high))
            best = rank if best is None or rank[:2] > best[:2] else best
    return best[2] if best else None


def best_pours(space: Space) -> Candidate:
    """The best pours for a question; no pours when no bucket fits.

    Where the limits of the mix leave no bucket that fills the room to within one water mark and
    one jug mark, twice as much room may stay open, and so on.
    """
    open_l = space.room_l - space.least_l
    while True:
        found = _search_window(Space(space.ask, space.room_l, space.room_l - open_l))
        if found is not None:
            return found
        open_l *= 2
