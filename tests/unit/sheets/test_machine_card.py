"""pycore.sheets.machine_card."""

from dataclasses import replace

import pytest

from pycore.sheets.machine_card import MachineCard, machine_card
from tests.unit.sheets.drawn import NAMESPACE, root_of, said, texts
from tests.unit.sheets.pages import A4, ENGLISH, LONG, PAPERS

CARD = MachineCard(
    "Wheel lathe",
    "7K3F4",
    "https://depot.example/pailwright/",
    [
        ("card_coolant", "Depot mix (semi-synthetic)"),
        ("card_target", "7 to 9\u00a0%, aim 8\u00a0%"),
        ("card_circuit", None),
    ],
    440 / 484,
    "440\u00a0mm",
)


def test_the_card_says_everything() -> None:
    (page,) = machine_card(CARD, A4, ENGLISH)
    text = said([page])
    for part in ("Wheel lathe", "7K3F-4", "Depot mix (semi-synthetic)", "7 to 9 %", "440 mm",
                 "gloves", "eyes", "safety data sheet", "Whole circuit"):  # fmt: skip
        assert part in text


def test_a_level_that_is_true_while_the_pump_runs_is_dipped_so() -> None:
    assert "Pump off" in said(machine_card(CARD, A4, ENGLISH))
    running = said(machine_card(replace(CARD, is_true_running=True), A4, ENGLISH))
    assert "Leave the pump running" in running
    assert "Pump off" not in running


def test_what_is_not_known_is_a_line_for_the_pen() -> None:
    def count(card: MachineCard) -> int:
        (page,) = machine_card(card, A4, ENGLISH)
        return sum(1 for _ in root_of(page).iter(f"{NAMESPACE}line"))

    known = replace(CARD, facts=[*CARD.facts[:2], ("card_circuit", "215\u00a0L")])
    assert count(CARD) == count(known) + 1


@pytest.mark.parametrize("name", ["W" * 80, "A", "Rädersatz-Drehbank am Tor " * 3])
@pytest.mark.parametrize("paper", PAPERS, ids=lambda p: f"{p.name} {p.stretch:.2f}")
def test_long_names_leave_the_rest_in_its_place(name: str, paper) -> None:
    (page,) = machine_card(replace(CARD, name=name.strip()), paper, LONG)
    heights = [float(str(t.get("y"))) for t in root_of(page).iter(f"{NAMESPACE}text")]
    assert max(heights) < paper.room_mm[1]
    assert any(text.endswith("…") for text in texts(page)) == (name == "W" * 80)


def test_squares_of_the_code_are_large_enough_to_be_scanned() -> None:
    for address, least_mm in (("https://a.example/", 36), ("https://a.example/" + "a" * 100, 40)):
        (page,) = machine_card(replace(CARD, address=address), A4, ENGLISH)
        code = next(
            str(path.get("d"))
            for path in root_of(page).iter(f"{NAMESPACE}path")
            if path.get("fill") == "#000"
        )
        # The first run is the top edge of a finder square, seven squares long.
        square_mm = float(code.split("h")[1].split("v")[0]) / 7
        assert square_mm >= 0.8 - 1e-4
        starts = [float(run.split(" ")[0]) for run in code.split("M")[1:]]
        assert max(starts) - min(starts) + square_mm > least_mm - 2
