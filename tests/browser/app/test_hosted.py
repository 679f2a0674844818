"""The zip of ``python3 -m web bundle`` on a host that knows nothing of the app: any folder of it.

The host is the small server that comes with Python. It sends no headers, so what README says of
such hosts is looked at here: the policy holds from the second load on, also for the worker.
"""

import socket
import subprocess
import sys
import zipfile
from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Playwright

from tests.browser.phone import Phone, wait_until_ready
from tests.browser.stored import rows
from tests.browser.walk import check_until_recipe, save_check, set_up_machine
from web.build.bundle import SITE, write_bundle
from web.build.headers import policy

SENT = """
fetch("index.html").then((got) => got.headers.get("content-security-policy") ?? "none")
"""
ELSEWHERE = """
(address) => fetch(address, { mode: "no-cors" }).then(() => "sent", (error) => error.name)
"""

# Nothing else in the worker tells its policy: its fetches are answered by the app or by no one. In
# a turn of its own, since the developer tools lift the policy from what they run themselves.
WORDS_AS_CODE = """
() => new Promise((done) => setTimeout(() => {
  try { done((0, eval)("1")); } catch (error) { done(error.name); }
}))
"""


@pytest.fixture
def plain_host(tmp_path: Path, port: int) -> Iterator[subprocess.Popen[bytes]]:
    """Python's own server on the unpacked zip, once it answers."""
    write_bundle(tmp_path / "site.zip")
    with zipfile.ZipFile(tmp_path / "site.zip") as bundle:
        bundle.extractall(tmp_path / "web space")
    process = subprocess.Popen(
        [
            sys.executable, "-m", "http.server", str(port), "--bind", "127.0.0.1",
            "--directory", str(tmp_path / "web space"),
        ],
        stdin=subprocess.DEVNULL,
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
    )  # fmt: skip
    while process.poll() is None:
        with socket.socket() as asked:
            if asked.connect_ex(("127.0.0.1", port)) == 0:
                break
    yield process
    process.kill()
    process.wait(timeout=10)


def test_the_zip_in_a_folder_of_a_plain_host(
    playwright: Playwright, plain_host: subprocess.Popen[bytes], port: int, tmp_path: Path
) -> None:
    phone = Phone(playwright, tmp_path / "profile")
    page = phone.start()
    place = f"http://localhost:{port}/{SITE}/"
    page.goto(place)
    wait_until_ready(page)
    # The host sends nothing; what lies on the phone comes with the whole list's policy.
    assert page.evaluate(SENT) == policy()
    page.reload()
    assert page.evaluate(ELSEWHERE, f"http://127.0.0.1:{port}/") == "TypeError"
    wait_until_ready(page)
    assert page.workers[0].evaluate(WORDS_AS_CODE) == "EvalError"
    # Two copies in two folders of one host are two apps.
    session = page.context.new_cdp_session(page)
    assert session.send("Page.getAppId")["appId"] == place
    set_up_machine(page)
    phone.close()
    plain_host.kill()
    plain_host.wait(timeout=10)
    page = phone.start()
    page.goto(place)
    wait_until_ready(page)
    page.get_by_role("link", name="Wheel lathe").click()
    check_until_recipe(page)
    save_check(page)
    assert len(rows(page)) == 2
    phone.close()
