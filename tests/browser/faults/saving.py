"""A page that saves one note after the other, through the app's own form, and says what it saw."""

import os
import signal
from pathlib import Path

from playwright.sync_api import Error, Page, expect

from tests.browser.phone import Phone, heading
from tests.browser.stored import entries
from tests.browser.walk import set_up_machine

# Goes by what a person sees: presses, and counts only what the page calls saved.
LOOP = """
async ([count, mark]) => {
  const until = async (seen) => {
    const end_ms = performance.now() + 60_000;
    while (!seen()) {
      if (performance.now() > end_ms) throw new Error(`not saved: ${document.body.innerText}`);
      await new Promise((done) => setTimeout(done, 2));
    }
  };
  const title = () => document.querySelector("h1")?.textContent ?? "";
  for (let n = 1; n <= count; n += 1) {
    location.hash = "#/tell";
    await until(() => title() === "Note" && document.querySelector("#told-text"));
    const field = document.querySelector("#told-text");
    field.value = `${mark} ${n}`;
    field.dispatchEvent(new Event("input", { bubbles: true }));
    await new Promise((done) => setTimeout(done, 20));
    document.querySelector(".main-action").click();
    await until(() => title() === "Saved to the log");
    console.log(`saved ${mark} ${n}`);
  }
}
"""


def prepared(page: Page, address: str) -> None:
    """The app with one machine, opened at its list."""
    page.goto(address)
    set_up_machine(page)
    expect(heading(page)).to_be_visible()


def start_saving(page: Page, count: int, mark: str) -> None:
    """Starts the loop and returns at once."""
    page.evaluate(f"(given) => {{ window.saving = ({LOOP})(given); }}", [count, mark])


def texts(page: Page) -> list[str]:
    """The notes that are stored, in their order."""
    return [entry["body"]["text"] for entry in entries(page, "note")]


def browser_on(profile: Path) -> list[int]:
    """Ids of every process of the browser on this profile, and of nothing else."""
    own = []
    for place in Path("/proc").iterdir():
        if not place.name.isdigit():
            continue
        try:
            command = (place / "cmdline").read_bytes().decode(errors="replace")
        except OSError:
            continue
        if f"--user-data-dir={profile}" in command or f"{profile}/" in command:
            own.append(int(place.name))
    return own


def kill_browser(profile: Path) -> int:
    """SIGKILL to every process of the browser on this profile, and nothing else; how many."""
    own = browser_on(profile)
    for process in own:
        try:
            os.kill(process, signal.SIGKILL)
        except ProcessLookupError:
            continue
    for lock in profile.glob("Singleton*"):
        lock.unlink(missing_ok=True)
    return len(own)


def end_by_kill(phone: Phone, profile: Path) -> None:
    """Every process of the phone's browser is killed; the phone can be started again."""
    assert kill_browser(profile) > 0
    try:
        phone.close()
    except Error:
        phone.forget()
