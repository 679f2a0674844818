"""Before anything is added: the level beside the log, the water, earlier results, and foam."""

import json

import pytest
from playwright.sync_api import Page, expect

from tests.browser.files import start_at
from tests.browser.log.test_told import store, tell
from tests.browser.look.test_look_first import looked
from tests.browser.looking import Look
from tests.browser.phone import Phone, Theme, heading
from tests.browser.server import Server
from tests.browser.stored import entries, rows
from tests.browser.walk import (
    check_until_recipe,
    field,
    leave,
    next_page,
    open_machine,
    press,
    save_check,
    start_check,
)

pytestmark = pytest.mark.usefixtures("machine_on_phone")

GUARD_MS = 1_100


def dip_again(page: Page, depth: str) -> None:
    """From the list to what comes after the floor."""
    open_machine(page)
    start_check(page)
    field(page, "How deep").fill(depth)
    next_page(page)
    page.get_by_role("button", name="Hard floor").click()


def read(page: Page, shows: str) -> None:
    """From the reading to the recipe."""
    field(page, "What does the reading").fill(shows)
    next_page(page)
    page.get_by_role("button", name="Sharp line").click()
    expect(heading(page)).to_have_text("Where should it be?")
    next_page(page)
    next_page(page, "Work out the recipe")


def test_a_loss_is_asked_about_and_the_leak_comes_before_the_recipe(page: Page) -> None:
    open_machine(page)
    check_until_recipe(page, "400", "5.3")
    save_check(page)
    # 400 mm are 180 L, 280 mm 126 L. Minutes later 9.9 L are explained at the most.
    dip_again(page, "280")
    expect(heading(page)).to_have_text("Since the last dip")
    main = page.get_by_role("main")
    expect(main).to_contain_text("54 L are missing")
    expect(main).to_contain_text("The figure is common practice, no source.")
    expect(main).to_contain_text("Look for the leak before you fill")
    next_page(page)
    read(page, "4.0")
    expect(main).to_contain_text("Look for the leak before you fill")
    page.get_by_role("link", name="What explains the loss?").click()
    page.get_by_text("Somebody took some out").click()
    next_page(page)
    expect(main).to_contain_text("In each of the")
    expect(main).not_to_contain_text("Look for the leak")
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    assert entries(page, "check")[-1]["body"]["level_change"] == "taken_out"


def test_nothing_is_asked_where_the_log_explains_the_level(page: Page) -> None:
    open_machine(page)
    check_until_recipe(page, "400", "5.3")
    save_check(page)
    dip_again(page, "395")
    expect(field(page, "What does the reading")).to_be_visible()


def test_the_water_of_a_bucket_by_habit_is_asked_for(page: Page) -> None:
    open_machine(page)
    check_until_recipe(page, "400", "5.3")
    save_check(page)
    tell(page, "Buckets poured")
    store(page)
    start_at(page)
    dip_again(page, "422")
    expect(heading(page)).to_have_text("Since the last dip")
    # Here stands no figure that could be from anywhere.
    expect(page.get_by_role("main")).not_to_contain_text("The figure")
    page.get_by_text("Softened", exact=True).click()
    next_page(page)
    read(page, "5.3")
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    body = entries(page, "check")[-1]["body"]
    assert body["topped_up_with"] == "softened"
    assert "level_change" not in body
    page.get_by_role("link", name="Open this entry").click()
    expect(page.get_by_role("main")).to_contain_text("Water of the last top-ups")


def test_earlier_nitrite_judges_the_next_look_with_its_date(page: Page) -> None:
    for nitrite in ("8", "9", "7"):
        open_machine(page)
        press(page, "Start a check")
        page.get_by_role("link", name="I measured").click()
        field(page, "Nitrite").fill(nitrite)
        if nitrite == "7":
            before = page.get_by_role("link", name="Change: nitrite")
            expect(before).to_have_count(2)
            expect(page.get_by_role("main")).to_contain_text("8 mg/L")
        press(page, "Continue")
        expect(heading(page)).to_have_text("Look and smell first")
        page.get_by_role("checkbox", name="Split").check(force=True)
        next_page(page)
        expect(heading(page)).to_have_text("Do not feed it")
        # TRGS 611, 5.3 (2): after three results below 10 mg/L at most every four weeks.
        days = "28 days" if nitrite == "7" else "7 days"
        expect(page.get_by_role("main")).to_contain_text(days)
        press(page, "Record it and stop here")
        expect(heading(page)).to_have_text("Saved to the log")
        press(page, "Back to the machines")


def test_foam_is_asked_through_level_cleaner_strength_and_water(page: Page) -> None:
    looked(page, "Foam")
    expect(heading(page)).to_have_text("Check first, then add")
    questions = []
    for answer in ("The level is right", "No cleaner", "The strength is right", "Not the water"):
        questions.append(page.get_by_role("heading", level=2).first.inner_text().split(":")[0])
        # A second press within a second would be a double tap.
        page.wait_for_timeout(GUARD_MS)
        press(page, answer)
    assert questions == ["Level", "Cleaner", "Strength", "Water"]
    expect(page.get_by_role("main")).to_contain_text("Foam without a cause found")
    press(page, "Ask about the foam again")
    press(page, "The level is right")
    page.wait_for_timeout(GUARD_MS)
    press(page, "Cleaner is in it")
    expect(heading(page)).to_have_text("Do not feed it")


def test_limits_that_stood_on_the_phone_move_into_the_log(page: Page) -> None:
    open_machine(page)
    limits = {"ph_low": {"text": "8,0", "unit": "1"}}
    page.evaluate(
        "(limits) => localStorage.setItem('pailwright.limits', JSON.stringify(limits))", limits
    )
    page.reload()
    open_machine_after(page)
    # The note goes once they are stored, and that is after the list is drawn.
    page.wait_for_function("() => localStorage.getItem('pailwright.limits') === null")
    (fact,) = entries(page, "shop_set")
    assert fact["body"] == {"look_limits": limits}
    start_at(page, "limits")
    expect(field(page, "pH, low below")).to_have_value("8,0")
    expect(page.get_by_role("main")).to_contain_text("1\u202f000\u202f000: HSE")
    field(page, "pH, low below").fill("8.2")
    press(page, "Save to the log")
    expect(heading(page)).not_to_have_text("Limits of this shop")
    page.reload()
    open_machine_after(page)
    last = json.loads(rows(page)[-1]["text"])
    assert last["body"]["look_limits"]["ph_low"]["text"] == "8.2"


def open_machine_after(page: Page) -> None:
    """Waits until the log is read again."""
    start_at(page)
    expect(page.get_by_role("link", name="Wheel lathe")).to_be_visible()


@pytest.mark.parametrize("theme", ["light", "dark"])
def test_pages(phone: Phone, server: Server, theme: Theme) -> None:
    page = phone.start(theme)
    page.goto(server.address)
    look = Look(f"{theme}-since")
    open_machine(page)
    check_until_recipe(page, "400", "4.1")
    save_check(page)
    tell(page, "Buckets poured")
    store(page)
    start_at(page)
    dip_again(page, "280")
    expect(heading(page)).to_have_text("Since the last dip")
    look(page)
    next_page(page)
    read(page, "3.3")
    expect(page.get_by_role("main")).to_contain_text("3.3 × factor 1.5 = 4.95 %")
    look(page)
    start_at(page)
    open_machine(page)
    page.goto(f"{page.url}/look")
    page.get_by_role("checkbox", name="Foam").check(force=True)
    look(page)
    next_page(page)
    look(page)
    page.go_back()
    leave(page, page.get_by_role("link", name="I measured"))
    look(page)
    start_at(page, "limits")
    look(page)
    assert look.wrong == []
    assert len(look.seen) == 6
