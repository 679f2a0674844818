"""What somebody worked out by hand for a check, beside the right numbers and our recipe."""

from __future__ import annotations

from dataclasses import replace

from pycore.desk.check.check import plan_check
from pycore.desk.check.recipe import plan_shown, section_after
from pycore.desk.contract.reader import Reader
from pycore.desk.contract.records import Typed
from pycore.desk.contract.results import PlanCheckResult
from pycore.desk.practice.dealing import steps_of
from pycore.desk.practice.messages import (
    AnswersTyped,
    JudgePracticeBody,
    JudgePracticeResult,
    OwnBucketTyped,
    OwnJudged,
    RecipeShown,
    StepJudged,
)
from pycore.desk.setup.machine import read_machine
from pycore.practice.figures import Figures
from pycore.practice.judged import judge
from pycore.practice.own_recipe import OwnRecipe, judge_recipe
from pycore.quantity.fault import Fault
from pycore.quantity.rounding import Shown, shown, tidy
from pycore.recipe.outcome import Plan
from pycore.recipe.pours import Pour

# What a step is typed as.
_QUANTITIES = {
    "volume": "volume_l",
    "strength": "strength_pct",
    "room": "volume_l",
    "take_out": "volume_l",
    "top_up": "top_up_pct",
}
# A right number is shown, and counts as hit, to a tenth: more no stick and no glass can tell.
_DECIMALS = 1
_LAST_DIGIT = 0.1


class _Bench:
    """One question: the answer of ``plan_check``, and what its tools cannot tell apart."""

    def __init__(self, reader: Reader, body: JudgePracticeBody) -> None:
        try:
            self.answer = plan_check(body.check)
            self.machine = read_machine(reader, body.check.machine, "body.machine")
        except Fault as fault:
            path = fault.path.replace("body", "body.check", 1)
            raise Fault(fault.code, path, fault.got, fault.limit) from None
        self.typed = body.check.machine
        self.steps = steps_of(self.answer)

    def figures(self) -> Figures:
        """The right numbers. Error: ``not_for_kind`` for a check that is not worked out by hand."""
        level, strength = self.answer.assessment.level, self.answer.assessment.strength
        request, machine = self.answer.request, self.machine
        if level is None or strength is None or machine.factor is None:
            raise Fault("not_for_kind", "body.check", None)
        if request.hidden is not None:
            raise Fault(
                "not_for_kind", "body.check.machine.sump.hidden", request.hidden.volume_l.value
            )
        return Figures(
            dipped_l=request.sump.volume_l.value,
            read_pct=request.sump.strength_pct.value,
            depth_mm=level.depth_mm.value,
            full_depth_mm=machine.sump.full_depth_mm,
            full_volume_l=request.fill_to_l,
            reading_brix=strength.reading_brix.value,
            factor=machine.factor.factor.value,
            aim_pct=request.target.aim_pct,
            strong_pct=request.mixing.strong_pct,
            volume_l=request.sump.volume_l.value,
            strength_pct=request.sump.strength_pct.value,
            room_l=request.fill_to_l - request.sump.volume_l.value,
        )

    def allowed(self, step: str) -> float:
        """What the tools cannot tell apart: L for the stick, points for glass and jug."""
        level, strength = self.answer.assessment.level, self.answer.assessment.strength
        bucket = self.answer.request.bucket
        if step == "strength" and strength is not None and self.machine.factor is not None:
            return strength.reading_brix.u * self.machine.factor.factor.value
        if step == "take_out":
            return self.answer.request.draw_off.mark_l
        if step == "top_up":
            return 100 * bucket.jug_mark_l / bucket.usable_l
        return 0.0 if level is None else level.depth_mm.u * level.litres_per_mm

    def unit(self, step: str) -> str:
        """The unit of a step's number."""
        return "%" if step in ("strength", "top_up") else self.typed.units.plate


def _given(reader: Reader, answers: AnswersTyped) -> dict[str, tuple[float, Shown]]:
    """The numbers that were typed, in their own units and as they were read."""
    given = {}
    for step, quantity in _QUANTITIES.items():
        typed: Typed | None = getattr(answers, step)
        if typed is not None:
            read = reader.read(typed, quantity, f"body.answers.{step}")
            given[step] = (read.value, read.shown)
    return given


def _own(true: Figures, given: dict[str, tuple[float, Shown]]) -> Figures:
    """The figures with the person's own numbers in place of the right ones."""
    numbers = {step: number for step, (number, _) in given.items()}
    volume_l = numbers.get("volume", true.volume_l)
    return replace(
        true,
        volume_l=volume_l,
        strength_pct=numbers.get("strength", true.strength_pct),
        room_l=numbers.get("room", true.full_volume_l - volume_l),
    )


def _working(true: Figures, bench: _Bench) -> dict[str, Shown]:
    """Every number that a worked line may need."""
    level, strength = bench.answer.assessment.level, bench.answer.assessment.strength
    unit = bench.typed.units.plate
    said = {
        "volume": tidy(true.volume_l, unit, _DECIMALS),
        "strength": tidy(true.strength_pct, "%", 2),
        "room": tidy(true.room_l, unit, _DECIMALS),
        "aim": bench.answer.shown["aim"],
        "strong": shown(true.strong_pct, "%", 0),
        "missing": tidy(abs(true.aim_pct - true.strength_pct), "1", 2),
        "gain": tidy(true.strong_pct - true.strength_pct, "1", 2),
    }
    if level is not None and strength is not None:
        said["depth"], said["full_depth"] = level.shown["depth"], level.shown["full_depth"]
        said["full_volume"] = shown(true.full_volume_l, unit, 0)
        said["reading"], said["factor"] = strength.shown["reading"], strength.shown["factor"]
    return said


def _step(
    step: str,
    bench: _Bench,
    true: Figures,
    own: Figures,
    given: dict[str, tuple[float, Shown]],
) -> StepJudged:
    right, unit = true.at(step) or 0.0, bench.unit(step)
    allowed = bench.allowed(step)
    said = StepJudged(
        step=step,
        # Reading times factor has two decimals, and the next step is worked out with them.
        right=tidy(right, unit, 2 if step == "strength" else _DECIMALS),
        allowed=tidy(allowed, "1" if unit == "%" else unit, _DECIMALS),
    )
    if step not in given:
        return said
    number, as_read = given[step]
    found = judge(step, number, true, own, allowed, _LAST_DIGIT)
    return replace(
        said,
        verdict=found.verdict,
        given=as_read,
        difference=tidy(abs(number - right), "1" if unit == "%" else unit, _DECIMALS),
        slip=found.slip,
        own=None if found.own is None else tidy(found.own, unit, _DECIMALS),
    )


def _buckets(reader: Reader, typed: list[OwnBucketTyped]) -> list[Pour]:
    """Buckets as typed. Error: ``not_whole`` for part of a bucket, beside those of reading."""
    pours = []
    for i, bucket in enumerate(typed):
        path = f"body.answers.pours[{i}]"
        count = reader.read(bucket.count, "own_buckets", f"{path}.count").number
        if count.denominator != 1:
            raise Fault("not_whole", f"{path}.count", bucket.count.text)
        water_l = reader.value(bucket.water, "bucket_water_l", f"{path}.water")
        concentrate_l = reader.value(
            bucket.concentrate, "bucket_concentrate_l", f"{path}.concentrate"
        )
        pours.append(Pour(int(count), water_l, concentrate_l))
    return pours


def _recipe(plan: Plan, bench: _Bench) -> RecipeShown:
    answer: PlanCheckResult = bench.answer
    said = plan_shown(plan, answer.request, bench.typed)
    level = answer.assessment.level
    try:
        after = section_after(bench.machine.sump, plan, level.depth_mm.value if level else 0.0)
    except Fault:
        # What stands above the rim cannot be drawn: it is on the floor.
        after = None
    return RecipeShown(
        verdict=plan.verdict,
        pours=said["pours"],
        buckets=plan.totals.buckets,
        **{name: said[name] for name in ("strength", "low", "high", "volume")},
        after=after,
        take_out=said["take_out"] if plan.draw_off_l > 0 else None,
    )


def _own_recipe(
    reader: Reader, answers: AnswersTyped, bench: _Bench, true: Figures, taken_l: float | None
) -> OwnJudged | None:
    if not answers.pours:
        return None
    request, plan = bench.answer.request, bench.answer.plan
    out_l = plan.draw_off_l if taken_l is None else taken_l
    # Nothing is taken out of an empty sump: that is no fault of what was typed.
    if out_l > 0 and out_l >= request.sump.volume_l.value:
        limit = {"below": request.sump.volume_l.value, "unit": "L"}
        raise Fault("out_of_range", "body.answers.take_out", out_l, limit)
    pours = _buckets(reader, answers.pours)
    found: OwnRecipe = judge_recipe(request, plan, true, pours, out_l, bench.allowed("volume"))
    unit = bench.typed.units.plate
    return OwnJudged(
        standing=found.standing,
        faults=found.faults,
        recipe=_recipe(found.plan, bench),
        over=tidy(found.over_l, unit, _DECIMALS),
        left=tidy(found.left_l, unit, _DECIMALS),
        slip=found.slip,
    )


def judge_practice(body: JudgePracticeBody) -> JudgePracticeResult:
    """Every step of a check with its right number and working, what was typed beside them.

    A recipe is judged by where it ends: another one that is just as good counts as good.

    Errors: those of ``plan_check`` at body.check; those of ``read_typed`` and ``not_whole`` at
    the answer; ``out_of_range`` for more taken out than the sump holds.
    """
    reader = Reader()
    bench = _Bench(reader, body)
    true = bench.figures()
    given = _given(reader, body.answers)
    own = _own(true, given)
    taken_l = given["take_out"][0] if "take_out" in given else None
    said = bench.answer.shown
    return JudgePracticeResult(
        working=_working(true, bench),
        steps=[_step(step, bench, true, own, given) for step in bench.steps if step != "pours"],
        before=bench.answer.assessment.section,
        solution=_recipe(bench.answer.plan, bench),
        aim=said["aim"],
        band_low=said["band_low"],
        band_high=said["band_high"],
        doubts=reader.doubts,
        recipe=_own_recipe(reader, body.answers, bench, true, taken_l),
    )
