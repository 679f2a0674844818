"""Two windows of the app: what one stores, the other shows without a reload."""

from playwright.sync_api import expect

from tests.browser.phone import Phone
from tests.browser.server import Server
from tests.browser.walk import set_up_machine


def test_machine_set_up_in_one_window_stands_in_the_other(phone: Phone, server: Server) -> None:
    page = phone.start()
    page.goto(server.address)
    other = page.context.new_page()
    other.goto(server.address)
    expect(other.get_by_role("button", name="Add your first machine")).to_be_visible()
    set_up_machine(page)
    expect(other.get_by_role("link", name="Wheel lathe").first).to_be_visible()
