"""Other builds made of the one in web/dist: the next version, and one with a foreign part."""

import base64
import hashlib
import re
import shutil
from pathlib import Path

from web.build.paths import DIST

# "2" stands before the ending of each file that is of the next build.
_NAMES = re.compile(r"\b((?:de|en|index|style|worker|year)-[\w-]{8})\.(js|css|json|txt)\b")
FOREIGN_ID = "0" * 12
_ENTRY = re.compile(r'"integrity":"(sha256-[^"]+)","revision":[^,]+,"url":"([^"]+)"')


def integrity_of(path: Path) -> str:
    """As the service worker's list writes it."""
    return "sha256-" + base64.b64encode(hashlib.sha256(path.read_bytes()).digest()).decode()


def build_id(folder: Path = DIST) -> str:
    """The build that a folder holds."""
    found = re.search(r"build:`?\"?([0-9a-f]{12})", (folder / "sw.js").read_text(encoding="utf-8"))
    assert found is not None
    return found[1]


def copy_of(target: Path) -> Path:
    """This build in a folder of its own."""
    shutil.copytree(DIST, target)
    return target


def listed(folder: Path) -> list[str]:
    """The files that an install fetches, in its order."""
    return [url for _, url in _ENTRY.findall((folder / "sw.js").read_text(encoding="utf-8"))]


def list_anew(folder: Path) -> None:
    """Puts the hashes of the files as they are into the service worker's list."""
    script = folder / "sw.js"
    text = script.read_text(encoding="utf-8")
    for integrity, url in _ENTRY.findall(text):
        now = integrity_of(folder / url)
        if now != integrity:
            text = text.replace(f'"integrity":"{integrity}"', f'"integrity":"{now}"')
    text = re.sub(r'("whole":")[0-9a-f]{8}', r"\g<1>aaaaaaaa", text)
    script.write_text(text, encoding="utf-8")


def next_build(target: Path) -> Path:
    """A complete build with another id; all files with a hash in their name have other names."""
    copy_of(target)
    old, new = build_id(), build_id()[::-1]
    for path in sorted(target.rglob("*")):
        if path.suffix in (".js", ".css", ".html") and path.parent.name in ("assets", target.name):
            text = path.read_text(encoding="utf-8").replace(old, new)
            path.write_text(_NAMES.sub(r"\1.2.\2", text), encoding="utf-8")
    for path in sorted((target / "assets").iterdir()):
        path.rename(path.with_name(_NAMES.sub(r"\1.2.\2", path.name)))
    # Under a name that stays, another content.
    licences = target / "licences.json"
    licences.write_text(licences.read_text(encoding="utf-8") + "\n", encoding="utf-8")
    list_anew(target)
    return target


def with_foreign_part(target: Path, part: str) -> Path:
    """A next build of which one part (``index``, ``worker``, ``sw``) has the id of yet another."""
    next_build(target)
    (path,) = [target / "sw.js"] if part == "sw" else (target / "assets").glob(f"{part}-*.js")
    text = path.read_text(encoding="utf-8")
    own = build_id(target)
    assert own in text
    path.write_text(text.replace(own, FOREIGN_ID), encoding="utf-8")
    list_anew(target)
    return target


def put_in_place(new: Path, folder: Path) -> None:
    """What a host does with a new build: its files take the place of the old ones."""
    for path in sorted(folder.iterdir()):
        if path.is_dir():
            shutil.rmtree(path)
        else:
            path.unlink()
    shutil.copytree(new, folder, dirs_exist_ok=True)
