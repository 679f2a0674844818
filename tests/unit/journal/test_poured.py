"""pycore.journal.poured: buckets as people write them down, in litres."""

from typing import Any

import pytest

from pycore.journal.poured import Poured, poured, usable_of
from tests.phones import setup, typed

TEN = 10.0


@pytest.mark.parametrize(
    ("row", "water_l", "concentrate_l"),
    [
        ({"count": 3, "water": typed("9", "L"), "concentrate": typed("1000", "mL")}, 27, 3),
        ({"count": 2, "strength": typed("3", "%"), "about": True}, 19.4, 0.6),
        ({"count": 1, "kind": "water"}, 10, 0),
        ({"count": 1, "kind": "water", "each": typed("40", "L")}, 40, 0),
        ({"count": 2, "kind": "water", "water": typed("8", "L")}, 16, 0),
        ({"count": 1, "kind": "concentrate", "concentrate": typed("500", "mL")}, 0, 0.5),
        ({"count": 1, "kind": "concentrate", "each": typed("1", "L")}, 0, 1),
        ({"count": 1, "kind": "ready_mix", "each": typed("20", "L"), "strength": typed("4", "%")},
         19.2, 0.8),
        ({"count": 1, "strength": typed("50", "%")}, 5, 5),
        # Coolant of the sump as the carrier: only what was stirred into it is new.
        ({"count": 2, "kind": "own_fluid", "each": typed("8", "L"),
          "concentrate": typed("1.5", "L")}, 0, 3),
        # Source: 1 US gal = 3.785411784 L, NIST Handbook 44, appendix C.
        ({"count": 1, "kind": "water", "each": typed("1", "US gal")}, 3.785411784, 0),
    ],
)  # fmt: skip
def test_known(row: dict[str, Any], water_l: float, concentrate_l: float) -> None:
    went = poured([row], TEN)
    assert (went.water_l, went.concentrate_l) == pytest.approx((water_l, concentrate_l))
    assert (went.buckets, went.unknown_buckets) == (row["count"], 0)


@pytest.mark.parametrize(
    "row",
    [
        {"count": 2},
        {"count": 2, "kind": "mix"},
        {"count": 2, "kind": "own_fluid"},
        {"count": 2, "water": typed("9", "L")},
        {"count": 2, "kind": "mix", "concentrate": typed("1", "L")},
        {"count": 2, "kind": "water", "water": typed("nine", "L")},
        {"count": 2, "kind": "water", "each": typed("some", "L")},
        {"count": 2, "strength": typed("3 or 4", "%")},
        {"count": 2, "water": typed("9", "L"), "concentrate": typed("a cup", "L")},
    ],
)
def test_what_is_not_known_is_counted_and_not_guessed(row: dict[str, Any]) -> None:
    assert poured([row], TEN) == Poured(0.0, 0.0, 2, 2)


def test_without_a_bucket_of_the_machine() -> None:
    assert poured([{"count": 2, "strength": typed("3", "%")}], None) == Poured(0.0, 0.0, 2, 2)


def test_rows_add_up() -> None:
    rows = [{"count": 1, "kind": "water"}, {"count": 4}, {"count": 1, "strength": typed("5", "%")}]
    assert poured(rows, TEN) == Poured(19.5, 0.5, 6, 4)
    assert poured([], TEN) == Poured(0.0, 0.0, 0, 0)


def test_usable_bucket_of_a_set_up() -> None:
    assert usable_of(setup()) == 10.0
    assert usable_of(None) is None
    made = setup()
    made["bucket"]["usable"] = typed("ten", "L")
    assert usable_of(made) is None
