"""``python3 -m tests.screens``: pictures of every screen at 360 x 640 and contact sheets of them.

For each language a phone is set up, checks, pours and reads again; at every place one picture is
taken in each theme, and the pages that differ also in the compact mode. All lie below
``tests/.output/screens``, one contact sheet for each theme and language beside them. Printed are
the numbers that may part from their unit, words that are torn, what is smaller than a glove, text
under 7:1, and what axe finds in either theme.
"""

import sys

from tests.ready import run_ready

if __name__ == "__main__":
    sys.exit(run_ready("tests.screens.take", sys.argv[1:]))
