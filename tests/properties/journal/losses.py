"""``python -m tests.properties.journal.losses``: the trend beside the truth of the example's year.

The truth is kept by the sumps themselves; the trend knows only what their people wrote down: two
in eight top-ups by habit they did not. Oil that is skimmed leaves as concentrate, so it stands in
the true carry-out as the coolant that would hold it, as it does in the estimate.
"""

from __future__ import annotations

import json
from dataclasses import dataclass, field
from datetime import date, timedelta
from typing import Any

from tests.demo.__main__ import SHOP
from tests.demo.machine import Body, Machine, asked
from tests.demo.sump import Sump
from tests.demo.writer import at
from tests.demo.year import Year

WINDOW_D = 91
# Whole drums are taken out at a clean-out only; no day carries out as much.
_DRUM_L = 30.0


@dataclass
class Watched(Sump):
    """A sump that writes down what evaporates and what is carried out, day by day, in litres."""

    days: list[tuple[float, float]] = field(default_factory=list)

    def _lose(self, evaporated_l: float, carried_l: float) -> None:
        evaporation, carry_out = self.days[-1]
        self.days[-1] = evaporation + evaporated_l, carry_out + carried_l

    def evaporate(self, litres_l: float) -> None:
        """As the sump does."""
        before_l = self.account.evaporated_l
        super().evaporate(litres_l)
        self._lose(self.account.evaporated_l - before_l, 0.0)

    def take_out(self, litres_l: float) -> None:
        """As the sump does; a drum is no loss."""
        super().take_out(litres_l)
        if litres_l < _DRUM_L:
            self._lose(0.0, litres_l)

    def skim(self, share: float) -> None:
        """As the sump does; counted as the coolant that would hold the oil."""
        self._lose(-self.water_l * share, self.volume_l * share)
        super().skim(share)


class WatchedYear(Year):
    """The same year with its sumps watched."""

    def _machine(self, facts: Body) -> Machine:
        machine = super()._machine(facts)
        machine.sump = Watched(machine.sump.water_l, machine.sump.concentrate_l)
        return machine

    def _states(self, day: date) -> None:
        for machine in self.machines:
            watched(machine).days.append((0.0, 0.0))
        super()._states(day)


def watched(machine: Machine) -> Watched:
    """The sump of a machine of a watched year."""
    assert isinstance(machine.sump, Watched)
    return machine.sump


@dataclass(frozen=True)
class Beside:
    """One machine and season: what the trend says, and litres a day and per cent in truth."""

    machine: str
    until: date
    found: Body
    lost_l_d: float
    carry_out_l_d: float
    evaporation_l_d: float
    top_up_pct: float


def _true(machine: Machine, end: int, found: Body, until: date) -> Beside:
    days = watched(machine).days[end - WINDOW_D : end]
    air_l, carried_l = (sum(day[i] for day in days) / WINDOW_D for i in (0, 1))
    aim_pct = machine.facts["band_pct"][1]
    lost_l = air_l + carried_l
    return Beside(
        machine.name, until, found, lost_l, carried_l, air_l, aim_pct * carried_l / lost_l
    )


def seasons() -> list[Beside]:
    """Every machine in four windows of a season each."""
    year = WatchedYear(json.loads(SHOP.read_text(encoding="utf-8")))
    lines = [line for writer in year.run() for line in writer.lines]
    rows = []
    for end in (91, 182, 273, 364):
        until = year.first + timedelta(end)
        now = at(until, 0, 0)
        written = [line for line in lines if json.loads(line)["wall"] <= now]
        for machine in year.machines:
            body: dict[str, Any] = {"lines": written, "now": now, "machine": machine.id}
            found = asked("trend", {**body, "days": WINDOW_D})["losses"]
            rows.append(_true(machine, end, found, until))
    return rows


def main() -> None:
    """Prints the table."""
    print(f"{'machine':16} {'until':10} {'steps':>5} {'out':>3}", end="")
    for name in ("lost L/d", "carry-out", "evaporated", "top-up %"):
        print(f" | {name:>10} {'+-2u':>5} {'true':>5} ", end="")
    print()
    held: dict[str, list[bool]] = {}
    for row in seasons():
        out = sum(part["count"] for part in row.found["left_out"])
        print(f"{row.machine:16} {row.until} {row.found['steps']:5} {out:3}", end="")
        for name in ("lost_l_d", "carry_out_l_d", "evaporation_l_d", "top_up_pct"):
            true, found = getattr(row, name), row.found.get(name)
            if found is None:
                print(f" | {'-':>10} {'':5} {true:5.2f} ", end="")
                continue
            held.setdefault(name, []).append(abs(found["value"] - true) <= 2 * found["u"])
            print(f" | {found['value']:10.2f} {2 * found['u']:5.2f} {true:5.2f}", end="")
            print(" " if held[name][-1] else "!", end="")
        print()
    for name, hits in held.items():
        print(f"{name}: {sum(hits)} of {len(hits)} within two standard uncertainties")


if __name__ == "__main__":
    main()
