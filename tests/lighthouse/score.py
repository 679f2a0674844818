"""``python -m tests.lighthouse.score`` in the project's environment, with the built app."""

from __future__ import annotations

import argparse
import json
import socket
import sys
import tempfile
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from playwright.sync_api import Page, Playwright, expect, sync_playwright

from tests.browser.phone import LIMIT_MS, PHONE_SIZE, PICTURES, heading, wait_until_ready
from tests.browser.server import Server
from tests.browser.walk import check_until_recipe, open_machine, set_up_machine
from tests.chromium import chromium_path, launch_arguments
from web.build.node import Node, ensure_node, npm_ci
from web.build.paths import ROOT
from web.build.run import run_tool
from web.build.steps import Steps
from web.build.trouble import Trouble

HERE = ROOT / "tests" / "lighthouse"
MODULES = HERE / "node_modules"
FOLDER = PICTURES / "lighthouse"
CATEGORIES = ("accessibility", "best-practices")
WANTED = 100
# Places of a machine with an answered check; the empty one is its own page.
OF_MACHINE = [
    *("", "look", "dip", "reading", "target", "answers", "recipe", "all", "trend", "log"),
    *("set-up/check", "set-up/zero", "print/machine_card", "tell"),
]
OF_PHONE = ["", "log", "settings", "backup", "learn", "practice"]


@dataclass(frozen=True)
class Scored:
    """What Lighthouse says about one place: points by category, and the audits that cost some."""

    place: str
    points: dict[str, int]
    found: list[str]


def _install(node: Node) -> None:
    Steps().run(
        "Lighthouse",
        [HERE / "package.json", HERE / "package-lock.json", sys.platform],
        [MODULES / "lighthouse" / "cli" / "index.js"],
        lambda: run_tool(
            "Installing Lighthouse", npm_ci(node), cwd=HERE, extra_environment=node.environment
        ),
    )


def _free_port() -> int:
    with socket.socket() as free:
        free.bind(("localhost", 0))
        return int(free.getsockname()[1])


def _open(playwright: Playwright, profile: Path, port: int) -> Page:
    context = playwright.chromium.launch_persistent_context(
        profile,
        executable_path=chromium_path(),
        args=[*launch_arguments, f"--remote-debugging-port={port}"],
        viewport={"width": PHONE_SIZE[0], "height": PHONE_SIZE[1]},
        service_workers="allow",
        locale="en-GB",
    )
    context.set_default_timeout(LIMIT_MS)
    expect.set_options(timeout=LIMIT_MS)
    return context.pages[0]


def _prepare(page: Page, address: str) -> str:
    """A machine with an answered check; the place of the machine."""
    page.goto(address)
    set_up_machine(page)
    page.get_by_role("button", name="Back").click()
    wait_until_ready(page)
    open_machine(page)
    machine = page.url.split("#/")[1]
    check_until_recipe(page)
    expect(heading(page)).to_be_visible()
    return machine


def _score(node: Node, address: str, place: str, port: int) -> Scored:
    report = FOLDER / f"{place.replace('/', '-') or 'machines'}.json"
    command = [
        *node.node, str(MODULES / "lighthouse" / "cli" / "index.js"), f"{address}#/{place}",
        f"--port={port}", "--hostname=localhost", "--output=json", f"--output-path={report}",
        f"--only-categories={','.join(CATEGORIES)}", "--form-factor=mobile",
        f"--screenEmulation.width={PHONE_SIZE[0]}", f"--screenEmulation.height={PHONE_SIZE[1]}",
        "--screenEmulation.mobile", "--throttling-method=provided", "--disable-storage-reset",
        "--quiet", "--no-enable-error-reporting",
    ]  # fmt: skip
    run_tool(f"Lighthouse at {place}", command, cwd=HERE, extra_environment=node.environment)
    return _read(place, json.loads(report.read_text(encoding="utf-8")))


def _read(place: str, report: dict[str, Any]) -> Scored:
    points = {name: round(100 * report["categories"][name]["score"]) for name in CATEGORIES}
    weighed = {
        entry["id"]
        for name in CATEGORIES
        for entry in report["categories"][name]["auditRefs"]
        if entry["weight"] > 0
    }
    found = []
    for name in sorted(weighed):
        audit = report["audits"][name]
        if audit["score"] is None or audit["score"] == 1:
            continue
        items = audit.get("details", {}).get("items", [])
        where = [item.get("node", {}).get("snippet", str(item))[:160] for item in items[:3]]
        found.append(f"{name}: {audit['title']} {' | '.join(where)}")
    return Scored(place, points, found)


def _score_all(node: Node, places: list[str] | None) -> list[Scored]:
    FOLDER.mkdir(parents=True, exist_ok=True)
    server, port = Server(), _free_port()
    try:
        with tempfile.TemporaryDirectory() as profile, sync_playwright() as playwright:
            page = _open(playwright, Path(profile), port)
            machine = _prepare(page, server.address)
            wanted = [f"{machine}/{place}".rstrip("/") for place in OF_MACHINE] + OF_PHONE
            scored = []
            for place in wanted:
                name = place.replace(machine, "machine")
                if places is not None and name not in places:
                    continue
                one = _score(node, server.address, place, port)
                scored.append(Scored(name, one.points, one.found))
                line = "  ".join(f"{one.points[category]:3}" for category in CATEGORIES)
                print(f"  {line}  {name or 'machines'}", flush=True)
                print("".join(f"            {found}\n" for found in one.found), end="")
            page.context.close()
            return scored
    finally:
        server.kill()


def main() -> int:
    """Prints the scores; returns the exit status."""
    parser = argparse.ArgumentParser(prog="python3 -m tests.lighthouse")
    parser.add_argument("places", nargs="*", help="such as machine/dip or settings; default: all")
    given = parser.parse_args().places
    try:
        node = ensure_node(Steps())
        _install(node)
    except Trouble as trouble:
        sys.stderr.write(f"{trouble.sentence}\nWay on: {trouble.way_on}\n")
        return 1
    print(f"  {CATEGORIES[0]}, {CATEGORIES[1]} (of 100):")
    scored = _score_all(node, given or None)
    low = [one for one in scored if min(one.points.values()) < WANTED]
    print(f"{len(scored)} places, {len(low)} below {WANTED}")
    return 1 if low or not scored else 0


if __name__ == "__main__":
    sys.exit(main())
