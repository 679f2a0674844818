"""The pages of pouring and of the second reading, in both themes, as in test_look.py."""

import re
from collections.abc import Callable

import pytest
from playwright.sync_api import Page, expect

from tests.browser.check.test_recheck import read_again
from tests.browser.looking import Look
from tests.browser.phone import Phone, Theme, heading
from tests.browser.pouring import OF_A_BUCKET
from tests.browser.server import Server
from tests.browser.walk import check_until_recipe, on_machine, press

At = Callable[[str], None]


def _pour(page: Page, at: At) -> None:
    press(page, "Start pouring")
    expect(heading(page)).to_have_text("Before the first bucket")
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
    expect(heading(page)).to_have_text("What went in?")
    at("stop")
    page.go_back()
    expect(heading(page)).to_have_text(re.compile("Bucket 2 of"))
    page.reload()
    expect(heading(page)).to_have_text("Where you were")
    at("resume")
    press(page, "No, go on from there")
    expect(heading(page)).to_have_text(re.compile("Bucket 2 of"))
    total = int(heading(page).inner_text().split()[-1])
    for n in range(2, total + 1):
        press(page, f"Bucket {n} is poured")
    expect(heading(page)).to_have_text("All in")
    at("all-in")
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    at("done")


def _read(page: Page, at: At) -> None:
    page.get_by_role("link", name="Wheel lathe").click()
    expect(heading(page)).to_have_text("Wheel lathe")
    at("machine")
    read_again(page, "4.2")
    at("found")
    for _ in range(3):
        page.go_back()
    page.get_by_role("link", name="I will not read again").click()
    expect(heading(page)).to_have_text("No second reading?")
    at("skip")
    page.go_back()
    page.get_by_role("button", name="Back").click()
    expect(heading(page)).not_to_have_text("Wheel lathe")


@pytest.mark.usefixtures("machine_on_phone")
@pytest.mark.parametrize("theme", ["light", "dark"])
def test_pour_and_second_reading(phone: Phone, server: Server, theme: Theme) -> None:
    page = on_machine(phone, server, theme)
    check_until_recipe(page)
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    looks: list[Look] = []

    def at(name: str) -> None:
        # Many of these pages share a heading: each is looked at under a name of its own.
        looks.append(Look(f"{theme}-pour-{name}"))
        looks[-1](page)

    at("saved")
    _pour(page, at)
    _read(page, at)
    page.goto(server.address)
    expect(heading(page)).to_have_text("Machines")
    at("machines")
    assert len(looks) == 15
    assert [wrong for look in looks for wrong in look.wrong] == []
