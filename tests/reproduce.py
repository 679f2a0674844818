"""``python3 -m tests.reproduce``: two builds in two places, and whether they are the same bytes.

The folders, time zones, languages and, where this computer has one of its own, the Node.js differ.
Some minutes; every tool is fetched and set up twice.
"""

import hashlib
import os
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

from web.build.paths import ROOT

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


def main() -> int:
    """Prints both hashes and the files that differ; 1 when any does."""
    with tempfile.TemporaryDirectory() as first, tempfile.TemporaryDirectory() as second:
        here = build_in(Path(first) / "a", PLACES[0])
        there = build_in(Path(second) / "a longer name", {**PLACES[1], "PATH": without_node()})
    for name in sorted({*here, *there}):
        if here.get(name) != there.get(name):
            print(f"differs: {name}")
    print(f"{whole(here)}  {len(here)} files\n{whole(there)}  {len(there)} files")
    return 0 if here == there else 1


if __name__ == "__main__":
    sys.exit(main())
