"""A published table without a citation is no check."""

import json
from typing import Any

import pytest

from tests.published.checks import files, rows
from tests.published.inside import KINDS

STATUS = ("read", "second hand", "from memory", "computed", "common practice, no source")
NEEDED = {
    "units.json", "ratios.json", "dilution.json", "recipes.json", "tanks.json", "readings.json",
    "uncertainty.json", "common_practice.json", "hardness.json", "lines.json",
    "refractometer.json", "temperature.json",
}  # fmt: skip


def test_every_table_is_there() -> None:
    assert set(files()) >= NEEDED


@pytest.mark.parametrize("file", files())
def test_citations_say_source_place_and_status(file: str) -> None:
    citations = files()[file]["citations"]
    assert citations
    for citation in citations.values():
        assert citation["source"].strip()
        assert citation["where"].strip()
        assert citation["status"].startswith(STATUS)


@pytest.mark.parametrize(
    ("file", "row"), list(rows()), ids=lambda part: part if isinstance(part, str) else part["name"]
)
def test_row_has_citation_tolerance_and_a_calculation(file: str, row: dict[str, Any]) -> None:
    assert row["citation"] in files()[file]["citations"]
    assert row["tolerance"]["value"] >= 0
    assert row["tolerance"]["unit"].strip()
    assert row["expect"]
    assert row["kind"] in KINDS


def test_no_row_stands_twice_and_no_citation_is_unused() -> None:
    for content in files().values():
        texts = [json.dumps(row, sort_keys=True) for row in content["rows"]]
        assert len(set(texts)) == len(texts)
        assert {row["citation"] for row in content["rows"]} == set(content["citations"])
