"""Learn: ten cards whose numbers come from pycore, reached from the list and from a Why?."""

import re

import pytest
from playwright.sync_api import Page, expect

from tests.browser.looking import Look
from tests.browser.phone import Phone, Theme, heading, wait_until_ready
from tests.browser.server import Server
from tests.browser.walk import (
    check_until_recipe,
    field,
    next_page,
    open_machine,
    press,
    start_check,
)

TITLES = [
    "What coolant is",
    "From dip to litres",
    "Reading and factor",
    "Water leaves, concentrate stays",
    "Per cent of the mix, not of the water",
    "The bucket is not the target",
    "Six cases, six ways",
    "Water first, then concentrate",
    "Read again",
    "Safety first",
]


@pytest.mark.parametrize("theme", ["light", "dark"])
@pytest.mark.usefixtures("machine_on_phone")
def test_every_card(phone: Phone, server: Server, theme: Theme) -> None:
    page = phone.start(theme)
    page.goto(server.address)
    wait_until_ready(page)
    page.get_by_role("link", name="Learn and practise").click()
    expect(heading(page)).to_have_text("Learn and practise")
    look = Look(f"{theme}-learn")
    look(page)
    page.get_by_role("link", name=TITLES[0]).click()
    main = page.get_by_role("main")
    for title in TITLES:
        expect(heading(page)).to_have_text(title)
        expect(main).to_contain_text("Source: ")
        if title not in ("Six cases, six ways", TITLES[-1]):
            expect(main.get_by_role("img").or_(main.locator("svg.bucket")).first).to_be_visible()
        # The text of one card waits for a number of pycore.
        expect(main.get_by_text(re.compile(r"\w\. \w")).first).to_be_visible()
        look(page)
        if title != TITLES[-1]:
            press(page, "Next card")
    assert len(look.seen) == 1 + len(TITLES)
    assert look.wrong == []


@pytest.mark.usefixtures("machine_on_phone")
def test_cards_answer_to_their_keys(page: Page) -> None:
    wait_until_ready(page)
    page.get_by_role("link", name="Learn and practise").click()
    main = page.get_by_role("main")
    page.get_by_role("link", name="Water leaves, concentrate stays").click()
    expect(main).to_contain_text("153.9 L at 6.0 %")
    for _ in range(5):
        press(page, "Heat takes 10\N{NO-BREAK SPACE}L of water")
    # 9.234 L of concentrate in 103.9 L.
    expect(main).to_contain_text("103.9 L at 8.9 %")
    press(page, "Parts carry 10\N{NO-BREAK SPACE}L out")
    expect(main).to_contain_text("93.9 L at 8.9 %")
    press(page, "Start again")
    expect(main).to_contain_text("153.9 L at 6.0 %")
    page.go_back()
    page.get_by_role("link", name="The bucket is not the target").click()
    # 9.2 + 0.8 L are at the target: (9.234 + 3.2) / 193.9 is 6.4 %. With 1.6 L in each 8.1 %.
    expect(main).to_contain_text("4 buckets at 8.0 % bring 6.0 % to 6.4 %.")
    press(page, "Concentrate in each of 4 buckets: more")
    press(page, "Concentrate in each of 4 buckets: more")
    expect(main).to_contain_text("4 buckets at 16.0 % bring 6.0 % to 8.1 %.")


@pytest.mark.usefixtures("machine_on_phone")
def test_from_a_why_to_its_card_and_back(page: Page) -> None:
    open_machine(page)
    start_check(page)
    field(page, "How deep").fill("342")
    press(page, "Why?")
    page.get_by_role("link", name="See it on a card").click()
    expect(heading(page)).to_have_text("From dip to litres")
    page.get_by_role("button", name="Back").click()
    expect(field(page, "How deep")).to_have_value("342")
    next_page(page)


@pytest.mark.usefixtures("machine_on_phone")
def test_from_a_recipe_to_its_case_in_the_table_and_back(page: Page) -> None:
    open_machine(page)
    check_until_recipe(page, "342", "4.0")
    page.get_by_role("link", name="Which way, and why").click()
    expect(heading(page)).to_have_text("Six cases, six ways")
    # 6.0 % of 7 to 9 %, 154 L of 198 L: weak, with room.
    here = page.locator("td[aria-current]")
    expect(here).to_have_count(1)
    expect(here).to_contain_text("Top up stronger")
    press(page, "Back to the check")
    expect(page.get_by_text("In each of the")).to_be_visible()
