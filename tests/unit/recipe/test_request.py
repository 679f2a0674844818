"""pycore.recipe.request: settings that cannot all hold."""

from dataclasses import replace

import pytest

from pycore.quantity.fault import Fault
from pycore.recipe.request import Bucket, Mixing, Pail, Target, measured_by, refuse_contradictions
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


def test_measured_by_the_pail_concentrate_has_the_marks_of_the_pail() -> None:
    ask = question(bucket=(10.0, 1.0, 0.05))
    for pail in (None, Pail(), Pail(measure_by="jug")):
        assert measured_by(replace(ask, pail=pail)).bucket == ask.bucket
    by_pail = measured_by(replace(ask, pail=Pail(measure_by="pail")))
    assert by_pail.bucket == Bucket(10.0, 1.0, 1.0)
