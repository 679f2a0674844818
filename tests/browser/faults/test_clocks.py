"""Clocks that jump: every save is kept in its order, and the jump is flagged (F36)."""

from playwright.sync_api import expect

from pycore.desk.contract.checked import checked
from pycore.journal.chain import chains_of
from pycore.journal.clocks import clock_flags
from pycore.journal.entry import read_line
from pycore.journal.file import PHONE, read_file
from pycore.journal.times import moment_of
from tests.browser.faults.faulty import save_note, type_note
from tests.browser.faults.saving import texts
from tests.browser.files import backup, start_at
from tests.browser.phone import Phone, heading
from tests.browser.server import Server
from tests.browser.stored import rows

READER = "2026-11-25T12:00:00Z"
# The phone's clock at each save, the flags that it sets itself, and those that the office finds.
SAVES = [
    ("2026-10-25T00:30:00Z", [], set()),
    # The doubled hour: 02:30 once more, an hour later.
    ("2026-10-25T01:30:00Z", ["zone"], {"zone"}),
    ("2026-11-25T08:00:00Z", [], set()),
    ("2026-11-25T08:00:00Z", [], set()),
    ("2099-01-15T08:00:00Z", [], {"future"}),
    # Right again, and too early until it has caught up with the year 2099.
    ("2026-11-25T11:00:00Z", ["back"], {"back"}),
    ("2026-11-25T08:00:00Z", ["back"], {"back"}),
    ("1970-01-01T00:00:00Z", ["back"], {"back"}),
    ("2026-11-25T11:30:00Z", [], {"back"}),
]


def test_clocks_that_jump(phone: Phone, server: Server) -> None:
    page = phone.start(timezone="Europe/Berlin")
    page.goto(server.address)
    expect(page.get_by_role("button", name="Add your first machine")).to_be_visible()
    notes = [f"save {number}" for number in range(1, len(SAVES) + 1)]
    for note, (moment, _, _) in zip(notes, SAVES, strict=True):
        page.clock.set_fixed_time(moment)
        type_note(page, note)
        assert save_note(page), f"{note} at {moment} was refused"
    assert texts(page) == notes
    entries = [read_line(row["text"], checked) for row in rows(page)]
    assert [list(entry.clock_flags) for entry in entries] == [own for _, own, _ in SAVES]
    now_s = moment_of(READER, "now")[0]
    found = {(flag.seq, flag.flag) for flag in clock_flags(entries, now_s)}
    wanted = {(seq, flag) for seq, (_, _, flags) in enumerate(SAVES, 1) for flag in flags}
    assert found == wanted
    print(f"F36: {len(SAVES)} saves, 0 refused, flags {sorted(found)}")

    # No page stops at such a clock, and the log shows every entry, those of a day newest first.
    for moment in ("1970-01-01T00:00:00Z", "2099-01-15T08:00:00Z"):
        page.clock.set_fixed_time(moment)
        for place in ("", "handover", "backup", "about", "log"):
            start_at(page, place)
            expect(heading(page)).to_be_visible()
        for day in page.locator(".log-day").all():
            shown = [text.split()[-1] for text in day.locator(".log-row .note").all_inner_texts()]
            assert shown == sorted(shown, reverse=True)
        expect(page.locator(".log-row")).to_have_count(len(SAVES))
    page.clock.set_fixed_time(READER)
    lines = read_file(backup(page), PHONE).lines
    assert lines == [row["text"] for row in rows(page)]
    chains = chains_of(entries, ())
    assert (chains.forks, chains.gaps, chains.breaks) == ((), (), ())
