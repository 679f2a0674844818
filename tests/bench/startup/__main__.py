"""``python3 -m tests.bench startup``: our start beside Pyodide as it comes, in turns in one run.

Cold: a new profile, from a server on this computer, so without the time of a network; instead the
bytes are counted as a good host sends them. Warm: a profile that was used before, a new browser
process, the server killed. Every time is from the start of navigation to Python's first answer.
The stock pages show nothing and check no hash, ours draws its screens and checks every file.
"""

import argparse
import random
import socket
import statistics
import tempfile
import time
from contextlib import ExitStack
from pathlib import Path

from playwright.sync_api import Playwright, expect, sync_playwright

from tests.bench.sizes import sizes
from tests.bench.startup import launch
from tests.bench.startup.alone import memory_alone_mb
from tests.bench.startup.launch import Site, Start
from tests.bench.startup.stock import make_stock
from tests.bench.startup.used import PRESS_AT_ONCE, TYPED_AT, make_used
from web.build.paths import DIST, files_below

RATES = (1, 4, 6)
COLD_RATES = (1,)
# A check with its pours takes longer. Only then comes the exercise (web/src/core/exercise.ts), and
# some seconds after it the browser writes down what it has compiled.
STAYS_S = 40.0
# The browser keeps compiled code of what was used; the first starts of a profile lack it.
WARM_UPS = 2
WITH_WHEEL, ALONE, OURS = "a stock + micropip", "b stock alone", "c Pailwright"
SLACK_MS = 30_000

Found = dict[tuple[str, float, str], list[Start]]


class Run:
    """The three sites with a port and a used profile each."""

    def __init__(self, playwright: Playwright, folder: Path) -> None:
        self._playwright, self._folder = playwright, folder
        self.sites = [
            Site(WITH_WHEEL, folder / "with wheel"),
            Site(ALONE, folder / "alone"),
            Site(OURS, DIST),
        ]
        for site in self.sites[:2]:
            make_stock(site.folder, with_wheel=site.name == WITH_WHEEL)
        self._ports = {site.name: _free_port() for site in self.sites}
        self.place = ""
        self.found: Found = {}

    def _profile(self, site: Site) -> Path:
        return self._folder / f"profile {site.name[0]}"

    def cold(self, repeats: int, rates: tuple[float, ...]) -> None:
        """First visits, each with a new profile."""
        with ExitStack() as stack:
            for site in self.sites:
                stack.enter_context(launch.served(site.folder, self._ports[site.name]))
            for rate, turn in [(rate, turn) for rate in rates for turn in range(repeats)]:
                for site in _in_turn(self.sites):
                    profile = self._folder / f"cold {site.name[0]} {rate} {turn}"
                    self._start(site, profile, rate, "cold")

    def prepare(self) -> None:
        """Used profiles: everything stored, our app with a machine and a check begun."""
        for site in self.sites:
            profile, port = self._profile(site), self._ports[site.name]
            with (
                launch.served(site.folder, port) as address,
                launch.browser(self._playwright, profile) as context,
            ):
                page = context.pages[0]
                page.goto(address)
                launch.asked(page, launch.TIMES, launch.FIRST_ANSWER_MARK)
                launch.asked(page, launch.STORED)
                if site.name == OURS:
                    self.place = make_used(page)
            for turn in range(WARM_UPS):
                self._start(site, profile, 1, "warm-up", 0 if turn else STAYS_S)

    def warm(self, repeats: int, rates: tuple[float, ...]) -> None:
        """Starts without a server."""
        for rate, _ in [(rate, turn) for rate in rates for turn in range(repeats)]:
            for site in _in_turn(self.sites):
                self._start(site, self._profile(site), rate, "warm")

    def _start(self, site: Site, profile: Path, rate: float, kind: str, stays_s: float = 0) -> None:
        where = launch.address(self._ports[site.name])
        with launch.settled(profile) as tab:
            one = launch.start(tab, where, profile, rate)
            time.sleep(stays_s)
        self.found.setdefault((kind, rate, site.name), []).append(one)

    def keypad(self, repeats: int, rates: tuple[float, ...]) -> dict[float, list[float]]:
        """Milliseconds to a pressed key's digit, straight to the one screen, without a server."""
        site = self.sites[-1]
        profile = self._profile(site)
        where = launch.address(self._ports[site.name]) + self.place
        took: dict[float, list[float]] = {rate: [] for rate in rates}
        for rate, _ in [(rate, turn) for rate in rates for turn in range(repeats)]:
            with launch.settled(profile) as tab:
                tab.run_first(PRESS_AT_ONCE)
                one = launch.start(tab, where, profile, rate)
                typed = launch.asked(tab, TYPED_AT)
            assert isinstance(typed, float | int)
            took[rate].append(float(typed))
            self.found.setdefault(("one screen", rate, site.name), []).append(one)
        return took

    def memory(self, repeats: int) -> dict[str, list[tuple[float, float]]]:
        """Megabytes of the tab, at the most and at the end, with no driver in it."""
        found: dict[str, list[tuple[float, float]]] = {site.name: [] for site in self.sites}
        for _ in range(repeats):
            for site in _in_turn(self.sites):
                where = launch.address(self._ports[site.name])
                found[site.name].append(memory_alone_mb(self._profile(site), where))
        return found

    def true_rates(self, rates: tuple[float, ...]) -> dict[float, float]:
        """What the slowing comes to."""
        profile = self._profile(self.sites[1])
        with launch.settled(profile) as tab:
            return {rate: launch.true_rate(tab, profile, rate) for rate in rates if rate != 1}


def _in_turn(sites: list[Site]) -> list[Site]:
    return random.sample(sites, len(sites))


def _free_port() -> int:
    with socket.socket() as free:
        free.bind(("localhost", 0))
        return int(free.getsockname()[1])


def _print_starts(found: Found) -> None:
    """A start is counted twice: from navigation, and from the worker's creation."""
    titles = ("median ms", "least", "most", "of a", "of b", "worker ms", "of a", "paint ms", "n")
    print(f"\n{'start to first answer':<36}" + "".join(f"{title:>11}" for title in titles))
    for (kind, rate, name), starts in found.items():
        if kind == "warm-up":
            continue
        stock = {
            other: found.get(("warm" if kind == "one screen" else kind, rate, other), [])
            for other in (WITH_WHEEL, ALONE)
        }
        answers = [one.answer_ms for one in starts]
        paints = [one.paint_ms for one in starts if one.paint_ms is not None]
        row = [
            *(f"{value:,.0f}" for value in (_answer_ms(starts), min(answers), max(answers))),
            *(_ratio(_answer_ms(starts), _answer_ms(beside)) for beside in stock.values()),
            f"{_worker_ms(starts):,.0f}",
            _ratio(_worker_ms(starts), _worker_ms(stock[WITH_WHEEL])),
            f"{statistics.median(paints):,.0f}" if paints else "",
            str(len(starts)),
        ]
        title = f"{kind}, {rate:g}x, {name}"
        print(f"{title:<36}" + "".join(f"{part:>11}" for part in row))


def _answer_ms(starts: list[Start]) -> float:
    return statistics.median(one.answer_ms for one in starts) if starts else 0


def _worker_ms(starts: list[Start]) -> float:
    return statistics.median(one.worker_ms for one in starts) if starts else 0


def _ratio(ours_ms: float, stock_ms: float) -> str:
    return f"{ours_ms / stock_ms:.3f}" if stock_ms else ""


def _print_memory(found: Found) -> None:
    print(f"\n{'memory of the tab, MB':<36}{'peak':>11}{'present':>11}")
    for (kind, rate, name), starts in found.items():
        if kind != "warm-up":
            peak = statistics.median(one.peak_mb for one in starts)
            present = statistics.median(one.present_mb for one in starts)
            print(f"{f'{kind}, {rate:g}x, {name}':<36}{peak:>11,.0f}{present:>11,.0f}")


def _print_memory_alone(found: dict[str, list[tuple[float, float]]]) -> None:
    print(f"\n{'memory without a driver, MB':<36}{'peak':>11}{'present':>11}")
    for name, values in found.items():
        peak, present = (statistics.median(column) for column in zip(*values, strict=True))
        print(f"{name:<36}{peak:>11,.0f}{present:>11,.0f}")


def _print_bytes(sites: list[Site], node: list[str]) -> None:
    print(f"\n{'bytes of a first visit':<36}{'raw':>12}{'gzip -9':>12}{'brotli':>12}")
    for site in sites:
        files = [path for path in files_below(site.folder) if path.name != "_headers"]
        columns = zip(*sizes(files, node).values(), strict=True)
        print(f"{site.name:<36}" + "".join(f"{sum(column):>12,}" for column in columns))


def main() -> None:
    """Prints the figures."""
    parser = argparse.ArgumentParser(prog="python3 -m tests.bench startup")
    parser.add_argument("--repeats", type=int, default=9)
    parser.add_argument("--cold-slow", action="store_true", help="cold starts at 4x too")
    parser.add_argument("--node", nargs="*", default=[], help="count bytes with this Node.js")
    wanted = parser.parse_args()
    expect.set_options(timeout=SLACK_MS)
    with sync_playwright() as playwright, tempfile.TemporaryDirectory() as folder:
        run = Run(playwright, Path(folder))
        run.prepare()
        print("asked for and measured: ", run.true_rates(RATES))
        run.cold(wanted.repeats, (*COLD_RATES, 4) if wanted.cold_slow else COLD_RATES)
        run.warm(wanted.repeats, RATES)
        took = run.keypad(wanted.repeats, RATES)
        alone = run.memory(wanted.repeats)
        _print_starts(run.found)
        _print_memory(run.found)
        _print_memory_alone(alone)
        print("\nfrom the icon to a typed digit on the one screen, ms")
        for rate, values in took.items():
            print(f"{rate:g}x: {statistics.median(values):,.0f} (most {max(values):,.0f})")
        if wanted.node:
            _print_bytes(run.sites, wanted.node)


if __name__ == "__main__":
    main()
