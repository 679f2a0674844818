"""Which single buckets can be measured and may be poured: whole marks, strong and weak limits."""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cached_property, lru_cache

from pycore.quantity.units import UNITS
from pycore.recipe.balance import concentrate_needed_l, fill_strength_pct, state_after
from pycore.recipe.request import Bucket, Mixing, Pail, PlanRequest

# Room for the last digit of a float when marks are counted.
_HAIR = 1e-9

# A weakest mix may be rounded to the nearest jug mark, but not by more than this.
WEAK_ROUNDING_PCT = 0.3

# Pails have long marks at whole litres or gallons, and between them none or 1, 3 or 4 short ones
# (common practice, no source).
_LONG_MARKS_L = tuple(float(UNITS[name].factor) for name in ("L", "US gal", "imp gal"))
_SHORT_MARKS = (2, 4, 5)

# A bucket counts as full from this share of what it holds: common practice, no source.
_FULL_SHARE = 0.8

# More water marks than this per bucket are not tried one by one; the nearest ones are.
_MOST_TRIED = 64


def floor_marks(amount: float) -> int:
    """Whole marks not above an amount given in marks."""
    return math.floor(amount + _HAIR)


def ceil_marks(amount: float) -> int:
    """Whole marks not below an amount given in marks."""
    return math.ceil(amount - _HAIR)


@dataclass(frozen=True)
class Group:
    """``count`` buckets, each of so many water marks and so many jug marks."""

    count: int
    water: int
    jug: int


Pours = tuple[Group, ...]


class Limits:
    """What single buckets of one pail, jug and fluid may hold; worked out once for a question."""

    def __init__(self, mixing: Mixing, bucket: Bucket, pail: Pail | None) -> None:
        """Litres and per cent by volume."""
        self._mixing, self._bucket = mixing, bucket
        first_l = (pail and pail.first_mark_l) or 0.0
        jug_first_l = (pail and pail.jug_first_mark_l) or 0.0
        self.first_water = max(1, ceil_marks(first_l / bucket.water_mark_l))
        self.first_jug = max(1, ceil_marks(jug_first_l / bucket.jug_mark_l))
        self._jugs: dict[int, tuple[int, float]] = {}

    def jugs(self, water: int) -> tuple[int, float]:
        """Fewest jug marks beside so many water marks, and the most, which is not rounded."""
        known = self._jugs.get(water)
        if known is None:
            known = self._jugs[water] = self._jugs_beside(water)
        return known

    def _jugs_beside(self, water: int) -> tuple[int, float]:
        mix, bucket = self._mixing, self._bucket
        water_l = water * bucket.water_mark_l
        most = (bucket.usable_l - water_l) / bucket.jug_mark_l
        if mix.strong_pct < 100:
            ratio = mix.strong_pct / (100 - mix.strong_pct)
            most = min(most, ratio * water_l / bucket.jug_mark_l)
        exact = mix.weak_pct / (100 - mix.weak_pct) * water_l / bucket.jug_mark_l
        weakest = math.floor(exact + 0.5)
        weakest_l = weakest * bucket.jug_mark_l
        if 100 * weakest_l < (mix.weak_pct - WEAK_ROUNDING_PCT) * (water_l + weakest_l):
            weakest = ceil_marks(exact)
        return weakest, most

    @cached_property
    def marks_to_whole(self) -> int:
        """Water marks to a whole litre or gallon, the long ones of the pail; 1 where all are."""
        mark_l = self._bucket.water_mark_l
        for unit_l in _LONG_MARKS_L:
            marks = unit_l / mark_l
            if round(marks) in _SHORT_MARKS and abs(marks - round(marks)) < _HAIR:
                return round(marks)
        return 1

    @cached_property
    def ratios(self) -> tuple[float, float]:
        """Jug marks per water mark of the leanest and of the richest bucket; no bucket is beyond.

        Lowest above highest when no bucket may be mixed at all.
        """
        return self._ratios_from(0.0)

    def _ratios_from(self, least_l: float) -> tuple[float, float]:
        """The same among the buckets that hold at least so many litres."""
        mix, bucket = self._mixing, self._bucket
        per_mark = bucket.water_mark_l / bucket.jug_mark_l
        waters = range(self.first_water, floor_marks(bucket.usable_l / bucket.water_mark_l) + 1)
        if len(waters) > _MOST_TRIED:
            weak_pct, strong_pct = max(mix.weak_pct - WEAK_ROUNDING_PCT, 0.0), mix.strong_pct
            richest = strong_pct / (100 - strong_pct) if strong_pct < 100 else math.inf
            return weak_pct / (100 - weak_pct) * per_mark, richest * per_mark
        leanest, richest = math.inf, -math.inf
        for water in waters:
            fewest, most = self.jugs(water)
            least = ceil_marks((least_l - water * bucket.water_mark_l) / bucket.jug_mark_l)
            fewest = max(fewest, least)
            fewest = self.first_jug if 0 < fewest < self.first_jug else fewest
            whole = floor_marks(most)
            whole = 0 if 0 < whole < self.first_jug else whole
            if fewest <= whole:
                leanest, richest = min(leanest, fewest / water), max(richest, whole / water)
        return leanest, richest

    @cached_property
    def strengths_pct(self) -> tuple[float, float]:
        """Strength of the leanest and of the richest bucket; no bucket is beyond.

        Leanest 100 and richest 0 when no bucket may be mixed at all.
        """
        return self._strengths_of(self.ratios)

    @cached_property
    def full_strengths_pct(self) -> tuple[float, float]:
        """The same of full buckets alone, that hold four fifths of what they may or more."""
        return self._strengths_of(self._ratios_from(_FULL_SHARE * self._bucket.usable_l))

    def _strengths_of(self, ratios: tuple[float, float]) -> tuple[float, float]:
        per_mark = self._bucket.jug_mark_l / self._bucket.water_mark_l
        leanest, richest = (
            100 * ratio * per_mark / (1 + ratio * per_mark) if ratio < math.inf else 100.0
            for ratio in (max(ratio, 0.0) for ratio in ratios)
        )
        return leanest, richest


# One question asks for the same few limits hundreds of times, a draw-off and lighter buckets too.
limits_of = lru_cache(maxsize=8)(Limits)


@dataclass(frozen=True)
class Space:
    """The room of one question: what is there, what may be poured, between which totals."""

    ask: PlanRequest
    room_l: float
    least_l: float

    @classmethod
    def of(cls, ask: PlanRequest) -> Space:
        """The room up to the mark that is filled to, less one water mark and one jug mark."""
        room_l = ask.fill_to_l - ask.sump.volume_l.value
        return cls(ask, room_l, room_l - ask.bucket.water_mark_l - ask.bucket.jug_mark_l)

    @cached_property
    def limits(self) -> Limits:
        """What single buckets may hold."""
        return limits_of(self.ask.mixing, self.ask.bucket, self.ask.pail)

    @cached_property
    def usable_l(self) -> float:
        """What one bucket holds at the most, L."""
        return self.ask.bucket.usable_l

    def bucket_l(self, water: int, jug: int) -> float:
        """Litres in a bucket of so many marks."""
        return water * self.ask.bucket.water_mark_l + jug * self.ask.bucket.jug_mark_l

    def jug_range(self, water: int, least_l: float, most_l: float) -> tuple[int, int]:
        """Fewest and most jug marks beside so many water marks, for a total between two limits.

        Empty (first above second) when no such bucket may be poured.
        """
        bucket = self.ask.bucket
        water_l = water * bucket.water_mark_l
        weakest, most = self.limits.jugs(water)
        most = min(most, (most_l - water_l) / bucket.jug_mark_l)
        least = (least_l - water_l) / bucket.jug_mark_l
        return max(weakest, ceil_marks(least)), floor_marks(most)

    def water_range(self, least_l: float, most_l: float) -> range:
        """Water marks worth trying for a bucket whose total lies between two limits."""
        mix, mark_l = self.ask.mixing, self.ask.bucket.water_mark_l
        high = floor_marks(min(most_l, self.usable_l) / mark_l)
        low = max(
            self.limits.first_water, ceil_marks(least_l * (1 - mix.strong_pct / 100) / mark_l)
        )
        if high - low >= _MOST_TRIED:
            middle = round(min(most_l, self.usable_l) * (1 - self.wanted_pct / 100) / mark_l)
            low = max(low, min(middle, high) - _MOST_TRIED // 2)
            high = min(high, low + _MOST_TRIED)
        return range(low, high + 1)

    def has_room(self) -> bool:
        """Whether a bucket fits, or more room is left than a plan may leave open."""
        return self.can_pour() or self.least_l > 0

    def can_pour(self) -> bool:
        """Whether the smallest bucket that may be poured still fits."""
        waters = self.water_range(0.0, self.room_l)
        ranges = (self.jug_range(water, 0.0, self.room_l) for water in waters)
        return any(low <= high for low, high in ranges)

    @cached_property
    def wanted_pct(self) -> float:
        """Strength of the fill that lands on the aim, kept inside what may be mixed."""
        sump, mix = self.ask.sump, self.ask.mixing
        if self.room_l <= 0:
            return mix.weak_pct
        wanted = fill_strength_pct(
            sump.volume_l.value, sump.strength_pct.value, self.room_l, self.ask.target.aim_pct
        )
        return min(max(wanted, mix.weak_pct), mix.strong_pct)

    def jugs_near(self, wanted: float, low: int, high: int) -> list[int]:
        """Jug marks on both sides of a wanted number, inside low to high, that a jug can show.

        A jug shows nothing below its first mark, so between none and that mark there is nothing.
        """
        first = self.limits.first_jug
        near = set(nearest_two(wanted, low, high))
        hidden = {jug for jug in near if 0 < jug < first}
        if hidden:
            near = (near - hidden) | {jug for jug in (0, first) if low <= jug <= high}
        return sorted(near)

    def jug_for_aim(self, water: int) -> float:
        """Jug marks, not rounded, that bring the sump plus so many water marks to the aim."""
        sump, bucket = self.ask.sump, self.ask.bucket
        water_l = water * bucket.water_mark_l
        aim = self.ask.target.aim_pct
        needed = concentrate_needed_l(sump.volume_l.value, sump.strength_pct.value, water_l, aim)
        return needed / bucket.jug_mark_l

    def amounts(self, pours: Pours) -> list[tuple[int, float, float]]:
        """The pours as (count, water_l, concentrate_l) of each bucket."""
        bucket = self.ask.bucket
        return [
            (group.count, group.water * bucket.water_mark_l, group.jug * bucket.jug_mark_l)
            for group in pours
        ]

    def strength_pct(self, pours: Pours) -> float:
        """Strength of the sump after the pours."""
        sump = self.ask.sump
        return state_after(sump.volume_l.value, sump.strength_pct.value, self.amounts(pours))[1]


def nearest_two(wanted: float, low: int, high: int) -> list[int]:
    """The whole numbers on both sides of a wanted one, inside low to high, each once."""
    below = min(max(math.floor(wanted), low), high)
    above = min(max(math.ceil(wanted), low), high)
    return [below] if below == above else [below, above]
