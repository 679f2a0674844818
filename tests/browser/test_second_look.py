"""A recipe whose own amounts miss what it promises is not shown."""

import pytest
from playwright.sync_api import expect

from tests.browser.phone import Phone, heading
from tests.browser.server import Server
from tests.browser.walk import field, next_page, press, set_up_machine

# Changes pycore's reply between worker and page, as a defect in either could.
BREAK = """
const listen = Worker.prototype.addEventListener;
Worker.prototype.addEventListener = function (type, heard, options) {
  if (type !== "message") return listen.call(this, type, heard, options);
  return listen.call(this, type, (event) => {
    const text = event.data && event.data.value;
    if (typeof text !== "string" || !text.includes('"alternatives"')) return heard(event);
    const reply = JSON.parse(text);
    const shown = reply.result.shown;
    CHANGE;
    return heard(new MessageEvent("message", {
      data: { ...event.data, value: JSON.stringify(reply) },
    }));
  }, options);
};
"""


@pytest.mark.parametrize(
    ("change", "title"),
    [
        ("shown.pours[0].concentrate.value *= 1.5", "The numbers do not agree"),
        ("shown.pours[0].count += 1", "The numbers do not agree"),
        ("shown.strength.value += 0.3", "The numbers do not agree"),
        ("shown.pours[0].water.unit = 'US gal'", "The numbers do not agree"),
        ("shown.pours[0].water.unit = 'barrel'", "The numbers do not agree"),
        ("shown.strength.value += 0", "Pour this"),
    ],
)
def test_a_broken_reply_is_not_shown(phone: Phone, server: Server, change: str, title: str) -> None:
    page = phone.start()
    page.add_init_script(BREAK.replace("CHANGE", change))
    page.goto(server.address)
    set_up_machine(page)
    press(page, "Start a check")
    for name, text, answer in (
        ("How deep", "342", "Hard floor"),
        ("What does the reading", "4.0", "Sharp line"),
    ):
        expect(field(page, name)).to_be_visible()
        field(page, name).fill(text)
        next_page(page)
        page.get_by_role("main").get_by_role("button", name=answer).click()
    expect(heading(page)).to_have_text("Where should it be?")
    next_page(page)
    next_page(page, "Work out the recipe")
    expect(heading(page)).to_have_text(title)
    # The page that still waits has the recipe's title too, so the amounts are waited for as well.
    amounts = 1 if title == "Pour this" else 0
    expect(page.get_by_text("In each of the")).to_have_count(amounts)
