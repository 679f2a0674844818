"""Where things are. Everything that a build makes lies in one of the last four."""

from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent.parent
WEB = ROOT / "web"
PYCORE = ROOT / "pycore"
SHARED = ROOT / "shared"
LOCKS = WEB / "build" / "locks"
SCRIPTS = WEB / "build" / "node"

VENV = ROOT / ".venv"
NODE_MODULES = WEB / "node_modules"
STATE = WEB / ".build"
DIST = WEB / "dist"


def files_below(folder: Path, *suffixes: str) -> list[Path]:
    """Sorted files below ``folder`` without byte code, only those with ``suffixes`` if given."""
    return sorted(
        path
        for path in folder.rglob("*")
        if path.is_file()
        and "__pycache__" not in path.parts
        and (not suffixes or path.suffix in suffixes)
    )
