"""Files that the phone's share sheet hands to the app."""

import json
from typing import Any

from playwright.sync_api import Page, expect

from tests.browser.phone import heading
from web.build.paths import DIST


def share_target() -> dict[str, Any]:
    (target,) = {
        json.dumps(json.loads(path.read_text("utf-8"))["share_target"], sort_keys=True)
        for path in DIST.glob("manifest.*.webmanifest")
    }
    return dict(json.loads(target))


def hand_over(page: Page, address: str, *contents: bytes, named: str = "") -> None:
    """Sends what Android sends for files that were shared: a form, from outside the app."""
    target = share_target()
    (files,) = target["params"]["files"]
    assert {"text/plain", ".txt"} <= set(files["accept"])
    page.goto("about:blank")
    page.set_content(
        f"""<form action="{address}{target["action"].removeprefix("./")}"
        method="{target["method"]}" enctype="{target["enctype"]}">
        <input type="file" multiple name="{named or files["name"]}">
        <button>Share</button></form>"""
    )
    page.locator("input").set_input_files(
        [
            {"name": f"log {place}.txt", "mimeType": "text/plain", "buffer": content}
            for place, content in enumerate(contents)
        ]
    )
    page.get_by_role("button", name="Share").click()
    expect(heading(page)).to_have_text("Take in a file")
