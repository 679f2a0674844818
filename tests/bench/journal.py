"""``python -m tests.bench.journal``: reading and folding logs that grow, and merging fifty phones.

Times are this process's own, which a busy machine lengthens less than the clock on the wall.
Every entry is a check, a top-up or a note of one of six machines, with nothing shown beside it.
"""

import resource
import time
from collections.abc import Callable
from math import log
from typing import Any

from pycore.desk.checked import checked
from pycore.journal.file import OFFICE
from pycore.journal.merge import merged
from pycore.journal.state import folded
from pycore.journal.union import file_of, gathered, read_lines
from tests.phones import MORNING_S, Phone, check, id_of, pour, setup

SIZES = (1_000, 20_000, 100_000)
MACHINES = 6
PHONES = 50
MERGED_ENTRIES = 20_000
EVERY_S = 600
NOTE_EVERY = 10


def log_of(title: str, entries: int) -> Phone:
    """A phone with so many entries, the first ones set up the machines."""
    phone = Phone(title)
    for place in range(entries):
        machine = id_of(f"machine {place % MACHINES}")
        after_s = place * EVERY_S
        if place < MACHINES:
            phone.save("machine_set", {"machine": setup(f"Machine {place}")}, after_s, machine)
        elif place % NOTE_EVERY == 0:
            phone.save("note", {"text": "Skimmed."}, after_s, machine)
        elif place % 2:
            phone.save("check", check(str(300 + place % 100)), after_s, machine)
        else:
            phone.save("pour", pour(), after_s, machine)
    return phone


def _took_s(work: Callable[[], Any]) -> tuple[float, Any]:
    started_s = time.process_time()
    result = work()
    return time.process_time() - started_s, result


def _row(size: int) -> tuple[float, float]:
    lines = log_of("bench", size).lines
    read_s, parts = _took_s(lambda: read_lines(lines, checked))
    union = gathered(*parts)
    fold_s, now = _took_s(lambda: folded(union, MORNING_S + size * EVERY_S))
    if len(now.machines) != MACHINES or now.counts["as_written"] != size:
        raise ValueError(now.counts)
    print(f"{size:>9,}{read_s:>12.3f}{fold_s:>12.3f}{1e6 * (read_s + fold_s) / size:>14.1f}")
    return read_s, fold_s


def _exponent(times_s: list[float]) -> float:
    """Slope of the logarithms, by least squares: 1 grows with the size, 2 with its square."""
    xs, ys = [log(size) for size in SIZES], [log(time_s) for time_s in times_s]
    middle_x, middle_y = sum(xs) / len(xs), sum(ys) / len(ys)
    above = sum((x - middle_x) * (y - middle_y) for x, y in zip(xs, ys, strict=True))
    return above / sum((x - middle_x) ** 2 for x in xs)


def main() -> None:
    """Prints the figures, and how they grow."""
    files = [
        (f"phone {place}", log_of(f"phone {place}", MERGED_ENTRIES // PHONES).export())
        for place in range(PHONES)
    ]
    merge_s, done = _took_s(lambda: merged(files, checked, OFFICE, MORNING_S))
    write_s, text = _took_s(lambda: file_of(done.union))
    peak_mb = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
    print(f"merge of {len(done.union.entries):,} entries from {PHONES} phones: {merge_s:.2f} s")
    print(f"writing {len(text) / 1e6:.1f} MB: {write_s:.2f} s; peak memory {peak_mb:.0f} MB")
    print(f"\n{'entries':>9}{'read s':>12}{'fold s':>12}{'µs per entry':>14}")
    rows = [_row(size) for size in SIZES]
    read, fold = (_exponent([row[part] for row in rows]) for part in (0, 1))
    print(f"growth exponent: read {read:.2f}, fold {fold:.2f}")


if __name__ == "__main__":
    main()
