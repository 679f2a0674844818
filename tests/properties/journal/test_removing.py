"""Laws of merging where entries were removed: no copy brings them back, in any order."""

import json
from itertools import permutations
from random import Random

from hypothesis import given
from hypothesis import strategies as st

from pycore.desk.contract.checked import checked
from pycore.journal.entry import Entry, read_line
from pycore.journal.file import write_file
from pycore.journal.tombstone import Tombstone, tombstone_of
from tests.phones import Phone
from tests.properties.journal.shop import lines_in, merge, merge_text, phones, state_of
from tests.properties.journal.test_merging import FEW


def stone(entry: Entry, reason: str) -> str:
    """The tombstone of an entry."""
    place = Tombstone(entry.id, entry.log, entry.seq, entry.prev, entry.hash)
    return tombstone_of(place, reason)


@st.composite
def shops(draw: st.DrawFn) -> tuple[list[str], set[str], list[Entry]]:
    """Files of phones and of offices that removed entries; the lines; the entries removed."""
    made: list[Phone] = draw(phones())
    lines = sorted({line for phone in made for line in phone.lines})
    texts = [phone.export() for phone in made]
    removed = []
    for office in range(draw(st.integers(1, 2)) if lines else 0):
        gone = draw(st.lists(st.sampled_from(lines), min_size=1, max_size=3, unique=True))
        entries = [read_line(line, checked) for line in gone]
        removed += entries
        stones = [stone(entry, f"office {office}") for entry in entries]
        rest = [line for line in lines if line not in gone]
        texts.append(write_file([*rest, *stones], []))
    return texts, set(lines), removed


@FEW
@given(shops())
def test_nothing_brings_a_removed_entry_back(
    shop: tuple[list[str], set[str], list[Entry]],
) -> None:
    texts, lines, removed = shop
    out = lines_in(merge_text(*texts))
    gone = {entry.line for entry in removed}
    assert out & lines == lines - gone
    left = [read_line(line, checked) for line in out - lines]
    assert {entry.hash for entry in left} == {entry.hash for entry in removed}
    assert all(entry.is_removed for entry in left)
    assert len(left) == len(gone)


@FEW
@given(shops(), st.randoms(use_true_random=False))
def test_order_and_grouping_do_not_matter(
    shop: tuple[list[str], set[str], list[Entry]], random: Random
) -> None:
    texts, _, _ = shop
    wanted = merge_text(*texts)
    assert all(merge_text(*order) == wanted for order in permutations(texts))
    assert merge_text(wanted, *texts) == wanted
    assert merge_text(wanted) == wanted
    while len(texts) > 1:
        random.shuffle(texts)
        texts = [merge_text(texts.pop(), texts.pop()), *texts]
    assert merge_text(texts[0]) == wanted


@FEW
@given(shops())
def test_the_chains_hold_as_before(shop: tuple[list[str], set[str], list[Entry]]) -> None:
    texts, lines, removed = shop
    whole = merge([write_file(sorted(lines), [])])
    after = merge(texts)
    assert (after.chains.forks, after.chains.gaps) == (whole.chains.forks, whole.chains.gaps)
    assert after.chains.breaks == whole.chains.breaks
    used = [entry.id for machine in state_of(*texts).machines for entry in machine.ordered]
    assert not {entry.id for entry in removed if entry.usable} & set(used) or whole.chains.forks


def test_a_tombstone_of_a_line_that_is_not_here_is_carried_on() -> None:
    phone = Phone("a")
    phone.save("note", {"text": "Späne"}, 0, machine="")
    entry = read_line(phone.lines[0], checked)
    text = merge_text(write_file([stone(entry, "asked for")], []))
    assert json.loads(next(iter(lines_in(text))))["kind"] == "tombstone"
    assert "Späne" not in merge_text(text, phone.export())
