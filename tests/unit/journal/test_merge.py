"""pycore.journal.merge: what each file brought. The laws stand in tests/properties."""

from pycore.desk.contract.checked import checked
from pycore.journal.file import PHONE, Limits, LogFile
from pycore.journal.merge import Merged, merged
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


def test_offset_of_the_writing_device() -> None:
    _, other = two()
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
    assert [f.refused and f.refused.code for f in done.files] == ["too_many"]


def test_bad_and_newer_lines_are_counted_for_each_file_that_holds_them() -> None:
    damaged = newer_phone().export().replace('"text":"342"', '"text":"343"')
    done = merge(damaged, damaged)
    assert [(f.newer, f.quarantined, f.added) for f in done.files] == [(2, 1, 2), (2, 1, 0)]
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
