"""``python3 -m tests.mutants [module ...]``: which small defects in pycore are not noticed."""

import sys

from tests.ready import run_with_tools

if __name__ == "__main__":
    sys.exit(run_with_tools("tests.mutants.rooms", sys.argv[1:]))
