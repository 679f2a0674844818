"""A host with faults, on the port of all servers of a run."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Playwright

from tests.browser.faults.builds import copy_of
from tests.browser.faults.host import Host
from tests.browser.phone import Phone


@pytest.fixture
def site(tmp_path: Path) -> Path:
    """A copy of this build, which a test may change while it is served."""
    return copy_of(tmp_path / "site")


@pytest.fixture
def host(site: Path, port: int, tmp_path: Path) -> Iterator[Host]:
    """Serves the copy, without a fault until a test asks for one."""
    started = Host(site, port, tmp_path / "faults.json")
    yield started
    started.kill()


@pytest.fixture
def loud_phone(playwright: Playwright, tmp_path: Path, host: Host) -> Iterator[Phone]:
    """A phone whose complaints are expected: what fails here fails loudly.

    With ``machine_on_phone`` it has the app and a machine already.
    """
    assert host.address
    phone = Phone(playwright, tmp_path / "profile")
    yield phone
    phone.close()
