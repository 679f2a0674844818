"""``python -m tests.bench.questions``: how long the shipped bundle works at questions with a log.

The page waits for an answer by the length of its question (``web/src/core/connection.ts``); this is
where that figure comes from. Short lines cost most for each character.
"""

import json
from collections.abc import Callable
from pathlib import Path
from typing import Any

from tests.bench.journal import log_of
from tests.bench.logs import rows_of
from tests.bench.timed import calculate
from tests.phones import MORNING_S, NOW, Phone, id_of, moment
from tests.published.checks import Shipped
from web.build.paths import DIST

SIZES = (300, 3_000)


def _notes(entries: int) -> Phone:
    """The shortest lines that there are."""
    phone = Phone("notes")
    for place in range(entries):
        phone.save("note", {"text": "Ok."}, 60 * place, machine=id_of(f"machine {place % 6}"))
    return phone


def _bodies(lines: list[str], file: str) -> dict[str, dict[str, Any]]:
    # Of one machine alone, as the page sends them.
    machine = next(json.loads(line)["machine"] for line in lines)
    return {
        "fold_log": {"lines": lines, "now": NOW},
        "handover": {"lines": lines, "now": NOW, "since": moment(-MORNING_S % 60)},
        "trend": {"lines": lines, "now": NOW, "machine": machine},
        "look_back": {"lines": lines, "now": NOW, "machine": machine},
        "write_export": {"lines": lines, "now": NOW, "build": "bench"},
        "write_csv": {"lines": lines, "now": NOW},
        "read_export": {"text": file, "lines": [], "now": NOW},
    }


def _rows(answer: Callable[[str], Any], where: str) -> None:
    for size in SIZES:
        fat = Phone("bench")
        fat.lines = [row["text"] for row in rows_of(size)]
        kinds = {"notes": _notes(size), "mixed": log_of("bench", size), "as stored": fat}
        for kind, phone in kinds.items():
            for op, body in _bodies(phone.lines, phone.export()).items():
                text = json.dumps({"v": 1, "id": "b", "op": op, "body": body})
                (took_ms,) = answer(json.dumps([text]))
                per_1000_ms = 1000 * took_ms / len(text)
                name = f"{where} {op}, {kind}"
                print(f"{name:<34}{size:>8,}{len(text):>12,}{took_ms:>10.0f}{per_1000_ms:>10.2f}")


def main() -> None:
    """Prints the figures."""
    print(f"{'question':<34}{'lines':>8}{'characters':>12}{'ms':>10}{'ms / 1000':>10}")
    _rows(lambda text: json.loads(calculate(text)), "native")
    if not DIST.exists():
        print("shipped bundle: not built")
        return
    engine = Shipped(Path(__file__).with_name("timed.py"))
    _rows(engine.answer, "shipped")
    engine.close()


if __name__ == "__main__":
    main()
