"""pycore.recipe.plan: what is taken out against what is carried, by plans made for the purpose."""

from dataclasses import replace

import pytest

from pycore.recipe import plan as planner
from pycore.recipe.outcome import Plan, made
from pycore.recipe.plan import plan_recipe
from pycore.recipe.pours import Pour
from pycore.recipe.request import DrawOff, Effort, OwnFluid, Pail, PlanRequest, Stock
from tests.unit.recipe.shop import question

FULL = replace(
    question(198.0, 5.0), draw_off=DrawOff(allowed=True, mark_l=1.0), own_fluid=OwnFluid(True)
)


def fresh(taken_out_l: float) -> Plan:
    """Two pails of fresh mix after so much is taken out; where it lands is no matter here."""
    return replace(made(FULL, [Pour(2, 8.0, 2.0)], taken_out_l), verdict="in_band")


def own(taken_out_l: float, buckets: int, verdict: str = "on_target") -> Plan:
    """So many buckets of own coolant."""
    pours = [Pour(buckets, 0.0, 1.0, 8.0, "own_fluid")]
    return replace(made(FULL, pours, taken_out_l), verdict=verdict)


def chosen(monkeypatch: pytest.MonkeyPatch, drawn: Plan | None, carried: Plan | None) -> Plan:
    monkeypatch.setattr(planner, "least_draw_off", lambda _: drawn)
    monkeypatch.setattr(planner, "by_own_fluid", lambda _: carried)
    return plan_recipe(FULL)


@pytest.mark.parametrize(
    ("drawn_l", "own_l", "buckets", "is_own"),
    [
        # A whole pail of 10 L is spared, however many walks it takes; 9 L are not one.
        (20.0, 10.0, 40, True), (20.0, 11.0, 40, False),
        # 2 pails and 20 L out are 4 walks; 3 of own coolant and 11 L are 4.1, 2 and 15 L are 3.5.
        (20.0, 11.0, 3, False), (20.0, 15.0, 2, True), (20.0, 10.5, 3, False),
        # No less is spared: as much as before, or more.
        (20.0, 20.0, 1, False), (20.0, 21.0, 1, False), (20.0, 19.5, 1, True),
    ],
)  # fmt: skip
def test_own_coolant_spares_a_bucket_or_walks(
    monkeypatch: pytest.MonkeyPatch, drawn_l: float, own_l: float, buckets: int, is_own: bool
) -> None:
    plan = chosen(monkeypatch, fresh(drawn_l), own(own_l, buckets))
    assert (plan.pours[0].kind == "own_fluid") is is_own


def test_own_coolant_that_misses_the_band_is_none(monkeypatch: pytest.MonkeyPatch) -> None:
    missed = own(2.0, 3, "out_of_band")
    assert chosen(monkeypatch, fresh(30.0), missed).pours[0].kind is None
    assert chosen(monkeypatch, None, missed).draw_off_l == 0.0
    assert chosen(monkeypatch, None, own(2.0, 3)).draw_off_l == 2.0


def test_filled_lower_it_misses_and_a_second_person_is_better(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    asked: PlanRequest = replace(question(), effort=Effort(heaviest_kg=8.0))
    good = made(asked, [Pour(4, 8.0, 1.5)])
    for verdict, taken_l, cautions, is_heavy in (
        ("on_target", 0.0, [], False),
        ("out_of_band", 0.0, [], True),
        ("on_target", 5.0, [], True),
        ("on_target", 0.0, ["not_filled_up"], True),
    ):
        light = replace(good, verdict=verdict, draw_off_l=taken_l, cautions=cautions)
        answers = {7.0: light, 10.0: good}
        monkeypatch.setattr(
            planner, "_planned", lambda ask, known=answers: known[round(ask.bucket.usable_l)]
        )
        assert (plan_recipe(asked) is good) is is_heavy


@pytest.mark.parametrize(
    ("light", "heavy", "is_heavy"),
    [
        # A twentieth or a bucket of 10 L more may come out for buckets that one person carries.
        (("in_band", 60.0, True), ("in_band", 50.0, True), False),
        (("in_band", 61.0, True), ("in_band", 50.0, True), True),
        (("in_band", 315.0, True), ("in_band", 300.0, True), False),
        (("in_band", 316.0, True), ("in_band", 300.0, True), True),
        # Never for nothing, and lower buckets that spare some stay lower.
        (("in_band", 1.0, True), ("in_band", 0.0, True), True),
        (("in_band", 0.0, False), ("in_band", 1.0, True), False),
        (("in_band", 2.0, False), ("in_band", 1.0, True), True),
        (("in_band", 0.0, False), ("in_band", 0.0, False), False),
        (("in_band", 0.0, True), ("out_of_band", 0.0, True), False),
    ],
)
def test_light_buckets_are_worth_a_little(
    monkeypatch: pytest.MonkeyPatch,
    light: tuple[str, float, bool],
    heavy: tuple[str, float, bool],
    is_heavy: bool,
) -> None:
    asked = replace(question(), effort=Effort(heaviest_kg=8.0))
    plans = [
        replace(
            made(asked, [Pour(4, 8.0, 1.5)]),
            verdict=verdict,
            draw_off_l=taken_l,
            cautions=[] if is_up else ["not_filled_up"],
        )
        for verdict, taken_l, is_up in (light, heavy)
    ]
    answers = {7.0: plans[0], 10.0: plans[1]}
    monkeypatch.setattr(planner, "_planned", lambda ask: answers[round(ask.bucket.usable_l)])
    assert (plan_recipe(asked) is plans[1]) is is_heavy


def test_where_both_miss_the_band_the_nearer_one() -> None:
    # By marks of 1 L a pail of 10 L holds 9 L and 1 L, which are 10 %; up to 8.1 kg it holds 6 L
    # and 1 L, 14.3 %, and came first.
    charge = replace(question(0.0, 0.0, fill_to_l=60.0), pail=Pail(measure_by="pail"))
    plan = plan_recipe(replace(charge, effort=Effort(heaviest_kg=8.1)))
    assert plan.final.strength_pct.value == pytest.approx(10.0)
    assert "bucket_heavy" in plan.cautions


@pytest.mark.parametrize(
    ("light_pct", "heavy_pct", "is_heavy"),
    [
        # The nearer one, however much comes out for it; at one distance the one that spares.
        (10.0, 11.0, False),
        (11.0, 10.0, True),
        (10.0, 10.0, True),
        (10.0, 6.0, True),
    ],
)
def test_of_two_that_miss_the_nearer_one_whatever_comes_out(
    monkeypatch: pytest.MonkeyPatch, light_pct: float, heavy_pct: float, is_heavy: bool
) -> None:
    asked = replace(question(), effort=Effort(heaviest_kg=8.0))
    poured = made(asked, [Pour(4, 8.0, 1.5)])
    plans = [
        replace(
            poured,
            verdict="out_of_band",
            draw_off_l=taken_l,
            final=replace(poured.final, strength_pct=replace(poured.final.strength_pct, value=pct)),
        )
        for pct, taken_l in ((light_pct, 60.0), (heavy_pct, 0.0))
    ]
    answers = {7.0: plans[0], 10.0: plans[1]}
    monkeypatch.setattr(planner, "_planned", lambda ask: answers[round(ask.bucket.usable_l)])
    assert (plan_recipe(asked) is plans[1]) is is_heavy


def test_filling_less_than_the_main_plan_only() -> None:
    # With 5 L (924 + 500)/8 = 178 L are the aim; with 3 L 7 % would be higher than the main plan.
    # With 2.5 L it is one litre higher, which is no other way.
    for have_l, is_way in ((5.0, True), (3.0, False), (2.5, False)):
        plan = plan_recipe(replace(question(weak_pct=0.0), stock=Stock(have_l)))
        assert ("fill_less" in [way.why for way in plan.alternatives]) is is_way
