"""Survivors that somebody has looked at, each with the reason why no test could notice it.

One file a module in ``tests/mutants/explained``, ``recipe.ways.json``: a list of reasons, each
``{"why": sentence, "survivors": [name of the change, ...]}``.
"""

import json
from pathlib import Path
from typing import Any

FOLDER = Path(__file__).resolve().parent / "explained"


def explained(module: str) -> set[str]:
    """Names of the changes that the file of a module (``recipe.ways``) explains.

    Raises ValueError for a file that explains nothing with a reason, or one change twice.
    """
    file = FOLDER / f"{module}.json"
    if not file.exists():
        return set()
    return _read(json.loads(file.read_text(encoding="utf-8")), file.name)


def _read(groups: list[dict[str, Any]], file: str) -> set[str]:
    names: list[str] = []
    for group in groups:
        if not group["why"].strip() or not group["survivors"]:
            raise ValueError(f"{file}: a reason without a sentence or without a survivor")
        names += group["survivors"]
    twice = {name for name in names if names.count(name) > 1}
    if twice:
        raise ValueError(f"{file}: explained twice: {sorted(twice)}")
    return set(names)
