"""Files of the office: read as text without losing a byte, written whole or not at all."""

from __future__ import annotations

import os
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from stat import S_ISDIR

from pycore.quantity.fault import Fault


def files_in(place: Path) -> list[Path]:
    """The file itself, or the files of a folder by name; hidden ones and folders are left out.

    Raises ``OSError`` as the system gives it, with the name that it is about:
    ``FileNotFoundError`` where there is nothing.
    """
    if not S_ISDIR(place.stat().st_mode):
        return [place]
    return sorted(path for path in place.iterdir() if path.is_file() and path.name[0] != ".")


def is_same_file(one: Path, other: Path) -> bool:
    """Whether two names lead to one file, by links too, or would once it is there.

    Raises ``OSError`` with the name that cannot be looked at.
    """
    if os.path.realpath(one) == os.path.realpath(other):
        return True
    try:
        return os.path.samestat(one.stat(), other.stat())
    except (FileNotFoundError, NotADirectoryError):
        return False


def read_text(path: Path, most_bytes: int) -> str:
    """A file's text; bytes that are no UTF-8 are kept and come out again as they were.

    Errors: ``too_large`` before anything is read; ``OSError`` as the system gives it.
    """
    size = path.stat().st_size
    if size > most_bytes:
        raise Fault("too_large", "file", size, {"most": most_bytes})
    return path.read_bytes().decode("utf-8", "surrogateescape")


class Overtaken(OSError):
    """Somebody else has written the file in between; what they wrote stays."""

    def __init__(self, path: Path) -> None:
        super().__init__(None, "another run has written it meanwhile. Run this again", str(path))


# Which file lies at a place, and when it was written; None for no file.
Mark = tuple[int, int, int] | None


def mark_of(path: Path) -> Mark:
    """What tells the file at a place from one that takes its place later."""
    try:
        found = path.stat()
    except (FileNotFoundError, NotADirectoryError):
        return None
    return found.st_ino, found.st_mtime_ns, found.st_size


@contextmanager
def replaced(path: Path, *seen: Mark) -> Iterator[Path]:
    """A file beside its place that is brought to the disk and then gets the name.

    seen: the mark of the file that it is to replace, where another run may be at work.
    Where the place is a link, the file that it leads to is replaced and the link stays. Whoever
    looks finds the old file or the new one, never a third. Raises ``OSError``, of it ``Overtaken``
    where ``seen`` is no longer there, and leaves the old file and no remains.
    """
    place = Path(os.path.realpath(path))
    handle, name = tempfile.mkstemp(prefix=f".{place.name}.", suffix=".part", dir=place.parent)
    os.close(handle)
    try:
        yield Path(name)
        with open(name, "rb+") as file:
            os.fsync(file.fileno())
        # mkstemp lets only the owner read; a log is for the office.
        mask = os.umask(0)
        os.umask(mask)
        Path(name).chmod(0o666 & ~mask)
        if seen and mark_of(path) not in seen:
            raise Overtaken(path)
        Path(name).replace(place)
    except BaseException:
        Path(name).unlink(missing_ok=True)
        raise
    _sync_folder(place.parent)


def write_whole(path: Path, text: str, *seen: Mark) -> None:
    """Writes a text as ``replaced`` does; signs that stand for bytes become those bytes again.

    Raises ``OSError``.
    """
    with replaced(path, *seen) as part:
        part.write_bytes(text.encode("utf-8", "surrogateescape"))


def _sync_folder(folder: Path) -> None:
    """Brings the new name to the disk, where the system can do that for a folder."""
    try:
        handle = os.open(folder, os.O_RDONLY)
    except OSError:
        return
    try:
        os.fsync(handle)
    except OSError:
        pass
    finally:
        os.close(handle)
