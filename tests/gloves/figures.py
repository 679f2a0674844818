"""``python -m tests.gloves.figures`` in the project's environment: prints the counts."""

import argparse
import sys
import tempfile
from pathlib import Path

from playwright.sync_api import sync_playwright

from tests.browser.phone import PHONE_SIZE, Phone
from tests.browser.server import Server
from tests.browser.walk import set_up_machine
from tests.gloves.gates import GATES
from tests.gloves.pages import PX_PER_MM, Pages, read_pages
from tests.gloves.walks import SEED, WALKS, Result, Tally, simulate

SCATTERS_MM = (4.0, 3.0, 2.0, 1.0)
# None: a first check.
DAYS = (3, 1, None)


def pages_of_the_app(height_px: int = PHONE_SIZE[1]) -> Pages:
    """The keys of the built app, on a phone so high that was set up for it."""
    server = Server()
    try:
        with tempfile.TemporaryDirectory() as profile, sync_playwright() as playwright:
            phone = Phone(playwright, Path(profile), (PHONE_SIZE[0], height_px))
            page = phone.start()
            page.goto(server.address)
            set_up_machine(page)
            page.get_by_role("button", name="Back").click()
            pages = read_pages(page)
            phone.close()
            return pages
    finally:
        server.kill()


def _row(name: str, tally: Tally) -> str:
    wrong, right = tally.wrong, tally.right
    by_gate = "".join(f"{wrong[gate]:>{len(gate) + 3}}" for gate in GATES)
    asked = sum(right.values()) - right["passed"]
    return f"{name:<9}{sum(wrong.values()):>6}{by_gate}{asked:>14}"


def _lines(result: Result) -> list[str]:
    head = f"{'':<9}{'wrong':>6}" + "".join(f"   {gate}" for gate in GATES)
    slips = sorted(result.slips_mm)
    middle = slips[len(slips) // 2] if slips else 0
    return [
        f"{head}   right, asked",
        _row("dip", result.dip),
        _row("reading", result.reading),
        f"walks with a wrong number: {result.wrong}, past every gate: {result.unnoticed}"
        f" ({len(slips)} wrong dips, the middle one by {middle} mm),"
        f" of which the recipe harms: {result.harmed}",
    ]


def main() -> int:
    """Reads the pages and prints a table for each scatter; returns the exit status."""
    parser = argparse.ArgumentParser(prog="python3 -m tests.gloves")
    parser.add_argument("--walks", type=int, default=WALKS, help="default %(default)s")
    parser.add_argument(
        "--height",
        type=int,
        default=PHONE_SIZE[1],
        help="px of the phone; default %(default)s",
    )
    wanted = parser.parse_args()
    pages = pages_of_the_app(wanted.height)
    print(
        f"{wanted.walks} walks, seed {SEED}, 360 x {wanted.height}, {PX_PER_MM:.2f} px a mm; "
        "nobody looks"
    )
    for days in DAYS:
        for scatter_mm in SCATTERS_MM:
            before = "a first check" if days is None else f"last dip {days} days ago"
            print(f"\nscatter {scatter_mm:g} mm, {before}")
            print("\n".join(_lines(simulate(pages, scatter_mm, days, wanted.walks))), flush=True)
    return 0


if __name__ == "__main__":
    sys.exit(main())
