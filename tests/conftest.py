"""What all tests share: a skip that nobody explained fails the run."""

from collections.abc import Iterator

import pytest
from hypothesis import settings
from playwright.sync_api import Playwright, sync_playwright

# A time limit for each example would fail on a busy machine and prove nothing on a fast one.
settings.register_profile("untimed", deadline=None)
settings.load_profile("untimed")

# Reason a skip gives -> why that is acceptable. Anything else counts as a failure.
EXPLAINED_SKIPS = {"this computer has no IPv6": "then no program can hold a port of ::1"}

_unexplained: list[str] = []


@pytest.fixture(scope="session")
def playwright() -> Iterator[Playwright]:
    """The driver of Chromium: one for a whole process, which cannot hold two."""
    with sync_playwright() as driver:
        yield driver


def pytest_runtest_logreport(report: pytest.TestReport) -> None:
    _note(report)


def pytest_collectreport(report: pytest.CollectReport) -> None:
    _note(report)


def _note(report: pytest.TestReport | pytest.CollectReport) -> None:
    if not report.skipped or hasattr(report, "wasxfail"):
        return
    reason = report.longrepr[2] if isinstance(report.longrepr, tuple) else str(report.longrepr)
    if reason.removeprefix("Skipped: ") not in EXPLAINED_SKIPS:
        _unexplained.append(f"{report.nodeid}: {reason}")


@pytest.hookimpl(trylast=True)
def pytest_sessionfinish(session: pytest.Session) -> None:
    if _unexplained and session.exitstatus == pytest.ExitCode.OK:
        session.exitstatus = pytest.ExitCode.TESTS_FAILED


def pytest_terminal_summary(terminalreporter: pytest.TerminalReporter) -> None:
    for outcome in ("passed", "failed"):
        for report in terminalreporter.getreports(outcome):
            for line in [text for name, text in report.user_properties if name == "journey"]:
                terminalreporter.write_line(str(line))
    for line in _unexplained:
        terminalreporter.write_line(f"UNEXPLAINED SKIP {line}", red=True)
