"""The rows of shared/checks, and the two engines that have to answer them."""

import json
import subprocess
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from tests.published.inside import calculate
from web.build.node import ensure_node
from web.build.paths import DIST, NODE_MODULES, SHARED
from web.build.steps import Steps

CHECKS = SHARED / "checks"
HERE = Path(__file__).parent


def files() -> dict[str, dict[str, Any]]:
    """Each file's name and content."""
    return {
        path.name: json.loads(path.read_text(encoding="utf-8"))
        for path in sorted(CHECKS.glob("*.json"))
    }


def rows() -> Iterator[tuple[str, dict[str, Any]]]:
    """Every row with the name of its file."""
    for name, content in files().items():
        for row in content["rows"]:
            yield name, row


def question(name: str, row: dict[str, Any]) -> str:
    """A row and what its file holds beside the rows, as the engines take it."""
    content = {key: part for key, part in files()[name].items() if key != "rows"}
    return json.dumps({"row": row, "file": content})


class Native:
    """pycore in this Python."""

    def answer(self, text: str) -> dict[str, Any]:
        """What the row's calculation gives."""
        return json.loads(calculate(text))


class Shipped:
    """pycore in the WebAssembly bundle of web/dist, run by Node in a process of its own.

    ``inside`` holds the function ``calculate`` that answers there.
    """

    def __init__(self, inside: Path = HERE / "inside.py") -> None:
        node = ensure_node(Steps())
        self._process = subprocess.Popen(
            [
                *node.node, HERE / "shipped.mjs", shipped_folder(), inside,
                NODE_MODULES / "pyodide" / "pyodide-lock.json",
            ],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            text=True,
            encoding="utf-8",
        )  # fmt: skip

    def answer(self, text: str) -> dict[str, Any]:
        """What the row's calculation gives there."""
        stdin, stdout = self._process.stdin, self._process.stdout
        assert stdin is not None
        assert stdout is not None
        stdin.write(text + "\n")
        stdin.flush()
        line = stdout.readline()
        if not line:
            raise RuntimeError("the shipped Python ended without an answer")
        reply = json.loads(line)
        if "error" in reply:
            raise RuntimeError(reply["error"])
        return reply["result"]

    def close(self) -> None:
        """Ends the process."""
        if self._process.stdin is not None:
            self._process.stdin.close()
        self._process.wait(timeout=30)


def shipped_folder() -> Path:
    """The one folder of Python files in web/dist."""
    folders = sorted(DIST.glob("py-*"))
    if len(folders) != 1:
        raise FileNotFoundError(f"{DIST} holds {len(folders)} folders py-*, not one")
    return folders[0]
