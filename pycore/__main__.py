"""``python -m pycore``: one request a line in, one reply a line out."""

from __future__ import annotations

import sys

USAGE = """usage: python -m pycore < requests

Reads one JSON request a line and writes one JSON reply a line, for example:
  {"v": 1, "id": "a", "op": "describe", "body": {}}
Exit status 0, also when a reply is an error; 2 when the command is misused."""


def main(arguments: list[str]) -> int:
    """Answers standard input line by line; empty lines are passed over."""
    if arguments in (["-h"], ["--help"]):
        print(USAGE)
        return 0
    if arguments:
        print(USAGE, file=sys.stderr)
        return 2
    from pycore.desk import handle

    for stream in (sys.stdin, sys.stdout):
        stream.reconfigure(encoding="utf-8", errors="surrogateescape")  # type: ignore[union-attr]
    for line in sys.stdin:
        if line.strip():
            print(handle(line), flush=True)
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
