"""A shop's rule of thumb (common practice, no source): where it holds and where it does not."""

import pytest

from tests.published.rule_of_thumb import edges, table


def test_table_has_every_dip_and_reading() -> None:
    text = table()
    print(text)
    lines = text.splitlines()[1:]
    assert [tuple(line.split()[:2]) for line in lines] == [
        (dip, reading)
        for dip in ("1.5", "2.75", "3.4", "3.6", "5.0", "5.5", "6.0")
        for reading in ("1.5", "2.0", "3.0")
    ]


def test_rule_overfills_above_5_4_inches() -> None:
    # By hand: 55·d/7 + 5·2.5 = 55 at d = 5.409 in. Tolerance 0.01 in, the step of the search.
    assert edges()["overfills_from_in"] == pytest.approx(5.41, abs=0.01)


def test_rule_is_too_weak_just_above_half_depth_below_a_reading_of_2_3() -> None:
    # By hand: (27.5·r + 250 + 15·7/6.4)/55 = 6 at r = 2.31. Tolerance 0.01 points.
    assert edges()["too_weak_up_to_reading"] == pytest.approx(2.31, abs=0.01)
