"""The pages of pouring and of the second reading, in both themes, as in test_look.py."""

import re

import pytest
from playwright.sync_api import expect

from tests.browser.phone import Phone, Theme, heading
from tests.browser.pouring import OF_A_BUCKET
from tests.browser.server import Server
from tests.browser.test_look import Look
from tests.browser.test_recheck import read_again
from tests.browser.walk import check_until_recipe, press, set_up_machine


@pytest.mark.parametrize("theme", ["light", "dark"])
def test_pour_and_second_reading(phone: Phone, server: Server, theme: Theme) -> None:
    page = phone.start(theme)
    page.goto(server.address)
    set_up_machine(page)
    check_until_recipe(page)
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    look = Look(f"{theme}-pour")

    def at(name: str) -> None:
        # Many of these pages share a heading: each is looked at under a name of its own.
        look.seen = [seen for seen in look.seen if seen == "" or seen.startswith("=")]
        look.kind = f"{theme}-pour-{name}"
        look(page)
        look.seen = [*look.seen[:-1], f"={name}"]

    at("saved")
    press(page, "Start pouring")
    at("ready")
    press(page, "Right drum, gloves on")
    for state in OF_A_BUCKET:
        expect(page.get_by_role("button", name=state, exact=True)).to_be_visible()
        at(re.sub("[^a-z]", "", state.lower()))
        press(page, state)
    press(page, "Water is in")
    press(page, "One tick for each bucket")
    at("quick")
    page.get_by_role("link", name="Stop here").click()
    at("stop")
    page.go_back()
    page.reload()
    at("resume")
    press(page, "No, go on from there")
    total = int(heading(page).inner_text().split()[-1])
    for n in range(2, total + 1):
        press(page, f"Bucket {n} is poured")
    at("all-in")
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    at("done")
    page.get_by_role("link", name="Wheel lathe").click()
    expect(heading(page)).to_have_text("Wheel lathe")
    at("machine")
    read_again(page, "4.2")
    at("found")
    page.go_back()
    page.go_back()
    page.go_back()
    page.get_by_role("link", name="I will not read again").click()
    at("skip")
    page.go_back()
    page.get_by_role("button", name="Back").click()
    expect(heading(page)).to_have_text("Machines")
    at("machines")
    assert len(look.seen) == 15
    assert look.wrong == []
