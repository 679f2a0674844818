"""What is asked about once says what would be usual, and where that is from."""

import pytest
from playwright.sync_api import Page, expect

from tests.browser.walk import field, open_machine, pass_since, press, start_check

# So many lines of text stand in a button.
LINES = """(button) => {
  const text = document.createRange();
  text.selectNodeContents(button);
  return new Set([...text.getClientRects()].map(({ top }) => Math.round(top))).size;
}"""

pytestmark = pytest.mark.usefixtures("machine_on_phone")


def test_the_usual_range_stands_in_the_question(page: Page) -> None:
    open_machine(page)
    start_check(page)
    field(page, "How deep").fill("60")
    press(page, "Continue")
    asked = page.get_by_role("region", name="Is that right?").get_by_role("heading")
    # Nobody has ever dipped here: the numbers come from the sump's own size, 198 L at 440 mm.
    expect(asked).to_have_text(
        "Dip depth 60\u00a0mm is unusual. Between a fifth full and the full mark it reads "
        "88\u00a0mm to 440\u00a0mm. Is it right?"
    )
    # Part of a rule has six decimals inside: "88.000000 mm to 440.000000 mm", it said.
    field(page, "How deep").fill("13 7/16")
    press(page, "Continue")
    expect(asked).to_contain_text("it reads 88\u00a0mm to 440\u00a0mm.")
    # Half of the row is too narrow for it: its unit was broken in two.
    keep = page.get_by_role("button", name="Keep 13")
    assert keep.evaluate(LINES) == 1
    field(page, "How deep").fill("60")
    press(page, "Continue")
    press(page, "Keep 60\u00a0mm")
    page.get_by_role("button", name="Hard floor").click()
    pass_since(page)
    field(page, "What does the reading").fill("25")
    press(page, "Continue")
    expect(asked).to_have_text(
        "Reading 25\u00a0Brix is unusual. Usual: 0.3\u00a0Brix to 18\u00a0Brix. Is it right?"
    )
