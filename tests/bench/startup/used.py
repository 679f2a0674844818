"""Our app on a phone that has a machine, with the check on one screen open and answered."""

from playwright.sync_api import Page

from tests.browser.onescreen import expect_recipe, open_one_screen, type_check
from tests.browser.walk import set_up_machine

# As soon as the keys are there: presses one, and marks when its digit is drawn; takes it back.
PRESS_AT_ONCE = """
if (location.hash.length > 2) {
  const typed = () => [...document.querySelectorAll("input")].map(({ value }) => value).join("|");
  const keys = () => [...document.querySelectorAll("button.key")];
  const drawn = (then) => requestAnimationFrame(() => setTimeout(then));
  let pressed = false;
  const look = new MutationObserver(() => {
    const one = keys().find(({ textContent }) => textContent === "1");
    if (pressed || one === undefined) return;
    pressed = true;
    performance.mark("bench: keys");
    const before = typed();
    one.click();
    const wait = () => {
      if (typed() === before) { drawn(wait); return; }
      performance.mark("bench: typed");
      keys().at(-1).click();
      look.disconnect();
    };
    drawn(wait);
  });
  look.observe(document, { subtree: true, childList: true });
}
"""
TYPED_AT = """() => performance.getEntriesByName("bench: typed")[0]?.startTime"""


def make_used(page: Page) -> str:
    """Sets up a machine and answers a check; the place of the one screen behind the address."""
    set_up_machine(page)
    page.get_by_role("button", name="Back").click()
    open_one_screen(page)
    type_check(page)
    expect_recipe(page)
    place: str = page.evaluate("location.hash")
    return place
