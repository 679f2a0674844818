"""``python3 -m web bundle``: the built site and how to host it, in one zip that can be carried."""

import zipfile
from pathlib import Path

from web.build.paths import DIST, files_below
from web.build.trouble import Trouble

INSTRUCTIONS = Path(__file__).with_name("hosting.html")
INSTRUCTIONS_NAME = "how-to-host.html"
WITHDRAW = Path(__file__).with_name("withdraw") / "sw.js"
WITHDRAW_NAME = "withdraw/sw.js"
SITE = "site"
# The oldest date that a zip can hold: the same site gives the same bytes on every day.
DATE = (1980, 1, 1, 0, 0, 0)
UNIX = 3


def refuse_place(target: Path) -> None:
    """Raises Trouble or OSError where no file can be written under this name."""
    if target.is_dir():
        raise Trouble(
            f"{target} is a folder, not a file.",
            f"Name the file too, for example: -o {target / 'pailwright-site.zip'}",
        )
    if not target.parent.is_dir():
        raise Trouble(
            f"There is no folder {target.parent} to write into.",
            "Make it, or name another place with -o.",
        )
    _unfinished(target).open("wb").close()
    _unfinished(target).unlink()


def write_bundle(target: Path, site: Path = DIST) -> int:
    """Writes the zip whole or not at all and returns its size in bytes. Raises OSError."""
    unfinished = _unfinished(target)
    with zipfile.ZipFile(unfinished, "w", zipfile.ZIP_DEFLATED, compresslevel=9) as bundle:
        _add(bundle, INSTRUCTIONS_NAME, INSTRUCTIONS)
        _add(bundle, WITHDRAW_NAME, WITHDRAW)
        for path in files_below(site):
            _add(bundle, f"{SITE}/{path.relative_to(site).as_posix()}", path)
    unfinished.replace(target)
    return target.stat().st_size


def _unfinished(target: Path) -> Path:
    # Not with_suffix: a name may hold several dots.
    return target.with_name(target.name + ".part")


def _add(bundle: zipfile.ZipFile, name: str, path: Path) -> None:
    entry = zipfile.ZipInfo(name, DATE)
    entry.create_system = UNIX
    entry.external_attr = 0o644 << 16
    entry.compress_type = zipfile.ZIP_DEFLATED
    bundle.writestr(entry, path.read_bytes())
