"""``python3 -m tests.fuzz --minutes 10``: odd requests and files, until the time is over.

Each defect is printed, and kept in ``tests/fuzz/corpus``, which every run of the tests replays.
"""

import sys

from tests.ready import run_with_tools

if __name__ == "__main__":
    sys.exit(run_with_tools("tests.fuzz.loop", sys.argv[1:]))
