"""The pages off the ordinary way of a check, in both themes, as in test_look.py."""

import pytest
from playwright.sync_api import Page, expect

from tests.browser.looking import Look
from tests.browser.phone import Phone, Theme, heading
from tests.browser.server import Server
from tests.browser.sidesteps import dip, read_first, to_machine, until_answers
from tests.browser.walk import (
    check_until_recipe,
    field,
    leave,
    next_page,
    on_machine,
    pass_since,
    press,
    save_check,
)

pytestmark = pytest.mark.usefixtures("machine_on_phone")


def open_log_entry(page: Page, look: Look) -> None:
    """From the page that says Saved to the entry."""
    look(page)
    page.get_by_role("link", name="Open this entry").click()
    expect(heading(page)).to_have_text("Check")
    look(page)
    page.go_back()
    expect(heading(page)).to_have_text("Saved to the log")


@pytest.mark.parametrize("theme", ["light", "dark"])
def test_without_a_reading(phone: Phone, server: Server, theme: Theme) -> None:
    page = on_machine(phone, server, theme)
    look = Look(f"{theme}-hold-new")
    dip(page)
    look(page)
    press(page, "Read later")
    expect(heading(page)).to_have_text("What is the usual mix?")
    look(page)
    field(page, "What is the usual mix").fill("3")
    next_page(page)
    expect(heading(page)).to_have_text("Fill up, read later")
    look(page)
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    open_log_entry(page, look)
    to_machine(page)
    look(page)
    page.go_back()
    expect(heading(page)).to_have_text("Machines")
    look(page)
    page.get_by_role("link", name="Open the log").click()
    expect(heading(page)).to_have_text("Log")
    look(page)
    assert len(look.seen) == 8
    assert look.wrong == []


@pytest.mark.parametrize("theme", ["light", "dark"])
def test_without_a_reading_after_a_check(phone: Phone, server: Server, theme: Theme) -> None:
    page = on_machine(phone, server, theme)
    check_until_recipe(page, "380", "5.4")
    save_check(page)
    page.get_by_role("link", name="Wheel lathe").click()
    dip(page, "352")
    press(page, "Read later")
    expect(heading(page)).to_have_text("Fill up, read later")
    look = Look(f"{theme}-hold-after")
    look(page)
    for _page in ("reading", "since", "touched", "dip"):
        page.go_back()
    field(page, "How deep").fill("440")
    next_page(page)
    page.get_by_role("button", name="Hard floor").click()
    pass_since(page)
    press(page, "Read later")
    expect(heading(page)).to_have_text("Nothing to pour")
    look(page)
    assert look.wrong == []


@pytest.mark.parametrize("theme", ["light", "dark"])
@pytest.mark.parametrize("reading", ["4.0", "5.3", "7.4"])
def test_without_a_dip(phone: Phone, server: Server, theme: Theme, reading: str) -> None:
    page = on_machine(phone, server, theme)
    look = Look(f"{theme}-state-{reading}")
    read_first(page, reading)
    look(page)
    press(page, "No dip now")
    expect(heading(page)).to_have_text("Strength only")
    look(page)
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    open_log_entry(page, look)
    to_machine(page)
    look(page)
    assert look.wrong == []


@pytest.mark.parametrize("theme", ["light", "dark"])
def test_concentrate_and_mark(phone: Phone, server: Server, theme: Theme) -> None:
    page = on_machine(phone, server, theme)
    look = Look(f"{theme}-once")
    until_answers(page)
    leave(page, page.get_by_role("link", name="Change: Fill up to"))
    look(page)
    field(page, "Fill up to").fill("400")
    expect(page.get_by_text("= 180 L")).to_be_visible()
    Look(f"{theme}-once-typed")(page)
    next_page(page)
    next_page(page, "Work out the recipe")
    look(page)
    page.get_by_role("link", name="Not enough concentrate?").click()
    field(page, "How much concentrate").fill("2.5")
    look(page)
    next_page(page)
    page.go_back()
    expect(heading(page)).to_have_text("Is everything right?")
    look(page)
    assert len(look.seen) >= 4
    assert look.wrong == []
