"""Every screen in both themes: a picture, nothing serious for axe, no sideways scrolling."""

import re

import pytest
from playwright.sync_api import Page, expect

from tests.browser.looking import Look
from tests.browser.phone import Phone, Theme, heading
from tests.browser.server import Server
from tests.browser.walk import (
    OPTIONS,
    check_until_recipe,
    fill_in,
    next_page,
    on_machine,
    open_group,
    open_machine,
    press,
    save_check,
    set_up_machine,
    start_check,
)


def walk(page: Page, look: Look) -> None:
    """The way past every screen."""
    look(page)
    set_up_machine(page, at_page=look)
    look(page)
    check_until_recipe(page, at_page=look)
    save_check(page, at_page=look)
    page.get_by_role("link", name="Open the log").click()
    heading(page).get_by_text("log", exact=False).first.wait_for()
    look(page)
    page.get_by_role("main").get_by_role("link", name="Wheel lathe").first.click()
    page.wait_for_url("**/log/*")
    look(page)


@pytest.mark.parametrize("theme", ["light", "dark"])
def test_every_screen_at_phone_size(phone: Phone, server: Server, theme: Theme) -> None:
    page = phone.start(theme)
    page.goto(server.address)
    look = Look(theme)
    walk(page, look)
    assert len(look.seen) >= 20
    assert look.wrong == []


@pytest.mark.usefixtures("machine_on_phone")
@pytest.mark.parametrize("theme", ["light", "dark"])
def test_pages_aside_of_the_set_up(phone: Phone, server: Server, theme: Theme) -> None:
    page = on_machine(phone, server, theme)
    look = Look(f"{theme}-aside")
    for group in ("rim", "measuring", "what the shop allows"):
        open_group(page, group)
        for radio in page.get_by_role("radio", name="Yes").all():
            # The drawn circle lies over the real one.
            radio.check(force=True)
        fill_in(page, OPTIONS)
        look(page)
        next_page(page)
        look(page)
        next_page(page, "Save the machine")
    assert len(look.seen) == 4
    assert look.wrong == []


@pytest.mark.usefixtures("machine_on_phone")
@pytest.mark.parametrize("theme", ["light", "dark"])
@pytest.mark.parametrize(
    ("kind", "depth", "reading", "title"),
    [
        ("lean", "420", "2.0", "The target is out of reach"),
        ("lean-full", "440", "3.3", "The target is out of reach"),
        ("rich-full", "440", "7.4", "The target is out of reach"),
        ("full", "440", "5.3", "Nothing to pour"),
    ],
)
def test_pages_without_an_ordinary_recipe(
    phone: Phone, server: Server, theme: Theme, kind: str, depth: str, reading: str, title: str
) -> None:
    page = on_machine(phone, server, theme)
    check_until_recipe(page, depth, reading)
    expect(heading(page)).to_have_text(title)
    look = Look(f"{theme}-{kind}")
    look(page)
    for i in range(page.locator(".ways a").count()):
        page.locator(".ways a").nth(i).click()
        page.wait_for_url(f"**/way/{i + 1}")
        expect(heading(page)).not_to_have_text(title)
        look(page)
        page.go_back()
        expect(heading(page)).to_have_text(title)
    assert look.wrong == []


def test_recipe_on_a_desk_screen(desk: Phone, server: Server) -> None:
    page = desk.start()
    page.goto(server.address)
    set_up_machine(page)
    check_until_recipe(page)
    look = Look("desk")
    look(page)
    assert look.wrong == []


@pytest.mark.usefixtures("machine_on_phone")
def test_unusual_number_is_asked_about_once(page: Page) -> None:
    open_machine(page)
    start_check(page)
    page.get_by_role("textbox").first.fill("342")
    press(page, "Continue")
    page.get_by_role("button", name="Hard floor").click()
    page.get_by_role("textbox", name="What does the reading").fill("0.2")
    press(page, "Continue")
    look = Look("doubt")
    page.get_by_role("button", name=re.compile("0.2")).wait_for()
    look(page)
    page.get_by_role("button", name=re.compile("0.2")).click()
    page.get_by_role("button", name="Sharp line").wait_for()
    assert look.wrong == []
