"""The whole walk, then again without a network, from a cold start."""

import pytest
from playwright.sync_api import Error, Page, expect

from tests.browser.phone import Phone, heading, wait_until_ready
from tests.browser.server import Server
from tests.browser.walk import (
    check_until_recipe,
    open_machine,
    save_check,
    set_up_machine,
    start_check,
)


def recipe_text(page: Page) -> str:
    """What the recipe says, without the bar above and the button below."""
    return page.get_by_role("main").inner_text()


def test_online_then_offline_from_a_cold_start(phone: Phone, server: Server) -> None:
    page = phone.start()
    page.goto(server.address)
    set_up_machine(page)
    check_until_recipe(page)
    first = recipe_text(page)
    machine_address = page.url.split("/recipe")[0]
    save_check(page)
    wait_until_ready(page)
    # The network goes: the process that serves is dead, and so is the browser's.
    phone.close()
    server.kill()
    page = phone.start()
    page.goto(machine_address)
    expect(heading(page)).to_have_text("Wheel lathe")
    check_until_recipe(page)
    assert recipe_text(page) == first
    save_check(page)
    expect(page.get_by_role("listitem")).to_have_count(1)
    wait_until_ready(page)


def test_nothing_answers_any_more_after_the_kill(phone: Phone, server: Server) -> None:
    # Control: if a killed server still answered, the test above would prove nothing.
    server.kill()
    page = phone.start()
    with pytest.raises(Error, match="ERR_CONNECTION_REFUSED"):
        page.goto(server.address)
    phone.problems.clear()


@pytest.mark.parametrize(
    "place", ["machines/new/name", "#/log", "?x=1", "index.html", "no/such/place"]
)
def test_links_open_offline(phone: Phone, server: Server, place: str) -> None:
    page = phone.start()
    page.goto(server.address)
    wait_until_ready(page)
    phone.close()
    server.kill()
    page = phone.start()
    page.goto(server.address + place)
    expect(heading(page)).to_be_visible()
    assert page.url.startswith(server.address)


@pytest.mark.usefixtures("machine_on_phone")
def test_log_keeps_what_was_saved(page: Page, phone: Phone, server: Server) -> None:
    open_machine(page)
    check_until_recipe(page)
    save_check(page)
    phone.close()
    page = phone.start()
    page.goto(server.address)
    page.get_by_role("link", name="Open the log").click()
    expect(heading(page)).to_have_text("Log")
    expect(page.get_by_role("main")).to_contain_text("Wheel lathe")
    page.get_by_role("main").get_by_role("link", name="Wheel lathe").first.click()
    expect(page.get_by_role("main")).to_contain_text("342 mm")


@pytest.mark.usefixtures("machine_on_phone")
def test_typed_numbers_survive_back_and_reload(page: Page) -> None:
    open_machine(page)
    start_check(page)
    box = page.get_by_role("textbox").first
    box.fill("342")
    expect(page.get_by_text("= 154 L")).to_be_visible()
    page.reload()
    expect(page.get_by_role("textbox").first).to_have_value("342")
