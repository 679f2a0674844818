"""The list's order goes by moments, whatever offset they were written with."""

import pytest
from playwright.sync_api import Page, expect

from tests.browser.files import start_at, take_in
from tests.browser.server import Server
from tests.browser.walk import wait_until_ready
from tests.phones import Phone, check, id_of, moment, setup
from tests.properties.asking import ask

MINUTE_S = 60


@pytest.mark.usefixtures("machine_on_phone")
def test_the_machine_that_was_checked_longest_ago_stands_first(page: Page, server: Server) -> None:
    page.goto(server.address)
    wait_until_ready(page)
    writer = Phone("traveller")
    # The second check is later, though its time of day reads earlier.
    for title, at_s, offset_min in (("Bogie press", 0, 60), ("Axle grinder", 30 * MINUTE_S, 0)):
        machine = {"machine": setup(title)}
        writer.save("machine_set", machine, 0, id_of(title), shown=ask("read_machine", machine))
        body = {**machine, **check("400", "5.3")}
        shown = {"assessment": ask("plan_check", body)["assessment"]}
        wall = moment(at_s, offset_min)
        writer.save("check", body, at_s, id_of(title), shown=shown, wall=wall)
    take_in(page, writer.export(), len(writer.lines))
    start_at(page)
    names = page.locator(".machine-name")
    expect(names).to_have_text(["Wheel lathe", "Bogie press", "Axle grinder"])
