"""A hand on a page in any engine: finds things by their names, as the walk in Chromium does."""

import json
import time
from typing import Protocol

LIMIT_S = 90
BETWEEN_S = 0.1

FIND = """
const seen = (element) => element.getClientRects().length > 0;
const all = (selector) => [...document.querySelectorAll(selector)].filter(seen);
const named = (element) =>
  (element.getAttribute("aria-label") ?? element.innerText ?? "").replace(/\\s+/g, " ").trim();
const labels = (box) => [box.getAttribute("aria-label") ?? "",
  ...(box.getAttribute("aria-labelledby") ?? "").split(" ").map((id) =>
    document.getElementById(id)?.textContent ?? ""),
  ...[...(box.labels ?? [])].map((label) => label.textContent)].join(" ");
"""
PRESS = """
const button = all("button, a").find((one) => !one.disabled && named(one).startsWith(NAME));
button?.click();
return button === undefined ? "" : "pressed";
"""
FILL = """
const box = all("input").find((one) => labels(one).includes(NAME));
if (box === undefined) return "";
box.focus();
Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, "value").set.call(box, TEXT);
box.dispatchEvent(new Event("input", { bubbles: true }));
return "filled";
"""
OFFER = """
const box = document.querySelector("input[type=file]");
if (box === null) return "";
const given = new DataTransfer();
given.items.add(new File([TEXT], "backup.txt", { type: "text/plain" }));
box.files = given.files;
box.dispatchEvent(new Event("change", { bubbles: true }));
return "offered";
"""
HAS_HEADING = 'return all("h1").some((one) => named(one) === TEXT) ? "yes" : "";'
# What a download would hold, without a folder to download into.
CATCH = """
window.caught ??= [];
const make = URL.createObjectURL.bind(URL);
URL.createObjectURL = (file) => { window.caught.push(file); return make(file); };
return "caught";
"""
CAUGHT = "return window.caught?.length ? await window.caught.at(-1).text() : '';"
START_KINDS = """
return performance.getEntriesByName("core: first answer").map((mark) => mark.detail).join(" ");
"""
# With the reason of each start that failed.
MARKS = """
const marks = performance.getEntriesByType("mark");
return marks.map((mark) => `${mark.name} (${mark.detail}) at ${mark.startTime} ms`).join(", ");
"""

# Where nothing is to be seen, what the page is made of.
PAGE = """
return document.body.innerText || `${document.readyState} ${document.visibilityState} ` +
  `${document.styleSheets.length} style sheets ${location.href} ${document.body.innerHTML}`;
"""


class Engine(Protocol):
    """A browser with one page."""

    name: str

    def goto(self, address: str) -> None:
        """Opens an address."""

    def evaluate(self, expression: str) -> str:
        """The text that an expression of the page gives."""

    def restart(self) -> None:
        """The browser anew, as far as the engine keeps what was stored."""

    def close(self) -> None:
        """Ends the browser."""


class Hand:
    """Presses, types and reads."""

    def __init__(self, engine: Engine) -> None:
        self._engine = engine

    def do(self, script: str, **names: str) -> str:
        """Runs a script of the page; what it returns."""
        given = "".join(f"const {name} = {json.dumps(value)};" for name, value in names.items())
        return self._engine.evaluate(f"(async () => {{ {given} {FIND} {script} }})()")

    def until(self, script: str, what: str, **names: str) -> str:
        """Runs a script again and again until it returns something. Raises TimeoutError."""
        end_s = time.monotonic() + LIMIT_S
        while time.monotonic() < end_s:
            got = self.do(script, **names)
            if got:
                return got
            time.sleep(BETWEEN_S)
        page = self.do(PAGE)
        starts = self.do(MARKS)
        raise TimeoutError(f"{self._engine.name}: {what}; starts: {starts}; page: {page[:800]}")

    def press(self, name: str) -> None:
        """Presses the first button or link whose name begins so."""
        self.until(PRESS, f"nothing to press is called {name!r}", NAME=name)

    def fill(self, name: str, text: str) -> None:
        """Types into the field whose name holds this."""
        self.until(FILL, f"no field is called {name!r}", NAME=name, TEXT=text)

    def offer(self, text: str) -> None:
        """Chooses a file on the page that takes files in."""
        self.until(OFFER, "no place for a file", TEXT=text)

    def wait_for(self, text: str) -> None:
        """Waits until a text stands on the page."""
        script = "return document.body.innerText.includes(TEXT) ? 'yes' : '';"
        self.until(script, f"{text!r} does not come", TEXT=text)

    def wait_for_heading(self, text: str) -> None:
        """Waits for a heading."""
        self.until(HAS_HEADING, f"no heading {text!r}", TEXT=text)

    def text_of_page(self) -> str:
        """What the page shows in its main part."""
        return self.do("return document.querySelector('main').innerText;")
