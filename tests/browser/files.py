"""Files on their way out of a phone and into another one."""

from pathlib import Path

from playwright.sync_api import Page, expect

from tests.browser.phone import heading
from tests.browser.walk import press

READING = "Reading the log …"


def start_at(page: Page, *place: str) -> None:
    """Opens a place of the app anew, as its icon does, and waits until the log is read there."""
    home = page.url.split("#")[0]
    # A page that is still starting would write its own place over this one.
    expect(heading(page)).to_be_visible()
    page.goto(f"{home}#/{'/'.join(place)}")
    page.reload()
    expect(heading(page)).to_be_visible()
    expect(page.get_by_text(READING)).to_have_count(0)


def saved_file(page: Page, button: str) -> tuple[str, str]:
    """Name and text of the file that a press saves."""
    with page.expect_download() as waiting:
        press(page, button)
    download = waiting.value
    return download.suggested_filename, Path(download.path()).read_text(encoding="utf-8")


def backup(page: Page) -> str:
    """The text of the phone's backup."""
    start_at(page, "backup")
    expect(page.get_by_text("The file holds")).to_be_visible()
    return saved_file(page, "Save a backup")[1]


def offer(page: Page, text: str | bytes, name: str = "backup.txt") -> None:
    """Chooses a file on the page that takes files in, and waits for its answer."""
    start_at(page, "take-in")
    expect(heading(page)).to_have_text("Take in a file")
    content = text.encode() if isinstance(text, str) else text
    page.locator("input[type=file]").set_input_files(
        {"name": name, "mimeType": "text/plain", "buffer": content}
    )
    expect(page.get_by_text("Choose another file")).to_be_visible()


def take_in(page: Page, text: str, count: int) -> None:
    """Takes a file in that brings so many entries."""
    offer(page, text)
    entries = "entry" if count == 1 else "entries"
    press(page, f"Add {count} {entries}")
    were = "entry was" if count == 1 else "entries were"
    expect(page.get_by_text(f"{count} {were} added.")).to_be_visible()
    # A press that follows another so soon is taken for a double tap.
    page.wait_for_timeout(1_100)
