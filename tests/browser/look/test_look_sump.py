"""Every screen about the tank in both themes: a picture, axe, no sideways scrolling."""

import pytest
from playwright.sync_api import Page, expect

from tests.browser.looking import Look
from tests.browser.phone import Phone, Theme, heading
from tests.browser.server import Server
from tests.browser.setup.sumpwalk import BOX, POURS, SHAPES, choose, open_pours, pour, to_kinds
from tests.browser.walk import (
    change_group,
    field,
    fill_in,
    next_page,
    open_group,
    open_machine,
    press,
    set_up_machine,
    start_check,
)

ONE = "1 mm is about"
THING = {"Length of the thing": "300", "Width of the thing": "200", "Ends this high": "250"}


def set_up_box(page: Page) -> None:
    """A machine whose tank is a measured box, through the ordinary walk."""
    set_up_machine(page, {**SHAPES[BOX], "Depth at the full mark": "400"}, kind=BOX)


@pytest.mark.parametrize("theme", ["light", "dark"])
def test_kinds_and_their_sizes(phone: Phone, server: Server, theme: Theme) -> None:
    page = phone.start(theme)
    page.goto(server.address)
    look = Look(f"{theme}-sump")
    to_kinds(page)
    look(page)
    for kind, measures in SHAPES.items():
        choose(page, kind)
        next_page(page)
        for box in page.get_by_role("textbox").all():
            if "floor in box 1" not in (box.get_attribute("aria-label") or ""):
                box.fill("")
        fill_in(page, measures)
        if "sloped" in kind:
            choose(page, "The deep end")
        expect(page.get_by_text(ONE)).to_be_visible()
        look(page)
        page.go_back()
        expect(heading(page)).to_have_text("How do you know the volume?")
    assert len(look.seen) == 1 + len(SHAPES)
    assert look.wrong == []


@pytest.mark.parametrize("theme", ["light", "dark"])
def test_details_of_the_sump(phone: Phone, server: Server, theme: Theme) -> None:
    page = phone.start(theme)
    page.goto(server.address)
    set_up_box(page)
    look = Look(f"{theme}-sump-details")
    open_group(page, "things in the coolant")
    press(page, "Add a thing")
    fill_in(page, THING)
    expect(page.get_by_text(ONE)).to_be_visible()
    look(page)
    next_page(page)
    change_group(page, "coolant outside the sump")
    field(page, "Coolant outside the sump").fill("30")
    look(page)
    next_page(page)
    change_group(page, "taking the level")
    choose(page, "From a point at the top")
    field(page, "Height of that point").fill("500")
    look(page)
    next_page(page)
    look(page)
    assert len(look.seen) == 4
    assert look.wrong == []


@pytest.mark.usefixtures("machine_on_phone")
@pytest.mark.parametrize("theme", ["light", "dark"])
def test_pour_test(phone: Phone, server: Server, theme: Theme) -> None:
    page = phone.start(theme)
    page.goto(server.address)
    open_machine(page)
    page.get_by_role("link", name="Find the volume by pouring").click()
    expect(heading(page)).to_have_text("Find the volume by pouring")
    look = Look(f"{theme}-pours")
    look(page)
    page.go_back()
    open_pours(page)
    look(page)
    for poured, depth in POURS:
        pour(page, poured, depth)
    expect(page.get_by_text("Enough for a table")).to_be_visible()
    full = Look(f"{theme}-pours-full")
    full(page)
    field(page, "Dip: how deep").fill("380")
    press(page, "Keep this step")
    expect(page.get_by_role("alert").first).to_contain_text("did not rise")
    assert len(look.seen) == 2
    assert look.wrong + full.wrong == []


@pytest.mark.parametrize("theme", ["light", "dark"])
@pytest.mark.parametrize("way", ["Volume on a printed scale", "A rough gauge", "From a point"])
def test_dip_pages(phone: Phone, server: Server, theme: Theme, way: str) -> None:
    page = phone.start(theme)
    page.goto(server.address)
    set_up_box(page)
    open_group(page, "taking the level")
    choose(page, way)
    if way == "From a point":
        field(page, "Height of that point").fill("500")
        choose(page, "Yes, a dirty and a clean side")
    next_page(page)
    next_page(page, "Save the machine")
    start_check(page)
    look = Look(f"{theme}-dip-{way.split()[-1]}")
    if way == "A rough gauge":
        page.get_by_role("button", name="1/2 to 3/4").click()
    else:
        page.get_by_role("textbox").first.fill("180")
    expect(page.get_by_text("= ")).to_be_visible()
    look(page)
    if way == "From a point":
        next_page(page)
        field(page, "And on the clean side?").fill("240")
        expect(page.get_by_text("stand far apart")).to_be_visible()
        look(page)
    assert look.wrong == []
