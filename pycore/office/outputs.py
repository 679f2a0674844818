"""What the office's commands write: what may be in its way, and why it was not written."""

from __future__ import annotations

import os
from dataclasses import dataclass
from pathlib import Path
from stat import S_ISDIR, S_ISREG

from pycore.journal.file import START
from pycore.office.opened import MISUSED, Refused, unseen


@dataclass(frozen=True)
class Kind:
    """A kind of output, in words for people, how its files begin, and a mark of ours in them.

    mark: bytes that stand at mark_at, counted from the file's first byte, where the beginning is
    that of files of other programs too.
    """

    words: str
    beginnings: tuple[bytes, ...]
    mark_at: int = 0
    mark: bytes = b""


LOG = Kind("a log of this program", (START.encode(),))


def refuse_foreign(path: Path, kind: Kind) -> None:
    """Raises ``Refused`` where something is at the output's place that is no output of this kind.

    A file of a former run is replaced, and an empty one, in which nothing is lost.
    """
    try:
        mode = path.stat().st_mode
        if S_ISDIR(mode):
            raise Refused(MISUSED, f"{path} is a folder. Give the output the name of a file.")
        # What is neither, such as a device, is never opened: some never end.
        if S_ISREG(mode) and _begins_as(path, kind):
            return
    except (FileNotFoundError, NotADirectoryError):
        return
    except OSError as error:
        raise unseen(error) from None
    text = f"{path} is there and is not {kind.words}: nothing was written."
    raise Refused(MISUSED, f"{text} Give the output another name, or remove that file first.")


def _begins_as(path: Path, kind: Kind) -> bool:
    with path.open("rb") as file:
        found = file.read(max(kind.mark_at + len(kind.mark), *map(len, kind.beginnings)))
    is_marked = found.startswith(kind.mark, kind.mark_at)
    return not found or (found.startswith(kind.beginnings) and is_marked)


def not_written(path: Path, error: OSError) -> str:
    """For people: the file that they asked for, never the one beside it, and the system's reason.

    >>> not_written(Path("/none/log.csv"), FileNotFoundError(2, "No such file or directory"))
    '/none/log.csv was not written: there is no folder /none (No such file or directory)'
    """
    reason = error.strerror or str(error)
    # A link may lead into a folder that is not there.
    folder = Path(os.path.realpath(path)).parent if path.parent.is_dir() else path.parent
    if isinstance(error, FileNotFoundError) and not folder.is_dir():
        reason = f"there is no folder {folder} ({reason})"
    return f"{path} was not written: {reason}"
