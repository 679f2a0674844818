"""pycore.journal.merge: what each file brought. The laws stand in tests/properties."""

from pycore.desk.contract.checked import checked
from pycore.journal.chain import Gap
from pycore.journal.entry import read_line
from pycore.journal.file import PHONE, Limits, LogFile, write_file
from pycore.journal.merge import FileReport, Merged, merged
from pycore.journal.tombstone import Tombstone, tombstone_of
from tests.phones import NOW_S, Phone, check, newer_phone


def two() -> tuple[Phone, Phone]:
    one, other = Phone("a"), Phone("b", fast_s=90)
    for place in range(3):
        one.save("check", check(), 60 * place)
        other.save("check", check(), 60 * place)
    return one, other


def merge(*texts: str, limits: Limits = PHONE, now_s: int | None = NOW_S) -> Merged:
    files = [(str(place), text) for place, text in enumerate(texts)]
    return merged(files, checked, limits, now_s)


def test_what_each_file_added() -> None:
    one, other = two()
    done = merge(one.export(), other.export(), one.export())
    assert [(f.lines, f.added, f.known) for f in done.files] == [(3, 3, 0), (3, 3, 0), (3, 0, 3)]
    assert len(done.union.lines) == 6
    assert not done.chains.is_forked


def test_a_line_that_stands_twice_in_a_file_counts_once() -> None:
    newer = newer_phone()
    lines = [*newer.lines, "nonsense"]
    done = merge(write_file(lines * 2, newer.head()))
    (report,) = done.files
    assert (report.lines, report.added, report.known) == (8, 3, 4)
    assert (report.newer, report.quarantined) == (2, 1)


def test_what_was_removed_is_counted_and_its_copies_bring_nothing() -> None:
    one, _ = two()
    entry = read_line(one.lines[1], checked)
    place = Tombstone(entry.id, entry.log, entry.seq, entry.prev, entry.hash)
    kept = [one.lines[0], tombstone_of(place, "asked for"), one.lines[2]]
    done = merge(write_file(kept, one.head()), one.export())
    assert [(f.added, f.known, f.removed) for f in done.files] == [(3, 0, 1), (0, 3, 0)]
    assert done.union.lines == kept
    # The other way round the tombstone is news.
    done = merge(one.export(), write_file(kept, one.head()))
    assert [(f.added, f.known, f.removed) for f in done.files] == [(3, 0, 0), (1, 2, 1)]


def test_a_cut_file_tells_of_what_it_no_longer_holds() -> None:
    one, _ = two()
    done = merge("\n".join(one.export().split("\n")[:3]))
    assert (done.files[0].missing, done.files[0].findings) == (1, ("cut",))
    assert done.chains.gaps == (Gap(one.log, 3, 3),)


def test_clocks_of_the_union_are_held_against_the_reading_computers() -> None:
    _, other = two()
    assert merge(other.export()).flags == ()
    late = merge(other.export(), now_s=NOW_S - 9 * 3600)
    assert [(flag.seq, flag.flag) for flag in late.flags] == [(n, "future") for n in (1, 2, 3)]


def test_offset_of_the_writing_device() -> None:
    one, other = two()
    assert merge("\n".join(one.lines)).files[0].ahead_s is None
    assert merge(other.export()).files[0].ahead_s == 90
    assert merge(other.export(), now_s=None).files[0].ahead_s is None


def test_a_refused_file_leaves_the_others_alone() -> None:
    one, other = two()
    done = merge("nonsense", one.export(), "", other.export())
    refused = [f.refused.code if f.refused else None for f in done.files]
    assert refused == ["file_foreign", None, "file_empty", None]
    assert len(done.union.lines) == 6


def test_a_file_above_the_limit_is_refused() -> None:
    one, _ = two()
    done = merge(one.export(), limits=Limits(10**6, 2))
    (report,) = done.files
    assert report.refused is not None
    assert report.refused.code == "too_many"
    assert report == FileReport("0", report.refused, (), 0, 0, 0, 0, 0, 0, None, None)


def test_bad_and_newer_lines_are_counted_for_each_file_that_holds_them() -> None:
    damaged = newer_phone().export().replace('"text":"342"', '"text":"343"')
    done = merge(damaged, damaged)
    assert [(f.newer, f.quarantined, f.added) for f in done.files] == [(2, 1, 2), (2, 1, 0)]
    assert [f.known for f in done.files] == [0, 3]
    assert done.files[0].findings == ("damaged",)
    assert [bad.code for bad in done.union.quarantined] == ["seal_broken"]


def test_a_head_that_only_another_file_knew_shows_a_missing_end() -> None:
    one, _ = two()
    short = Phone("a", lines=one.lines[:2], seq=2, prev=one.hash_of(2))
    done = merge(short.export())
    assert done.chains.gaps == ()
    known = LogFile([], one.head(), [])
    done = merged([("short", short.export())], checked, PHONE, own={"store": known})
    assert [(gap.first, gap.last) for gap in done.chains.gaps] == [(3, 3)]


def test_lines_that_are_there_already_are_known() -> None:
    one, other = two()
    own = {"store": LogFile(one.lines, one.head(), [])}
    done = merged([("f", one.export()), ("g", other.export())], checked, PHONE, own=own)
    assert [(f.added, f.known) for f in done.files] == [(0, 3), (3, 0)]


def test_a_time_of_writing_that_is_none_is_not_told() -> None:
    one, _ = two()
    text = one.export().replace('"written_at":"2026', '"written_at":"next')
    assert merge(text).files[0].ahead_s is None
