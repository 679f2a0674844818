"""The local server: this computer only, the built folder's own files only, and nothing else.

``python3 -m web.build.server --port 8137`` serves ``web/dist`` as a process of its own, which a
test can kill: a server that is merely shut down inside a process goes on answering on
connections that are already open.
"""

import argparse
import errno
import os
import re
import socket
import sys
import threading
import webbrowser
from http import HTTPStatus
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path

from web.build.headers import headers_for
from web.build.paths import DIST
from web.build.trouble import Trouble

DEFAULT_PORT = 8137
LOOPBACK, LOOPBACK_6 = "127.0.0.1", "::1"
# Another site's page can make its own name point at this computer; the Host header tells.
OWN_HOST = re.compile(r"(localhost|127\.0\.0\.1|\[::1\])(:[0-9]{1,5})?", re.IGNORECASE | re.ASCII)
# Who says nothing for so long, or takes nothing of what is sent, is let go.
SILENCE_S = 60

KINDS = {
    ".css": "text/css; charset=utf-8",
    ".html": "text/html; charset=utf-8",
    ".js": "text/javascript; charset=utf-8",
    ".json": "application/json",
    ".mjs": "text/javascript; charset=utf-8",
    ".png": "image/png",
    ".svg": "image/svg+xml",
    ".txt": "text/plain; charset=utf-8",
    ".wasm": "application/wasm",
    ".webmanifest": "application/manifest+json",
    ".woff2": "font/woff2",
    ".zip": "application/zip",
}
# What static hosts read and do not serve.
NOT_SERVED = {"_headers"}
CHUNK_BYTES = 1 << 18


def served_files(folder: Path) -> dict[str, Path]:
    """Exact name -> file for everything below ``folder`` that may be asked for; links are not."""
    found = {}
    for place, folders, names in os.walk(folder, followlinks=False):
        folders[:] = [name for name in folders if not Path(place, name).is_symlink()]
        for name in names:
            path = Path(place, name)
            exact = path.relative_to(folder).as_posix()
            if exact not in NOT_SERVED and path.is_file() and not path.is_symlink():
                found[exact] = path
    return found


class Handler(BaseHTTPRequestHandler):
    """GET and HEAD of exact names."""

    protocol_version = "HTTP/1.1"
    # A line without a version gets an answer with a status and headers, too.
    default_request_version = "HTTP/1.0"
    timeout = SILENCE_S
    server_version = "local"
    sys_version = ""
    server: "LocalServer"

    def do_GET(self) -> None:
        self._answer(with_body=True)

    def do_HEAD(self) -> None:
        self._answer(with_body=False)

    def _answer(self, *, with_body: bool) -> None:
        if self._has_content():
            # Left unread it would be taken for the next request.
            self.send_error(HTTPStatus.BAD_REQUEST)
            return
        hosts = self.headers.get_all("Host", [])
        if len(hosts) != 1 or not OWN_HOST.fullmatch(hosts[0]):
            self._refuse(HTTPStatus.MISDIRECTED_REQUEST, with_body)
            return
        name = self._asked_name()
        path = served_files(self.server.folder).get(name) if name else None
        if name is None or path is None:
            self._refuse(HTTPStatus.NOT_FOUND, with_body)
            return
        with path.open("rb") as file:
            self.send_response(HTTPStatus.OK)
            kind = KINDS.get(path.suffix, "application/octet-stream")
            self._send_headers(name, kind, os.fstat(file.fileno()).st_size)
            while with_body and (chunk := file.read(CHUNK_BYTES)):
                self.wfile.write(chunk)

    def _has_content(self) -> bool:
        return self.headers.get("Content-Length", "0") != "0" or "Transfer-Encoding" in self.headers

    def _asked_name(self) -> str | None:
        # As it was sent: what http.server makes of it has lost slashes. No name needs an escape.
        target = self.requestline.split()[1].split("?")[0]
        if not target.startswith("/"):
            return None
        return target.removeprefix("/") or "index.html"

    def send_error(self, code: int, *_: object, **__: object) -> None:
        """What is no request, or one for something else than reading: refused as all others are."""
        self.close_connection = True
        self._refuse(HTTPStatus(code), with_body=self.command != "HEAD")

    def _refuse(self, status: HTTPStatus, with_body: bool) -> None:
        text = f"{status.value} {status.phrase}\n".encode()
        self.send_response(status)
        self._send_headers("", KINDS[".txt"], len(text))
        if with_body:
            self.wfile.write(text)

    def _send_headers(self, name: str, kind: str, size_bytes: int) -> None:
        for header, value in headers_for(name).items():
            self.send_header(header, value)
        self.send_header("Content-Type", kind)
        self.send_header("Content-Length", str(size_bytes))
        if self.close_connection:
            self.send_header("Connection", "close")
        self.end_headers()

    def log_message(self, *_: object) -> None:
        """Silent: the terminal is for the person who started it."""


class LocalServer(ThreadingHTTPServer):
    """Listens on the loopback. ``folder`` may be set after the port is taken."""

    daemon_threads = True
    # Windows would otherwise let two servers listen on one port.
    allow_reuse_address = os.name != "nt"
    folder: Path = DIST

    def handle_error(self, request: object, client_address: object) -> None:
        # Browsers cut downloads when a worker is ended; that is no error of ours.
        if not isinstance(sys.exc_info()[1], ConnectionError):
            super().handle_error(request, client_address)  # type: ignore[arg-type]


def open_server(port: int, folder: Path = DIST) -> LocalServer:
    """A server that holds ``port`` and does not answer yet. Raises Trouble when it is taken."""
    # Browsers try both addresses of "localhost": they would open that other program.
    if port and _somebody_answers(LOOPBACK_6, port):
        raise _taken(port)
    try:
        server = LocalServer((LOOPBACK, port), Handler)
    except OSError as error:
        if error.errno == errno.EADDRINUSE:
            raise _taken(port) from error
        if error.errno == errno.EACCES:
            raise Trouble(
                f"Port {port} may not be used without special rights.",
                f"Choose one from 1024 up, for example: python3 -m web --port {DEFAULT_PORT}",
            ) from error
        raise
    server.folder = folder
    return server


def _somebody_answers(address: str, port: int) -> bool:
    try:
        with socket.create_connection((address, port), timeout=1):
            return True
    except OSError:
        return False


def _taken(port: int) -> Trouble:
    return Trouble(
        f"Port {port} is taken on this computer, by another program or by this app elsewhere.",
        f"Open http://localhost:{port}/ to see, or choose another port, for example: "
        f"python3 -m web --port {port % 65535 + 1}",
    )


def run_server(server: LocalServer, address_to_open: str | None = None) -> int:
    """Serves until Ctrl+C; opens a browser at ``address_to_open``. Returns the exit status."""
    if address_to_open:
        threading.Thread(target=webbrowser.open, args=[address_to_open], daemon=True).start()
    try:
        server.serve_forever()
    except KeyboardInterrupt:
        sys.stderr.write("\nStopped.\n")
    return 0


def main() -> int:
    """``python3 -m web.build.server``: says its address on one line, then serves."""
    parser = argparse.ArgumentParser(prog="python3 -m web.build.server")
    parser.add_argument("--port", type=int, default=DEFAULT_PORT, help="0 takes any free port")
    parser.add_argument("--folder", type=Path, default=DIST)
    wanted = parser.parse_args()
    try:
        server = open_server(wanted.port, wanted.folder.resolve())
    except Trouble as trouble:
        sys.stderr.write(f"{trouble.sentence}\nWay on: {trouble.way_on}\n")
        return 1
    with server:
        print(f"http://localhost:{server.server_port}/", flush=True)
        return run_server(server)


if __name__ == "__main__":
    sys.exit(main())
