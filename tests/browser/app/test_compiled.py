"""The page's script is stored compiled: no start reads its words again.

Chromium compiles a classic script wholly while a service worker stores it, but parses a module
anew at every start.
"""

from typing import Any

from tests.browser.phone import Phone, wait_until_ready
from tests.browser.server import Server
from web.build.paths import DIST

CATEGORIES = "devtools.timeline,v8,disabled-by-default-v8.compile"
COMPILED = ("v8.compile", "v8.compileModule", "v8.parseOnBackground")
OURS = "/assets/index-"
LIMIT_TURNS = 100
TURN_MS = 100


def traced_start(phone: Phone, server: Server) -> list[tuple[str, int, bool]]:
    """What the engine did to the page's script at a start, and how much of it was compiled."""
    page = phone.start()
    session = page.context.new_cdp_session(page)
    told: list[dict[str, Any]] = []
    ended: list[object] = []
    session.on("Tracing.dataCollected", lambda part: told.extend(part["value"]))
    session.on("Tracing.tracingComplete", lambda end: ended.append(end))
    session.send("Tracing.start", {"categories": CATEGORIES})
    page.goto(server.address)
    wait_until_ready(page)
    session.send("Tracing.end")
    for _ in range(LIMIT_TURNS):
        if ended:
            break
        page.wait_for_timeout(TURN_MS)
    assert ended
    data = [(one["name"], one["args"].get("data", {})) for one in told if one["name"] in COMPILED]
    return [
        (name, about.get("consumedCacheSize", 0), about.get("cacheRejected", True))
        for name, about in data
        if OURS in about.get("url", "")
    ]


def test_the_first_start_from_the_phone_compiles_nothing_of_the_page(
    phone: Phone, server: Server
) -> None:
    page = phone.start()
    page.goto(server.address)
    wait_until_ready(page)
    phone.close()
    ((kind, bytes_compiled, is_refused),) = traced_start(phone, server)
    assert kind == "v8.compile"
    assert bytes_compiled > 1_000_000
    assert not is_refused


def test_the_script_means_the_same_in_every_encoding() -> None:
    """A host may name another encoding for a page or its script."""
    (script,) = (DIST / "assets").glob("index-*.js")
    assert script.read_bytes().isascii()
