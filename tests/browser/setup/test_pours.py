"""The pour test: kept step by step, stopped and gone on with, undone, refused and used."""

import pytest
from playwright.sync_api import Page, expect

from tests.browser.phone import Phone, heading
from tests.browser.server import Server
from tests.browser.setup.sumpwalk import POURS, choose, open_pours, pour, to_kinds
from tests.browser.setup.test_wrong_input import WRONG, spoil_fields
from tests.browser.sidesteps import to_machine
from tests.browser.stored import entries
from tests.browser.walk import (
    check_until_recipe,
    field,
    next_page,
    open_machine,
    press,
    start_check,
)


def pour_all(page: Page) -> None:
    """Every step of the test, which is then enough."""
    for poured, depth in POURS:
        pour(page, poured, depth)
    expect(page.get_by_text("Enough for a table")).to_be_visible()


@pytest.mark.usefixtures("machine_on_phone")
def test_table_goes_into_the_set_up(page: Page) -> None:
    open_machine(page)
    open_pours(page)
    expect(page.get_by_text("At least 4 more steps.")).to_be_visible()
    pour_all(page)
    next_page(page, "Use this table")
    expect(heading(page)).to_have_text("Is the set-up right?")
    expect(page.get_by_text("Table of depth and volume")).to_be_visible()
    next_page(page, "Save the machine")
    sump = entries(page)[-1]["body"]["machine"]["sump"]
    assert sump["kind"] == "table"
    assert sump["volume_known_by"] == "poured"
    assert len(sump["points"]) > len(POURS)
    assert all(point["u"]["unit"] == "L" for point in sump["points"])
    steps = entries(page)[-1]["body"]["pour_test"]["steps"]
    assert [step["poured"]["text"] for step in steps] == [str(poured) for poured, _ in POURS]
    assert all(step["at"][10] == "T" for step in steps)
    start_check(page)
    field(page, "How deep").fill("400")
    # 280 L at 392 mm and some 0.72 L for each mm above.
    expect(page.get_by_text("= 286 L")).to_be_visible()


def check_at(page: Page, depth: str) -> None:
    """One whole check with this dip, back to the machine's own page."""
    check_until_recipe(page, depth, "8.0")
    press(page, "Save to the log")
    to_machine(page)


@pytest.mark.usefixtures("machine_on_phone")
def test_top_ups_of_the_log_are_steps_for_nothing(page: Page) -> None:
    open_machine(page)
    check_at(page, "200")
    check_at(page, "305")
    check_at(page, "290")
    open_pours(page)
    boxes = page.get_by_role("textbox", name="Poured in,")
    expect(boxes).to_have_count(2)
    expect(page.get_by_text("Dip 200 mm before, 305 mm after. The recipe said")).to_be_visible()
    newest, older = boxes.nth(0), boxes.nth(1)
    newest.fill("10")
    expect(page.get_by_role("alert")).to_have_text(
        "The level did not rise between the two dips. Leave it empty."
    )
    newest.fill("")
    older.fill("1e3")
    expect(page.get_by_role("alert").first).to_contain_text("Amount poured in must be a number")
    older.fill("47")
    expect(page.get_by_role("alert")).to_have_count(0)
    expect(page.get_by_text("At least 3 more steps.")).to_be_visible()
    page.reload()
    expect(page.get_by_role("textbox", name="Poured in,").nth(1)).to_have_value("47")
    for poured, depth in POURS[:3]:
        pour(page, poured, depth)
    expect(page.get_by_text("more step")).to_have_count(0)
    older = page.get_by_role("textbox", name="Poured in,").nth(1)
    full = page.get_by_text("At the full mark:")
    with_pair = full.inner_text()
    older.fill("30")
    expect(full).not_to_have_text(with_pair)


@pytest.mark.usefixtures("machine_on_phone")
def test_falling_and_flat_steps_are_refused_and_undone(page: Page) -> None:
    open_machine(page)
    open_pours(page)
    pour(page, *POURS[0])
    pour(page, *POURS[1])
    for depth in ("100", "117"):
        field(page, "Dip: how deep").fill(depth)
        press(page, "Keep this step")
        alert = page.get_by_role("alert").first
        expect(alert).to_contain_text("The level did not rise; it was 117 mm before")
        expect(field(page, "Dip: how deep")).to_have_value(depth)
        expect(heading(page)).to_have_text("Step 3")
    press(page, "Undo the last step: 40 L, 117 mm")
    expect(heading(page)).to_have_text("Step 2")
    expect(field(page, "Dip: how deep")).to_have_value("117")
    expect(page.get_by_text("At least 3 more steps.")).to_be_visible()


@pytest.mark.usefixtures("machine_on_phone")
def test_every_field_of_a_step_refuses_what_is_wrong(page: Page) -> None:
    open_machine(page)
    open_pours(page)
    for name, good in (("Pour in", "40"), ("Dip: how deep", "64")):
        for text in ("", *WRONG):
            field(page, name).fill(text)
            press(page, "Keep this step")
            expect(page.get_by_role("alert").first).to_be_visible()
            expect(field(page, name)).to_have_value(text)
            expect(heading(page)).to_have_text("Step 1")
        field(page, name).fill(good)
    press(page, "Keep this step")
    expect(heading(page)).to_have_text("Step 2")


@pytest.mark.usefixtures("machine_on_phone")
def test_every_field_of_the_beginning_refuses_what_is_wrong(page: Page) -> None:
    open_machine(page)
    page.get_by_role("link", name="Find the volume by pouring").click()
    expect(heading(page)).to_have_text("Find the volume by pouring")
    press(page, "Continue")
    expect(page.get_by_role("alert").first).to_contain_text("Choose what is in the sump now")
    # The refusal moves focus and page; nobody has read it before.
    page.wait_for_timeout(300)
    choose(page, "A rest")
    field(page, "Dip before the first bucket").fill("64")
    field(page, "The maker").fill("300")
    assert len(spoil_fields(page)) == 3
    next_page(page)


@pytest.mark.usefixtures("machine_on_phone")
def test_stopped_and_gone_on_with_after_the_phone_was_off(phone: Phone, server: Server) -> None:
    page = phone.start()
    page.goto(server.address)
    open_machine(page)
    open_pours(page)
    for step in POURS[:3]:
        pour(page, *step)
    field(page, "Pour in").fill("20")
    page.get_by_role("link", name="Stop here").click()
    expect(heading(page)).to_have_text("Machines")
    phone.close()
    page = phone.start()
    page.goto(server.address)
    page.get_by_role("link", name="Wheel lathe").first.click()
    page.get_by_role("link", name="Go on with the pour test").click()
    expect(page.get_by_text("3 steps are kept")).to_be_visible()
    next_page(page)
    expect(heading(page)).to_have_text("Step 4")
    expect(field(page, "Pour in")).to_have_value("20")
    expect(page.get_by_text("At least 1 more step.")).to_be_visible()
    for step in POURS[3:]:
        pour(page, *step)
    expect(page.get_by_text("Enough for a table")).to_be_visible()


@pytest.mark.usefixtures("machine_on_phone")
def test_unknown_rest_and_makers_figure(page: Page) -> None:
    open_machine(page)
    page.get_by_role("link", name="Find the volume by pouring").click()
    expect(heading(page)).to_have_text("Find the volume by pouring")
    choose(page, "A rest")
    field(page, "Dip before the first bucket").fill("64")
    field(page, "Depth at the full mark").fill("400")
    field(page, "The maker").fill("500")
    next_page(page)
    for step in POURS[1:]:
        pour(page, *step)
    expect(page.get_by_text("In it before the first bucket")).to_be_visible()
    expect(page.get_by_text("worked out, not measured")).to_be_visible()
    expect(page.get_by_text("The maker says 500 L. That does not fit")).to_be_visible()


def test_new_machine_goes_on_at_the_rim(page: Page) -> None:
    to_kinds(page)
    page.get_by_role("link", name="Find it by pouring").click()
    expect(heading(page)).to_have_text("Find the volume by pouring")
    choose(page, "Nothing")
    field(page, "Depth at the full mark").fill("400")
    next_page(page)
    pour_all(page)
    next_page(page, "Use this table")
    expect(heading(page)).to_have_text("Is there a mark never to pass?")
