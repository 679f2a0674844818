"""pycore.recipe.request: settings that cannot all hold."""

from dataclasses import replace

import pytest

from pycore.quantity.fault import Fault
from pycore.recipe.request import Bucket, Mixing, Target, refuse_contradictions

TARGET = Target(7.0, 8.0, 9.0)
MIXING = Mixing(20.0, 1.0, 0.5)
BUCKET = Bucket(10.0, 1.0, 0.05)


def test_settings_that_fit() -> None:
    assert refuse_contradictions(TARGET, MIXING, BUCKET) is None
    # Edges: an aim on the edge of the band, marks as wide as the bucket.
    assert (
        refuse_contradictions(
            replace(TARGET, aim_pct=9.0), MIXING, replace(BUCKET, water_mark_l=10.0)
        )
        is None
    )


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
