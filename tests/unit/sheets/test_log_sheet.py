"""pycore.sheets.log_sheet."""

import pytest

from pycore.sheets.log_sheet import LogSheet, log_sheet
from pycore.sheets.paper import paper_of
from tests.unit.sheets.drawn import NAMESPACE, lines, root_of, said
from tests.unit.sheets.pages import ENGLISH, LONG

WIDE = [paper_of(name, True, None, "m") for name in ("A4", "Letter")]
FULL = LogSheet(
    "Wheel lathe",
    [("card_coolant", "Depot mix (semi-synthetic)"), ("card_target", "7 to 9 %, aim 8 %"),
     ("card_factor", "1.5"), ("card_full", "440 mm = 198 L")],
    {"col_dip": "mm", "col_reading": "Brix", "col_water": "L", "col_concentrate": "mL"},
)  # fmt: skip
BLANK = LogSheet(None, [(key, None) for key, _ in FULL.facts], {})


@pytest.mark.parametrize("paper", WIDE, ids=lambda p: p.name)
@pytest.mark.parametrize("language", [ENGLISH, LONG], ids=["english", "long words"])
@pytest.mark.parametrize("ask", [FULL, BLANK], ids=["full", "blank"])
def test_the_sheet_keeps_to_the_page(paper, language, ask: LogSheet) -> None:
    (page,) = log_sheet(ask, paper, language)
    wide, high = paper.room_mm
    for element in root_of(page).iter(f"{NAMESPACE}line"):
        assert 0 <= float(str(element.get("x1"))) <= float(str(element.get("x2"))) <= wide
        assert float(str(element.get("y2"))) <= high
    assert {"100 mm", "4 in"} <= {line.name for line in lines(page)}


def test_the_head_says_machine_units_and_target() -> None:
    text = said(log_sheet(FULL, WIDE[0], ENGLISH))
    for part in ("Wheel lathe", "Depot mix", "7 to 9 %, aim 8 %", "1.5", "198 L", "Brix", "mL"):
        assert part in text


def test_without_a_machine_the_head_is_for_the_pen() -> None:
    text = said(log_sheet(BLANK, WIDE[0], ENGLISH))
    assert "Machine" in text
    assert "Brix" not in text


def test_a_dozen_checks_fit_on_the_sheet() -> None:
    for paper in WIDE:
        (page,) = log_sheet(FULL, paper, ENGLISH)
        rows = [
            line
            for line in root_of(page).iter(f"{NAMESPACE}line")
            if line.get("stroke-width") == "0.2"
        ]
        assert len(rows) >= 12


def test_a_long_coolant_does_not_push_the_other_amounts_away() -> None:
    long = LogSheet("W" * 80, [("card_coolant", "W" * 80), *FULL.facts[1:]], FULL.units)
    text = said(log_sheet(long, WIDE[1], ENGLISH))
    assert "440 mm = 198 L" in text
    assert "W…" in text
