"""Two windows of the app: what one stores, the other shows without a reload."""

import pytest
from playwright.sync_api import expect

from tests.browser.phone import Phone
from tests.browser.server import Server
from tests.browser.walk import field, next_page, open_machine, set_up_machine, start_check


def test_machine_set_up_in_one_window_stands_in_the_other(phone: Phone, server: Server) -> None:
    page = phone.start()
    page.goto(server.address)
    other = page.context.new_page()
    other.goto(server.address)
    expect(other.get_by_role("button", name="Add your first machine")).to_be_visible()
    set_up_machine(page)
    expect(other.get_by_role("link", name="Wheel lathe").first).to_be_visible()


@pytest.mark.usefixtures("machine_on_phone")
def test_what_is_typed_in_one_window_is_not_lost_in_the_other(phone: Phone, server: Server) -> None:
    page = phone.start()
    page.goto(server.address)
    open_machine(page)
    start_check(page)
    field(page, "How deep").fill("342")
    other = page.context.new_page()
    other.goto(page.url)
    expect(field(other, "How deep")).to_have_value("342")
    field(other, "How deep").fill("300")
    expect(field(page, "How deep")).to_have_value("300")
    next_page(page)
    page.get_by_role("main").get_by_role("button", name="Hard floor").click()
    field(page, "What does the reading").fill("4.0")
    other.reload()
    expect(field(other, "How deep")).to_have_value("300")
