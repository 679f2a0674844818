"""One list of headers (``headers.json``) for the local server, ``_headers`` and the page."""

import json
import re
from functools import cache
from pathlib import Path
from typing import Any

LIST = Path(__file__).with_name("headers.json")
# Folders whose files never change under their name.
HASH_IN_NAME = re.compile(r"^(assets|py-[0-9a-f]{12})/")


@cache
def _content() -> dict[str, Any]:
    content: dict[str, Any] = json.loads(LIST.read_text(encoding="utf-8"))
    return content


def policy() -> str:
    """The Content-Security-Policy that is sent as a header."""
    return "; ".join(f"{name} {value}" for name, value in _content()["policy"].items())


def headers_for(name: str) -> dict[str, str]:
    """The headers that the local server sends with the file ``name`` of the built folder."""
    kind = "hash_in_name" if HASH_IN_NAME.match(name) else "fixed_name"
    content = _content()
    return {"Content-Security-Policy": policy(), **content["everywhere"], **content[kind]}


def headers_file(names: list[str]) -> str:
    """The ``_headers`` file that several static hosts read, for a folder holding ``names``.

    Such hosts join the values of all rules that match, so no rule sets ``Cache-Control`` for
    everything.
    """
    content = _content()
    everywhere = {
        "Content-Security-Policy": policy(),
        **content["everywhere"],
        **content["https_only"],
    }
    lines = ["/*", *_lines(everywhere)]
    folders = sorted({f"/{name.split('/')[0]}/*" for name in names if HASH_IN_NAME.match(name)})
    fixed = sorted(f"/{name}" for name in names if not HASH_IN_NAME.match(name))
    for path in folders:
        lines += [path, *_lines(content["hash_in_name"])]
    for path in ["/", *fixed]:
        lines += [path, *_lines(content["fixed_name"])]
    return "\n".join(lines) + "\n"


def _lines(headers: dict[str, str]) -> list[str]:
    return [f"  {name}: {value}" for name, value in headers.items()]
