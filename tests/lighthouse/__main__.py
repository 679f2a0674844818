"""``python3 -m tests.lighthouse``: Lighthouse's scores for the main screens, and what it finds.

Lighthouse 12.2.3 is no part of the build: with 146 packages it has a lock file of its own here and
is installed by this command alone. The reports lie below ``tests/.output/lighthouse``. Ends with 1
where a score is below 100.
"""

import sys

from tests.ready import run_ready

if __name__ == "__main__":
    sys.exit(run_ready("tests.lighthouse.score", sys.argv[1:]))
