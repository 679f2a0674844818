"""Each save is asked of the disk: syncs of the database's files are counted with strace (F02)."""

import re
import shutil
import subprocess
import time
from pathlib import Path

import pytest
from playwright.sync_api import Playwright

from tests.browser.faults.saving import browser_on, prepared, start_saving, texts
from tests.browser.phone import Phone
from tests.browser.server import Server

pytestmark = [
    pytest.mark.nightly,
    pytest.mark.skipif(shutil.which("strace") is None, reason="needs strace"),
]
SAVES = 50
ATTACHED_S = 2
SYNC = re.compile(r"f(?:data)?sync\([0-9]+<[^>]*/IndexedDB/")


def test_at_least_one_sync_for_each_save(
    playwright: Playwright, server: Server, tmp_path: Path
) -> None:
    profile, trace = tmp_path / "profile", tmp_path / "trace"
    phone = Phone(playwright, profile)
    page = phone.start()
    prepared(page, server.address)
    watched = [word for process in browser_on(profile) for word in ("-p", str(process))]
    assert watched
    command = ["strace", "-f", "-y", "-e", "trace=fsync,fdatasync", "-o", str(trace), *watched]
    with subprocess.Popen(command, stderr=subprocess.DEVNULL) as strace:
        time.sleep(ATTACHED_S)
        assert strace.poll() is None, "strace may not look at the browser here"
        start_saving(page, SAVES, "synced")
        page.evaluate("window.saving")
        strace.terminate()
    stored = texts(page)
    syncs = len(SYNC.findall(trace.read_text(errors="replace")))
    print(f"F02: {len(stored)} saves, {syncs} syncs of the database's files")
    assert len(stored) == SAVES
    assert syncs >= SAVES
    phone.close()
