"""pycore.reading.mishap: common practice, no source, except where a row names one."""

import json

import pytest

from pycore.reading.mishap import MISHAPS, PARTS, advice_about
from web.build.paths import ROOT

TYPES = ("soluble_oil", "semi_synthetic", "synthetic", None)
SCHEMA = json.loads((ROOT / "shared/schema/check/advise_mishap.schema.json").read_text("utf-8"))
CONTRACT = SCHEMA["definitions"]
WORDS = json.loads((ROOT / "shared/words/en.json").read_text("utf-8"))


def codes(mishap: str, fluid: str | None = None, metals: tuple[str, ...] = ()) -> list[str]:
    return [row.code for row in advice_about(mishap, fluid, metals)]


def test_the_table_is_the_contracts() -> None:
    assert list(MISHAPS) == CONTRACT["mishap"]["enum"]


@pytest.mark.parametrize("mishap", MISHAPS)
@pytest.mark.parametrize("fluid", TYPES)
def test_every_part_is_there_and_stop_comes_first(mishap: str, fluid: str | None) -> None:
    rows = advice_about(mishap, fluid)
    assert {row.part for row in rows} == set(PARTS)
    assert [row.part for row in rows] == sorted((r.part for r in rows), key=PARTS.index)
    assert rows[0].part == "stop"
    assert all(row.source.strip() for row in rows)
    assert len({row.code for row in rows}) == len(rows)


@pytest.mark.parametrize("mishap", MISHAPS)
def test_what_is_said_whatever_happened(mishap: str) -> None:
    always = {"never_in_the_sump", "never_nitrite", "off_is_not_isolated", "no_hands_no_gloves"}
    assert always | {"gas_at_pits", "sheet_decides"} <= set(codes(mishap, "synthetic"))


@pytest.mark.parametrize(
    ("mishap", "state", "record"),
    [
        ("wrong_drum", "stopped", "unknown_addition"),
        ("neat_poured", "on_hold", "unknown_addition"),
        ("lumpy_bucket", "in_use", "note"),
        ("overfilled", "on_hold", "note"),
        ("ran_dry", "stopped", "note"),
        ("split", "stopped", "note"),
        ("cleaner_in_it", "stopped", "additive"),
        ("oil_leak", "watch", "note"),
    ],
)
def test_state_and_kind_of_entry_that_fit(mishap: str, state: str, record: str) -> None:
    assert (MISHAPS[mishap].state, MISHAPS[mishap].record) == (state, record)


def test_every_row_has_its_sentence() -> None:
    rows = {row.code for name in MISHAPS for row in advice_about(name, None, ["magnesium"])}
    assert rows == {
        key.removeprefix("mishap_row.") for key in WORDS if key.startswith("mishap_row.")
    }
    assert {f"mishap.{name}" for name in MISHAPS} <= WORDS.keys()
    assert {f"mishap_part.{part}" for part in PARTS} <= WORDS.keys()
    assert {f"stop_reason.{mishap.reason}" for mishap in MISHAPS.values()} <= WORDS.keys()


def test_fluid_and_metal_choose_their_rows() -> None:
    assert "neat_goes_lumpy" in codes("neat_poured", "soluble_oil")
    assert "neat_synthetic" not in codes("neat_poured", "soluble_oil")
    assert "neat_goes_lumpy" not in codes("neat_poured", "synthetic")
    assert codes("split", "synthetic")[0] == "clear_is_healthy"
    assert codes("split", "semi_synthetic")[0] == "stop_machining"
    # A synthetic one holds no oil that could split or lump.
    of_oil = {"skim_lumps", "stop_machining", "not_feed_split"}
    assert not of_oil & {*codes("neat_poured", "synthetic"), *codes("split", "synthetic")}
    assert of_oil <= {*codes("neat_poured", "soluble_oil"), *codes("split", "soluble_oil")}
    # What is not known is told whole.
    assert {"neat_goes_lumpy", "neat_synthetic"} <= set(codes("neat_poured"))
    assert "magnesium_at_once" not in codes("wrong_drum", None, ("steel",))
    assert "magnesium_at_once" in codes("wrong_drum", None, ("steel", "magnesium"))
