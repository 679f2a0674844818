"""A tab that is asked over the developer tools' socket, and in which they do nothing by themselves.

A driver for tests listens to the network. Then the browser keeps each response's bytes and notes
for each request where in the script it began, for which it reads a kept script's words again:
34 ms of a start at full speed (measured), which no phone spends.
"""

import json
import subprocess
import time
import urllib.request
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import websocket

from tests.browser.phone import PHONE_SIZE
from tests.chromium import chromium_path, launch_arguments

LIMIT_S = 120
LOOK_EVERY_S = 0.05
# Where the browser writes which port it listens at.
PORT_FILE = "DevToolsActivePort"


class Tab:
    """The one tab of a browser."""

    def __init__(self, address: str) -> None:
        self._socket = websocket.create_connection(address, timeout=LIMIT_S, suppress_origin=True)
        self._asked = 0
        width, height = PHONE_SIZE
        self._ask(
            "Emulation.setDeviceMetricsOverride",
            width=width,
            height=height,
            deviceScaleFactor=1,
            mobile=False,
        )

    def _ask(self, method: str, **parameters: object) -> Any:
        self._asked += 1
        question = {"id": self._asked, "method": method, "params": parameters}
        self._socket.send(json.dumps(question))
        while True:
            reply = json.loads(self._socket.recv())
            if reply.get("id") != self._asked:
                continue
            if "error" in reply:
                raise RuntimeError(f"{method}: {reply['error']}")
            return reply["result"]

    def goto(self, address: str) -> None:
        """Begins to load an address."""
        said = self._ask("Page.navigate", url=address)
        if "errorText" in said:
            raise RuntimeError(f"{address}: {said['errorText']}")

    def evaluate(self, function: str, argument: object = None) -> Any:
        """What a function of the page returns, also where it promises it."""
        expression = f"({function})({json.dumps(argument)})"
        said = self._ask(
            "Runtime.evaluate", expression=expression, returnByValue=True, awaitPromise=True
        )
        if "exceptionDetails" in said:
            raise RuntimeError(f"{function}: {said['exceptionDetails']}")
        return said["result"].get("value")

    def run_first(self, script: str) -> None:
        """Runs a script in every page before its own."""
        self._ask("Page.enable")
        self._ask("Page.addScriptToEvaluateOnNewDocument", source=script)

    def close(self) -> None:
        """Ends the browser in its own way, so that it writes down what it keeps."""
        self._ask("Browser.close")
        self._socket.close()


@contextmanager
def opened(profile: Path) -> Iterator[Tab]:
    """A new browser process on ``profile``."""
    told = profile / PORT_FILE
    told.unlink(missing_ok=True)
    browser = subprocess.Popen(
        [
            chromium_path(),
            "--headless",
            "--remote-debugging-port=0",
            *launch_arguments,
            f"--user-data-dir={profile}",
            "about:blank",
        ],
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
    )
    try:
        tab = Tab(_address(told))
        yield tab
        tab.close()
        browser.wait(timeout=LIMIT_S)
    finally:
        browser.kill()
        browser.wait()


def _address(told: Path) -> str:
    end_s = time.monotonic() + LIMIT_S
    while time.monotonic() < end_s:
        time.sleep(LOOK_EVERY_S)
        port, _, rest = told.read_text().partition("\n") if told.exists() else ("", "", "")
        if not rest:
            continue
        with urllib.request.urlopen(f"http://127.0.0.1:{port}/json") as answer:
            targets = json.load(answer)
        for target in targets:
            if target["type"] == "page":
                return str(target["webSocketDebuggerUrl"])
    raise TimeoutError("the browser opened no tab")
