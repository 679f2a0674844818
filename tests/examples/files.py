"""Where the examples lie: one file a request with its reply, in a folder of its operation."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

from tests.contract import OPERATIONS, room_of
from web.build.paths import SHARED, files_below

EXAMPLES = SHARED / "examples"

# No file can show the first two: one needs a megabyte, the other a defect in pycore. The seals are
# codes of a line in quarantine, which never is a reply's error: read_export_damaged shows one.
WITHOUT_EXAMPLE = {"too_large", "internal", "seal_broken", "seal_missing"}


def path_of(name: str, request: Any) -> Path:
    """Where an example lies; what no operation is asked for belongs to the contract itself."""
    op = request["op"] if isinstance(request, dict) else None
    folder = f"{room_of(op)}/{op}" if op in OPERATIONS else "contract"
    return EXAMPLES / folder / f"{name}.json"


def examples() -> dict[str, dict[str, Any]]:
    """Request and reply of every example by its name."""
    return {
        path.stem: json.loads(path.read_text(encoding="utf-8"))
        for path in files_below(EXAMPLES, ".json")
    }


def request_text(request: Any) -> str:
    """The text that the desk is handed for an example's request."""
    return request if isinstance(request, str) else json.dumps(request, ensure_ascii=False)
