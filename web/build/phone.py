"""The Python that the phone runs: wheels, resolved once here, then one zip of compiled modules."""

import os
import shutil
from pathlib import Path

from web.build.environment import venv_python
from web.build.node import Node
from web.build.paths import (
    LOCKS,
    NODE_MODULES,
    PYCORE,
    ROOT,
    SCRIPTS,
    SHARED,
    STATE,
    WEB,
    files_below,
)
from web.build.run import run_tool
from web.build.steps import Steps

PHONE_LOCK = LOCKS / "phone.lock"
# The Python of the pinned Pyodide. Without it pip would choose for this computer's own Python.
PHONE_PYTHON = "3.14"

WHEELS = STATE / "wheels"
OWN_WHEEL = STATE / "own-wheel"
RESOLVED_LOCK = STATE / "pyodide-lock.json"
PHONE = STATE / "phone"
MODULE_LIST = STATE / "phone-modules.json"
SOURCES_ZIP = PHONE / "python_stdlib.zip"
COMPILED_ZIP = STATE / "compiled.zip"
IMAGE_FILES = ("core.head.bin", "core.pages.bin", "empty.zip")
# Files of the app that read Pyodide's module by name.
READERS = (WEB / "src" / "core" / "image.ts",)
RUNTIME_FILES = ("pyodide.asm.mjs", "pyodide.asm.wasm")
# Part of the worker's script.
LOADER = "pyodide.mjs"


def build_phone_python(node: Node, steps: Steps) -> Path:
    """Makes the folder of files that start Python in the browser, and returns it."""
    parts = (*RUNTIME_FILES, LOADER, "pyodide-lock.json")
    runtime = [NODE_MODULES / "pyodide" / name for name in parts]
    sources = [*files_below(PYCORE, ".py", ".json"), ROOT / "pyproject.toml"]
    steps.run("Phone's Python packages", [PHONE_LOCK], [WHEELS], _download_wheels)
    steps.run("Own Python package", sources, [OWN_WHEEL], _make_own_wheel)
    steps.run(
        "Resolving packages",
        [PHONE_LOCK, *files_below(OWN_WHEEL), SCRIPTS / "resolve.mjs", *runtime],
        [RESOLVED_LOCK],
        lambda: _resolve(node),
    )
    steps.run(
        "Python for the phone",
        [
            RESOLVED_LOCK,
            NODE_MODULES / "pyodide" / "python_stdlib.zip",
            *files_below(SHARED / "examples", ".json"),
            *files_below(SCRIPTS),
            *READERS,
            *runtime,
        ],
        [SOURCES_ZIP, MODULE_LIST, *(PHONE / name for name in (*RUNTIME_FILES, *IMAGE_FILES))],
        lambda: _make_phone_folder(node),
    )
    return PHONE


def _download_wheels() -> None:
    shutil.rmtree(WHEELS, ignore_errors=True)
    run_tool(
        "Downloading the phone's Python packages",
        [
            venv_python(), "-m", "pip", "download", "--quiet", "--require-hashes",
            "--only-binary", ":all:", "--no-deps", "--python-version", PHONE_PYTHON,
            "--implementation", "py", "--abi", "none", "--platform", "any",
            "--dest", WHEELS, "-r", PHONE_LOCK,
        ],
    )  # fmt: skip


def _make_own_wheel() -> None:
    shutil.rmtree(OWN_WHEEL, ignore_errors=True)
    run_tool(
        "Building the own Python package",
        [
            venv_python(), "-m", "pip", "wheel", "--quiet", "--no-build-isolation",
            "--no-index", "--no-deps", "--wheel-dir", OWN_WHEEL, ROOT,
        ],
    )  # fmt: skip


def _resolve(node: Node) -> None:
    run_tool(
        "Resolving the phone's packages",
        [*node.node, SCRIPTS / "resolve.mjs", WHEELS, OWN_WHEEL, RESOLVED_LOCK],
        extra_environment=node.environment,
    )


def _make_phone_folder(node: Node) -> None:
    shutil.rmtree(PHONE, ignore_errors=True)
    PHONE.mkdir(parents=True)
    joined = STATE / "all-wheels"
    shutil.rmtree(joined, ignore_errors=True)
    joined.mkdir()
    for wheel in [*files_below(WHEELS, ".whl"), *files_below(OWN_WHEEL, ".whl")]:
        shutil.copyfile(wheel, joined / wheel.name)
    run_tool(
        "Cutting Pyodide's exports",
        [*node.node, SCRIPTS / "cut_runtime.mjs", NODE_MODULES / "pyodide", PHONE, *READERS],
        extra_environment=node.environment,
    )
    same_everywhere = {**node.environment, "TZ": "UTC", "LC_ALL": "C.UTF-8"}
    run_tool(
        "Making the Python for the phone",
        [
            *node.node, SCRIPTS / "bundle.mjs", RESOLVED_LOCK, joined, SHARED / "examples",
            COMPILED_ZIP, SOURCES_ZIP, MODULE_LIST, PHONE,
        ],
        extra_environment=same_everywhere,
    )  # fmt: skip
    run_tool(
        "Making the memory image",
        [
            *node.node, SCRIPTS / "image.mjs", COMPILED_ZIP, MODULE_LIST,
            SHARED / "examples", PHONE,
        ],
        extra_environment=same_everywhere,
    )  # fmt: skip
    for path in PHONE.iterdir():
        os.chmod(path, 0o644)
