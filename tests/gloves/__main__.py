"""``python3 -m tests.gloves``: what gloved fingers type on the real keys, and what the gates see.

Taps scatter about the middle of each key (normal, the same in both directions). Nobody looks at
what stands in the field, so this counts what the gates alone catch: what a person notices in the
drawing, beside the last value or on the page with all answers is not in it.
"""

import sys

from tests.ready import run_ready

if __name__ == "__main__":
    sys.exit(run_ready("tests.gloves.figures", sys.argv[1:]))
