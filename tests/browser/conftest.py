"""A server and a phone for each test; whatever the page complains about fails the test."""

import shutil
import socket
from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Page, Playwright

from tests.browser.phone import DESK_SIZE, Phone, wait_until_ready
from tests.browser.server import Server
from tests.browser.walk import set_up_machine


@pytest.fixture(scope="session")
def port() -> int:
    """One port for all servers: what a phone has stored belongs to the address it came from."""
    with socket.socket() as free:
        free.bind(("localhost", 0))
        return int(free.getsockname()[1])


@pytest.fixture
def server(port: int) -> Iterator[Server]:
    """web/dist on a port of this computer."""
    started = Server(port=port)
    yield started
    started.kill()


@pytest.fixture(scope="session")
def used_profile(
    playwright: Playwright, port: int, tmp_path_factory: pytest.TempPathFactory
) -> Path:
    """A phone that has the app and one machine, set up once by the walk that a person takes."""
    server, profile = Server(port=port), tmp_path_factory.mktemp("used") / "profile"
    phone = Phone(playwright, profile)
    page = phone.start()
    page.goto(server.address)
    set_up_machine(page)
    page.get_by_role("button", name="Back").click()
    wait_until_ready(page)
    phone.close()
    server.kill()
    assert phone.problems == []
    return profile


@pytest.fixture
def machine_on_phone(used_profile: Path, tmp_path: Path) -> None:
    """Gives the phone of this test the app and one machine before it is switched on."""
    own = shutil.ignore_patterns("Singleton*")
    shutil.copytree(used_profile, _profile(tmp_path), ignore=own)


def _profile(folder: Path) -> Path:
    return folder / "profile"


@pytest.fixture
def phone(playwright: Playwright, tmp_path: Path, server: Server) -> Iterator[Phone]:
    """A phone that has never seen the app, if nothing has put it there.

    It is switched off before the server is: a page that still loads would complain.
    """
    assert server.address
    one = Phone(playwright, _profile(tmp_path))
    yield one
    one.close()
    assert one.problems == []


@pytest.fixture
def desk(playwright: Playwright, tmp_path: Path, server: Server) -> Iterator[Phone]:
    """The same at the size of a desk's screen."""
    assert server.address
    one = Phone(playwright, tmp_path / "desk", DESK_SIZE)
    yield one
    one.close()
    assert one.problems == []


@pytest.fixture
def page(phone: Phone, server: Server) -> Page:
    """The app's first page on the phone."""
    opened = phone.start()
    opened.goto(server.address)
    return opened
