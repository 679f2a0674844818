"""A static host with faults: it cuts files, leaves them out, sends other headers or none.

A process of its own, as the local server is in the tests. What is wrong stands in a file that it
reads at every request, so that a fault comes and goes while it runs. The folder may change too.
"""

import json
import subprocess
import sys
from http import HTTPStatus
from pathlib import Path
from typing import Any

from web.build.headers import headers_for
from web.build.paths import ROOT
from web.build.server import KINDS, Handler, LocalServer, served_files


class _Faulty(Handler):
    """``cut``: name -> bytes sent of it; ``lost``, ``altered``: names; ``headers``: by name.

    A cut meets only what scripts fetch, which all of an install is: the page itself comes whole.
    ``sends_headers``: whether the list of headers is sent at all.
    """

    server: "_Host"

    def _answer(self, *, with_body: bool) -> None:
        faults = self.server.faults()
        name = self.path.split("?")[0].removeprefix("/") or "index.html"
        path = served_files(self.server.folder).get(name)
        if path is None or name in faults.get("lost", []):
            self._refuse(HTTPStatus.NOT_FOUND, with_body)
            return
        content = path.read_bytes()
        if name in faults.get("altered", []):
            content = content[::-1]
        self.send_response(HTTPStatus.OK)
        headers = headers_for(name) if faults.get("sends_headers", True) else {}
        for header, value in {**headers, **faults.get("headers", {}).get(name, {})}.items():
            self.send_header(header, value)
        self.send_header("Content-Type", KINDS.get(path.suffix, "application/octet-stream"))
        self.send_header("Content-Length", str(len(content)))
        self.end_headers()
        is_fetched = self.headers.get("Sec-Fetch-Dest") == "empty"
        sent = faults.get("cut", {}).get(name) if is_fetched else None
        self.wfile.write(content if sent is None else content[:sent])
        if sent is not None:
            self.close_connection = True


class _Host(LocalServer):
    plan: Path

    def faults(self) -> dict[str, Any]:
        found: dict[str, Any] = json.loads(self.plan.read_text(encoding="utf-8"))
        return found


class Host:
    """Serves ``folder`` with faults on a port; any name for this computer will do."""

    def __init__(self, folder: Path, port: int, plan: Path) -> None:
        self._plan = plan
        self.fail()
        self._process = subprocess.Popen(
            [sys.executable, "-m", "tests.browser.faults.host", str(folder), str(port), str(plan)],
            cwd=ROOT,
            stdin=subprocess.DEVNULL,
            stdout=subprocess.PIPE,
            text=True,
        )
        assert self._process.stdout is not None
        self.address = self._process.stdout.readline().strip()
        if not self.address:
            raise RuntimeError("the host ended before it said its address")

    def fail(self, **faults: Any) -> None:
        """From now on with these faults and no others."""
        beside = self._plan.with_suffix(".new")
        beside.write_text(json.dumps(faults), encoding="utf-8")
        beside.replace(self._plan)

    def kill(self) -> None:
        """Ends the process at once."""
        self._process.kill()
        self._process.wait(timeout=10)


def main() -> None:
    """The process: says its address on one line, then serves until it is killed."""
    folder, port, plan = Path(sys.argv[1]), int(sys.argv[2]), Path(sys.argv[3])
    with _Host(("127.0.0.1", port), _Faulty) as host:
        host.folder, host.plan = folder, plan
        print(f"http://localhost:{host.server_port}/", flush=True)
        host.serve_forever()


if __name__ == "__main__":
    main()
