"""web.build.server: this computer only, exact names only, and nothing is ever written."""

import http.client
import socket
import threading
from collections.abc import Iterator
from pathlib import Path

import pytest

from web.build.headers import headers_file, headers_for, policy
from web.build.server import KINDS, LOOPBACK, Handler, LocalServer, open_server, served_files
from web.build.trouble import Trouble

FILES = {
    "index.html": b"<!doctype html>",
    "sw.js": b"1",
    "assets/main-abcdefgh.js": b"2",
    "py-0123456789ab/pyodide.mjs": b"3",
    "py-0123456789ab/pyodide.asm.wasm": b"4",
    "_headers": b"/*",
}


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A small site, a file beside it, and links that lead to that file."""
    tmp_path = tmp_path_factory.mktemp("served")
    site = tmp_path / "site"
    for name, content in FILES.items():
        (site / name).parent.mkdir(parents=True, exist_ok=True)
        (site / name).write_bytes(content)
    (tmp_path / "secret.txt").write_text("secret")
    (site / "link.txt").symlink_to(tmp_path / "secret.txt")
    (site / "up").symlink_to(tmp_path, target_is_directory=True)
    return site


@pytest.fixture(scope="module")
def server(folder: Path) -> Iterator[LocalServer]:
    """The server on a free port of the loopback."""
    with open_server(0, folder) as started:
        threading.Thread(target=started.serve_forever, daemon=True).start()
        yield started
        started.shutdown()


def ask(
    server: LocalServer, path: str, method: str = "GET", host: str | None = "localhost"
) -> tuple[int, dict[str, str], bytes]:
    """Status, headers and content; the path goes out as it stands."""
    connection = http.client.HTTPConnection(LOOPBACK, server.server_port, timeout=10)
    connection.putrequest(method, path, skip_host=True)
    if host is not None:
        connection.putheader("Host", host)
    connection.endheaders()
    reply = connection.getresponse()
    found = reply.status, dict(reply.getheaders()), reply.read()
    connection.close()
    return found


def test_it_listens_on_the_loopback_alone(server: LocalServer) -> None:
    assert server.server_address[0] == "127.0.0.1"
    with socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as outward:
        # Tells the address that this computer has outside; nothing is sent.
        outward.connect(("192.0.2.1", 9))
        outside = outward.getsockname()[0]
    with socket.socket() as other:
        other.settimeout(5)
        # Where this computer has no other address, that one is the loopback itself.
        found = other.connect_ex((outside, server.server_port))
    assert (found != 0) is (not outside.startswith("127."))


@pytest.mark.parametrize("name", [name for name in FILES if name != "_headers"])
def test_a_file_comes_with_the_one_list_of_headers(server: LocalServer, name: str) -> None:
    status, headers, content = ask(server, f"/{name}")
    assert (status, content) == (200, FILES[name])
    assert {key: headers.get(key) for key in headers_for(name)} == headers_for(name)
    assert headers["Content-Type"] == KINDS[Path(name).suffix]
    assert not [key for key in headers if key.lower().startswith("access-control-")]
    assert "Python" not in headers["Server"]


@pytest.mark.parametrize(
    "path",
    [
        "/link.txt", "/up/secret.txt", "/../secret.txt", "/%2e%2e/secret.txt", "/assets/",
        "/assets", "/assets/../index.html", "/./index.html", "/INDEX.HTML",
        "/index.html/", "/index.html%00", "/..%5csecret.txt", "/_headers", "/secret.txt",
        "/assets%2fmain-abcdefgh.js", "http://localhost/index.html", "*", "/%", "//",
        "//index.html", "///sw.js", "/%69ndex.html", "index.html", "?x", "/index.html#x",
    ],
)  # fmt: skip
def test_any_other_name_is_not_there(server: LocalServer, path: str) -> None:
    status, headers, content = ask(server, path)
    assert status in (400, 404)
    assert b"secret" not in content
    assert b"doctype" not in content
    if status == 404:
        assert headers["Content-Security-Policy"] == policy()


@pytest.mark.parametrize(
    "host",
    [
        "evil.example", "localhost.evil.example", "evil.localhost", "127.0.0.1.evil.example",
        "127.0.0.2", "192.0.2.1", "[::2]", "localhost:80:80", "localhost@evil.example", "", None,
    ],
)  # fmt: skip
def test_a_foreign_name_for_this_computer_is_refused(server: LocalServer, host: str | None) -> None:
    status, _, content = ask(server, "/index.html", host=host)
    assert status == 421
    assert b"doctype" not in content


@pytest.mark.parametrize("host", ["localhost", "LOCALHOST:8137", "127.0.0.1:1", "[::1]:8137"])
def test_its_own_names(server: LocalServer, host: str) -> None:
    assert ask(server, "/", host=host)[0] == 200


@pytest.mark.parametrize("method", ["POST", "PUT", "DELETE", "OPTIONS", "PATCH", "TRACE", "X"])
def test_reading_is_all_that_can_be_asked_for(
    server: LocalServer, folder: Path, method: str
) -> None:
    status, _, content = ask(server, "/index.html", method)
    assert status in (405, 501)
    assert b"doctype" not in content
    assert (folder / "index.html").read_bytes() == FILES["index.html"]


def raw(server: LocalServer, sent: bytes) -> bytes:
    """Everything that comes back for these bytes until the server ends the connection."""
    with socket.create_connection((LOOPBACK, server.server_port), timeout=10) as connection:
        connection.sendall(sent)
        connection.shutdown(socket.SHUT_WR)
        return b"".join(iter(lambda: connection.recv(65536), b""))


ODD = {
    "no request": (b"\x00\x01\x02\r\n\r\n", 400),
    "no version": (b"GET /nothing\r\n\r\n", 421),
    "version of tomorrow": (b"GET / HTTP/9.9\r\nHost: localhost\r\n\r\n", 505),
    "long line": (b"GET /" + b"a" * 70_000 + b" HTTP/1.1\r\nHost: localhost\r\n\r\n", 414),
    "long header": (
        b"GET / HTTP/1.1\r\nHost: localhost\r\nX: " + b"a" * 70_000 + b"\r\n\r\n", 431
    ),
    "many headers": (
        b"GET / HTTP/1.1\r\nHost: localhost\r\n" + b"X: a\r\n" * 120 + b"\r\n", 431
    ),
    "own and foreign name": (
        b"GET / HTTP/1.1\r\nHost: localhost\r\nHost: evil.example\r\n\r\n", 421
    ),
    "name in two lines": (b"GET / HTTP/1.1\r\nHost: localhost\r\n .evil\r\n\r\n", 421),
    "a request inside a request": (
        b"GET / HTTP/1.1\r\nHost: localhost\r\nContent-Length: 37\r\n\r\n"
        b"GET /sw.js HTTP/1.1\r\nHost: localhost\r\n\r\n", 400
    ),
    "a request in pieces": (
        b"GET / HTTP/1.1\r\nHost: localhost\r\nTransfer-Encoding: chunked\r\n\r\n"
        b"0\r\n\r\n", 400
    ),
    "another method": (b"POST / HTTP/1.1\r\nHost: localhost\r\n\r\n", 501),
}  # fmt: skip


@pytest.mark.parametrize(("sent", "wanted"), ODD.values(), ids=ODD)
def test_what_is_no_question_gets_one_refusal_with_the_list(
    server: LocalServer, sent: bytes, wanted: int
) -> None:
    reply = raw(server, sent)
    head, content = reply.split(b"\r\n\r\n", 1)
    assert head.startswith(f"HTTP/1.1 {wanted} ".encode())
    assert reply.count(b"HTTP/1.1 ") == 1
    for name, value in headers_for("").items():
        assert f"\r\n{name}: {value}" in head.decode()
    assert content.startswith(str(wanted).encode())
    assert b"<" not in content


def test_who_says_nothing_is_let_go(server: LocalServer, monkeypatch: pytest.MonkeyPatch) -> None:
    assert Handler.timeout <= 120
    monkeypatch.setattr(Handler, "timeout", 0.2)
    with socket.create_connection((LOOPBACK, server.server_port), timeout=10) as connection:
        connection.sendall(b"GET / HTTP/1.1\r\nHost: loc")
        assert connection.recv(100) == b""


def test_part_of_a_file_and_an_older_copy_are_answered_with_the_whole(server: LocalServer) -> None:
    for header in (b"Range: bytes=0-3", b"If-None-Match: *", b"If-Modified-Since: x"):
        sent = b"GET / HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n" + header
        reply = raw(server, sent + b"\r\n\r\n")
        assert reply.startswith(b"HTTP/1.1 200 ")
        assert reply.endswith(b"\r\n\r\n" + FILES["index.html"])


def test_head_tells_the_size_and_sends_nothing(server: LocalServer) -> None:
    status, headers, content = ask(server, "/index.html", "HEAD")
    assert (status, content, headers["Content-Length"]) == (200, b"", "15")


def test_a_taken_port_has_a_way_on(server: LocalServer, folder: Path) -> None:
    with pytest.raises(Trouble) as caught:
        open_server(server.server_port, folder)
    assert str(server.server_port) in caught.value.sentence
    assert f"--port {server.server_port + 1}" in caught.value.way_on


def test_a_program_on_the_other_address_of_this_computer_holds_the_port() -> None:
    try:
        other = socket.create_server(("::1", 0), family=socket.AF_INET6)
    except OSError:
        pytest.skip("this computer has no IPv6")
    with other, pytest.raises(Trouble, match="is taken"):
        open_server(other.getsockname()[1])


def test_other_hosts_are_told_the_same_list() -> None:
    names = [name for name in FILES if name != "_headers"]
    rules: dict[str, dict[str, str]] = {}
    place = ""
    for line in headers_file(names).splitlines():
        if not line.startswith(" "):
            place = line
            rules[place] = {}
        else:
            key, value = line.strip().split(": ", 1)
            rules[place][key] = value
    for name in names:
        told = dict(rules["/*"])
        told.pop("Strict-Transport-Security")
        for place, found in rules.items():
            inside = place.endswith("/*") and f"/{name}".startswith(place[:-1]) and place != "/*"
            if inside or place == f"/{name}":
                assert not told.keys() & found.keys()
                told.update(found)
        assert told == headers_for(name)
    assert rules["/"] == {"Cache-Control": "no-cache"}


def test_what_is_served_is_read_anew(folder: Path) -> None:
    assert sorted(served_files(folder)) == sorted(name for name in FILES if name != "_headers")
    (folder / "new.txt").write_text("new")
    assert "new.txt" in served_files(folder)
