"""A machine's short code: given once, typed with a wrong sign, scanned, and unknown."""

import json

import pytest
from playwright.sync_api import Page, expect

from pycore.sheets.code import ALPHABET, code_of
from tests.browser.phone import Phone, heading, wait_until_ready
from tests.browser.server import Server
from tests.browser.stored import entries
from tests.browser.walk import field, open_machine, press, set_up_machine

pytestmark = pytest.mark.usefixtures("machine_on_phone")

CODE = "7K3F4"
NUMBER = sum(
    ALPHABET.index(sign) * len(ALPHABET) ** place for place, sign in enumerate(CODE[3::-1])
)
OTHER = 42
# The first draw lies above the last whole round of codes, the third meets the code of the first
# machine; neither may become a code.
DRAWS = [2**32 - 1, NUMBER, NUMBER + len(ALPHABET) ** 4, OTHER]
DRAW_THESE = """
{
  const draws = %s;
  const byChance = crypto.getRandomValues.bind(crypto);
  crypto.getRandomValues = (into) => {
    if (!(into instanceof Uint32Array) || draws.length === 0) return byChance(into);
    into[0] = draws.shift();
    return into;
  };
}
"""


@pytest.fixture
def page(phone: Phone, server: Server) -> Page:
    """A phone with one machine, at its page; what it draws by chance is known."""
    opened = phone.start()
    opened.context.add_init_script(DRAW_THESE % json.dumps(DRAWS))
    opened.goto(server.address)
    open_machine(opened)
    return opened


def follow(page: Page, name: str) -> None:
    """Follows a link by its whole name."""
    page.get_by_role("link", name=name, exact=True).click()


def give_code(page: Page, shown: str = "7K3F-4") -> None:
    """From the machine's page: asks for its code."""
    follow(page, "Give it a short code")
    expect(heading(page)).to_have_text("Code of the machine")
    expect(page.get_by_text(shown, exact=True)).to_be_visible()


def to_code(page: Page) -> None:
    """To the page where a code is typed."""
    page.get_by_role("button", name="Back").click()
    page.get_by_role("button", name="Back").click()
    follow(page, "Type a code")
    expect(heading(page)).to_have_text("Type a code")


def type_code(page: Page, text: str) -> None:
    """Types a code over what stands there."""
    field(page, "Code on the label").fill(text)
    press(page, "Open the machine")


# Types as soon as the field is there, which on a slow phone is before anything else has run.
TYPE_AT_ONCE = """
new MutationObserver((_, watch) => {
  const box = document.querySelector("input#code");
  if (box === null) return;
  watch.disconnect();
  box.value = "22222";
  box.dispatchEvent(new InputEvent("input", { bubbles: true }));
}).observe(document.body, { childList: true, subtree: true });
"""


def test_what_is_typed_at_once_stays(page: Page) -> None:
    page.get_by_role("button", name="Back").click()
    expect(heading(page)).to_have_text("Machines")
    page.evaluate(TYPE_AT_ONCE)
    follow(page, "Type a code")
    press(page, "Open the machine")
    expect(page.get_by_text("No machine has the code")).to_be_visible()
    expect(field(page, "Code on the label")).to_have_value("22222")


def test_a_code_is_given_once_and_typed_in_any_case(page: Page) -> None:
    give_code(page)
    first, second = entries(page)
    assert "code" not in first["body"]
    assert second["body"]["code"] == CODE
    # The set-up is that of the entry before, so nothing of it can have got lost.
    assert second["machine"] == first["machine"]
    assert second["body"] == {**first["body"], "code": CODE}
    page.reload()
    expect(page.get_by_text("7K3F-4", exact=True)).to_be_visible()
    assert len(entries(page)) == 2
    to_code(page)
    press(page, "Open the machine")
    expect(page.get_by_role("alert")).to_have_text("Enter the code.")
    type_code(page, "7k3f 4")
    expect(heading(page)).to_have_text("Wheel lathe")
    expect(page.get_by_text("Code 7K3F-4")).to_be_visible()


def test_a_code_outlives_a_changed_set_up(page: Page) -> None:
    give_code(page)
    page.get_by_role("button", name="Back").click()
    follow(page, "Change the set-up")
    press(page, "Save the machine")
    expect(heading(page)).to_have_text("Wheel lathe")
    assert [entry["body"].get("code") for entry in entries(page)] == [None, CODE, None]
    expect(page.get_by_text("Code 7K3F-4")).to_be_visible()


def test_a_code_that_is_taken_is_not_given_again(page: Page) -> None:
    give_code(page)
    page.get_by_role("button", name="Back").click()
    page.get_by_role("button", name="Back").click()
    follow(page, "Add a machine")
    set_up_machine(page, {"Name of the machine": "Axle grinder"}, begin=None)
    other = code_of(OTHER)
    give_code(page, f"{other[:4]}-{other[4:]}")
    assert [entry["body"]["code"] for entry in entries(page) if "code" in entry["body"]] == [
        CODE,
        other,
    ]
    to_code(page)
    type_code(page, CODE)
    expect(heading(page)).to_have_text("Wheel lathe")


def test_a_wrong_sign_is_told_and_an_unknown_code_has_a_way_on(page: Page) -> None:
    give_code(page)
    to_code(page)
    # 9 prints like no other sign: no code that it may have been can be offered for it alone.
    type_code(page, "7K3F9")
    expect(page.get_by_role("alert")).to_contain_text("This code has a wrong character")
    expect(heading(page)).to_have_text("Type a code")
    type_code(page, "7K3")
    expect(page.get_by_role("alert")).to_contain_text("A code has 5 letters or digits")
    type_code(page, "22222")
    expect(page.get_by_text("No machine has the code 2222-2 on this phone")).to_be_visible()
    follow(page, "Add a machine")
    expect(heading(page)).not_to_have_text("Type a code")


def test_a_look_alike_is_offered_and_not_used_in_silence(page: Page) -> None:
    give_code(page)
    to_code(page)
    # A 7 on a worn label is often read as a 1, which no code has.
    type_code(page, "1K3F4")
    expect(page.get_by_role("alert")).to_contain_text("This code has a wrong character")
    expect(heading(page)).to_have_text("Type a code")
    page.get_by_role("button", name="7K3F-4").click()
    expect(heading(page)).to_have_text("Wheel lathe")


def test_a_scanned_address_opens_the_machine_without_internet(page: Page, server: Server) -> None:
    give_code(page)
    page.goto(f"{server.address}#/")
    wait_until_ready(page)
    server.kill()
    page.goto("about:blank")
    page.goto(f"{server.address}#m={CODE}")
    expect(heading(page)).to_have_text("Wheel lathe")
    page.goto(f"{server.address}#m=22222")
    expect(page.get_by_text("No machine has the code 2222-2 on this phone")).to_be_visible()
