"""Look and smell as they were ticked and typed, to advice: what to do before anything is added."""

from __future__ import annotations

from dataclasses import dataclass, field

from pycore.desk.contract.reader import Reader
from pycore.desk.contract.records import Typed
from pycore.desk.contract.results import Doubt
from pycore.quantity.fault import Fault
from pycore.reading.look import (
    FOAM_ORDER,
    Limits,
    Measures,
    Row,
    decision_of,
    nitrite_interval_d,
    rows_that_hold,
)

_LIMITS = "body.limits"


@dataclass(frozen=True)
class SlideTyped:
    """Counts of a dip slide as read after incubation."""

    germs: Typed | None = None
    yeast: Typed | None = None


@dataclass(frozen=True)
class SlideLimitsTyped:
    """Bands of a dip slide, and whose they are."""

    scheme: str
    review: Typed
    act: Typed


@dataclass(frozen=True)
class LookLimitsTyped:
    """The shop's own thresholds; the published ones stand where none is given."""

    ph_low: Typed | None = None
    ph_high: Typed | None = None
    ph_drop: Typed | None = None
    ph_drop_far: Typed | None = None
    nitrite_most: Typed | None = None
    cold: Typed | None = None
    warm: Typed | None = None
    dip_slide: SlideLimitsTyped | None = None


@dataclass(frozen=True)
class JudgeLookBody:
    """What was seen, smelled and measured."""

    seen: list[str]
    fluid_type: str | None = None
    smell_again: str | None = None
    foam_from: str | None = None
    ph: Typed | None = None
    first_fill_ph: Typed | None = None
    nitrite: Typed | None = None
    nitrite_before: list[Typed] = field(default_factory=list)
    temperature: Typed | None = None
    dip_slide: SlideTyped | None = None
    limits: LookLimitsTyped | None = None


@dataclass(frozen=True)
class JudgeLookResult:
    """The advice, the rows it comes from, and what to do next."""

    decision: str
    rows: list[Row]
    foam: list[str]
    smell_again: bool
    doubts: list[Doubt]
    nitrite_interval_d: int | None = None


def _slide_limits(reader: Reader, typed: SlideLimitsTyped | None, own: Limits) -> Limits:
    if typed is None:
        return own
    path = f"{_LIMITS}.dip_slide"
    review = reader.value(typed.review, "dip_slide_cfu_ml", f"{path}.review")
    act = reader.value(typed.act, "dip_slide_cfu_ml", f"{path}.act")
    return Limits(slide_scheme=typed.scheme, slide_review_cfu_ml=review, slide_act_cfu_ml=act)


def _refuse_order(typed: LookLimitsTyped | None, limits: Limits) -> None:
    """At the field that was typed; at the lower one where both were, as bands of a slide are."""
    for low_name, low, high_name, high in (
        ("ph_low", limits.ph_low, "ph_high", limits.ph_high),
        ("ph_drop", limits.ph_drop, "ph_drop_far", limits.ph_drop_far),
        ("cold", limits.cold_c, "warm", limits.warm_c),
        ("dip_slide.review", limits.slide_review_cfu_ml, "dip_slide.act", limits.slide_act_cfu_ml),
    ):
        if low < high:
            continue
        if getattr(typed, low_name, None) is None and getattr(typed, high_name, None) is not None:
            raise Fault("order", f"{_LIMITS}.{high_name}", high, {"above": low})
        raise Fault("order", f"{_LIMITS}.{low_name}", low, {"below": high})


def read_limits(reader: Reader, typed: LookLimitsTyped | None) -> Limits:
    """The shop's thresholds, also where two contradict each other: each row stands for itself."""
    own = Limits()
    if typed is None:
        return own
    slide = _slide_limits(reader, typed.dip_slide, own)

    def value(name: str, quantity: str, published: float) -> float:
        found = reader.optional(getattr(typed, name), quantity, f"{_LIMITS}.{name}")
        return published if found is None else found

    return Limits(
        ph_low=value("ph_low", "ph", own.ph_low),
        ph_high=value("ph_high", "ph", own.ph_high),
        ph_drop=value("ph_drop", "ph_drop", own.ph_drop),
        ph_drop_far=value("ph_drop_far", "ph_drop", own.ph_drop_far),
        nitrite_most_mg_l=value("nitrite_most", "nitrite_mg_l", own.nitrite_most_mg_l),
        cold_c=value("cold", "temperature_c", own.cold_c),
        warm_c=value("warm", "temperature_c", own.warm_c),
        slide_scheme=slide.slide_scheme,
        slide_review_cfu_ml=slide.slide_review_cfu_ml,
        slide_act_cfu_ml=slide.slide_act_cfu_ml,
    )


def _measures(reader: Reader, body: JudgeLookBody) -> Measures:
    slide = body.dip_slide or SlideTyped()
    germs = reader.optional(slide.germs, "dip_slide_cfu_ml", "body.dip_slide.germs")
    if slide.yeast is not None:
        # Recorded and read, but no published band for yeast is known here.
        reader.value(slide.yeast, "dip_slide_cfu_ml", "body.dip_slide.yeast")
    return Measures(
        ph=reader.optional(body.ph, "ph", "body.ph"),
        first_ph=reader.optional(body.first_fill_ph, "ph", "body.first_fill_ph"),
        nitrite_mg_l=reader.optional(body.nitrite, "nitrite_mg_l", "body.nitrite"),
        temperature_c=reader.optional(body.temperature, "temperature_c", "body.temperature"),
        slide_cfu_ml=germs,
    )


def _nitrite_d(reader: Reader, body: JudgeLookBody, now_mg_l: float | None) -> int | None:
    if now_mg_l is None:
        return None
    before = [
        reader.value(typed, "nitrite_mg_l", f"body.nitrite_before[{i}]")
        for i, typed in enumerate(body.nitrite_before)
    ]
    return nitrite_interval_d([*before, now_mg_l])


def judge_look(body: JudgeLookBody) -> JudgeLookResult:
    """Advice before anything is added.

    Errors: ``order`` for "normal" beside something odd and for limits that contradict each other;
    ``not_for_kind`` for a second smell where the first one was not bad, or for a cause of foam
    where there was none; those of ``read_typed``.
    """
    seen = frozenset(body.seen)
    if "normal" in seen and len(seen) > 1:
        raise Fault("order", "body.seen", "normal")
    if body.smell_again is not None and "smell" not in seen:
        raise Fault("not_for_kind", "body.smell_again", body.smell_again)
    if body.foam_from is not None and "foam" not in seen:
        raise Fault("not_for_kind", "body.foam_from", body.foam_from)
    reader = Reader()
    measures = _measures(reader, body)
    limits = read_limits(reader, body.limits)
    _refuse_order(body.limits, limits)
    rows = rows_that_hold(
        seen,
        measures,
        limits,
        body.fluid_type,
        body.smell_again,
        body.foam_from,
    )
    return JudgeLookResult(
        decision=decision_of(rows),
        rows=rows,
        foam=list(FOAM_ORDER) if "foam" in seen and body.foam_from is None else [],
        smell_again="smell" in seen and body.smell_again is None,
        doubts=reader.doubts,
        nitrite_interval_d=_nitrite_d(reader, body, measures.nitrite_mg_l),
    )
