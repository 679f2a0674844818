"""Totals first, buckets second: what the families of buckets miss where marks are coarse.

What a set of pours does depends on its total of water marks and of jug marks alone. Coarse marks
leave few totals near the aim, so each of them can be taken apart into buckets.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from itertools import product

from pycore.recipe.marks import Group, Pours, Space, ceil_marks, floor_marks

# Taken apart are totals of few buckets only, and not more than so many totals: with many buckets
# the families come as near. Every set of two or three kinds is tried where there are few kinds;
# finer marks than that divide evenly. Found by comparing with every set there is.
_MOST_BUCKETS = 8
_MORE_BUCKETS = 2
_MOST_TOTALS = 24
_FEW_KINDS = 40
_MOST_KINDS = 400
_MOST_WORK = 80

# More totals than this are not looked through, since one of them will do; and the room for what
# floats round, wider than theirs so that nothing is called out of reach that is not.
_MOST_TRIED = 4096
_HAIR = 1e-7


@dataclass(frozen=True)
class Total:
    """Water marks and jug marks of all buckets together."""

    water: int
    jug: int


Way = Callable[[frozenset[tuple[int, int]], Total, int], Pours | None]


def single_buckets(space: Space) -> frozenset[tuple[int, int]]:
    """Every bucket that may be poured and fits, as (water marks, jug marks).

    Empty where marks are so fine that there are too many to look through.
    """
    most_l = min(space.room_l, space.usable_l)
    ranges = {
        water: space.jug_range(water, 0.0, most_l) for water in space.water_range(0.0, most_l)
    }
    if sum(max(0, high - low + 1) for low, high in ranges.values()) > _MOST_KINDS:
        return frozenset()
    return frozenset(
        (water, jug)
        for water, (low, high) in ranges.items()
        for jug in range(low, high + 1)
        if jug == 0 or jug >= space.limits.first_jug
    )


def totals_between(
    space: Space, singles: frozenset[tuple[int, int]], low_pct: float, high_pct: float
) -> Iterator[Total]:
    """Totals that fill the room and bring the sump to between two strengths, per cent."""
    sump, bucket = space.ask.sump, space.ask.bucket
    volume_l = sump.volume_l.value
    held_l = volume_l * sump.strength_pct.value / 100
    least_l, mark_l = max(space.least_l, 0.0), bucket.jug_mark_l
    fewest = ceil_marks((low_pct / 100 * (volume_l + least_l) - held_l) / mark_l)
    most = floor_marks((high_pct / 100 * (volume_l + space.room_l) - held_l) / mark_l)
    leanest = min(jug / water for water, jug in singles)
    richest = max(jug / water for water, jug in singles)
    water_l = bucket.water_mark_l
    for jug in range(max(fewest, 0), most + 1):
        jug_l = jug * mark_l
        first = max(1, ceil_marks((least_l - jug_l) / water_l))
        for water in range(first, floor_marks((space.room_l - jug_l) / water_l) + 1):
            litres = volume_l + space.bucket_l(water, jug)
            is_between = low_pct * litres <= 100 * (held_l + jug_l) <= high_pct * litres
            if is_between and leanest <= jug / water <= richest:
                yield Total(water, jug)


def may_end_between(space: Space, low_pct: float, high_pct: float) -> bool:
    """Whether some total of whole marks ends between two strengths, however full; False is sure.

    Cheap: it asks no more of the buckets than that none is leaner or richer than the limits.
    """
    sump, bucket = space.ask.sump, space.ask.bucket
    volume_l, pct = sump.volume_l.value, sump.strength_pct.value
    if low_pct - _HAIR <= pct <= high_pct + _HAIR:
        return True
    leanest, richest = space.limits.ratios
    water_l, jug_l = bucket.water_mark_l, bucket.jug_mark_l
    # Each further jug mark brings the sump so much nearer to the band, in per cent times litres.
    if pct < low_pct:
        away = volume_l * (low_pct - pct)
        gain = (100 - low_pct) * jug_l - (low_pct * water_l / richest if richest > 0 else math.inf)
    elif leanest > 0:
        away = volume_l * (pct - high_pct)
        gain = high_pct * water_l / leanest - (100 - high_pct) * jug_l
    else:
        away, gain = 0.0, 1.0
    most = floor_marks(space.room_l / (jug_l + (water_l / richest if richest > 0 else math.inf)))
    # In an empty sump a premix as strong as the low end gains nothing, and will do. Where a mark
    # leads away, or no bucket may be mixed, no number of marks is enough.
    first = max(0, ceil_marks(away / max(gain, _HAIR) - _HAIR))
    # Nor more than the high end holds when it is filled right up.
    held_l = volume_l * pct / 100
    over_l = high_pct / 100 * (volume_l + space.room_l) - held_l
    most = min(most, floor_marks(over_l / jug_l + _HAIR))
    if most - first > _MOST_TRIED:
        return True
    return any(_has_water(space, jug, low_pct, high_pct) for jug in range(first, most + 1))


def _has_water(space: Space, jug: int, low_pct: float, high_pct: float) -> bool:
    """Whether some whole marks of water go with so many jug marks."""
    sump, bucket = space.ask.sump, space.ask.bucket
    leanest, richest = space.limits.ratios
    mark_l, jug_l = bucket.water_mark_l, jug * bucket.jug_mark_l
    held = sump.volume_l.value * sump.strength_pct.value + 100 * jug_l
    others_l = sump.volume_l.value + jug_l
    fewest = max(
        (held / (high_pct + _HAIR) - others_l) / mark_l, jug / richest if richest > 0 else 1.0, 1.0
    )
    most = min(
        (held / (low_pct - _HAIR) - others_l) / mark_l,
        (space.room_l - jug_l) / mark_l,
        jug / leanest if leanest > 0 else math.inf,
    )
    return ceil_marks(fewest - _HAIR) <= floor_marks(most + _HAIR)


def _alike(singles: frozenset[tuple[int, int]], total: Total, count: int) -> Pours | None:
    water, water_left = divmod(total.water, count)
    jug, jug_left = divmod(total.jug, count)
    if water_left or jug_left or (water, jug) not in singles:
        return None
    return (Group(count, water, jug),)


def _two(singles: frozenset[tuple[int, int]], total: Total, count: int) -> Pours | None:
    return _with_others(_alike, singles, total, count)


def _three(singles: frozenset[tuple[int, int]], total: Total, count: int) -> Pours | None:
    return _with_others(_two, singles, total, count)


def _with_others(
    way: Way, singles: frozenset[tuple[int, int]], total: Total, count: int
) -> Pours | None:
    """Some buckets of one kind, and the rest in such a way; the same one on every machine."""
    for some in range(1, count):
        for water, jug in sorted(singles):
            rest = Total(total.water - some * water, total.jug - some * jug)
            others = way(singles, rest, count - some)
            if others is not None:
                return (Group(some, water, jug), *others)
    return None


def _even(singles: frozenset[tuple[int, int]], total: Total, count: int) -> Pours | None:
    """Buckets whose water and concentrate differ by one mark at the most, in two or three kinds."""
    water, more = divmod(total.water, count)
    share = total.jug // count
    for jug in (share, share + 1) if more else ():
        others = _split(singles, total.jug - more * jug, count - more, water)
        if others is not None and (water + 1, jug) in singles:
            return (Group(more, water + 1, jug), *others)
    return None if more else _split(singles, total.jug, count, water)


def _split(singles: frozenset[tuple[int, int]], jugs: int, count: int, water: int) -> Pours | None:
    jug, more = divmod(jugs, count)
    groups = [(count - more, jug), (more, jug + 1)]
    pours = tuple(Group(n, water, each) for n, each in groups if n)
    return pours if all((water, group.jug) in singles for group in pours) else None


def taken_apart(space: Space, singles: frozenset[tuple[int, int]], total: Total) -> Pours | None:
    """A total as the fewest different buckets, then the fewest buckets, the fullest first.

    None when no such few buckets have it.
    """
    fewest = max(1, ceil_marks(space.bucket_l(total.water, total.jug) / space.usable_l))
    counts = range(fewest, min(fewest + _MORE_BUCKETS, total.water) + 1)
    # Two kinds before three; of three the even ones are quickly found, the others are much work.
    few = ((_two,), (_even, _three)) if len(singles) <= _FEW_KINDS else ((_even,),)
    for ways in ((_alike,), *few):
        for count, way in product(counts, ways):
            # Three kinds are the square of the work.
            if way is _three and count * len(singles) > _MOST_WORK:
                continue
            pours = way(singles, total, count)
            if pours is not None:
                return _fullest_first(space, pours)
    return None


def _fullest_first(space: Space, pours: Pours) -> Pours:
    return tuple(sorted(pours, key=lambda group: -space.bucket_l(group.water, group.jug)))


def pours_between(space: Space, low_pct: float, high_pct: float, aim_pct: float) -> list[Pours]:
    """Pours that fill the room and end between two strengths, the nearest to the aim first.

    Empty where the room takes too many buckets for it, and where the marks are fine.
    """
    if space.least_l > _MOST_BUCKETS * space.usable_l:
        return []
    # A window that is open far down holds hundreds of thousands of totals of more buckets.
    marks_l = space.ask.bucket.water_mark_l + space.ask.bucket.jug_mark_l
    most_l = _MOST_BUCKETS * space.usable_l + marks_l
    space = replace(space, room_l=min(space.room_l, most_l))
    singles = single_buckets(space)
    if not singles:
        return []

    def distance_pct(total: Total) -> float:
        return abs(space.strength_pct((Group(1, total.water, total.jug),)) - aim_pct)

    found = sorted(totals_between(space, singles, low_pct, high_pct), key=distance_pct)
    apart = (taken_apart(space, singles, total) for total in found[:_MOST_TOTALS])
    return [pours for pours in apart if pours is not None]
