"""Firefox over BiDi, the web driver standard's two-way form: a process with a kept profile."""

import json
import re
import subprocess
import time
from pathlib import Path
from typing import Any

import websocket

LIMIT_S = 120
PREFERENCES = {
    "app.update.enabled": False,
    "browser.shell.checkDefaultBrowser": False,
    "browser.startup.page": 0,
    "datareporting.policy.dataSubmissionEnabled": False,
    "intl.accept_languages": "en-GB, en",
    "toolkit.telemetry.reportingpolicy.firstRun": False,
}


class Firefox:
    """One profile; ``restart`` ends every process of the browser and starts it anew."""

    def __init__(self, program: str, profile: Path) -> None:
        self._program, self._profile = program, profile
        profile.mkdir()
        lines = [f'user_pref("{name}", {json.dumps(to)});' for name, to in PREFERENCES.items()]
        (profile / "user.js").write_text("\n".join(lines), encoding="utf-8")
        self._start()

    def _start(self) -> None:
        self._process = subprocess.Popen(
            [
                self._program, "--headless", "--no-remote", "--remote-debugging-port", "0",
                "--profile", str(self._profile), "about:blank",
            ],
            stdin=subprocess.DEVNULL,
            stdout=subprocess.DEVNULL,
            stderr=subprocess.PIPE,
            text=True,
        )  # fmt: skip
        address = self._address()
        self._socket = websocket.create_connection(
            f"{address}/session", timeout=LIMIT_S, suppress_origin=True
        )
        self._asked = 0
        found = self._ask("session.new", {"capabilities": {}})["capabilities"]
        self.name = f"Firefox {found['browserVersion']}"
        tree = self._ask("browsingContext.getTree", {})
        self._tab = tree["contexts"][0]["context"]

    def _address(self) -> str:
        assert self._process.stderr is not None
        for line in self._process.stderr:
            found = re.search(r"BiDi listening on (ws://\S+)", line)
            if found:
                return found[1]
        raise RuntimeError(f"{self._program} ended before it listened")

    def _ask(self, method: str, parameters: dict[str, Any]) -> Any:
        self._asked += 1
        question = {"id": self._asked, "method": method, "params": parameters}
        self._socket.send(json.dumps(question))
        end_s = time.monotonic() + LIMIT_S
        while time.monotonic() < end_s:
            reply = json.loads(self._socket.recv())
            if reply.get("id") == self._asked:
                if reply["type"] != "success":
                    raise RuntimeError(f"{method}: {reply}")
                return reply["result"]
        raise TimeoutError(method)

    def goto(self, address: str) -> None:
        """Opens an address and waits until it has loaded."""
        parameters = {"context": self._tab, "url": address, "wait": "complete"}
        self._ask("browsingContext.navigate", parameters)

    def evaluate(self, expression: str) -> str:
        """The text that an expression gives, awaited where it is a promise."""
        target = {"context": self._tab}
        parameters = {"expression": expression, "target": target, "awaitPromise": True}
        done = self._ask("script.evaluate", parameters)
        if done["type"] != "success":
            raise RuntimeError(done["exceptionDetails"]["text"])
        return str(done["result"].get("value", ""))

    def restart(self) -> None:
        """A new process on the same profile."""
        self.close()
        self._start()

    def close(self) -> None:
        """Ends the browser; what it has stored stays in the profile."""
        self._ask("browser.close", {})
        self._socket.close()
        self._process.wait(timeout=LIMIT_S)
