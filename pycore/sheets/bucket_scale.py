"""The bucket scale: marks up the wall of this pail, and how far the shop's usual buckets reach."""

from __future__ import annotations

import math
from dataclasses import dataclass

from pycore.quantity.fault import Fault
from pycore.quantity.rounding import shown, tidy
from pycore.quantity.units import UNITS, from_base
from pycore.recipe.balance import concentrate_needed_l, mix_strength_pct
from pycore.recipe.request import Bucket, Target
from pycore.sheets.ladder import marks, ruler
from pycore.sheets.language import Language
from pycore.sheets.pail import RoundPail
from pycore.sheets.paper import Paper
from pycore.sheets.scale_page import Mix, Said, scale_pages
from pycore.sheets.strip import Band, Line, Scale

# More columns than this leave no room for their words.
MOST_BUCKETS = 3
# Beyond the highest fill the scale goes on for this much, so that its line can be seen.
_ABOVE_MM = 12.0
_CALLOUT_MM = 42.0
_HAIR = 1e-9


@dataclass(frozen=True)
class UsualBucket:
    """One bucket that the shop mixes often: water first, then concentrate on top, L."""

    water_l: float
    concentrate_l: float

    @property
    def total_l(self) -> float:
        """Litres in the bucket when both are in."""
        return self.water_l + self.concentrate_l


@dataclass(frozen=True)
class BucketScale:
    """What a bucket scale is made of; pail, jug and stick are units, usable_l the highest fill."""

    pail_shape: RoundPail
    usable_l: float
    pail: str
    jug: str
    stick: str
    buckets: list[UsualBucket]


def bucket_at_aim(bucket: Bucket, target: Target) -> UsualBucket:
    """The fullest bucket of whole marks at the strength that the target aims for.

    >>> bucket_at_aim(Bucket(10.0, 1.0, 0.05), Target(7.0, 8.0, 9.0))
    UsualBucket(water_l=9.0, concentrate_l=0.8)
    """
    aim = target.aim_pct
    for count in range(math.floor(bucket.usable_l / bucket.water_mark_l + _HAIR), 0, -1):
        water_l = count * bucket.water_mark_l
        jugs = math.floor(concentrate_needed_l(0.0, 0.0, water_l, aim) / bucket.jug_mark_l + 0.5)
        concentrate_l = round(jugs * bucket.jug_mark_l, 9)
        if water_l + concentrate_l <= bucket.usable_l * (1 + _HAIR):
            return UsualBucket(water_l, concentrate_l)
    return UsualBucket(bucket.water_mark_l, 0.0)


def refuse_too_full(buckets: list[UsualBucket], brim_l: float, path: str) -> None:
    """Raises ``out_of_range`` at ``path[i]`` for a bucket that this pail does not hold, in L."""
    for i, bucket in enumerate(buckets):
        if bucket.total_l > brim_l * (1 + _HAIR):
            limit = {"maximum": brim_l, "unit": "L"}
            raise Fault("out_of_range", f"{path}[{i}]", bucket.total_l, limit)


def _at_mm(shape: RoundPail, volume_l: float) -> float:
    return shape.along_wall_mm(shape.depth_mm(volume_l))


def _lines(ask: BucketScale, language: Language) -> list[Line]:
    shape, last = ask.pail_shape, len(ask.buckets) - 1
    zero = (language.say("pail_zero_note"),)
    lines = [Line(0.0, language.say("zero"), zero, weight_mm=0.35)]
    for i, bucket in enumerate(ask.buckets):
        for key, volume_l in (
            ("water_to", bucket.water_l if bucket.water_l > 0 else None),
            ("concentrate_to", bucket.total_l if bucket.concentrate_l > 0 else None),
        ):
            if volume_l is not None:
                title = language.say(key, n=str(i + 1))
                lines.append(Line(_at_mm(shape, volume_l), title, (), (i, i), 0.6))
    usable = language.amount(tidy(ask.usable_l, ask.pail))
    title = language.say("fill_most", amount=usable)
    return [*lines, Line(_at_mm(shape, ask.usable_l), title, (), (0, last), 0.9)]


def _mix(bucket: UsualBucket, ask: BucketScale, language: Language) -> Mix:
    """A usual bucket as it is drawn and told beside the scale."""
    words = [language.say("mix_water", amount=language.amount(tidy(bucket.water_l, ask.pail)))]
    if bucket.concentrate_l > 0:
        concentrate = language.amount(tidy(bucket.concentrate_l, ask.jug))
        strength = shown(mix_strength_pct(bucket.water_l, bucket.concentrate_l), "%", 1)
        words.append(language.say("mix_concentrate", amount=concentrate))
        words.append(language.say("mix_makes", strength=language.amount(strength)))
    shares = bucket.water_l / ask.usable_l, bucket.concentrate_l / ask.usable_l
    return Mix(*shares, words)


def scale_of(ask: BucketScale, language: Language) -> Scale:
    """The scale up the wall: a slanting wall is a little longer than the pail is high.

    It ends a little above the highest fill, so that nobody is tempted to fill higher.
    """
    shape = ask.pail_shape
    highest_l = max([ask.usable_l, *(bucket.total_l for bucket in ask.buckets)])
    ends_mm = min(shape.height_mm, shape.depth_mm(min(highest_l, shape.brim_l)) + _ABOVE_MM)
    length_mm, top_l = shape.along_wall_mm(ends_mm), shape.volume_l(ends_mm)
    factor_l = float(UNITS[ask.pail].factor)
    bands = []
    for i, bucket in enumerate(ask.buckets):
        water_mm, total_mm = _at_mm(shape, bucket.water_l), _at_mm(shape, bucket.total_l)
        bands.append(Band(i, 0.0, water_mm, "water", str(i + 1)))
        bands.append(Band(i, water_mm, total_mm, "solid"))
    return Scale(
        length_mm=length_mm,
        ruler=ruler(length_mm, ask.stick),
        marks=marks(
            from_base(top_l, UNITS[ask.pail]),
            length_mm,
            lambda amount: _at_mm(shape, min(amount * factor_l, top_l)),
            decimal_sign=language.decimal_sign,
        ),
        unit=ask.pail,
        ruler_unit="in" if ask.stick in ("in", "ft") else "mm",
        bands=bands,
        lines=_lines(ask, language),
        columns=len(ask.buckets),
        callout_mm=_CALLOUT_MM,
    )


def bucket_scale(ask: BucketScale, name: str, paper: Paper, language: Language) -> list[str]:
    """The pages of the bucket scale as SVG.

    Errors: ``order`` at ``usable_l`` when the pail holds less than one usual fill, so that two
    statements about it differ; ``out_of_range`` at ``buckets[i]`` as of ``refuse_too_full``.
    """
    brim_l = ask.pail_shape.brim_l
    if ask.usable_l > brim_l * (1 + _HAIR):
        raise Fault("order", "usable_l", ask.usable_l, {"maximum": brim_l, "unit": "L"})
    refuse_too_full(ask.buckets, brim_l, "buckets")
    scale = scale_of(ask, language)
    facts = [
        language.say("small_numbers", unit=scale.ruler_unit),
        language.say("large_numbers", unit=ask.pail),
    ]
    steps = [language.say(f"bucket_step_{i}") for i in range(1, 6)]
    said = Said(
        language.say("bucket_scale"),
        name,
        facts,
        steps,
        [_mix(bucket, ask, language) for bucket in ask.buckets],
    )
    return scale_pages(scale, said, paper, language)
