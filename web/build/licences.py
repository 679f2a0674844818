"""Licence texts of all that is in the site, in one file that the app shows without a network."""

import hashlib
import json
import re
import zipfile
from pathlib import Path
from typing import Any

from web.build.paths import NODE_MODULES, ROOT, WEB
from web.build.phone import MODULE_LIST, WHEELS
from web.build.trouble import Trouble

TEXTS = WEB / "build" / "licences"
# Installed with the others, and not in the site: types have no code, ws is for Pyodide on Node,
# micropip resolves packages when the site is built.
NOT_SHIPPED = {"@types/emscripten", "ws", "micropip"}
# Their npm package or wheel has no licence file: the text stands beside this module.
WITHOUT_TEXT = {"pyodide": "pyodide.txt"}
# What is linked into Pyodide's WebAssembly beside Python; see the test that asks it.
RUNTIME = TEXTS / "runtime.json"
LICENCE_FILE = re.compile(r"(^|/)(licen[cs]e|copying)[^/]*$", re.IGNORECASE)


def licences() -> list[dict[str, str]]:
    """Name, version, licence and text of each package, sorted by name. Raises Trouble."""
    found = [*_npm_packages(), *_wheels(), _python(), *_linked(), _own()]
    bare = [row["name"] for row in found if not row["text"].strip()]
    if bare:
        raise Trouble(
            f"No licence text is known for {', '.join(bare)}.",
            "Put its text into web/build/licences and name it in web/build/licences.py.",
        )
    return sorted(found, key=lambda row: row["name"].lower())


def _row(name: str, version: str, licence: str, text: str) -> dict[str, str]:
    return {"name": name, "version": version, "licence": licence, "text": text}


def _npm_packages() -> list[dict[str, str]]:
    lock = json.loads((WEB / "package-lock.json").read_text(encoding="utf-8"))["packages"]
    rows = []
    for path, facts in lock.items():
        name = path.removeprefix("node_modules/")
        if path and not facts.get("dev") and name not in NOT_SHIPPED:
            text = _npm_text(name)
            rows.append(_row(name, facts["version"], facts.get("license", ""), text))
    return rows


def _npm_text(name: str) -> str:
    if name in WITHOUT_TEXT:
        return (TEXTS / WITHOUT_TEXT[name]).read_text(encoding="utf-8")
    files = [path for path in (NODE_MODULES / name).iterdir() if LICENCE_FILE.search(path.name)]
    return "\n".join(path.read_text(encoding="utf-8") for path in sorted(files))


def _wheels() -> list[dict[str, str]]:
    rows = []
    for wheel in sorted(WHEELS.glob("*.whl")):
        name, version = wheel.name.split("-")[:2]
        if name in NOT_SHIPPED:
            continue
        with zipfile.ZipFile(wheel) as packed:
            names = [n for n in packed.namelist() if ".dist-info/" in n]
            texts = [packed.read(n).decode() for n in names if LICENCE_FILE.search(n)]
            about = next(packed.read(n).decode() for n in names if n.endswith("/METADATA"))
        said = re.search(r"^License(?:-Expression)?: (.{1,60})$", about, re.MULTILINE)
        kind = re.search(r"^Classifier: License :: .*:: (.+)$", about, re.MULTILINE)
        licence = said[1] if said else kind[1] if kind else ""
        rows.append(_row(name, version, licence, "\n".join(texts)))
    return rows


def _python() -> dict[str, str]:
    """Pyodide's own Python, whose version is that of the wheels' folder in its zip of modules."""
    lock: dict[str, Any] = json.loads(
        (NODE_MODULES / "pyodide" / "pyodide-lock.json").read_text(encoding="utf-8")
    )
    text = (TEXTS / "cpython.txt").read_text(encoding="utf-8")
    return _row("Python", lock["info"]["python"], "PSF-2.0", text)


def _linked() -> list[dict[str, str]]:
    """Libraries inside the WebAssembly; each text is the one whose hash was written down."""
    rows = []
    for known in json.loads(RUNTIME.read_text(encoding="utf-8")):
        content = (TEXTS / known["file"]).read_bytes()
        if hashlib.sha256(content).hexdigest() != known["sha256"]:
            raise Trouble(
                f"The licence text {known['file']} is not the one that was written down.",
                "Bring the file back from the repository, or write down its new hash and source.",
            )
        text = content.decode("utf-8")
        rows.append(_row(known["name"], known["version"], known["licence"], text))
    return rows


def _own() -> dict[str, str]:
    text = (ROOT / "LICENSE").read_text(encoding="utf-8")
    return _row("Pailwright", "", "MIT" if "MIT" in text[:40] else "", text)


def licence_inputs() -> list[Path]:
    """Everything that decides what ``licences`` returns."""
    return [
        Path(__file__), ROOT / "LICENSE", WEB / "package-lock.json",
        *sorted(TEXTS.iterdir()), *sorted(WHEELS.glob("*.whl")), MODULE_LIST,
    ]  # fmt: skip
