"""pycore.recipe.holding: a dip without a reading; ends by C1·V1 = C2·V2 by hand."""

from dataclasses import replace

import pytest

from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured
from pycore.recipe.balance import mix_strength_pct, state_after
from pycore.recipe.holding import HoldingRequest, LastReading, plan_holding, poured_pct
from pycore.recipe.pours import Pour
from pycore.recipe.request import Bucket, Mixing, Pail
from tests.unit.recipe.shop import question

LAST = LastReading(Measured(8.2, 0.3), 5.0, 0.1)


def dip(volume_l: float = 154.0, usual_pct: float = 3.0, **more: object) -> HoldingRequest:
    ask = question()
    asked = HoldingRequest(
        Measured(volume_l, 3.0), ask.fill_to_l, usual_pct, ask.target, ask.mixing, ask.bucket
    )
    return replace(asked, **more)


def test_every_bucket_has_the_usual_strength() -> None:
    plan = plan_holding(dip())
    for pour in plan.pours:
        # Half a jug mark of 50 mL in 8 L is 0.3 points.
        assert mix_strength_pct(pour.water_l, pour.concentrate_l) == pytest.approx(3.0, abs=0.3)
    assert 198 - 1.05 <= plan.volume_l <= 198 + 1e-9
    assert plan.totals.buckets == sum(pour.count for pour in plan.pours)
    poured_l = plan.totals.water_l + plan.totals.concentrate_l
    assert plan.volume_l == pytest.approx(154 + poured_l)


def test_ends_are_two_uncertainties_and_the_drift_away() -> None:
    plan = plan_holding(dip(last=LAST))
    pours = [(p.count, p.water_l, p.concentrate_l) for p in plan.pours]
    assert plan.ends is not None
    assert plan.ends.low_pct == pytest.approx(state_after(154, 7.1, pours)[1])
    assert plan.ends.high_pct == pytest.approx(state_after(154, 9.3, pours)[1])


def test_no_end_below_nothing() -> None:
    old = LastReading(Measured(2.0, 0.3), 100.0, 0.1)
    plan = plan_holding(dip(198.0, last=old))
    assert plan.ends is not None
    assert (plan.ends.low_pct, plan.ends.high_pct) == (0.0, pytest.approx(12.6))


def test_reading_stays_open_and_doubt_is_said() -> None:
    sure = LastReading(Measured(8.0, 0.1), 1.0, 0.01)
    assert plan_holding(dip(198.0, last=sure)).cautions == ["reading_open", "nothing_to_pour"]
    unsure = plan_holding(dip(198.0, last=LAST)).cautions
    assert unsure == ["reading_open", "may_be_out_of_band", "nothing_to_pour"]
    # Nothing is known without a last reading.
    unknown = plan_holding(dip())
    assert unknown.ends is None
    assert unknown.cautions == [
        "reading_open", "gloves_and_eyes", "water_first", "may_be_out_of_band",
    ]  # fmt: skip


@pytest.mark.parametrize(("value", "caution"), [(7.05, True), (8.0, False), (8.95, True)])
def test_either_end_outside_the_band_is_said(value: float, caution: bool) -> None:
    last = LastReading(Measured(value, 0.1), 0.0, 0.0)
    said = plan_holding(dip(198.0, last=last)).cautions
    assert ("may_be_out_of_band" in said) is caution


def test_walk_ends_with_a_reading_even_where_nothing_is_poured() -> None:
    assert [step.kind for step in plan_holding(dip(198.0)).steps] == ["read_again"]
    assert [step.kind for step in plan_holding(dip()).steps][-2:] == ["run", "read_again"]
    assert plan_holding(dip(198.0)).pours == []


def test_usual_strength_may_be_plain_water() -> None:
    ask = question(weak_pct=0.0)
    plan = plan_holding(dip(usual_pct=0.0, mixing=ask.mixing))
    assert plan.totals.concentrate_l == 0
    assert "gloves_and_eyes" not in plan.cautions


def test_keeps_to_the_first_mark_of_the_jug() -> None:
    # 0.5 L beside 9 L are 5.3 %.
    plan = plan_holding(dip(usual_pct=4.0, pail=Pail(jug_first_mark_l=0.5)))
    assert plan.pours
    assert all(p.concentrate_l == 0 or p.concentrate_l >= 0.5 for p in plan.pours)
    with pytest.raises(Fault) as refused:
        plan_holding(dip(pail=Pail(first_mark_l=11.0)))
    assert (refused.value.code, refused.value.path) == ("mark_above_bucket", "pail.first_mark_l")


def test_concentrate_measured_by_the_pail_comes_in_its_marks() -> None:
    # Marks of 1 L: 1 L beside 9 L are 10 %, one point above the usual 9 %.
    by_pail = Pail(measure_by="pail")
    plan = plan_holding(dip(usual_pct=9.0, pail=by_pail))
    assert plan.pours
    assert all(pour.concentrate_l == int(pour.concentrate_l) for pour in plan.pours)
    with pytest.raises(Fault) as refused:
        plan_holding(dip(pail=by_pail, bucket=Bucket(10.0, 6.0, 0.05)))
    assert (refused.value.code, refused.value.path) == ("mark_above_bucket", "bucket.water_mark_l")


def test_nothing_is_poured_rather_than_a_mix_far_from_the_usual_one() -> None:
    # 2.5 L beside 7.5 L are 25 %, above 20 %: plain water is all that these marks allow.
    coarse = dip(usual_pct=7.5, mixing=Mixing(20.0, 0.0, 0.5), bucket=Bucket(10.0, 1.0, 2.5))
    plan = plan_holding(coarse)
    assert plan.pours == []
    assert plan.cautions == ["reading_open", "may_be_out_of_band", "no_usual_mix"]
    # Up to two points of the usual strength it is near enough.
    plain = plan_holding(replace(coarse, usual_pct=2.0))
    assert (plain.totals.concentrate_l, plain.volume_l) == (0.0, pytest.approx(198.0, abs=3.5))
    assert "no_usual_mix" not in plain.cautions
    assert poured_pct(plain.pours) == 0.0
    assert plan_holding(replace(coarse, usual_pct=2.1)).pours == []


def test_twice_as_much_room_stays_open_each_time() -> None:
    # 9.4 L: one jug mark of 2.5 L beside 4 to 6 L is 29 to 38 %, and two are too strong beside 4.
    # Open by 7 L instead of 3.5 L it is 2.5 L beside 3 L, 45.5 %.
    coarse = dip(
        188.6, usual_pct=45.0, mixing=Mixing(50.0, 5.0, 0.5), bucket=Bucket(10.0, 1.0, 2.5)
    )
    plan = plan_holding(coarse)
    assert [(p.count, p.water_l, p.concentrate_l) for p in plan.pours] == [(1, 3.0, 2.5)]
    assert "no_usual_mix" in plan.cautions


@pytest.mark.parametrize("room_l", [1.3, 1.5])
def test_full_to_within_a_mark_of_each_needs_nothing(room_l: float) -> None:
    # 1 L of plain water would fit, which is no reason to lay the open room to the marks.
    ask = dip(198.0 - room_l, 4.0, mixing=Mixing(20.0, 0.0, 0.5), bucket=Bucket(10.0, 1.0, 0.5))
    plan = plan_holding(ask)
    assert plan.pours == []
    assert plan.cautions == ["reading_open", "may_be_out_of_band", "nothing_to_pour"]


def test_a_bucket_where_a_mark_of_each_and_a_little_more_is_open() -> None:
    assert 198 - 1.05 <= plan_holding(dip(196.5)).volume_l <= 198
    # 8 L do not reach the first mark of the pail.
    high = plan_holding(dip(190.0, pail=Pail(first_mark_l=9.0)))
    assert high.pours == []
    assert high.cautions == ["reading_open", "may_be_out_of_band", "nothing_to_pour"]


def test_strength_of_what_is_poured() -> None:
    assert poured_pct([Pour(2, 9.0, 1.0), Pour(1, 4.0, 1.0)]) == pytest.approx(100 * 3 / 25)
    assert poured_pct([]) == 0.0


def test_contradiction_is_refused() -> None:
    with pytest.raises(Fault) as caught:
        plan_holding(dip(mixing=replace(question().mixing, weak_pct=30.0)))
    assert caught.value.path == "mixing.weak_pct"


def test_edges_belong_to_what_is_allowed() -> None:
    assert plan_holding(dip(usual_pct=20.0)).pours
    # Exactly 7 and 9 %: as far as the band goes and no farther.
    edge = LastReading(Measured(8.0, 0.5), 0.0, 0.0)
    assert plan_holding(dip(200.0, last=edge)).cautions == ["reading_open", "nothing_to_pour"]


@pytest.mark.parametrize("usual_pct", [0.5, 30.0])
def test_usual_strength_that_may_not_be_mixed_is_refused(usual_pct: float) -> None:
    with pytest.raises(Fault) as refused:
        plan_holding(dip(usual_pct=usual_pct))
    assert (refused.value.code, refused.value.path) == ("order", "usual_pct")
    assert refused.value.limit == {"minimum": 1.0, "maximum": 20.0, "unit": "%"}
