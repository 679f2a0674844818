"""``python -m tests.bench.journal``: logs that grow, read, folded and asked; fifty phones merged.

"trend" is the whole question about one machine with the log in it, so it reads and folds as well;
"plan" is a recipe worked out in the same process while the log is held, the median of some.
Times are this process's own, which a busy machine lengthens less than the clock on the wall.
``--million`` adds a log of that many entries, for some minutes and gigabytes more.
Every entry is a check, a top-up or a note of one of six machines, with nothing shown beside it.
"""

import argparse
import json
import resource
import statistics
import time
from collections.abc import Callable, Sequence
from math import log
from typing import Any

from pycore.desk import handle
from pycore.desk.collector import collector_paused
from pycore.desk.contract.checked import checked
from pycore.desk.trend.messages import TrendBody
from pycore.desk.trend.trend import trend
from pycore.journal.file import OFFICE
from pycore.journal.merge import merged
from pycore.journal.state import folded
from pycore.journal.union import file_of, gathered, read_lines
from tests.phones import MORNING_S, Phone, check, id_of, moment, pour, setup

SIZES = (1_000, 20_000, 100_000)
MILLION = 1_000_000
MACHINES = 6
PHONES = 50
MERGED_ENTRIES = 20_000
EVERY_S = 600
NOTE_EVERY = 10
PLANS = 9
PARTS = ("read", "fold", "trend", "plan")


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
    # As the door does it.
    with collector_paused():
        started_s = time.process_time()
        result = work()
        return time.process_time() - started_s, result


def _plan_s() -> float:
    text = json.dumps(
        {"v": 1, "id": "b", "op": "plan_check", "body": {"machine": setup(), **check()}}
    )
    took_s = []
    for _ in range(PLANS):
        one_s, reply = _took_s(lambda: handle(text))
        took_s.append(one_s)
    if not json.loads(reply)["ok"]:
        raise ValueError(reply)
    return statistics.median(took_s)


def _row(size: int) -> list[float]:
    lines = log_of("bench", size).lines
    read_s, parts = _took_s(lambda: read_lines(lines, checked))
    union = gathered(*parts)
    fold_s, now = _took_s(lambda: folded(union, MORNING_S + size * EVERY_S))
    if len(now.machines) != MACHINES or now.counts["as_written"] != size:
        raise ValueError(now.counts)
    asked = TrendBody(lines, moment(size * EVERY_S), id_of("machine 1"))
    trend_s, told = _took_s(lambda: trend(asked))
    if not told.rows:
        raise ValueError(told)
    times_s = [read_s, fold_s, trend_s, _plan_s()]
    per_entry = f"{1e6 * (read_s + fold_s) / size:>14.1f}"
    print(f"{size:>9,}{''.join(f'{time_s:>12.3f}' for time_s in times_s)}{per_entry}", flush=True)
    return times_s


def _exponent(sizes: Sequence[int], times_s: Sequence[float]) -> float:
    """Slope of the logarithms, by least squares: 1 grows with the size, 2 with its square."""
    xs, ys = [log(size) for size in sizes], [log(time_s) for time_s in times_s]
    middle_x, middle_y = sum(xs) / len(xs), sum(ys) / len(ys)
    above = sum((x - middle_x) * (y - middle_y) for x, y in zip(xs, ys, strict=True))
    return above / sum((x - middle_x) ** 2 for x in xs)


def main() -> None:
    """Prints the figures, and how they grow."""
    parser = argparse.ArgumentParser(prog="python3 -m tests.bench journal")
    parser.add_argument("--million", action="store_true", help="a log of a million entries too")
    sizes = [*SIZES, MILLION] if parser.parse_args().million else list(SIZES)
    files = [
        (f"phone {place}", log_of(f"phone {place}", MERGED_ENTRIES // PHONES).export())
        for place in range(PHONES)
    ]
    merge_s, done = _took_s(lambda: merged(files, checked, OFFICE, MORNING_S))
    write_s, text = _took_s(lambda: file_of(done.union))
    peak_mb = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
    print(f"merge of {len(done.union.entries):,} entries from {PHONES} phones: {merge_s:.2f} s")
    print(f"writing {len(text) / 1e6:.1f} MB: {write_s:.2f} s; peak memory {peak_mb:.0f} MB")
    titles = "".join(f"{f'{name} s':>12}" for name in PARTS)
    print(f"\n{'entries':>9}{titles}{'µs read+fold':>14}")
    rows = [_row(size) for size in sizes]
    exponents = (_exponent(sizes, times_s) for times_s in zip(*rows, strict=True))
    grown = ", ".join(f"{name} {x:.2f}" for name, x in zip(PARTS, exponents, strict=True))
    print(f"growth exponent: {grown}")


if __name__ == "__main__":
    main()
