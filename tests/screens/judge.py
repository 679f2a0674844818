"""Judges every place without a picture: axe in both themes, and what a screen reader is given."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass, field
from typing import Any

from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Page, expect

from tests.browser.phone import Theme, heading
from tests.screens.spoken import misspoken, tree
from tests.screens.under_bar import half_under

THEMES: tuple[Theme, ...] = ("light", "dark")
IMPACTS = ("critical", "serious", "moderate", "minor")
SETTLE_MS = 400


@dataclass
class Judge:
    """What was found in one language; ``open_questions``: what axe leaves to a person, by rule."""

    language: str
    mode: str = "guided"
    names: list[str] = field(default_factory=list)
    elsewhere: list[str] = field(default_factory=list)
    wrong: list[str] = field(default_factory=list)
    impacts: Counter[str] = field(default_factory=Counter)
    rules: int = 0
    open_questions: Counter[str] = field(default_factory=Counter)
    nodes: int = 0

    def take(self, page: Page, name: str) -> None:
        """What stands there now, in each theme."""
        expect(heading(page)).to_be_visible()
        page.wait_for_timeout(SETTLE_MS)
        self.names.append(f"{self.mode} {name}")
        for theme in THEMES:
            page.emulate_media(color_scheme=theme)
            self._axe(page, theme)
        page.emulate_media(color_scheme="light")
        self.nodes += len(tree(page))
        self.wrong += [f"{self.names[-1]} {one}" for one in (*misspoken(page), *half_under(page))]

    def _axe(self, page: Page, theme: Theme) -> None:
        response: dict[str, Any] = Axe().run(page).response
        self.rules = max(self.rules, sum(len(response[part]) for part in _ANSWERS))
        for entry in response["incomplete"]:
            self.open_questions[entry["id"]] += len(entry["nodes"])
        for entry in response["violations"]:
            self.impacts[entry["impact"]] += len(entry["nodes"])
            where = entry["nodes"][0]["html"][:120]
            self.wrong.append(
                f"{self.names[-1]} {theme} axe {entry['impact']} {entry['id']}: "
                f"{entry['help']} {where}"
            )

    def open(self, page: Page, place: str, name: str) -> None:
        """Goes to a place and judges it, unless the app leads elsewhere from there."""
        page.evaluate("(place) => { location.hash = place; }", f"#/{place}")
        expect(heading(page)).to_be_visible()
        page.wait_for_timeout(SETTLE_MS)
        if page.evaluate("location.hash") == f"#/{place}":
            self.take(page, name)
        else:
            self.elsewhere.append(name)

    def figures(self) -> str:
        """One line of counts and one of what axe leaves open."""
        found = ", ".join(f"{impact} {self.impacts[impact]}" for impact in IMPACTS)
        left = ", ".join(f"{rule} {n}" for rule, n in sorted(self.open_questions.items()))
        return (
            f"{self.language}: {len(self.names)} places, {len(self.names) * len(THEMES)} runs of "
            f"{self.rules} rules: {found}; {self.nodes} spoken nodes; other findings "
            f"{sum(1 for one in self.wrong if ' axe ' not in one)}\n"
            f"left to a person by axe: {left or 'nothing'}"
        )


_ANSWERS = ("passes", "violations", "incomplete", "inapplicable")
