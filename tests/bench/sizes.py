"""``python -m tests.bench.sizes NODE…``: bytes of ``web/dist`` by kind of file."""

import gzip
import subprocess
import sys
from collections import defaultdict
from collections.abc import Sequence
from pathlib import Path

from web.build.paths import DIST, files_below

BROTLI = Path(__file__).with_name("brotli.mjs")
HARDEST = 9
KINDS = {
    ".wasm": "Python as WebAssembly",
    ".bin": "Python's memory image",
    ".zip": "Python modules",
    ".mjs": "Pyodide's JavaScript",
    ".js": "page, worker, service worker",
    ".css": "styles",
    ".html": "page, worker, service worker",
    ".json": "sentences and licences",
}
OTHER = "icons and the rest"


def sizes(files: Sequence[Path], node: Sequence[str]) -> dict[str, tuple[int, int, int]]:
    """Kind of file -> bytes raw, after gzip -9 and after brotli at its highest quality."""
    done = subprocess.run(
        [*node, str(BROTLI), *map(str, files)], capture_output=True, text=True, check=True
    )
    totals: dict[str, list[int]] = defaultdict(lambda: [0, 0, 0])
    for path, brotli_bytes in zip(files, map(int, done.stdout.split()), strict=True):
        content = path.read_bytes()
        gzip_bytes = len(gzip.compress(content, HARDEST, mtime=0))
        of_kind = totals[KINDS.get(path.suffix, OTHER)]
        for i, size_bytes in enumerate((len(content), gzip_bytes, brotli_bytes)):
            of_kind[i] += size_bytes
    return {kind: (raw, zipped, brotli) for kind, (raw, zipped, brotli) in totals.items()}


def main(node: Sequence[str]) -> None:
    """Prints one line per kind, the largest first, and the sum."""
    found = sizes([path for path in files_below(DIST) if path.name != "_headers"], node)
    total = tuple(sum(column) for column in zip(*found.values(), strict=True))
    print(f"\n{'bytes of web/dist':<30}{'raw':>12}{'gzip -9':>12}{'brotli':>12}")
    rows = sorted(found.items(), key=lambda row: -row[1][0])
    for kind, figures in [*rows, ("all", total)]:
        print(f"{kind:<30}" + "".join(f"{figure:>12,}" for figure in figures))


if __name__ == "__main__":
    main(sys.argv[1:])
