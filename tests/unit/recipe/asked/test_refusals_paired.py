"""Each condition of the refusal rules decides by itself: pairs of questions, made by hand.

The two questions of a pair differ in one value. One is planned, the other refused, so the condition
on that value matters while all others stay as they are (modified condition/decision coverage).
"""

from dataclasses import asdict, replace
from typing import Any

import pytest

from pycore.quantity.fault import Fault
from pycore.recipe.request import (
    MixingUnit,
    Pail,
    PlanRequest,
    refuse_contradicting_options,
    refuse_contradictions,
)
from tests.unit.recipe.shop import question

ASK = question()
UNIT, PAIL = MixingUnit(1.0, 10.0, 0.5), Pail(1.0, 0.1, 2.0, "jug")
# A water mark so wide that two of them do not fit into the pail, while one and a jug's mark do.
WIDE = replace(ASK, bucket=replace(ASK.bucket, water_mark_l=5.1), pail=PAIL)


def changed(ask: PlanRequest, path: str, value: Any) -> PlanRequest:
    """The question with another value at ``path``."""
    room, _, field = path.rpartition(".")
    if not room:
        return replace(ask, **{field: value})
    return replace(ask, **{room: replace(getattr(ask, room), **{field: value})})


PAIRS: list[tuple[PlanRequest, str, Any, str]] = [
    # low < high, and of low <= aim <= high each half by itself
    (replace(ASK, target=replace(ASK.target, aim_pct=9.0)), "target.low_pct", 9.0, "low_pct"),
    (ASK, "target.aim_pct", 6.99, "aim_pct"),
    (ASK, "target.aim_pct", 9.01, "aim_pct"),
    # weakest < strongest
    (ASK, "mixing.weak_pct", 20.0, "weak_pct"),
    # each mark by itself, then both together
    (ASK, "bucket.water_mark_l", 10.1, "bucket.water_mark_l"),
    (ASK, "bucket.jug_mark_l", 10.1, "bucket.jug_mark_l"),
    (ASK, "bucket.water_mark_l", 9.96, "bucket.water_mark_l"),
    (ASK, "bucket.jug_mark_l", 9.01, "bucket.jug_mark_l"),
    # a pail is there, and it measures the concentrate
    (WIDE, "pail.measure_by", "pail", "bucket.water_mark_l"),
    # a never-above mark is there, and it is too low
    (replace(ASK, never_above_l=198.0), "never_above_l", 197.9, "never_above_l"),
    (ASK, "never_above_l", 197.9, "never_above_l"),
    # a unit is there, and its range is upside down
    (replace(ASK, unit=UNIT), "unit.lowest_pct", 10.1, "unit.lowest_pct"),
    (ASK, "unit", MixingUnit(10.1, 10.0, 0.5), "unit.lowest_pct"),
    # a pail is there, and each first mark by itself; the jug's size, or without it the bucket's
    (replace(ASK, pail=PAIL), "pail.first_mark_l", 10.1, "pail.first_mark_l"),
    (replace(ASK, pail=PAIL), "pail.jug_first_mark_l", 2.1, "pail.jug_first_mark_l"),
    (replace(ASK, pail=PAIL), "pail.jug_max_l", 0.09, "pail.jug_first_mark_l"),
    (
        replace(ASK, pail=replace(PAIL, jug_first_mark_l=2.1, jug_max_l=None)),
        "pail.jug_max_l",
        2.0,
        "pail.jug_first_mark_l",
    ),
    (
        replace(ASK, pail=replace(PAIL, jug_max_l=None)),
        "pail.jug_first_mark_l",
        10.1,
        "pail.jug_first_mark_l",
    ),
    (ASK, "pail", replace(PAIL, first_mark_l=10.1), "pail.first_mark_l"),
]


def refuse(ask: PlanRequest) -> None:
    """Every rule that looks at the question alone."""
    refuse_contradictions(ask.target, ask.mixing, ask.bucket, ask.pail)
    refuse_contradicting_options(ask)


@pytest.mark.parametrize(("planned", "path", "value", "named"), PAIRS)
def test_one_value_decides(planned: PlanRequest, path: str, value: Any, named: str) -> None:
    refused = changed(planned, path, value)
    before, after = asdict(planned), asdict(refused)
    assert [name for name in before if before[name] != after[name]] == [path.split(".")[0]]
    refuse(planned)
    with pytest.raises(Fault) as caught:
        refuse(refused)
    assert caught.value.path.endswith(named)


def test_without_a_pail_a_wide_mark_of_water_is_no_hindrance() -> None:
    refuse(replace(WIDE, pail=None))
    with pytest.raises(Fault) as caught:
        refuse(replace(WIDE, pail=Pail(measure_by="pail")))
    assert caught.value.path == "bucket.water_mark_l"
