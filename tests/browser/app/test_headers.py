"""One list of headers for the server, for other hosts and for the page (reliability F53)."""

import http.client
from urllib.parse import urlsplit

import pytest

from tests.browser.server import Server
from web.build.headers import headers_for, policy
from web.build.paths import DIST

NAMES = sorted(path.relative_to(DIST).as_posix() for path in DIST.rglob("*") if path.is_file())
SERVED = [name for name in NAMES if name != "_headers"]


def ask(
    server: Server, path: str, method: str = "GET", host: str | None = None
) -> tuple[int, dict[str, str], bytes]:
    """Status, headers and content."""
    place = urlsplit(server.address)
    connection = http.client.HTTPConnection("127.0.0.1", place.port, timeout=30)
    try:
        connection.request(method, path, headers={"Host": host or f"localhost:{place.port}"})
        reply = connection.getresponse()
        return reply.status, dict(reply.getheaders()), reply.read()
    finally:
        connection.close()


@pytest.mark.parametrize("name", SERVED)
def test_file_comes_whole_and_with_the_list(server: Server, name: str) -> None:
    status, headers, content = ask(server, f"/{name}")
    assert status == 200
    assert content == (DIST / name).read_bytes()
    assert {key: headers.get(key) for key in headers_for(name)} == headers_for(name)


def test_policy_forbids_what_it_should() -> None:
    # The policy of reliability.md part 8 was written down by the project itself; no outside source.
    rules = dict(rule.split(" ", 1) for rule in policy().split("; "))
    assert rules["default-src"] == "'none'"
    assert rules["connect-src"] == "'self'"
    assert rules["require-trusted-types-for"] == "'script'"
    for forbidden in ("unsafe-inline", "'unsafe-eval'", "*", "http:", "https:", "data:", "blob:"):
        assert forbidden not in policy()


def test_other_hosts_get_the_same_policy() -> None:
    text = (DIST / "_headers").read_text(encoding="utf-8")
    assert f"  Content-Security-Policy: {policy()}\n" in text
    assert "Strict-Transport-Security" in text


def test_page_carries_the_policy_for_hosts_without_headers() -> None:
    page = (DIST / "index.html").read_text(encoding="utf-8")
    head = page.split("<head>")[1]
    assert "Content-Security-Policy" in head[:200]
    assert "frame-ancestors" not in head


@pytest.mark.parametrize(
    "path",
    [
        "/nothing.js",
        "/../pyproject.toml",
        "/%2e%2e/pyproject.toml",
        "/assets/",
        "/_headers",
        "/sw.js/",
    ],
)
def test_anything_else_is_not_there(server: Server, path: str) -> None:
    status, headers, content = ask(server, path)
    assert status == 404
    assert b"<html" not in content.lower()
    assert headers["Content-Security-Policy"] == policy()


@pytest.mark.parametrize(
    "host", ["evil.example", "localhost.evil.example", "192.0.2.1", "127.0.0.1.evil.example:80"]
)
def test_another_name_for_this_computer_is_refused(server: Server, host: str) -> None:
    assert ask(server, "/index.html", host=host)[0] == 421


def test_only_reading(server: Server) -> None:
    assert ask(server, "/index.html", "POST")[0] in (405, 501)
    status, headers, content = ask(server, "/index.html", "HEAD")
    assert (status, content) == (200, b"")
    assert int(headers["Content-Length"]) == (DIST / "index.html").stat().st_size
