"""Laws of merging and folding, for any logs, clones, clocks and files (P1 to P9, P11 to P13)."""

import json
from itertools import permutations
from random import Random

from hypothesis import given, settings
from hypothesis import strategies as st

from pycore.journal.file import PHONE, read_file, write_file
from pycore.journal.line import opened, sealed
from pycore.journal.order import in_order
from tests.phones import Phone, check, id_of, newer_phone
from tests.properties.journal.shop import lines_in, merge, merge_text, phones, state_of

FEW = settings(max_examples=60, deadline=None)


@FEW
@given(phones())
def test_merging_a_file_with_itself_adds_nothing(made: list[Phone]) -> None:
    text = made[0].export()
    assert merge_text(text, text) == merge_text(text)
    assert merge_text(merge_text(text)) == merge_text(text)
    assert merge([text, text]).files[1].added == 0


@FEW
@given(phones())
def test_the_order_of_files_does_not_matter(made: list[Phone]) -> None:
    texts = [phone.export() for phone in made]
    wanted = merge_text(*texts)
    assert all(merge_text(*order) == wanted for order in permutations(texts))


@FEW
@given(phones(), st.randoms(use_true_random=False))
def test_it_does_not_matter_what_is_merged_first(made: list[Phone], random: Random) -> None:
    texts = [phone.export() for phone in made]
    wanted = merge_text(*texts)
    while len(texts) > 1:
        random.shuffle(texts)
        texts = [merge_text(texts.pop(), texts.pop()), *texts]
    assert merge_text(texts[0]) == wanted


@FEW
@given(phones(), st.lists(st.text(alphabet="ab{}\"'\t ", min_size=1, max_size=9), max_size=3))
def test_nothing_is_lost_and_nothing_is_made_up(made: list[Phone], junk: list[str]) -> None:
    texts = [phone.export() for phone in made]
    head, rest = texts[0].split("\n", 1)
    texts[0] = "\n".join([head, *junk, rest])
    out = lines_in(merge_text(*texts))
    assert out == set().union(*(phone.lines for phone in made), junk)


@FEW
@given(phones())
def test_export_import_export_is_identical(made: list[Phone]) -> None:
    text = merge_text(*(phone.export() for phone in made))
    file = read_file(text, PHONE)
    assert write_file(file.lines, file.heads) == text
    assert (file.findings, file.missing) == ([], 0)


@FEW
@given(phones(), st.randoms(use_true_random=False))
def test_state_does_not_depend_on_arrival(made: list[Phone], random: Random) -> None:
    wanted = state_of(*(phone.export() for phone in made))
    pieces = [line for phone in made for line in phone.lines]
    random.shuffle(pieces)
    cut = random.randrange(len(pieces) + 1)
    texts = [write_file(pieces[:cut], []), write_file(pieces[cut:] + pieces[:1], [])]
    found = state_of(*texts)
    assert found == wanted


def rewritten(phone: Phone, walls: list[str]) -> Phone:
    """The same entries under other clocks."""
    fresh = Phone(phone.title)
    for line, wall in zip(phone.lines, walls, strict=False):
        message = {**json.loads(line), "wall": wall, "prev": fresh.prev}
        message.pop("hash")
        fresh.lines.append(sealed(json.dumps(message, separators=(",", ":"), ensure_ascii=False)))
        fresh.prev = opened(fresh.lines[-1])[1]
        fresh.seq += 1
    return fresh


WALLS = st.sampled_from(
    ["1970-01-01T00:00:00Z", "2099-12-31T23:59:59+14:00", "2026-11-25T06:00:00-05:00"]
)


@FEW
@given(phones(), st.lists(WALLS, min_size=30, max_size=30))
def test_clocks_change_flags_and_never_membership_or_order(
    made: list[Phone], walls: list[str]
) -> None:
    made = made[:3]
    if len({phone.title for phone in made}) < len(made):
        made = made[:1]
    before = state_of(*(phone.export() for phone in made))
    after = state_of(*(rewritten(phone, walls).export() for phone in made))
    told = [
        [(one.id, one.standing) for one in in_order(state.entries)] for state in (before, after)
    ]
    assert told[0] == told[1]
    assert before.counts == after.counts


@FEW
@given(phones(), st.data())
def test_a_missing_line_is_a_gap(made: list[Phone], data: st.DataObject) -> None:
    phone = made[0]
    if phone.seq < 2:
        phone.save("check", check(), 1)
        phone.save("check", check(), 2)
    at = data.draw(st.integers(0, phone.seq - 1))
    text = write_file(phone.lines[:at] + phone.lines[at + 1 :], [])
    gaps = [gap for gap in merge([text]).chains.gaps if gap.first <= at + 1 <= gap.last]
    # A shortened chain is a valid chain: only another file's header knows of the missing end.
    assert bool(gaps) == (at < phone.seq - 1)
    known = merge([text, write_file([], phone.head())])
    assert any(gap.first <= at + 1 <= gap.last for gap in known.chains.gaps)
    assert bool(known.chains.missing_heads) == (at == phone.seq - 1)


@FEW
@given(phones(), st.integers(1, 3), st.integers(1, 3))
def test_a_clone_that_goes_on_is_found(made: list[Phone], mine: int, theirs: int) -> None:
    phone = made[0]
    clone = phone.clone()
    for place in range(mine):
        phone.save("check", check("100"), place, id=id_of(f"mine {place}"))
    for place in range(theirs):
        clone.save("check", check("200"), place, id=id_of(f"theirs {place}"))
    done = merge([phone.export(), clone.export()])
    assert done.chains.is_forked
    assert {*phone.lines, *clone.lines} <= set(done.union.lines)


@FEW
@given(phones(most=3))
def test_unknown_kinds_survive_three_hops(made: list[Phone]) -> None:
    strange = newer_phone()
    text = strange.export()
    for phone in made[:3]:
        text = merge_text(text, phone.export())
    assert set(strange.lines) <= lines_in(text)
    assert state_of(text).counts["newer"] >= 2


@FEW
@given(phones(), st.randoms(use_true_random=False), st.data())
def test_a_withdrawn_entry_never_feeds_anything(
    made: list[Phone], random: Random, data: st.DataObject
) -> None:
    target = made[0].save("check", check("1"), 100_000)
    office = Phone("office")
    for _ in range(data.draw(st.integers(0, 2))):
        body = {"corrects": target, "reason": "x", "kind": "check", "content": check("2")}
        office.save("correction", body, 0, machine="")
    office.save("withdrawal", {"retracts": target, "reason": "x"}, 0, machine="")
    texts = [phone.export() for phone in [*made, office]]
    random.shuffle(texts)
    for machine in state_of(*texts).machines:
        found = (machine.level, machine.strength, machine.checked)
        assert all(one is None or one.entry.id != target for one in found)
        beside = [other for one in found if one for other in one.others if other.id == target]
        # Somebody's later word about it can leave it in doubt: then it is told, and not used.
        assert all(other.is_in_doubt for other in beside)
        assert all(entry.id != target for entry in machine.ordered)
