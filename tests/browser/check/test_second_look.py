"""A recipe whose own amounts miss what it promises is not shown."""

import re

import pytest
from playwright.sync_api import Page, expect

from tests.browser.phone import Phone, heading
from tests.browser.server import Server
from tests.browser.walk import field, next_page, open_machine, press, start_check

pytestmark = pytest.mark.usefixtures("machine_on_phone")

# Changes pycore's reply between worker and page, as a defect in either could.
BREAK = """
const listen = Worker.prototype.addEventListener;
Worker.prototype.addEventListener = function (type, heard, options) {
  if (type !== "message") return listen.call(this, type, heard, options);
  return listen.call(this, type, (event) => {
    const text = JSON.stringify(event.data?.value ?? null);
    if (!text.includes('"alternatives"')) return heard(event);
    const reply = JSON.parse(text);
    const shown = reply.result.shown;
    CHANGE;
    return heard(new MessageEvent("message", {
      data: { ...event.data, value: reply },
    }));
  }, options);
};
"""


def until_recipe(phone: Phone, server: Server, change: str, depth: str, reading: str) -> Page:
    """The page where the recipe would stand, with ``change`` done to pycore's reply."""
    page = phone.start()
    page.add_init_script(BREAK.replace("CHANGE", change))
    page.goto(server.address)
    open_machine(page)
    start_check(page)
    for name, text, answer in (
        ("How deep", depth, "Hard floor"),
        ("What does the reading", reading, "Sharp line"),
    ):
        expect(field(page, name)).to_be_visible()
        field(page, name).fill(text)
        next_page(page)
        page.get_by_role("main").get_by_role("button", name=answer).click()
    expect(heading(page)).to_have_text("Where should it be?")
    next_page(page)
    next_page(page, "Work out the recipe")
    return page


@pytest.mark.parametrize(
    ("change", "title"),
    [
        ("shown.pours[0].concentrate.value *= 1.5", "The numbers do not agree"),
        ("shown.pours[0].count += 1", "The numbers do not agree"),
        ("shown.strength.value += 0.3", "The numbers do not agree"),
        ("shown.volume.value += 2", "The numbers do not agree"),
        ("shown.pours[0].water.unit = 'US gal'", "The numbers do not agree"),
        ("shown.pours[0].water.unit = 'barrel'", "The numbers do not agree"),
        ("shown.band_high.value = 8.0", "The numbers do not agree"),
        ("shown.strength.value += 0", "Pour this"),
    ],
)
def test_a_broken_reply_is_not_shown(phone: Phone, server: Server, change: str, title: str) -> None:
    page = until_recipe(phone, server, change, "342", "4.0")
    expect(heading(page)).to_have_text(title)
    # The page that still waits has the recipe's title too, so the amounts are waited for as well.
    amounts = 1 if title == "Pour this" else 0
    expect(page.get_by_text("In each of the")).to_have_count(amounts)


OWN, WAIT, LEAST = "Carry it with", "Let the level fall", "Take some out"


@pytest.mark.parametrize(
    ("change", "way", "is_shown"),
    [
        ("ways[0].pours[0].concentrate.value += 0.1", OWN, False),
        ("ways[0].pours[0].fluid.value += 1", OWN, True),
        ("ways[0].take_out.value += 7", OWN, False),
        ("ways[1].level.value -= 8", WAIT, False),
        ("ways[1].level_strength.value = 8", WAIT, False),
        ("ways.find(({ take_out }) => take_out).take_out.value = 0", LEAST, False),
        ("ways.find(({ take_out }) => take_out).take_out.value += 0", LEAST, True),
    ],
)
def test_a_broken_way_is_not_shown(
    phone: Phone, server: Server, change: str, way: str, *, is_shown: bool
) -> None:
    # Of a sump that is full and weak, own coolant takes out less.
    reading = "7.3" if way == LEAST else "3.3"
    page = until_recipe(phone, server, f"const ways = reply.result.ways; {change}", "440", reading)
    expect(heading(page)).to_have_text("The target is out of reach")
    page.get_by_role("link", name=way).click()
    expect(heading(page)).to_contain_text(way if is_shown else "The numbers do not agree")
    expect(page.get_by_role("button", name="Save to the log")).to_have_count(int(is_shown))


@pytest.mark.parametrize(
    ("change", "title"),
    [
        ("shown.volume.value += 3", "The numbers do not agree"),
        ("shown.poured.value += 0.3", "The numbers do not agree"),
        ("shown.pours[0].concentrate.value *= 1.2", "The numbers do not agree"),
        ("delete shown.poured", "The numbers do not agree"),
        ("", "Fill up, read later"),
    ],
)
def test_a_broken_top_up_without_a_reading_is_not_shown(
    phone: Phone, server: Server, change: str, title: str
) -> None:
    page = phone.start()
    broken = BREAK.replace("CHANGE", change).replace("alternatives", "assumed")
    page.add_init_script(broken)
    page.goto(server.address)
    open_machine(page)
    start_check(page)
    field(page, "How deep").fill("342")
    next_page(page)
    page.get_by_role("main").get_by_role("button", name="Hard floor").click()
    expect(field(page, "What does the reading")).to_be_visible()
    press(page, "Read later")
    expect(heading(page)).to_have_text("What is the usual mix?")
    field(page, "usual mix").fill("3")
    press(page, "Continue")
    expect(heading(page)).to_have_text(title)
    if title == "Fill up, read later":
        # Six buckets of 7 L and 200 mL: what is promised stands on the page.
        expect(page.get_by_text(re.compile("In these buckets: 2.8.%"))).to_be_visible()
