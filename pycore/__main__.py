"""``python3 -m pycore``: one request a line in, one reply a line out; and work with whole files."""

from __future__ import annotations

import os
import sys
from collections.abc import Callable
from pathlib import Path

USAGE = """usage: python3 -m pycore < requests
       python3 -m pycore sheet REQUEST [options], more with: python3 -m pycore sheet --help
       python3 -m pycore merge FILE … -o OUT    (python3 -m pycore merge --help)
       python3 -m pycore table LOG -o CSV       (python3 -m pycore table --help)
       python3 -m pycore report LOG -o HTML     (python3 -m pycore report --help)
       python3 -m pycore tombstone LOG ID … -o OUT --reason TEXT
                                                (python3 -m pycore tombstone --help)

Reads one JSON request a line and writes one JSON reply a line, for example:
  {"v": 1, "id": "a", "op": "describe", "body": {}}
Exit status 0, also when a reply is an error; 2 when the command is misused; 130 after Ctrl+C."""

# What a shell itself gives for a command that Ctrl+C has ended: 128 and the number of the signal.
_STOPPED = 130
# Somebody who sits at a terminal sees nothing else until the first line is typed.
_WAITING = "Waiting for requests, one JSON object a line. Ctrl+D ends, --help tells more."


def _desk() -> Callable[[str], str] | None:
    """The door, or None when the packages that pycore stands on are not installed.

    From a checkout the project's own .venv has them, so its Python takes over.
    """
    try:
        from pycore.desk import handle
    except ModuleNotFoundError as missing:
        if missing.name is None or missing.name.startswith("pycore"):
            raise
        prefix = Path(__file__).resolve().parent.parent / ".venv"
        for python in (prefix / "bin" / "python", prefix / "Scripts" / "python.exe"):
            if python.exists() and Path(sys.prefix) != prefix:
                os.execv(python, [str(python), "-m", "pycore", *sys.argv[1:]])
        return None
    return handle


def _merge(arguments: list[str]) -> int:
    from pycore.office.merging import merge_command

    return merge_command(arguments)


def _table(arguments: list[str]) -> int:
    from pycore.office.tabling import table_command

    return table_command(arguments)


def _report(arguments: list[str]) -> int:
    from pycore.office.reporting import report_command

    return report_command(arguments)


def _tombstone(arguments: list[str]) -> int:
    from pycore.office.removing import tombstone_command

    return tombstone_command(arguments)


def _sheet(arguments: list[str]) -> int:
    from pycore.office.sheet_command import USAGE as SHEET_USAGE
    from pycore.office.sheet_command import sheet_command

    if arguments in (["-h"], ["--help"]):
        print(SHEET_USAGE)
        return 0
    status, said = sheet_command(arguments)
    print(said, file=sys.stderr if status else sys.stdout)
    return status


# Imported when they are asked for: most runs only answer requests.
_COMMANDS = {
    "merge": _merge,
    "report": _report,
    "sheet": _sheet,
    "table": _table,
    "tombstone": _tombstone,
}


def main(arguments: list[str]) -> int:
    """The exit status of a call; one that is stopped by Ctrl+C says so and no more."""
    try:
        return _answered(arguments)
    except KeyboardInterrupt:
        print("\nStopped.", file=sys.stderr)
        return _STOPPED


def _answered(arguments: list[str]) -> int:
    """Answers standard input line by line; empty lines are passed over."""
    if arguments in (["-h"], ["--help"]):
        print(USAGE)
        return 0
    if arguments and arguments[0] not in _COMMANDS:
        print(f"{arguments[0]}: there is no such command.\n\n{USAGE}", file=sys.stderr)
        return 2
    handle = _desk()
    if handle is None:
        print(
            "pycore needs packages that are not installed here. "
            "Run 'python3 -m web build' once, or 'pip install .'.",
            file=sys.stderr,
        )
        return 2
    for stream in (sys.stdin, sys.stdout, sys.stderr):
        stream.reconfigure(encoding="utf-8", errors="surrogateescape")  # type: ignore[union-attr]
    if arguments:
        from pycore.desk.collector import collector_paused

        with collector_paused():
            return _COMMANDS[arguments[0]](arguments[1:])
    if sys.stdin.isatty():
        print(_WAITING, file=sys.stderr)
    try:
        for line in sys.stdin:
            if line.strip():
                print(handle(line), flush=True)
    except BrokenPipeError:
        # Whoever read has read enough; Python must not complain once more when it ends.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
