"""A due clean-out on list, machine's page and shift, also where what speaks for it is old."""

from typing import Any

import pytest
from playwright.sync_api import Page, expect

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
DAY_S = 86_400


def watched(later: int, told: dict[str, Any], first_s: int = 60) -> Writer:
    """A lathe of whose first two checks something is told, and so many plain checks since."""
    writer = Writer("watched")
    machine = {"machine": setup()}
    writer.save("machine_set", machine, first_s - 60, LATHE, shown=ask("read_machine", machine))
    body = {**machine, **check("400", "5.3")}
    shown = {"assessment": ask("plan_check", body)["assessment"]}
    for place in range(later + 2):
        more = told if place < 2 else {}
        writer.save("check", {**body, **more}, first_s + 60 * place, LATHE, shown=shown)
    return writer


def slide(germs: str) -> dict[str, Any]:
    """A dip slide with so many germs."""
    return {"dip_slide": {"germs": typed(germs, "CFU/mL")}}


@pytest.mark.parametrize("theme", ["light", "dark"])
def test_a_due_clean_out_is_told_on_every_page(phone: Phone, server: Server, theme: Theme) -> None:
    page = phone.start(theme)
    page.goto(server.address)
    wait_until_ready(page)
    writer = watched(LATER if theme == "light" else 0, {"look": ["smell"], **slide("1000000")})
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


def test_a_slide_to_look_into_is_no_clean_out_on_any_page(page: Page, server: Server) -> None:
    page.goto(server.address)
    wait_until_ready(page)
    writer = watched(0, slide("10000"), -10 * DAY_S)
    take_in(page, writer.export(), len(writer.lines))
    start_at(page, "machines", LATHE, "trend")
    main = page.get_by_role("main")
    expect(main).to_contain_text("The last dip slide says: look into it")
    expect(main.get_by_role("link", name="Clean out")).to_have_count(0)
    start_at(page, "machines", LATHE)
    # The check is due since three days, so Python has answered.
    expect(page.locator(".machine-due")).to_be_visible()
    expect(main).not_to_contain_text(DUE)
    start_at(page)
    expect(page.get_by_role("link", name="Wheel lathe").first).not_to_contain_text(DUE)
