"""``python -m tests.demo``: writes shared/demo/year.txt, a year of the invented shop."""

from __future__ import annotations

import json

from pycore.journal.file import write_file
from tests.demo.year import Year
from web.build.paths import SHARED

SHOP = SHARED / "demo" / "shop.json"
TARGET = SHARED / "demo" / "year.txt"


def text_of_year() -> str:
    """The file's text; the same seed writes the same text."""
    writers = Year(json.loads(SHOP.read_text(encoding="utf-8"))).run()
    lines = [line for writer in writers for line in writer.lines]
    return write_file(lines, [writer.head() for writer in writers], "", "example, invented")


if __name__ == "__main__":
    text = text_of_year()
    TARGET.write_text(text, encoding="utf-8", newline="")
    print(f"{TARGET.name}: {text.count(chr(10))} lines, {len(text.encode()):,} bytes")
