"""Every row of shared/checks, natively and in the shipped bundle; sources stand in the files."""

import json
from typing import Any

import pytest

from tests.published.checks import Native, Shipped, question, rows

ROWS = list(rows())
NAMES = [f"{file}: {row['name']}" for file, row in ROWS]


@pytest.mark.parametrize(("file", "row"), ROWS, ids=NAMES)
def test_row(file: str, row: dict[str, Any], engine: Native | Shipped) -> None:
    got = engine.answer(question(file, row))
    allowed = row["tolerance"]["value"]
    if row["kind"] == "recipe":
        assert got["concentrate_l"] == pytest.approx(row["concentrate_l"], abs=2e-4)
    assert row["expect"]
    for name, wanted in row["expect"].items():
        if isinstance(wanted, bool):
            assert got[name] is wanted, name
        else:
            assert got[name] == pytest.approx(wanted, abs=allowed, rel=0), name


@pytest.mark.parametrize(("file", "row"), ROWS, ids=NAMES)
def test_both_engines_agree(file: str, row: dict[str, Any], shipped: Shipped) -> None:
    # Tolerance: relative 1e-12, the last digits in which two C libraries may differ.
    text = question(file, row)
    here, there = Native().answer(text), shipped.answer(text)
    assert here.keys() == there.keys()
    for name, value in here.items():
        assert there[name] == pytest.approx(value, rel=1e-12, abs=1e-15), name


def test_shop_read_afterwards_is_covered(engine: Native | Shipped) -> None:
    # Common practice, no source: a shop read 7.5 after a fill that was worked out as 7.0.
    file, row = next((file, row) for file, row in ROWS if row["kind"] == "shop_fill")
    text = question(file, row)
    settings = json.loads(text)["file"]["settings"]
    got = engine.answer(text)
    u_reading = settings["standard_uncertainty"]["u_reading_points"]
    spread = settings["coverage_factor"]["k"] * (got["u_pct"] ** 2 + u_reading**2) ** 0.5
    assert abs(row["read_afterwards"] - got["strength_pct"]) <= spread
    # It must not be covered by claiming to know nothing: a whole band width would be that.
    assert spread < settings["band"]["high_pct"] - settings["band"]["low_pct"]
