"""What a screen reader is given on the pages of a check: names, headings, live regions."""

import pytest
from playwright.sync_api import Page, expect

from tests.browser.phone import heading
from tests.browser.walk import check_until_recipe, open_machine
from tests.screens.spoken import misspoken, tree

PLACES = ("", "/look", "/dip", "/reading", "/target", "/answers", "/recipe", "/all")


@pytest.mark.usefixtures("machine_on_phone")
def test_names_hold_alone_and_begin_with_what_is_seen(page: Page) -> None:
    open_machine(page)
    machine = page.url.split("#")[1]
    check_until_recipe(page)
    found = []
    for place in (*(machine + part for part in PLACES), "/learn/top_up"):
        page.evaluate("(place) => { location.hash = place; }", f"#{place}")
        expect(heading(page)).to_be_visible()
        page.wait_for_timeout(700)
        nodes = tree(page)
        # Reading begins at the heading of the new place.
        focused = [node for node in nodes if node.about.get("focused")]
        if not any(node.role in ("heading", "textbox") for node in focused):
            found.append(f"{place}: the focus is on {[node.role for node in focused]}")
        found += [f"{place}: {one}" for one in misspoken(page)]
    print("\n".join(found))
    assert found == []
