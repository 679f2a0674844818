"""Phones and files of an invented shop, drawn by Hypothesis for the laws of the journal."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

from hypothesis import strategies as st

from pycore.desk.contract.checked import checked
from pycore.journal.file import OFFICE
from pycore.journal.merge import Merged, merged
from pycore.journal.state import Folded, folded
from pycore.journal.union import file_of
from tests.phones import NOW_S, Phone, check, id_of, pour, setup

MACHINES = [id_of(f"machine {place}") for place in range(3)]
Save = Callable[[Phone, Any], None]


def _amend(phone: Phone, draw: Any) -> None:
    target = draw(st.sampled_from([f"{title} {seq}" for title in "abc" for seq in range(1, 7)]))
    settles = draw(
        st.lists(st.sampled_from([f"{t} {s}" for t in "abc" for s in (2, 4)]), max_size=2)
    )
    more: dict[str, Any] = {"settles": [id_of(word) for word in settles]} if settles else {}
    after_s = draw(st.integers(0, 9000))
    if draw(st.booleans()):
        body = {"retracts": id_of(target), "reason": "x", **more}
        phone.save("withdrawal", body, after_s, machine="")
    else:
        body = {"corrects": id_of(target), "reason": "x", "kind": "check", **more}
        phone.save("correction", {**body, "content": check("77")}, after_s, machine="")


def save(phone: Phone, draw: Any) -> None:
    """Some entry, with some time and some clock."""
    kind = draw(
        st.sampled_from(["check", "pour", "plan", "set", "state", "amend", "newer", "note"])
    )
    at = draw(st.integers(-9000, 9000))
    machine = draw(st.sampled_from(MACHINES))
    if kind == "amend":
        _amend(phone, draw)
    elif kind == "newer":
        phone.save("odour_panel", {"score": at}, at, machine)
    elif kind == "check":
        phone.save("check", check(str(300 + phone.seq)), at, machine)
    elif kind == "pour":
        phone.save("pour", pour(2, draw(st.booleans())), at, machine)
    elif kind == "plan":
        phone.save("plan", {"pours": [{"count": 3}]}, at, machine)
    elif kind == "set":
        phone.save("machine_set", {"machine": setup(f"M {at}")}, at, machine)
    elif kind == "state":
        phone.save("machine_state", {"state": "watch"}, at, machine)
    else:
        phone.save("note", {"text": f"Späne {at} °C"}, at, machine="")


@st.composite
def phones(draw: Any, most: int = 8) -> list[Phone]:
    """Up to three phones with logs of their own, and sometimes a clone that went on alone."""
    made = []
    for title in "abc"[: draw(st.integers(1, 3))]:
        phone = Phone(title, fast_s=draw(st.sampled_from([0, 0, 7200, -7200])))
        for _ in range(draw(st.integers(0, most))):
            save(phone, draw)
        made.append(phone)
    if draw(st.booleans()):
        clone = made[0].clone()
        for _ in range(draw(st.integers(1, 3))):
            save(clone, draw)
        save(made[0], draw)
        made.append(clone)
    return made


def merge(texts: Sequence[str]) -> Merged:
    """The union of files, as the office makes it."""
    files = [(str(place), text) for place, text in enumerate(texts)]
    return merged(files, checked, OFFICE, NOW_S)


def merge_text(*texts: str) -> str:
    """The file that the office writes."""
    return file_of(merge(texts).union)


def state_of(*texts: str) -> Folded:
    """The state after merging."""
    return folded(merge(texts).union, NOW_S)


def lines_in(text: str) -> set[str]:
    """All lines of a file but its first and last."""
    return set(text.split("\n")[1:-1])
