"""Each engine with a fresh profile, and a server that can be killed."""

import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Playwright

from tests.browser.files import backup
from tests.browser.phone import Phone
from tests.browser.server import Server
from tests.browser.walk import set_up_machine
from tests.engines.browsers import DISPLAY, FIREFOX, WEBKIT
from tests.engines.chromium import Chromium
from tests.engines.firefox import Firefox
from tests.engines.hand import Engine
from tests.engines.webkit import WebKit


def _program(name: str) -> str:
    found = shutil.which(name)
    if found is None:
        pytest.fail(f"there is no {name} here; python3 -m tests gets it")
    return found


@pytest.fixture(params=["chromium", "firefox", "webkit"])
def engine(
    request: pytest.FixtureRequest, playwright: Playwright, tmp_path: Path
) -> Iterator[Engine]:
    """Each of the three in turn."""
    started: Engine
    if request.param == "chromium":
        started = Chromium(playwright, tmp_path / "profile")
    elif request.param == "firefox":
        started = Firefox(_program(FIREFOX), tmp_path / "profile")
    else:
        started = WebKit(_program(WEBKIT), _program(DISPLAY))
    yield started
    started.close()


@pytest.fixture
def server() -> Iterator[Server]:
    """web/dist on a port of this computer."""
    started = Server()
    yield started
    started.kill()


@pytest.fixture(scope="session")
def backup_of_chromium(playwright: Playwright, tmp_path_factory: pytest.TempPathFactory) -> str:
    """What a phone with Chromium saves that has one machine."""
    server = Server()
    phone = Phone(playwright, tmp_path_factory.mktemp("chromium") / "profile")
    page = phone.start()
    page.goto(server.address)
    set_up_machine(page)
    text = backup(page)
    phone.close()
    server.kill()
    return text
