"""From nothing to ``web/dist``, a folder that any static host can serve from any path."""

import json
import shutil
from pathlib import Path

from web.build.environment import ensure_venv
from web.build.headers import LIST, headers_file
from web.build.licences import licence_inputs, licences
from web.build.node import Node, ensure_node, ensure_packages
from web.build.paths import DIST, NODE_MODULES, SHARED, STATE, WEB, files_below
from web.build.phone import build_phone_python
from web.build.run import run_tool
from web.build.steps import Input, Steps, digest, write_whole

FRESH = STATE / "site"
REPLACED = STATE / "site-replaced"
LICENCES = STATE / "licences.json"
FILE_LIST = STATE / "site-files.json"
BUILD_ID_CHARACTERS = 12


def build(steps: Steps | None = None) -> Path:
    """Brings ``web/dist`` up to date, doing only what changed, and returns it. Raises Trouble."""
    steps = steps or Steps()
    ensure_venv(steps)
    node = ensure_node(steps)
    ensure_packages(node, steps)
    phone = build_phone_python(node, steps)
    inputs = site_inputs(phone)
    steps.run(
        "Site",
        inputs,
        [DIST / "index.html", DIST / "sw.js"],
        lambda: _build_site(node, phone, digest(inputs)[:BUILD_ID_CHARACTERS]),
        made_last_time=_listed_files(),
    )
    return DIST


def site_inputs(phone: Path) -> list[Input]:
    """Everything that decides what the site is; the build id is made from it."""
    return [
        *files_below(WEB / "src"),
        *files_below(WEB / "public"),
        *files_below(WEB / "build" / "vite"),
        *sorted(WEB.glob("tsconfig*.json")),
        WEB / "index.html",
        WEB / "vite.config.ts",
        WEB / "package-lock.json",
        LIST,
        *files_below(SHARED / "words"),
        *files_below(SHARED / "demo"),
        *[path for path in [SHARED / "quantities.json"] if path.exists()],
        *licence_inputs(),
        *files_below(phone),
    ]


def _build_site(node: Node, phone: Path, build_id: str) -> None:
    shutil.rmtree(FRESH, ignore_errors=True)
    write_whole(LICENCES, json.dumps(licences(), ensure_ascii=False).encode())
    run_tool(
        "Building the site",
        [*node.node, NODE_MODULES / "vite" / "bin" / "vite.js", "build", "--logLevel", "warn"],
        cwd=WEB,
        extra_environment={
            **node.environment,
            "NODE_ENV": "production",
            "PAILWRIGHT_BUILD_ID": build_id,
            "PAILWRIGHT_PYTHON": str(phone),
            "PAILWRIGHT_LICENCES": str(LICENCES),
            "PAILWRIGHT_SITE": str(FRESH),
        },
    )
    names = [path.relative_to(FRESH).as_posix() for path in files_below(FRESH)]
    write_whole(FRESH / "_headers", headers_file(names).encode())
    # The whole folder changes places at once: whoever serves it never serves half of it.
    shutil.rmtree(REPLACED, ignore_errors=True)
    if DIST.exists():
        DIST.rename(REPLACED)
    FRESH.rename(DIST)
    shutil.rmtree(REPLACED, ignore_errors=True)
    write_whole(FILE_LIST, json.dumps([*names, "_headers"]).encode())


def _listed_files() -> list[Path]:
    try:
        return [DIST / name for name in json.loads(FILE_LIST.read_bytes())]
    except (OSError, ValueError):
        return []
