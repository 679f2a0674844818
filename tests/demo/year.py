"""The year itself: what happens on each day, and what of it gets written down."""

from __future__ import annotations

from datetime import date, timedelta
from math import cos, pi
from random import Random
from typing import Any

from tests.demo.machine import Body, Machine, asked, number
from tests.demo.sump import Sump
from tests.demo.writer import Writer, at
from tests.phones import id_of, typed

GLASS = id_of("example refractometer")
# Checks with their whole recipe; of the others the log keeps what was typed and what it said.
WHOLE_RECIPES = 2
AT_REST = ("clean_out", "out_of_service", "shutdown")


class Year:
    """The shop on one day after the other."""

    def __init__(self, shop: Body) -> None:
        self.shop = shop
        self.chance = Random(shop["seed"])
        self.phones = {title: Writer(title) for title in ("workshop phone", "foreman's phone")}
        self.first = date.fromisoformat(shop["first_day"])
        self.last = date.fromisoformat(shop["last_day"])
        self.machines = [self._machine(facts) for facts in shop["machines"]]
        self.state = {machine.name: "in_use" for machine in self.machines}
        self.minute = 0

    def _machine(self, facts: Body) -> Machine:
        aim = facts["band_pct"][1] / 100
        volume_l = 0.9 * facts["full_l"]
        sump = Sump(volume_l * (1 - aim), volume_l * aim)
        return Machine(facts, self.shop["instrument"], self.chance, sump)

    def run(self) -> list[Writer]:
        """Lets the whole year pass."""
        self._set_up()
        day = self.first
        while day <= self.last:
            self.minute = 0 if day > self.first else self.minute
            self._states(day)
            self._notes(day)
            if day.weekday() < 5:
                for machine in self.machines:
                    if self.state[machine.name] not in AT_REST:
                        self._working_day(machine, day)
            day += timedelta(1)
        return list(self.phones.values())

    def _save(self, kind: str, body: Body, day: date, machine: Machine | None, **more: Any) -> str:
        self.minute += self.chance.randint(4, 11)
        when = at(day, 6 + self.minute // 60, self.minute % 60)
        title = "foreman's phone" if self.chance.random() < 0.08 else "workshop phone"
        by = "KM" if title.startswith("foreman") else self.chance.choice(self.shop["people"][:2])
        place = {} if machine is None else {"machine": machine.id}
        return self.phones[title].save(kind, body, when, by=by, **place, **more)

    def _set_up(self) -> None:
        self._zero(self.first)
        for machine in self.machines:
            body = {"machine": machine.setup()}
            shown = asked("read_machine", body)
            self._save("machine_set", body, self.first, machine, shown=shown)

    def _states(self, day: date) -> None:
        first, last = self.shop["shutdown"]
        whole = [(machine.name, first, last, "shutdown", "holiday") for machine in self.machines]
        single = [
            (s["machine"], s["from"], s["to"], s["state"], s["reason"]) for s in self.shop["states"]
        ]
        for name, start, end, state, reason in [*whole, *single]:
            (machine,) = (m for m in self.machines if m.name == name)
            if day.isoformat() == start:
                self._enter(machine, day, state, reason)
            elif day.isoformat() == end:
                if state == "clean_out":
                    self._new_charge(machine, day)
                self._enter(machine, day, "in_use", "")

    def _enter(self, machine: Machine, day: date, state: str, reason: str) -> None:
        self.state[machine.name] = state
        why = {"reason": reason} if reason else {}
        self._save("machine_state", {"state": state, **why}, day, machine)

    def _new_charge(self, machine: Machine, day: date) -> None:
        old_l = machine.sump.volume_l - 6
        machine.sump.take_out(old_l)
        bucket_l, aim = machine.facts["bucket_l"], machine.facts["band_pct"][1] / 100
        count = int(machine.room_l // bucket_l)
        machine.pour(count, bucket_l * (1 - aim), bucket_l * aim)
        row = self._row(count, bucket_l * (1 - aim), bucket_l * aim)
        body = {"finished": True, "waste": typed(number(old_l), "L"), "left": typed("6", "L")}
        self._save("clean_out", {**body, "charge": [row], "lot": "A 1302"}, day, machine)

    def _notes(self, day: date) -> None:
        for when, name, text in self.shop["notes"]:
            if when == day.isoformat():
                machine = next((m for m in self.machines if m.name == name), None)
                self._save("note", {"text": text}, day, machine)
        if day.weekday() == 0 and day.day <= 7:
            self._zero(day)

    def _zero(self, day: date) -> None:
        zero = {"of": "instrument", "instrument": GLASS, "zero": typed("0", "Brix")}
        self._save("calibration", zero, day, None)

    def _working_day(self, machine: Machine, day: date) -> None:
        # Warmest and driest at the end of July, as halls are (common practice, no source).
        warm = 1 - 0.35 * cos(2 * pi * (day.timetuple().tm_yday - 28) / 365)
        machine.day(warm)
        rests = self.state[machine.name] == "stopped"
        if day.weekday() in machine.facts["checks_on"] and self.chance.random() > 0.06:
            self._check(machine, day, may_pour=not rests and not self._is_hurried(machine, day))
        elif not rests and machine.room_l > 2 * machine.facts["bucket_l"]:
            self._habit(machine, day)

    def _is_hurried(self, machine: Machine, day: date) -> bool:
        """Weeks in which nobody mixes: the level is held with water alone."""
        return any(
            part["machine"] == machine.name and part["from"] <= day.isoformat() <= part["to"]
            for part in self.shop["only_water"]
        )

    def _check(self, machine: Machine, day: date, may_pour: bool) -> None:
        body, answer = machine.check()
        more: Body = {"look": ["normal"]}
        if self.chance.random() < 0.12:
            more["look"] = [self.chance.choice(["floating_oil", "smell", "foam"])]
        if self.chance.random() < 0.25:
            more["ph"] = typed(number(self.chance.gauss(9.1, 0.1), 1), "1")
        if self.chance.random() < 0.08:
            more["dip_slide"] = {"germs": typed(self.chance.choice(["1000", "10000"]), "CFU/mL")}
        is_late = (self.last - day).days < 7 * WHOLE_RECIPES
        shown = answer if is_late else {"assessment": answer["assessment"]}
        if self.chance.random() < 0.012:
            self._correct(machine, day, {**body, **more}, shown)
        else:
            self._save("check", {**body, **more}, day, machine, shown=shown)
        if may_pour:
            self._follow(machine, day, answer["plan"])

    def _correct(self, machine: Machine, day: date, right: Body, shown: Body) -> None:
        """A check with a wrong reading, put right a moment later; each with what it showed."""
        wrong = {**right, "reading": {"shows": typed("14.0", "Brix")}}
        asked_for = {name: wrong[name] for name in ("machine", "dip", "reading")}
        seen = {"assessment": asked("plan_check", asked_for)["assessment"]}
        entry = self._save("check", wrong, day, machine, shown=seen)
        content = {"corrects": entry, "reason": "Typed 14.0 by mistake.", "kind": "check"}
        self._save("correction", {**content, "content": right}, day, None, shown=shown)

    def _follow(self, machine: Machine, day: date, plan: Body) -> None:
        """What the recipe says goes in, now and then only half of it."""
        if not plan["pours"]:
            return
        stops = self.chance.random() < 0.05 and plan["totals"]["buckets"] > 2
        rows = []
        for pour in plan["pours"]:
            count = max(1, pour["count"] // 2) if stops else pour["count"]
            machine.pour(count, pour["water_l"], pour["concentrate_l"])
            rows.append(self._row(count, pour["water_l"], pour["concentrate_l"]))
        body: Body = {"pours": rows, "finished": not stops}
        due = self.chance.random() < 0.4
        if due and not stops:
            body["recheck_due_at"] = at(day, 6 + (self.minute + 40) // 60, (self.minute + 40) % 60)
        self._save("pour", body, day, machine)
        is_read = due and not stops and self.chance.random() < 0.9
        if is_read and day != self.last:
            self.minute += 35
            self._save("recheck", {"reading": machine.reading()}, day, machine)

    def _habit(self, machine: Machine, day: date) -> None:
        """A top-up without a dip or a reading; one in four nobody writes down."""
        bucket_l, strength = machine.facts["bucket_l"], machine.facts["habit_pct"] / 100
        count = min(4, int(machine.room_l // bucket_l))
        is_water = self.chance.random() < machine.facts["habit_water_share"]
        if is_water or self._is_hurried(machine, day):
            strength = 0.0
        machine.pour(count, bucket_l * (1 - strength), bucket_l * strength)
        if self.chance.random() < 1 / 4:
            if self.chance.random() < 0.5:
                self._save("unknown_addition", {"what": "mix"}, day, machine)
            return
        row: Body = {"count": count, "about": True, "kind": "water"}
        if strength:
            row = {"count": count, "about": True, "strength": typed(number(strength * 100), "%")}
        self._save("pour", {"pours": [row], "finished": True}, day, machine)

    def _row(self, count: int, water_l: float, concentrate_l: float) -> Body:
        water, jug = typed(number(water_l, 2), "L"), typed(number(concentrate_l * 1000), "mL")
        return {"count": count, "water": water, "concentrate": jug}
