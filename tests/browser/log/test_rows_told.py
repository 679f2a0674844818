"""What rows of buckets are called in the log: by their kind, and never what nobody said."""

from typing import Any

import pytest
from playwright.sync_api import Page, expect

from tests.browser.files import start_at, take_in
from tests.browser.stored import entries
from tests.phones import Phone as Writer
from tests.phones import typed

pytestmark = pytest.mark.usefixtures("machine_on_phone")

TEN_L, NINE_L, DOSE = typed("10", "L"), typed("9", "L"), typed("700", "mL")
ROWS: list[tuple[dict[str, Any], str]] = [
    ({"count": 2, "kind": "water", "each": NINE_L}, "2 buckets of water"),
    ({"count": 1, "kind": "water", "each": NINE_L}, "9 L of water, not by the bucket"),
    ({"count": 1, "kind": "mix", "each": TEN_L, "strength": typed("5", "%")}, "10 L of 5 %"),
    ({"count": 2, "kind": "mix", "each": TEN_L, "strength": typed("5", "%")}, "2 buckets of 5 %"),
    ({"count": 3, "kind": "mix", "each": TEN_L}, "3 buckets, of what is not known"),
    ({"count": 2, "kind": "concentrate", "concentrate": DOSE}, "2 buckets of 700 mL concentrate"),
    ({"count": 1, "kind": "own_fluid", "each": TEN_L, "concentrate": DOSE}, "10 L coolant from"),
    ({"count": 4, "kind": "unknown", "about": True}, "4 buckets, of what is not known"),
]


def test_rows_by_their_kind(page: Page) -> None:
    machine = entries(page, "machine_set")[0]["machine"]
    other = Writer("the other phone")
    for number, (row, _) in enumerate(ROWS):
        other.save("pour", {"pours": [row], "finished": True}, number * 60, machine)
    take_in(page, other.export(), len(ROWS))
    start_at(page, "log")
    for _, told in ROWS:
        expect(page.get_by_role("main").get_by_text(told).first).to_be_visible()
