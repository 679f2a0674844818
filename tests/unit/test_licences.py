"""web.build.licences: every package that is in the site has its whole licence text."""

import json
import re
import shutil
import subprocess
from pathlib import Path

import pytest

from web.build import licences as module
from web.build.licences import NOT_SHIPPED, licences
from web.build.node import ensure_node
from web.build.paths import LOCKS, NODE_MODULES, WEB
from web.build.phone import MODULE_LIST, WHEELS
from web.build.steps import Steps
from web.build.trouble import Trouble

# The shortest licence in use, ISC, has some 700 characters.
SHORTEST = 600

pytestmark = pytest.mark.skipif(not WHEELS.exists(), reason="needs a site that was built once")


def rows() -> dict[str, dict[str, str]]:
    return {row["name"]: row for row in licences()}


def test_every_npm_package_that_the_page_depends_on_is_there() -> None:
    lock = json.loads((WEB / "package-lock.json").read_text(encoding="utf-8"))["packages"]
    wanted = {
        path.removeprefix("node_modules/")
        for path, facts in lock.items()
        if path and not facts.get("dev")
    }
    assert wanted - NOT_SHIPPED <= rows().keys()


def test_every_python_package_of_the_phone_is_there() -> None:
    names = re.findall(r"^([a-z0-9_-]+)==", (LOCKS / "phone.lock").read_text(), re.MULTILINE)
    assert {*names} - NOT_SHIPPED <= rows().keys()
    assert {"Python", "pyodide", "Pailwright"} <= rows().keys()
    # What is left out is not in the phone's Python.
    modules = json.loads(MODULE_LIST.read_text(encoding="utf-8"))
    assert [name for name in modules if name.split(".")[0] in NOT_SHIPPED] == []


def test_each_text_is_whole_and_names_its_licence() -> None:
    short = [name for name, row in rows().items() if len(row["text"]) < SHORTEST]
    assert short == []
    assert [name for name, row in rows().items() if not row["licence"]] == []
    assert "Mozilla Public License" in rows()["pyodide"]["text"]
    assert "PYTHON SOFTWARE FOUNDATION LICENSE" in rows()["Python"]["text"]
    assert "Redistribution and use" in rows()["segno"]["text"]


# Built-in modules of the shipped Python, and the library that each is made of.
LINKED = {
    "_bz2": "bzip2", "_ctypes": "libffi", "_lzma": "XZ Utils (liblzma)", "_sha3": "HACL*",
    "_sqlite3": "SQLite", "_zstd": "Zstandard", "pyexpat": "Expat", "zlib": "zlib",
}  # fmt: skip
# No other built-in module brings a library: they are CPython's own.
ASK = """
import sys, zlib, pyexpat, sqlite3, compression.zstd as z, json
json.dumps({"modules": sorted(sys.builtin_module_names), "zlib": zlib.ZLIB_RUNTIME_VERSION,
  "Expat": pyexpat.EXPAT_VERSION.removeprefix("expat_"), "SQLite": sqlite3.sqlite_version,
  "Zstandard": ".".join(map(str, z.zstd_version_info)),
  "Emscripten": ".".join(map(str, sys._emscripten_info.emscripten_version))})
"""


def test_the_libraries_inside_the_runtime_are_there_in_its_versions() -> None:
    index = (NODE_MODULES / "pyodide" / "pyodide.mjs").as_uri()
    script = f"import {{ loadPyodide }} from {json.dumps(index)};"
    script += f"console.log((await loadPyodide()).runPython({json.dumps(ASK)}));"
    command = [*ensure_node(Steps()).node, "--input-type=module", "--eval", script]
    done = subprocess.run(command, capture_output=True, text=True, check=True, timeout=120)
    found = json.loads(done.stdout.splitlines()[-1])
    brought = {library for module, library in LINKED.items() if module in found["modules"]}
    assert len(brought) == len(LINKED)
    for library in brought:
        row = rows()[library]
        assert row["version"] == found.get(library, row["version"])
    assert rows()["Emscripten"]["version"] == found["Emscripten"]
    assert "_ssl" not in found["modules"]
    assert "_hashlib" not in found["modules"]


def test_a_changed_text_ends_the_build(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    shutil.copytree(module.TEXTS, tmp_path / "texts")
    monkeypatch.setattr(module, "TEXTS", tmp_path / "texts")
    with (tmp_path / "texts" / "zlib.txt").open("a") as text:
        text.write(" ")
    with pytest.raises(Trouble, match="zlib"):
        licences()


def test_a_package_without_a_text_ends_the_build(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(module, "LICENCE_FILE", re.compile("nothing is called like this"))
    with pytest.raises(Trouble, match="preact"):
        licences()
