"""A first set-up says how many steps it has, and keeps to it."""

import re

from playwright.sync_api import Page

from tests.browser.walk import set_up_machine


def test_the_number_of_steps_is_the_same_from_first_to_last(page: Page) -> None:
    seen: list[tuple[int, int]] = []

    def note(page: Page) -> None:
        found = re.fullmatch(r"Step (\d+) of (\d+)", page.locator(".top-step").inner_text())
        assert found is not None
        seen.append((int(found[1]), int(found[2])))

    set_up_machine(page, at_page=note)
    numbers, totals = zip(*seen, strict=True)
    assert set(totals) == {13}
    # The factor and where it is from are one step on two pages.
    assert list(numbers) == [1, 2, 3, 4, 5, 6, 7, 8, 9, 9, 10, 11, 12, 13]
