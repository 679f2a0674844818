"""The pages about instrument, fluid, water, jugs and a second method, in both themes."""

import pytest
from playwright.sync_api import expect

from tests.browser.fluid import choose, fill_jugs, to_jugs, type_all
from tests.browser.looking import Look
from tests.browser.phone import Phone, Theme, heading
from tests.browser.server import Server
from tests.browser.sidesteps import dip, follow, until_answers
from tests.browser.walk import (
    change_group,
    field,
    next_page,
    on_machine,
    open_group,
    press,
)

pytestmark = pytest.mark.usefixtures("machine_on_phone")


@pytest.mark.parametrize("theme", ["light", "dark"])
def test_pages_of_the_record(phone: Phone, server: Server, theme: Theme) -> None:
    page = on_machine(phone, server, theme)
    look = Look(f"{theme}-record")
    page.get_by_role("link", name="Change the set-up").click()
    expect(heading(page)).to_have_text("Is the set-up right?")
    for group, answers, texts in (
        ("instrument", ["Per cent", "No"], {"Factor set": "1.5", "From one mark": "0.1"}),
        ("zero of the instrument", ["Tap water"], {"What did it show": "0.0"}),
        ("metals", [], {}),
        ("data sheet", [], {"pH of the": "9.2", "Density": "0.98", "Who says": "The sheet"}),
        ("drum in use", [], {"Batch": "D-2611", "Delivered on": "2025-02-03"}),
        ("mixing water", ["Softened"], {"Hardness": "18", "Nitrate": "40"}),
    ):
        change_group(page, group)
        for answer in answers:
            choose(page, answer)
        type_all(page, texts)
        if group == "metals":
            page.get_by_role("checkbox", name="Steel").check(force=True)
            page.get_by_role("checkbox", name="Magnesium").check(force=True)
            choose(page, "No, or not known")
        if group == "data sheet":
            type_all(page, {"Softest": "5", "Hardest": "15"})
        if group in ("mixing water", "metals", "drum in use"):
            expect(page.locator(".remarks p").first).to_be_visible()
        look(page)
        next_page(page)
    look(page)
    change_group(page, "factor")
    choose(page, "A printed chart")
    for name, text in (("Mix in row 1", "5"), ("Reading in row 1", "3.3")):
        field(page, name).fill(text)
    expect(page.get_by_text("mix reads")).to_be_visible()
    look(page)
    assert len(look.seen) == 8
    assert look.wrong == []


@pytest.mark.parametrize("theme", ["light", "dark"])
def test_pages_of_the_jugs(phone: Phone, server: Server, theme: Theme) -> None:
    page = on_machine(phone, server, theme)
    look = Look(f"{theme}-jugs")
    open_group(page, "factor")
    look(page)
    to_jugs(page, at_page=look)
    fill_jugs(page, [("970", "30", "2.2"), ("940", "60", "4.4"), ("910", "90", "6.2")])
    look(page)
    next_page(page)
    expect(page.get_by_text("Likely between")).to_be_visible()
    look(page)
    assert len(look.seen) == 4
    assert look.wrong == []


@pytest.mark.parametrize("theme", ["light", "dark"])
def test_pages_of_the_reading(phone: Phone, server: Server, theme: Theme) -> None:
    page = on_machine(phone, server, theme)
    look = Look(f"{theme}-reading")
    open_group(page, "instrument")
    choose(page, "Brix")
    choose(page, "No")
    type_all(page, {"Highest mark": "18"})
    next_page(page)
    change_group(page, "zero of the instrument")
    type_all(page, {"What did it show": "0", "How warm": "20", "On which day": "2026-01-02"})
    next_page(page)
    next_page(page, "Save the machine")
    dip(page)
    field(page, "What does the reading").fill("4.0")
    expect(page.get_by_text("The zero is older than a day")).to_be_visible()
    look(page)
    next_page(page)
    field(page, "How warm is the glass").fill("28")
    look(page)
    next_page(page)
    look(page)
    follow(page, "Read again, and average")
    field(page, "Read it once more").fill("4.2")
    press(page, "Add this reading")
    expect(page.get_by_text("Mean of 2 readings")).to_be_visible()
    look(page)
    next_page(page, "Go on with the mean")
    page.get_by_role("button", name="The line is blurred").click()
    expect(page.get_by_text("Filter the sample")).to_be_visible()
    look(page)
    press(page, "Dilute one to one and read again")
    expect(heading(page)).to_have_text("What does the diluted reading say?")
    field(page, "What does the diluted").fill("2.1")
    look(page)
    assert len(look.seen) == 6
    assert look.wrong == []


@pytest.mark.parametrize("theme", ["light", "dark"])
def test_pages_of_a_second_method(phone: Phone, server: Server, theme: Theme) -> None:
    page = on_machine(phone, server, theme)
    look = Look(f"{theme}-second")
    until_answers(page)
    follow(page, "I have a second method")
    choose(page, "Acid split")
    look(page)
    choose(page, "Titration")
    type_all(page, {"Drops or millilitres": "8", "Per cent for one drop": "0.5"})
    next_page(page)
    look(page)
    next_page(page, "Work out the recipe")
    expect(page.get_by_text("Two methods disagree").first).to_be_visible()
    look(page)
    page.get_by_role("link", name="The larger dose").click()
    expect(heading(page)).to_have_text("The larger dose")
    look(page)
    assert len(look.seen) == 4
    assert look.wrong == []
