"""What a screen reader is given: roles, names and live regions of the browser's accessibility tree.

Chromium's own tree over its developer tools is the text that it hands to the reader of the phone;
how a reader says it is not in it.
"""

from __future__ import annotations

import itertools
import re
from collections import defaultdict
from dataclasses import dataclass
from typing import Any

from playwright.sync_api import CDPSession, Page

PRESSED = {"button", "link", "radio", "checkbox", "combobox", "textbox", "DisclosureTriangle"}
LIVE = {"status", "alert"}
# A name that says nothing without what stands around it.
EMPTY_WORDS = re.compile(
    r"(?:here|more|less|click|link|button|hier|mehr|weniger|klicken)", re.IGNORECASE
)
# What is seen on a control and missing in its name: who says what he sees is not understood.
_SEEN_NOT_NAMED = r"""
() => [...document.querySelectorAll("[aria-label]:is(button, a, input, summary)")]
  .filter((one) => one.getClientRects().length > 0 && /[\p{L}\d]/u.test(one.innerText))
  .filter((one) => {
    const plain = (text) => text.toLowerCase().replace(/[^\p{L}\d%]+/gu, " ").trim();
    return !plain(one.getAttribute("aria-label")).includes(plain(one.innerText));
  })
  .map((one) => `${one.innerText} / ${one.getAttribute("aria-label")}`)
"""


@dataclass(frozen=True)
class Node:
    """One node of the tree that a reader is given; ``about``: its properties by name."""

    role: str
    name: str
    about: dict[str, Any]


def tree(page: Page) -> list[Node]:
    """The nodes that are not ignored, in the order of the tree."""
    session: CDPSession = page.context.new_cdp_session(page)
    try:
        nodes = session.send("Accessibility.getFullAXTree")["nodes"]
    finally:
        session.detach()
    # A line of a text once more, as it is broken on the screen, is no node of its own.
    told = [_node(one) for one in nodes if not one["ignored"]]
    return [node for node in told if node.role != "InlineTextBox"]


def _node(one: dict[str, Any]) -> Node:
    about = {part["name"]: part["value"].get("value") for part in one.get("properties", [])}
    name = one.get("name", {}).get("value", "")
    return Node(one.get("role", {}).get("value", ""), str(name).strip(), about)


def _names(nodes: list[Node]) -> list[str]:
    """What has no name, a name that says nothing alone, or the name of something else."""
    pressed = [node for node in nodes if node.role in PRESSED or node.about.get("focusable")]
    pressed = [node for node in pressed if node.role != "RootWebArea"]
    wrong = [f"no name: {node.role}" for node in pressed if not node.name]
    wrong += [f"empty word: {one.name!r}" for one in pressed if EMPTY_WORDS.fullmatch(one.name)]
    places = defaultdict[str, set[str]](set)
    for node in nodes:
        if node.role == "link":
            places[node.name].add(str(node.about.get("url", "")))
    wrong += [
        f"{len(to)} places by one name: {name!r}" for name, to in places.items() if len(to) > 1
    ]
    buttons = [node.name for node in nodes if node.role == "button"]
    twice = {name for name in buttons if buttons.count(name) > 1}
    return wrong + [f"two buttons by one name: {name!r}" for name in sorted(twice)]


def _frame(nodes: list[Node]) -> list[str]:
    """Headings, pictures, and what is told without being asked for."""
    levels = [int(node.about["level"]) for node in nodes if node.role == "heading"]
    wrong = [] if levels.count(1) == 1 else [f"{levels.count(1)} headings of the first level"]
    jumps = [b for a, b in itertools.pairwise(levels) if b > a + 1]
    wrong += [f"a heading of level {level} without one above it" for level in jumps]
    pictures = [node for node in nodes if node.role in {"image", "img", "graphics-document"}]
    wrong += ["a picture without a name" for node in pictures if not node.name]
    for node in nodes:
        if node.role in LIVE and node.about.get("live") not in {"polite", "assertive"}:
            wrong.append(f"{node.role} that is not told")
    if not any(node.role == "main" for node in nodes):
        wrong.append("no main part")
    return wrong


def misspoken(page: Page) -> list[str]:
    """What a person who hears the page is not told, or is told in two ways."""
    nodes = tree(page)
    seen: list[str] = page.evaluate(_SEEN_NOT_NAMED)
    return [
        *(f"spoken: {one}" for one in (*_names(nodes), *_frame(nodes))),
        *(f"spoken: seen and not in its name: {one}" for one in seen),
    ]
