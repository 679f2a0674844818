"""What went wrong, in one sentence, and a way on: what a person sees in place of a traceback."""

import errno
from pathlib import Path

NETWORK_SIGNS = (
    "ENOTFOUND", "EAI_AGAIN", "ECONNREFUSED", "ECONNRESET", "ETIMEDOUT", "ENETUNREACH",
    "NewConnectionError", "Name or service not known", "Temporary failure in name resolution",
    "Max retries exceeded", "Read timed out", "ConnectTimeoutError", "ProxyError",
    "nodename nor servname", "getaddrinfo failed", "network request to",
    "(from versions: none)",
)  # fmt: skip
DISK_SIGNS = ("No space left on device", "ENOSPC", "not enough space on the disk")
PERMISSION_SIGNS = ("Permission denied", "EACCES", "EPERM", "EROFS", "Read-only file system")
HASH_SIGNS = ("DO NOT MATCH THE HASHES", "EINTEGRITY", "hash mismatch")
LOCK_SIGNS = ("npm ci` can only install", "Missing: ", "are not in sync")
ABSENT_SIGNS = ("No matching distribution", "E404", "ETARGET")


class Trouble(Exception):
    """Ends the command: ``sentence`` says what is wrong, ``way_on`` what a person can do."""

    def __init__(self, sentence: str, way_on: str) -> None:
        super().__init__(sentence)
        self.sentence = sentence
        self.way_on = way_on


def trouble_from_os_error(error: OSError) -> Trouble:
    """The sentence for an operating-system error in one of our own file operations."""
    place = f" ({error.filename})" if error.filename else ""
    if error.errno in (errno.ENOSPC, errno.EDQUOT):
        return disk_full(place)
    if error.errno in (errno.EACCES, errno.EPERM, errno.EROFS):
        return no_permission(place)
    return Trouble(
        f"The computer refused a file operation: {error.strerror or error}{place}.",
        "Put that right and start again; what is done already is kept.",
    )


def disk_full(place: str = "") -> Trouble:
    """No room left. ``place`` is appended to the sentence."""
    return Trouble(
        f"The disk is full{place}.",
        "Free about 700 MB and start again; what is done already is kept.",
    )


def no_permission(place: str = "") -> Trouble:
    """No right to write. ``place`` is appended to the sentence."""
    return Trouble(
        f"This folder may not be written to{place}.",
        "Copy the project into a folder of your own and start there.",
    )


def trouble_from_output(what: str, output: str, log: Path) -> Trouble:
    """The sentence for a tool that failed, found from the words in its ``output``.

    ``what`` names the attempt ("Installing the npm packages"); ``log`` holds the whole output.
    """
    said = f"What it said is in {log}."
    if any(sign in output for sign in DISK_SIGNS):
        return disk_full()
    if any(sign in output for sign in HASH_SIGNS):
        return Trouble(
            f"{what} was refused: a downloaded file is not the one that the lock file names.",
            f"Do not go on with that file. Try another network. {said}",
        )
    if any(sign in output for sign in NETWORK_SIGNS):
        return Trouble(
            f"{what} needs the internet and could not reach the package registry.",
            f"Connect and start again; what is done already is kept. {said}",
        )
    if any(sign in output for sign in LOCK_SIGNS):
        return Trouble(
            f"{what} failed: package.json and its lock file do not agree.",
            f"Bring back both files from the repository and start again. {said}",
        )
    if any(sign in output for sign in ABSENT_SIGNS):
        return Trouble(
            f"{what} failed: the package registry does not offer a pinned package.",
            f"Look at which registry this computer uses, then start again. {said}",
        )
    if any(sign in output for sign in PERMISSION_SIGNS):
        return no_permission()
    return Trouble(f"{what} failed.", said)
