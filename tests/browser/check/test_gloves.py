"""The simulated glove on the keys of the real pages."""

import pytest
from playwright.sync_api import Page

from tests.gloves.gates import dip_gate, log_of, reading_gate
from tests.gloves.pages import read_pages
from tests.gloves.walks import simulate

KEYS = {*"0123456789", "delete", "continue"}


@pytest.mark.usefixtures("machine_on_phone")
def test_a_steady_hand_types_what_it_means(page: Page) -> None:
    pages = read_pages(page)
    assert {target.key for target in pages.dip if target.key} == {*KEYS, "clear"}
    assert {target.key for target in pages.reading if target.key} == {*KEYS, "."}
    steady = simulate(pages, scatter_mm=0, walks=50)
    assert (steady.walks, steady.wrong) == (50, 0)
    assert sum(steady.dip.right.values()) == sum(steady.reading.right.values()) == 50
    shaky = simulate(pages, scatter_mm=4, walks=50)
    assert shaky.wrong > 0
    assert shaky == simulate(pages, scatter_mm=4, walks=50)
    assert shaky != simulate(pages, scatter_mm=4, walks=50, seed=1)


def test_each_gate_stops_what_it_is_for() -> None:
    lines = log_of(("360", "4.1"))
    found = {text: dip_gate(text, lines, days_since=3) for text in ("", "342", "34", "202", "3422")}
    assert found == {
        "": "refused",
        "342": "passed",
        "34": "asked once",
        "202": "asked against the log",
        "3422": "refused",
    }
    readings = ("4.0", "40", "22", "0.4")
    assert [reading_gate(text, lines, days_since=3) for text in readings] == [
        "passed",
        "refused",
        "asked once",
        "asked against the log",
    ]
    # A first check has the target alone: aim 8 % and factor 1.5 make 5.3 Brix.
    first = log_of(None)
    assert [reading_gate(text, first, days_since=0) for text in ("2.8", "0.4")] == [
        "passed",
        "asked against the log",
    ]
    found = {text: dip_gate(text, first, days_since=0) for text in ("34", "202")}
    assert found == {"34": "asked once", "202": "passed"}
