"""Keys instead of a finger: what is wanted is found by role and name, and reached by Tab alone."""

from playwright.sync_api import Page, expect

MOST_TABS = 60
# Whether the middle of what has the focus is in the window with nothing over it.
IS_SEEN = """
(one) => {
  const { x, y, width, height } = one.getBoundingClientRect();
  const hit = document.elementFromPoint(x + width / 2, y + height / 2);
  return hit !== null && (one === hit || one.contains(hit));
}
"""
RING = "(one) => getComputedStyle(one).outlineStyle !== 'none'"


def tab_to(page: Page, role: str, name: str) -> None:
    """Presses Tab until the focus is there; a person without a pointer has no other way."""
    wanted = page.get_by_role(role, name=name)  # type: ignore[arg-type]
    expect(wanted).to_be_visible()
    for _ in range(MOST_TABS):
        if wanted.evaluate("(one) => one === document.activeElement"):
            return
        page.keyboard.press("Tab")
    raise AssertionError(f"no Tab leads to {name}")


def enter(page: Page, role: str, name: str) -> None:
    """Reaches it, sees that the focus shows and is not covered, and presses Enter."""
    tab_to(page, role, name)
    wanted = page.get_by_role(role, name=name)  # type: ignore[arg-type]
    assert wanted.evaluate(IS_SEEN), f"{name} has the focus and is covered"
    assert wanted.evaluate(RING), f"{name} has the focus and does not show it"
    # What Save has brought rests for a second.
    expect(wanted).not_to_have_attribute("aria-disabled", "true")
    page.keyboard.press("Enter")
