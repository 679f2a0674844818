"""Lines of several phones, read and folded for a test."""

from typing import Any

from pycore.desk.contract.checked import checked
from pycore.journal.amend import Standing, standings
from pycore.journal.chain import chains_of
from pycore.journal.decide import decisions, unusable
from pycore.journal.state import Folded, MachineNow, folded
from pycore.journal.union import gathered, read_lines
from tests.phones import LATHE, NOW_S, Phone


def lines_of(*phones: Phone) -> list[str]:
    """All lines; those that phones share stand there once each."""
    return [line for phone in phones for line in phone.lines]


def standing_of(*phones: Phone) -> dict[str, Standing]:
    """What each entry says now, by its id."""
    entries, _ = read_lines(lines_of(*phones), checked)
    forks = chains_of(entries, ()).forks
    disputed = frozenset(name for fork in forks for name in fork.hashes)
    open_lines, left_out = unusable(forks, decisions(entries, disputed))
    return {one.entry.hash: one for one in standings(entries, open_lines, left_out)}


def fold(*phones: Phone) -> Folded:
    """The state that the phones' lines together make."""
    return folded(gathered(*read_lines(lines_of(*phones), checked)), NOW_S)


def machine(*phones: Phone, name: str = LATHE) -> MachineNow:
    """The state of one machine."""
    return next(one for one in fold(*phones).machines if one.machine == name)


def both_count(*phones: Phone) -> Phone:
    """Another phone on which somebody has decided that all lines of claimed places count."""
    decider = Phone("decider")
    for fork in fold(*phones).chains.forks:
        body = {"use": list(fork.hashes), "leave": [], "reason": "both were made"}
        decider.save("decision", body, 9000, machine="")
    return decider


def dispute(
    phones: tuple[Phone, Phone], target: str, kind: str, said: list[dict[str, Any]]
) -> None:
    """Each of two phones corrects the same entry, and none knows of the other one."""
    for phone, content in zip(phones, said, strict=True):
        body = {"corrects": target, "reason": "x", "kind": kind, "content": content}
        phone.save("correction", body, 600, machine="")
