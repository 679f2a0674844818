"""pycore.advice.due: when to check, and what speaks for a clean-out."""

import pytest

from pycore.advice.drift import Slope
from pycore.advice.due import Due, Findings, clean_out_reasons, is_clean_out_due, next_check

BAND = (7.0, 9.0)
RISING, FALLING = Slope(0.1, 0.05, 0.25), Slope(-0.1, -0.25, -0.05)


@pytest.mark.parametrize(
    ("pct", "slope", "due"),
    [
        (8.0, None, Due(7, "interval")),
        (8.5, RISING, Due(2, "drifts_high")),
        (7.5, FALLING, Due(2, "drifts_low")),
        # Far from the edge that it drifts to: the interval comes first.
        (7.0, RISING, Due(7, "interval")),
        (9.0, FALLING, Due(7, "interval")),
        (9.5, RISING, Due(0, "out_of_band")),
        (6.9, None, Due(0, "out_of_band")),
        (None, RISING, Due(7, "interval")),
        # On the edge itself: in range, and out with the next moment.
        (9.0, RISING, Due(0, "drifts_high")),
        (7.0, FALLING, Due(0, "drifts_low")),
    ],
)
def test_next_check(pct: float | None, slope: Slope | None, due: Due) -> None:
    assert next_check(7, pct, BAND, slope) == due


def test_without_a_band_the_interval_holds() -> None:
    assert next_check(3, 12, None, RISING) == Due(3, "interval")


def reasons(**found: object) -> list[str]:
    known = {"age_d": None, "germs_cfu_ml": None, "smells_d": [], "fall_ph": None, **found}
    return clean_out_reasons(Findings(**known), 182, 1e3, 1e6, 1.0)  # type: ignore[arg-type]


def test_nothing_known_is_no_reason() -> None:
    assert reasons() == []


def test_each_reason_at_its_edge() -> None:
    assert reasons(age_d=181.9) == []
    assert reasons(age_d=182) == ["old"]
    assert reasons(germs_cfu_ml=999) == []
    assert reasons(germs_cfu_ml=1000) == ["germs_review"]
    assert reasons(germs_cfu_ml=1e6) == ["germs_act"]
    assert reasons(fall_ph=1.0) == []
    assert reasons(fall_ph=1.1) == ["ph_dropped_far"]
    assert reasons(smells_d=[28]) == []
    assert reasons(smells_d=[28, 0]) == ["smells"]
    assert reasons(smells_d=[28.1, 0]) == []


def test_strongest_first() -> None:
    every = {"age_d": 200, "germs_cfu_ml": 1e6, "smells_d": [1, 2], "fall_ph": 1.2}
    assert reasons(**every) == ["germs_act", "ph_dropped_far", "smells", "old"]


def test_only_a_slide_to_look_into_is_no_clean_out() -> None:
    every = ("germs_act", "germs_review", "ph_dropped_far", "smells", "old")
    assert [why for why in every if not is_clean_out_due([why])] == ["germs_review"]
    assert is_clean_out_due(["germs_review", "smells"])
    assert not is_clean_out_due([])
