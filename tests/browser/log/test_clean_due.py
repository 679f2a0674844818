"""A due clean-out on list, machine's page and shift, also where what speaks for it is old."""

import pytest
from playwright.sync_api import expect

from tests.browser.files import start_at, take_in
from tests.browser.looking import Look
from tests.browser.phone import Phone, Theme, wait_until_ready
from tests.browser.server import Server
from tests.browser.stored import checkpoint
from tests.phones import LATHE, check, setup, typed
from tests.phones import Phone as Writer
from tests.properties.asking import ask

DUE = "Time for a clean-out"
# More than a start reads beside what it is looked for by.
LATER = 130


def smelly(later: int) -> Writer:
    """A lathe that smelled twice, with a bad slide, and so many plain checks since."""
    writer = Writer("smelly")
    machine = {"machine": setup()}
    writer.save("machine_set", machine, 0, LATHE, shown=ask("read_machine", machine))
    body = {**machine, **check("400", "5.3")}
    shown = {"assessment": ask("plan_check", body)["assessment"]}
    slide = {"germs": typed("1000000", "CFU/mL")}
    for place in range(later + 2):
        told = {"look": ["smell"], "dip_slide": slide} if place < 2 else {}
        writer.save("check", {**body, **told}, 60 + 60 * place, LATHE, shown=shown)
    return writer


@pytest.mark.parametrize("theme", ["light", "dark"])
def test_a_due_clean_out_is_told_on_every_page(phone: Phone, server: Server, theme: Theme) -> None:
    page = phone.start(theme)
    page.goto(server.address)
    wait_until_ready(page)
    writer = smelly(LATER if theme == "light" else 0)
    take_in(page, writer.export(), len(writer.lines))
    look = Look(f"{theme}-clean-due")
    start_at(page)
    link = page.get_by_role("link", name="Wheel lathe").first
    expect(link).to_contain_text(DUE)
    assert checkpoint(page) is not None
    # From the checkpoint the smells are among the places that a start reads.
    start_at(page)
    expect(link).to_contain_text(DUE)
    look(page)
    link.click()
    expect(page.get_by_role("heading", name=DUE)).to_be_visible()
    start_at(page, "handover")
    expect(page.get_by_role("heading", name=DUE)).to_be_visible()
    reasons = "The last dip slide says: drain and clean. It smelled more than once in four weeks."
    expect(page.get_by_role("listitem").filter(has_text=reasons)).to_be_visible()
    page.get_by_role("heading", name=DUE).scroll_into_view_if_needed()
    look(page)
    assert not look.wrong
