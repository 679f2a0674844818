"""``python3 -m tests``: sets everything up, then runs every check. A path or ``-k`` runs a part.

Nothing newer than Python 3.0 may stand in this file: an old Python has to read it far enough
to say that it is too old.
"""

import sys

OLDEST_PYTHON = (3, 11)

if sys.version_info < OLDEST_PYTHON:
    sys.stderr.write(
        "Python %d.%d is too old: this needs Python %d.%d or newer.\n"
        "Way on: install a newer Python and start again with it, for example "
        "python%d.%d -m tests\n" % (tuple(sys.version_info[:2]) + OLDEST_PYTHON + OLDEST_PYTHON)
    )
    sys.exit(1)

from tests.run import main  # noqa: E402 (an old Python could not read that module)

if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
