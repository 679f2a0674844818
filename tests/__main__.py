"""``python3 -m tests``: sets everything up, then runs every check. A path or ``-k`` runs a part.

Nothing newer than Python 3.0 may stand in this file: an old Python has to read it far enough
to say that it is too old.
"""

import sys

OLDEST_PYTHON = (3, 11)

if sys.version_info < OLDEST_PYTHON:
    sys.stderr.write(
        "Python " + sys.version.split()[0] + " is too old: this needs Python 3.11 or newer.\n"
        "Way on: install a newer Python and start again with it, for example "
        "python3.11 -m tests\n"
    )
    sys.exit(1)

from tests.run import main  # noqa: E402 (an old Python could not read that module)

if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
