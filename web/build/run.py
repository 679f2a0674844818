"""Runs a tool, keeps all it said in a log file, and turns its failure into a sentence."""

import os
import re
import subprocess
from collections.abc import Mapping, Sequence
from pathlib import Path

from web.build.paths import ROOT, STATE
from web.build.trouble import Trouble, trouble_from_output

LOGS = STATE / "logs"

# 1980-01-01, the oldest date that a zip can hold: no build depends on the day it was made.
SOURCE_DATE_EPOCH = "315532800"


def log_name(what: str) -> str:
    """File name of the log of one attempt.

    >>> log_name("Downloading the phone's packages")
    'downloading-the-phone-s-packages.txt'
    """
    return re.sub(r"[^a-z0-9]+", "-", what.lower()) + ".txt"


def run_tool(
    what: str,
    command: Sequence[str | Path],
    *,
    cwd: Path = ROOT,
    extra_environment: Mapping[str, str] | None = None,
) -> str:
    """Standard output and error of ``command``. ``what`` names the attempt for the error.

    Raises Trouble when the tool cannot be started or ends with a status other than 0.
    """
    LOGS.mkdir(parents=True, exist_ok=True)
    log = LOGS / log_name(what)
    environment = {
        **os.environ,
        "SOURCE_DATE_EPOCH": SOURCE_DATE_EPOCH,
        "PYTHONHASHSEED": "0",
        "PIP_DISABLE_PIP_VERSION_CHECK": "1",
        "PIP_NO_INPUT": "1",
        "PIP_RETRIES": "2",
        **(extra_environment or {}),
    }
    try:
        done = subprocess.run(
            [str(part) for part in command],
            cwd=cwd,
            env=environment,
            stdin=subprocess.DEVNULL,
            stdout=subprocess.PIPE,
            stderr=subprocess.STDOUT,
            check=False,
        )
    except FileNotFoundError as error:
        raise Trouble(
            f"{what} failed: {Path(str(command[0])).name} is missing.",
            "Delete the folder .venv in the project and start again.",
        ) from error
    output = done.stdout.decode("utf-8", "replace")
    log.write_text(output, encoding="utf-8")
    if done.returncode != 0:
        raise trouble_from_output(what, output, log)
    return output
