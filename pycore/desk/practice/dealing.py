"""Practice: an invented sump is dealt by its number."""

from __future__ import annotations

from pycore.desk.check.check import plan_check
from pycore.desk.contract.messages import (
    BucketTyped,
    DipTyped,
    MachineTyped,
    MixingTyped,
    PlanCheckBody,
    SumpTyped,
    Units,
    WaysTyped,
)
from pycore.desk.contract.reader import Reader
from pycore.desk.contract.records import FluidTyped, ReadingTyped, TargetTyped, Typed
from pycore.desk.contract.results import PlanCheckResult
from pycore.desk.practice.messages import DealPracticeBody, DealPracticeResult
from pycore.practice.deal import MOST_DRAWS, Dealt, draw, suits
from pycore.practice.figures import STEPS
from pycore.quantity.fault import Fault


def _t(number: float | str, unit: str) -> Typed:
    return Typed(f"{number}", unit)


def check_of(dealt: Dealt) -> PlanCheckBody:
    """The dealt sump as a check that somebody typed."""
    bench = dealt.bench
    low, aim, high = (_t(part, "%") for part in dealt.band_pct)
    machine = MachineTyped(
        name=bench.kind,
        sump=SumpTyped(
            kind="proportional",
            full_depth=_t(bench.full_depth_mm, "mm"),
            full_volume=_t(bench.full_volume_l, "L"),
            volume_known_by="poured",
        ),
        fluid=FluidTyped(
            type="semi_synthetic", factor=_t(dealt.factor, "1"), factor_known_by="sheet"
        ),
        target=TargetTyped(low, aim, high),
        mixing=MixingTyped(_t(20, "%"), _t(1, "%"), _t("0.5", "%")),
        bucket=BucketTyped(_t(bench.usable_l, "L"), _t(1, "L"), _t(50, "mL")),
        units=Units(),
        ways=WaysTyped(draw_off=True) if dealt.draws_off else None,
    )
    return PlanCheckBody(
        machine=machine,
        dip=DipTyped(_t(dealt.depth_mm, "mm"), how="hard_floor"),
        reading=ReadingTyped(_t(dealt.reading, "Brix"), how="optical"),
    )


def steps_of(answer: PlanCheckResult) -> list[str]:
    """The steps of a sump: what comes out of a full one takes the place of the top-up."""
    without = "top_up" if answer.plan.draw_off_l > 0 else "take_out"
    return [*(step for step in STEPS if step != without), "pours"]


def deal_practice(body: DealPracticeBody) -> DealPracticeResult:
    """The sump with this number at this level: the first drawn one that is worth working out.

    Errors: those of ``read_typed`` and ``not_whole`` at body.number; ``internal`` when none of
    many turns is worth it, which no number that is allowed comes to.
    """
    read = Reader().read(body.number, "deal_number", "body.number")
    if read.number.denominator != 1:
        raise Fault("not_whole", "body.number", body.number.text)
    number = int(read.number)
    for turn in range(MOST_DRAWS):
        dealt = draw(body.level, number, turn)
        check = check_of(dealt)
        answer = plan_check(check)
        if suits(body.level, answer.request, answer.plan):
            kind = dealt.bench.kind
            return DealPracticeResult(body.level, number, kind, check, steps_of(answer))
    raise Fault("internal", "body.number", body.number.text)
