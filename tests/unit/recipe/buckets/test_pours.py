"""pycore.recipe.pours: the walk in its order, and sums."""

from dataclasses import replace

import pytest

from pycore.recipe.plan import plan_recipe
from pycore.recipe.pours import Pour, mix_minutes, steps_for, totals_of
from tests.unit.recipe.shop import question

STRONG = Pour(3, 8.0, 2.0)
WEAK = Pour(1, 6.0, 0.5)
OWN = Pour(4, 0.0, 1.25, fluid_l=8.0, kind="own_fluid")


def walk(*arguments: object) -> list[tuple[str, object]]:
    values = (("pour", "minutes", "volume_l"),)
    return [
        (step.kind, next((v for n in values[0] if (v := getattr(step, n)) is not None), None))
        for step in steps_for(*arguments)
    ]


def test_walk_takes_out_first_and_reads_last() -> None:
    assert walk(30.0, [STRONG, WEAK], 30.0) == [
        ("take_out", 30.0), ("bucket", 0), ("bucket", 1), ("run", 30.0), ("read_again", None),
    ]  # fmt: skip


def test_walk_with_a_reading_half_way() -> None:
    # The pump mixes 10 to 15 minutes before the reading half way (common practice, no source).
    kinds = walk(0.0, [STRONG, WEAK], 30.0, 1)
    assert kinds[:4] == [("bucket", 0), ("run", 15.0), ("read_again", None), ("bucket", 1)]
    # After the last pour there is no second end.
    assert walk(0.0, [STRONG], 30.0, 1) == [("bucket", 0), ("run", 30.0), ("read_again", None)]


@pytest.mark.parametrize(
    ("circuit_l", "minutes"),
    [(200.0, 30.0), (1000.0, 30.0), (1001.0, 60.0), (2000.0, 60.0), (2001.0, 120.0),
     (3000.0, 120.0), (3001.0, 240.0), (20_000.0, 240.0)],
)  # fmt: skip
def test_a_large_circuit_mixes_longer(circuit_l: float, minutes: float) -> None:
    # An hour or two up to 3,000 L, four in a central plant (common practice, no source).
    assert mix_minutes(circuit_l) == minutes
    assert replace(question(), fill_to_l=circuit_l).run_min == minutes


def test_a_machine_may_have_a_time_of_its_own() -> None:
    plan = plan_recipe(replace(question(), mix_min=90))
    assert [step.minutes for step in plan.steps if step.kind == "run"] == [90]
    assert walk(0.0, [STRONG, WEAK], 90.0, 1)[1] == ("run", 15.0)


def test_own_fluid_is_a_step_of_its_own() -> None:
    assert walk(0.0, [OWN], 30.0)[0] == ("own_fluid", 0)


def test_nothing_to_do_is_no_walk() -> None:
    assert steps_for(0.0, [], 30.0) == []
    assert [step.kind for step in steps_for(5.0, [], 30.0)] == ["take_out", "run", "read_again"]


def test_totals_count_what_is_run_in_but_no_fluid_of_the_sump() -> None:
    totals = totals_of([STRONG, WEAK, OWN], (40.0, 1.0))
    assert totals.buckets == 8
    assert totals.water_l == pytest.approx(24 + 6 + 40)
    assert totals.concentrate_l == pytest.approx(6 + 0.5 + 5 + 1)


def test_less_than_a_litre_is_taken_out_too_and_nothing_is_run_in_unasked() -> None:
    assert walk(0.5, [], 30.0)[0] == ("take_out", 0.5)
    totals = totals_of([STRONG])
    assert (totals.water_l, totals.concentrate_l) == (24.0, 6.0)


def test_all_that_is_in_a_bucket() -> None:
    assert [pour.held_l for pour in (STRONG, WEAK, OWN)] == [10.0, 6.5, 9.25]
