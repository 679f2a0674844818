"""``python3 -m web``: sets everything up, builds the app and serves it on this computer.

Nothing newer than Python 3.0 may stand in this file: an old Python has to read it far enough
to say that it is too old.
"""

import sys

OLDEST_PYTHON = (3, 11)

if sys.version_info < OLDEST_PYTHON:
    numbers = tuple(sys.version_info[:2]) + OLDEST_PYTHON
    sys.stderr.write(
        "Python {0}.{1} is too old: this needs Python {2}.{3} or newer.\n"
        "Way on: install a newer Python and start again with it, for example "
        "python{2}.{3} -m web\n".format(*numbers)
    )
    sys.exit(1)

if not __package__:
    sys.stderr.write(
        "This was started by its path, and then Python does not find the rest of it.\n"
        "Way on: go into the project's folder and type python3 -m web\n"
    )
    sys.exit(1)

from web.build.command import main  # noqa: E402 (an old Python could not read that module)

if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
