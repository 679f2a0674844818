"""Tries requests until the time is over, and puts each defect as a readable file into a corpus."""

import argparse
import hashlib
import sys
import time
from collections import Counter
from pathlib import Path

from hypothesis import HealthCheck, given, seed, settings

from tests.fuzz.slips import files, requests
from tests.fuzz.verdict import Wrong, judge

# Replayed by test_fuzz.py in every run.
CORPUS = Path(__file__).resolve().parent / "corpus"
# Requests from one seed of Hypothesis.
ROUND = 400


class Run:
    """One run: what was tried, what was answered, and what was wrong, by its kind."""

    def __init__(self, minutes: float) -> None:
        self.ends_s = time.monotonic() + 60 * minutes
        self.tried, self.rounds, self.slowest_s = 0, 0, 0.0
        self.answers: Counter[str] = Counter()
        self.wrong: dict[str, str] = {}

    def is_over(self) -> bool:
        return time.monotonic() > self.ends_s

    def one(self, text: str) -> None:
        """Raises Wrong for a defect that this run has not met before."""
        if self.is_over():
            return
        started_s = time.process_time()
        self.tried += 1
        try:
            reply = judge(text)
        except Wrong as wrong:
            if wrong.kind not in self.wrong:
                raise
            return
        self.slowest_s = max(self.slowest_s, time.process_time() - started_s)
        self.answers["answered" if reply["ok"] else reply["error"]["code"]] += 1

    def round(self, number: int) -> None:
        """Some hundred requests; a defect ends it with the smallest request that shows it."""

        @seed(number)
        @settings(
            max_examples=ROUND,
            deadline=None,
            database=None,
            suppress_health_check=list(HealthCheck),
            report_multiple_bugs=False,
        )
        @given(requests() if number % 4 else files())
        def try_one(text: str) -> None:
            self.one(text)

        self.rounds += 1
        try:
            try_one()
        except Wrong as wrong:
            self.wrong[wrong.kind] = wrong.text
            print(f"WRONG {wrong.kind}\n  {_kept(wrong)}", flush=True)


def _kept(wrong: Wrong) -> Path:
    CORPUS.mkdir(exist_ok=True)
    path = CORPUS / f"{hashlib.sha256(wrong.kind.encode()).hexdigest()[:12]}.txt"
    path.write_text(wrong.text, encoding="utf-8", errors="surrogatepass", newline="")
    return path


def fuzz(minutes: float, start: int) -> Run:
    """Rounds with the seeds from ``start`` on, until the minutes are over."""
    run = Run(minutes)
    number = start
    while not run.is_over():
        run.round(number)
        number += 1
    return run


def main() -> int:
    """Exit status 1 when anything was wrong."""
    parser = argparse.ArgumentParser(prog="python3 -m tests.fuzz")
    parser.add_argument("--minutes", type=float, default=10.0, help="default %(default)s")
    parser.add_argument("--seed", type=int, default=int(time.time()), help="of the first round")
    wanted = parser.parse_args()
    run = fuzz(wanted.minutes, wanted.seed)
    print(f"{run.tried} requests in {run.rounds} rounds from seed {wanted.seed}")
    said = ", ".join(f"{code} {count}" for code, count in run.answers.most_common())
    print(f"slowest {run.slowest_s:.2f} s; {said}")
    print(f"{len(run.wrong)} defects")
    return 1 if run.wrong else 0


if __name__ == "__main__":
    sys.exit(main())
