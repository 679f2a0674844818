"""pycore.recipe.request: settings that cannot all hold."""

import math
from dataclasses import replace

import pytest

from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured
from pycore.recipe.request import (
    Bucket,
    DrawOff,
    HiddenState,
    MixedState,
    Mixing,
    MixingUnit,
    Pail,
    SumpState,
    Target,
    measured_by,
    refuse_contradicting_options,
    refuse_contradictions,
    whole_circuit,
    with_sump,
)
from tests.unit.recipe.shop import question

TARGET = Target(7.0, 8.0, 9.0)
MIXING = Mixing(20.0, 1.0, 0.5)
BUCKET = Bucket(10.0, 1.0, 0.05)


def test_settings_that_fit() -> None:
    assert refuse_contradictions(TARGET, MIXING, BUCKET) is None
    # Edges: an aim on the edge of the band, one mark of water and one of concentrate fill the pail.
    edge = replace(BUCKET, water_mark_l=9.95)
    assert refuse_contradictions(replace(TARGET, aim_pct=9.0), MIXING, edge) is None
    # 0.3 − 0.2 is a little less than 0.1 in floats.
    assert refuse_contradictions(TARGET, MIXING, Bucket(0.3, 0.1, 0.2)) is None


@pytest.mark.parametrize(
    ("bucket", "pail", "most_l"),
    [
        (Bucket(10.0, 10.0, 0.05), None, 9.95),
        (Bucket(10.0, 9.96, 0.05), Pail(measure_by="jug"), 9.95),
        # Water and concentrate both come in whole marks of the pail, whatever the jug's are.
        (Bucket(10.0, 5.1, 0.05), Pail(measure_by="pail"), 5.0),
    ],
)
def test_marks_that_leave_nothing_to_mix(bucket: Bucket, pail: Pail | None, most_l: float) -> None:
    with pytest.raises(Fault) as caught:
        refuse_contradictions(TARGET, MIXING, bucket, pail)
    fault = caught.value
    assert (fault.code, fault.path) == ("mark_above_bucket", "bucket.water_mark_l")
    assert fault.got == bucket.water_mark_l
    assert fault.limit == {"maximum": pytest.approx(most_l), "unit": "L"}


def test_the_wider_mark_is_the_one_to_change() -> None:
    with pytest.raises(Fault) as caught:
        refuse_contradictions(TARGET, MIXING, Bucket(10.0, 1.0, 9.5))
    fault = caught.value
    assert (fault.path, fault.got) == ("bucket.jug_mark_l", 9.5)
    assert fault.limit == {"maximum": 9.0, "unit": "L"}


def test_marks_of_an_unused_jug_may_be_wide() -> None:
    by_pail = Pail(measure_by="pail")
    assert refuse_contradictions(TARGET, MIXING, Bucket(10.0, 5.0, 9.0), by_pail) is None


@pytest.mark.parametrize(
    ("part", "changes", "code", "end"),
    [
        (TARGET, {"low_pct": 9.0}, "order", "low_pct"),
        (TARGET, {"aim_pct": 6.9}, "order", "aim_pct"),
        (TARGET, {"aim_pct": 9.1}, "order", "aim_pct"),
        (MIXING, {"weak_pct": 20.0}, "order", "weak_pct"),
        (BUCKET, {"water_mark_l": 10.1}, "mark_above_bucket", "water_mark_l"),
        (BUCKET, {"jug_mark_l": 10.1}, "mark_above_bucket", "jug_mark_l"),
    ],
)
def test_contradiction_names_the_field(
    part: object, changes: dict[str, float], code: str, end: str
) -> None:
    changed = replace(part, **changes)
    asked = [
        changed if type(whole) is type(changed) else whole for whole in (TARGET, MIXING, BUCKET)
    ]
    with pytest.raises(Fault) as caught:
        refuse_contradictions(*asked)
    assert caught.value.code == code
    assert caught.value.path.endswith(end)
    assert caught.value.got == changes[end]
    assert caught.value.limit


@pytest.mark.parametrize(
    ("part", "changes", "limit"),
    [
        (TARGET, {"low_pct": 9.0}, {"below": 9.0, "unit": "%"}),
        (TARGET, {"aim_pct": 9.1}, {"minimum": 7.0, "maximum": 9.0, "unit": "%"}),
        (MIXING, {"weak_pct": 20.0}, {"below": 20.0, "unit": "%"}),
        (BUCKET, {"jug_mark_l": 10.1}, {"maximum": 10.0, "unit": "L"}),
    ],
)
def test_contradiction_says_what_would_be_allowed(
    part: object, changes: dict[str, float], limit: dict[str, object]
) -> None:
    changed = replace(part, **changes)
    asked = [
        changed if type(whole) is type(changed) else whole for whole in (TARGET, MIXING, BUCKET)
    ]
    with pytest.raises(Fault) as caught:
        refuse_contradictions(*asked)
    assert caught.value.limit == limit


def test_aim_on_the_lower_edge_of_the_band() -> None:
    assert refuse_contradictions(replace(TARGET, aim_pct=7.0), MIXING, BUCKET) is None


@pytest.mark.parametrize(
    ("changes", "path", "got", "limit"),
    [
        ({"never_above_l": 197.0}, "never_above_l", 197.0, {"minimum": 198.0, "unit": "L"}),
        ({"unit": MixingUnit(9.0, 8.0, 1.0)}, "unit.lowest_pct", 9.0,
         {"maximum": 8.0, "unit": "%"}),
        ({"pail": Pail(first_mark_l=10.5)}, "pail.first_mark_l", 10.5,
         {"maximum": 10.0, "unit": "L"}),
        ({"pail": Pail(jug_first_mark_l=1.5, jug_max_l=1.0)}, "pail.jug_first_mark_l", 1.5,
         {"maximum": 1.0, "unit": "L"}),
        ({"pail": Pail(jug_first_mark_l=10.5)}, "pail.jug_first_mark_l", 10.5,
         {"maximum": 10.0, "unit": "L"}),
    ],
)  # fmt: skip
def test_contradicting_option_names_the_field_and_what_is_allowed(
    changes: dict[str, object], path: str, got: float, limit: dict[str, object]
) -> None:
    with pytest.raises(Fault) as caught:
        refuse_contradicting_options(replace(question(), **changes))
    fault = caught.value
    expected = "order" if "mark" not in path else "mark_above_bucket"
    assert (fault.code, fault.path, fault.got, fault.limit) == (expected, path, got, limit)


def test_options_on_their_edges_and_none_at_all() -> None:
    edges = replace(
        question(),
        never_above_l=198.0,
        unit=MixingUnit(8.0, 8.0, 1.0),
        pail=Pail(first_mark_l=10.0, jug_first_mark_l=1.0, jug_max_l=1.0),
    )
    small = replace(question(), bucket=Bucket(0.5, 0.25, 0.05))
    for ask in (edges, question(), small, replace(small, pail=Pail())):
        assert refuse_contradicting_options(ask) is None


def test_hidden_liquid_is_mixed_in_and_raises_the_marks() -> None:
    # By hand: 174 L hold 924 + 100 points; the parts of u by JCGM 100:2008, 5.1.2.
    hidden = HiddenState(Measured(20.0, 1.0), Measured(5.0, 0.2))
    whole = whole_circuit(replace(question(), hidden=hidden, never_above_l=210.0))
    strength = 1024 / 174
    assert whole.sump.volume_l.value == pytest.approx(174.0)
    assert whole.sump.volume_l.u == pytest.approx(math.hypot(3.0, 1.0))
    assert whole.sump.strength_pct.value == pytest.approx(strength)
    parts = (3 * (6 - strength), 5 - strength, 0.3 * 154, 0.2 * 20)
    assert whole.sump.strength_pct.u == pytest.approx(math.hypot(*parts) / 174)
    assert (whole.fill_to_l, whole.never_above_l, whole.hidden) == (218.0, 230.0, None)


def test_hidden_coolant_of_its_own_strength_ties_the_strength_to_the_litres() -> None:
    def per_l_pct(hidden: HiddenState, volume_l: float = 154.0) -> float:
        state = whole_circuit(replace(question(volume_l), hidden=hidden)).sump
        assert isinstance(state, MixedState)
        return state.per_l_pct

    # By hand, covariance over variance: a litre more of 6 % in 174 L at 1024/174 %, and one
    # more of 5 %, each by its share of the variance, 9 to 1.
    strength = 1024 / 174
    tied = (9 * (6 - strength) + (5 - strength)) / 174 / 10
    assert per_l_pct(HiddenState(Measured(20.0, 1.0), Measured(5.0, 0.2))) == pytest.approx(tied)
    # Of one strength it is as strong however much there is, and where there is none.
    assert per_l_pct(HiddenState(Measured(20.0, 1.0))) == 0.0
    assert per_l_pct(HiddenState(Measured(0.0, 0.0), Measured(5.0, 0.2)), 0.0) == 0.0


def test_hidden_liquid_beside_little_and_beside_nothing() -> None:
    hidden = HiddenState(Measured(20.0, 1.0), Measured(5.0, 0.2))
    # 10 L at 8 % and 20 L at 5 %; a third and two thirds of 0.9 L.
    more = whole_circuit(replace(question(10.0, 8.0), hidden=hidden))
    assert more.sump.strength_pct.value == pytest.approx(6.0)
    assert more.never_above_l is None
    less = replace(hidden, volume_l=Measured(0.6, 0.1))
    small = whole_circuit(replace(question(0.3, 8.0), hidden=less))
    assert small.sump.strength_pct.value == pytest.approx(6.0)
    none = replace(hidden, volume_l=Measured(0.0, 0.0))
    empty = whole_circuit(replace(question(0.0, 8.0), hidden=none))
    assert empty.sump.strength_pct.value == 8.0
    assert whole_circuit(question()) == question()


@pytest.mark.parametrize(
    ("most_l", "left_l"), [(None, 154.0), (50.0, 50.0), (170.0, 154.0), (0.0, 0.0)]
)
def test_what_is_hidden_is_not_taken_out(most_l: float | None, left_l: float) -> None:
    # 154 L show on the stick; the 30 L in the pipes stay there.
    hidden = HiddenState(Measured(30.0, 1.0), Measured(5.0, 0.3))
    ask = replace(question(), hidden=hidden, draw_off=DrawOff(True, 1.0, most_l))
    assert whole_circuit(ask).draw_off == DrawOff(True, 1.0, left_l)


@pytest.mark.parametrize("hidden_l", [0.001, 20.0, 5000.0])
def test_hidden_liquid_of_the_same_coolant_is_as_sure_as_the_reading(hidden_l: float) -> None:
    # Litres of one strength mix to that strength: their own error changes nothing.
    hidden = HiddenState(Measured(hidden_l, 0.25 * hidden_l))
    strength = whole_circuit(replace(question(), hidden=hidden)).sump.strength_pct
    assert (strength.value, strength.u) == pytest.approx((6.0, 0.3))


def test_another_state_keeps_its_doubt() -> None:
    sump = with_sump(question(), 160.0, 6.5).sump
    assert sump == SumpState(Measured(160.0, 3.0), Measured(6.5, 0.3))


def test_measured_by_the_pail_concentrate_has_the_marks_of_the_pail() -> None:
    ask = question(bucket=(10.0, 1.0, 0.05))
    for pail in (None, Pail(), Pail(measure_by="jug")):
        assert measured_by(replace(ask, pail=pail)).bucket == ask.bucket
    by_pail = measured_by(replace(ask, pail=Pail(measure_by="pail")))
    assert by_pail.bucket == Bucket(10.0, 1.0, 1.0)
