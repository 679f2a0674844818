"""The page's order of entries and its second readings beside pycore's: the same lines, the same."""

import json
import random
import subprocess
from pathlib import Path
from typing import Any

import pytest

from pycore.journal.times import moment_of
from tests.phones import LATHE, MORNING_S, Phone, check, id_of, moment, pour, setup
from tests.unit.journal.reading import fold, lines_of
from web.build.node import ensure_node
from web.build.paths import WEB
from web.build.steps import Steps

SEED, CASES, MOST_DEEDS = 20261127, 1000, 14
MACHINES = [LATHE, id_of("axle grinder")]
MINUTE_S, YEARS_S = 60, 4 * 365 * 86_400
_RUN = Path(__file__).with_name("page.mjs").read_text("utf-8")
MIXES_MIN = (15, 30, 45)
READ = {"machine": setup(), **check()}
SHOWN = {"assessment": {"notes": []}}


def asked(cases: list[list[Phone]]) -> list[dict[str, Any]]:
    """What the page makes of the lines of each case."""
    given = [{"lines": lines_of(*phones), "machines": MACHINES} for phones in cases]
    done = subprocess.run(
        [*ensure_node(Steps()).node, "--input-type=module", "-e", _RUN],
        input=json.dumps(given),
        capture_output=True,
        text=True,
        cwd=WEB,
        check=True,
    )
    found: list[dict[str, Any]] = json.loads(done.stdout)
    return found


def wanted(phones: list[Phone]) -> dict[str, Any]:
    """The same by pycore."""
    machines = {one.machine: one for one in fold(*phones).machines}
    ordered, due = [], []
    for name in MACHINES:
        now = machines.get(name)
        ordered.append([one.id for one in now.ordered] if now else [])
        again = now.recheck if now else None
        due.append([again.pour, moment_of(again.due_at, "")[0]] if again else None)
    return {"order": ordered, "due": due}


class Day:
    """Two phones at two machines; their clocks are wrong now and then, and people disagree."""

    def __init__(self, chance: random.Random, wrong_clocks: float) -> None:
        self.chance, self.wrong_clocks = chance, wrong_clocks
        self.phones = [Phone("a"), Phone("b")]
        self.at_s = 0
        self.saved: list[tuple[str, str, dict[str, Any]]] = []
        # Of each machine the recipe that is poured, and when its last part went in.
        self.open: dict[str, tuple[str, int]] = {}

    def save(self, kind: str, body: dict[str, Any], machine: str, **more: Any) -> str:
        at_s = more.pop("at_s", self.at_s)
        if self.chance.random() < self.wrong_clocks:
            at_s += self.chance.choice((YEARS_S, -YEARS_S))
        identity = self.chance.choice(self.phones).save(kind, body, at_s, machine, **more)
        self.saved.append((identity, kind, body))
        return identity

    def begin(self, machine: str) -> None:
        read = self.save("check", READ, machine, shown=SHOWN)
        plan = self.save("plan", {"check": read, "pours": [{"count": 3}]}, machine)
        self.open[machine] = (plan, self.at_s)

    def part(self, machine: str) -> None:
        if machine in self.open:
            plan, _ = self.open[machine]
            self.open[machine] = (plan, self.at_s)
            self.save("pour", pour(1, finished=False, plan=plan), machine)

    def end(self, machine: str) -> None:
        """The rest is poured, or given up after the part before."""
        if machine not in self.open:
            return
        plan, last_s = self.open.pop(machine)
        rows = self.chance.choice((pour(1), {"pours": [], "finished": True}))
        at_s = self.at_s if rows["pours"] else last_s
        due_at = moment(at_s + self.chance.choice(MIXES_MIN) * MINUTE_S)
        self.save("pour", {**rows, "plan": plan, "recheck_due_at": due_at}, machine, at_s=at_s)

    def read_again(self, machine: str) -> None:
        body = {"machine": setup(), "of": id_of("any")}
        reading = {"reading": READ["reading"]} if self.chance.random() < 0.5 else {}
        self.save("recheck", {**body, **reading}, machine, shown=SHOWN)

    def amend(self, machine: str) -> None:
        """Taken back, corrected, or corrected in two ways."""
        if not self.saved:
            return
        target, kind, body = self.chance.choice(self.saved)
        if self.chance.random() < 0.4:
            self.phones[0].save(
                "withdrawal", {"retracts": target, "reason": "r"}, self.at_s, machine
            )
            return
        said = {"corrects": target, "reason": "r", "kind": kind, "content": body}
        for phone in self.phones[: self.chance.randint(1, 2)]:
            phone.save("correction", said, self.at_s, machine, shown=SHOWN)

    def deed(self) -> None:
        self.at_s += self.chance.randint(1, 20) * MINUTE_S
        machine = self.chance.choice([*[LATHE] * 3, *MACHINES])
        chosen = self.chance.choice("bbpppeeehhhcrnsoaa")
        plain: dict[str, tuple[str, dict[str, Any]]] = {
            "h": ("pour", pour(1)),
            "n": ("note", {"text": "x"}),
            "s": ("machine_state", {"state": self.chance.choice(("in_use", "watch"))}),
            "o": ("clean_out", {"finished": self.chance.random() < 0.5}),
        }
        by_hand = {"b": self.begin, "p": self.part, "e": self.end, "r": self.read_again}
        if chosen in plain:
            self.save(*plain[chosen], machine)
        elif chosen == "c":
            self.save("check", READ, machine, shown=SHOWN)
        elif chosen == "a":
            self.amend(machine)
        else:
            by_hand[chosen](machine)


def days(wrong_clocks: float) -> list[list[Phone]]:
    """So many days, each from its beginning to some deed."""
    chance = random.Random(SEED)
    cases = []
    for _ in range(CASES):
        day = Day(chance, wrong_clocks)
        for _ in range(chance.randint(1, MOST_DEEDS)):
            day.deed()
        cases.append(day.phones)
    return cases


@pytest.mark.parametrize("wrong_clocks", [0.0, 0.15])
def test_page_and_pycore_agree_about_order_and_second_readings(wrong_clocks: float) -> None:
    cases = days(wrong_clocks)
    found = asked(cases)
    told = [wanted(phones) for phones in cases]
    assert [one["order"] for one in found] == [one["order"] for one in told]
    assert [one["due"] for one in found] == [one["due"] for one in told]
    # A start reads only a part of a long log.
    assert [one["again"] for one in found] == [one["due"] for one in told]
    dues = [due for one in told for due in one["due"]]
    assert 0 < dues.count(None) < len(dues)


@pytest.mark.parametrize("how", ["taken back", "in conflict", "at another machine"])
def test_a_wrong_clock_that_is_not_used_here_orders_nothing(how: str) -> None:
    one, two = Phone("a"), Phone("b")
    machine = MACHINES[how == "at another machine"]
    note = one.save("note", {"text": "x"}, YEARS_S, machine)
    said = {"corrects": note, "reason": "r", "kind": "note", "content": {"text": "y"}}
    if how == "taken back":
        one.save("withdrawal", {"retracts": note, "reason": "r"}, 0)
    if how == "in conflict":
        one.save("correction", said, 0)
        two.save("correction", said, 0)
    held = one.save("machine_state", {"state": "on_hold", "reason": "repair"}, 60)
    used = two.save("machine_state", {"state": "in_use"}, 3600)
    (found,) = asked([[one, two]])
    assert found["order"][0] == wanted([one, two])["order"][0] == [held, used]


def poured_in_parts(before: int, check_id: str) -> Phone:
    """So many buckets by habit, a part of a recipe, one more bucket, and the rest given up."""
    phone = Phone("a")
    for place in range(before):
        phone.save("pour", pour(1), place * MINUTE_S)
    at_s = before * MINUTE_S
    plan = phone.save("plan", {"check": check_id, "pours": [{"count": 3}]}, at_s)
    phone.save("pour", pour(1, finished=False, plan=plan), at_s)
    phone.save("pour", pour(1), at_s + 20 * MINUTE_S)
    due_at = moment(at_s + 30 * MINUTE_S)
    rest = {"pours": [], "finished": True, "plan": plan, "recheck_due_at": due_at}
    phone.save("pour", rest, at_s)
    return phone


def test_a_bucket_before_the_rest_was_given_up_has_to_mix_too() -> None:
    phone = poured_in_parts(0, id_of("any"))
    (found,) = asked([[phone]])
    rest = id_of("a 4")
    assert found["due"] == wanted([phone])["due"] == [[rest, MORNING_S + 50 * MINUTE_S], None]


def test_a_reading_that_was_too_early_stays_so_after_a_clean_out() -> None:
    phone = poured_in_parts(0, id_of("any"))
    early = phone.save("check", READ, 45 * MINUTE_S, shown=SHOWN)
    phone.save("clean_out", {"finished": True}, 46 * MINUTE_S)
    phone.save("check", READ, 47 * MINUTE_S, shown=SHOWN)
    (found,) = asked([[phone]])
    assert found["early"] == [early]


def test_a_recipe_without_its_check_is_told_by_its_own_parts() -> None:
    phone = poured_in_parts(40, id_of("a check of another phone"))
    (found,) = asked([[phone]])
    assert found["parts"] == 3
    assert found["again"] == found["due"] == wanted([phone])["due"]
