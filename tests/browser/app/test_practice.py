"""Practice: worked out by hand, compared step by step, resumed after a reload, never in the log."""

import pytest
from playwright.sync_api import Page, expect

from tests.browser.looking import Look
from tests.browser.phone import Phone, Theme, heading
from tests.browser.practice import (
    STEPS,
    answer,
    dealt,
    get_sump,
    open_practice,
    pour,
    right_numbers,
)
from tests.browser.server import Server
from tests.browser.stored import rows
from tests.browser.walk import field, next_page, press
from tests.properties.asking import ask

NUMBER = "7"


@pytest.mark.usefixtures("machine_on_phone")
def test_a_slip_is_named_and_what_follows_from_it_is_right(page: Page) -> None:
    open_practice(page)
    before = len(rows(page))
    get_sump(page, NUMBER)
    right, main = right_numbers("alike", NUMBER), page.get_by_role("main")
    check = dealt("alike", NUMBER)["check"]
    expect(page.get_by_role("banner")).to_contain_text("Practice: boring mill")

    # Wrong input: the sentence names the field, and what was typed stays.
    answer(page, "volume", "many")
    press(page, "Compare")
    expect(page.get_by_role("alert")).to_have_text(
        "Volume must be a number, like 5 or 5.2. You typed “many”."
    )
    expect(field(page, STEPS["volume"])).to_have_value("many")

    answer(page, "volume", f"{right['volume']:g}")
    press(page, "Compare")
    expect(main).to_contain_text("Right")
    expect(main).to_contain_text("380 mm ÷ 520 mm × 260 L = 190 L")
    next_page(page)

    shows = check["reading"]["shows"]["text"]
    answer(page, "strength", shows)
    press(page, "Compare")
    expect(main).to_contain_text("The factor is forgotten")
    next_page(page)

    # A reload resumes the sump, and the page where it stood.
    page.reload()
    answer(page, "room", f"{right['room']:g}")
    press(page, "Compare")
    next_page(page)

    # With the factor forgotten the top-up is right for that.
    room, volume = right["room"], right["volume"]
    own = 7 + volume * (7 - float(shows)) / room
    answer(page, "top_up", f"{own:.1f}")
    press(page, "Compare")
    expect(main).to_contain_text("Right from your own numbers")
    press(page, "Change my number")
    expect(field(page, STEPS["top_up"])).to_have_value(f"{own:.1f}")
    press(page, "Show me")
    expect(main).to_contain_text("Shown")
    next_page(page)
    expect(heading(page)).to_have_text(STEPS["pours"])
    assert len(rows(page)) == before


@pytest.mark.usefixtures("machine_on_phone")
def test_an_own_number_is_never_told_as_the_sumps(page: Page) -> None:
    open_practice(page)
    get_sump(page, NUMBER)
    answer(page, "volume", "170")
    press(page, "Compare")
    next_page(page)
    press(page, "Show me")
    next_page(page)
    facts = page.locator(".practice-facts li")
    expect(facts).to_have_text(["Full mark: 260\u00a0L", "In the sump: your 170\u00a0L"])
    answer(page, "room", "90")
    press(page, "Compare")
    next_page(page)
    # The strength was shown, so it is nobody's own.
    strength = right_numbers("alike", NUMBER)["strength"]
    expect(facts.first).to_have_text(f"In the sump: your 170\u00a0L at {strength:.2f}\u00a0%")
    expect(facts.nth(1)).to_have_text("Room: your 90\u00a0L")


@pytest.mark.usefixtures("machine_on_phone")
def test_other_buckets_that_are_as_good_are_accepted(page: Page) -> None:
    open_practice(page)
    get_sump(page, NUMBER)
    page.evaluate("location.hash = '#/practice/pours'")
    main = page.get_by_role("main")
    pour(page, "7", "8.5", "1000")
    expect(main).to_contain_text("Not in whole marks")
    page.go_back()
    # Ours have 9 L of water in each; these end just as near to the aim.
    pour(page, "7", "8", "1000")
    expect(heading(page)).to_have_text("How it came out")
    expect(main).to_contain_text("As good as ours")


@pytest.mark.usefixtures("machine_on_phone")
def test_at_the_end_everything_is_compared(page: Page) -> None:
    open_practice(page)
    get_sump(page, "3", "Weak and full", "end")
    right, main = right_numbers("full", "3"), page.get_by_role("main")
    for step in ("volume", "strength", "room", "take_out"):
        answer(page, step, f"{right[step]:g}")
        next_page(page)
    pour(page, "2.5", "8", "2000")
    expect(page.get_by_role("alert")).to_contain_text("counted in whole numbers")
    pour(page, "2", "8", "2000")
    expect(main).to_contain_text("Your recipe")
    expect(main.get_by_text("Right", exact=True)).to_have_count(4)
    body = {"check": dealt("full", "3")["check"], "answers": {}}
    ours = ask("judge_practice", body)["solution"]
    expect(main).to_contain_text(f"Ours ends at {ours['strength']['value']:.1f} %")
    next_page(page, "Another sump like this")
    expect(heading(page)).to_have_text(STEPS["volume"])
    expect(field(page, STEPS["volume"])).to_have_value("")


@pytest.mark.usefixtures("machine_on_phone")
def test_a_number_that_is_not_dealt_stays_where_it_was_typed(page: Page) -> None:
    open_practice(page)
    field(page, "Number of the sump").fill("12000")
    press(page, "Get a sump")
    expect(page.get_by_role("alert")).to_have_text(
        "Number of the sump must be between 1 and 9999. You typed “12000”."
    )
    expect(field(page, "Number of the sump")).to_have_value("12000")


@pytest.mark.usefixtures("machine_on_phone")
@pytest.mark.parametrize("theme", ["light", "dark"])
def test_pages(phone: Phone, server: Server, theme: Theme) -> None:
    page = phone.start(theme)
    page.goto(server.address)
    open_practice(page)
    look = Look(f"{theme}-practice")
    look(page)
    get_sump(page, NUMBER)
    right = right_numbers("alike", NUMBER)
    for step in ("volume", "strength", "room", "top_up"):
        answer(page, step, f"{right[step]:g}")
        look(page)
        press(page, "Compare")
        expect(page.get_by_role("button", name="Change my number")).to_be_visible()
        look(page, f"{step}-compared")
        next_page(page)
    look(page)
    pour(page, "7", "9", "700")
    expect(heading(page)).to_have_text("How it came out")
    expect(page.get_by_text("Your recipe")).to_be_visible()
    look(page)
    assert len(look.seen) == 11
    assert look.wrong == []
