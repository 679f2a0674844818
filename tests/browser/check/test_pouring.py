"""Pouring a saved recipe: ticks, undo, a dead phone, stopping early, and what the log then says."""

import pytest
from playwright.sync_api import Page, expect

from tests.browser.files import start_at
from tests.browser.phone import Phone, heading
from tests.browser.pouring import pour_all, pour_bucket, start_pouring
from tests.browser.server import Server
from tests.browser.stored import entries, folded
from tests.browser.walk import press

pytestmark = pytest.mark.usefixtures("machine_on_phone")


def litres(typed: dict[str, str]) -> float:
    """An amount of the log in litres."""
    return float(typed["text"]) / (1000 if typed["unit"] == "mL" else 1)


def test_a_whole_pour_stands_in_the_log_as_the_recipe_said(page: Page) -> None:
    buckets = start_pouring(page)
    pour_all(page, buckets)
    expect(page.get_by_text("Run the pump for 30 minutes.")).to_be_visible()
    expect(page.get_by_text("Reading due at")).to_be_visible()
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    press(page, "Back to the machines")
    expect(page.get_by_role("link", name="Wheel lathe")).to_contain_text("Reading due at")
    (check,), (plan,), (pour,) = (entries(page, kind) for kind in ("check", "plan", "pour"))
    totals = check["shown"]["plan"]["totals"]
    went = pour["body"]["pours"]
    assert plan["body"] == {"check": check["id"], "pours": went}
    assert pour["body"]["plan"] == plan["id"]
    assert pour["body"]["finished"] is True
    assert pour["body"]["looked_even"] is True
    assert sum(row["count"] for row in went) == totals["buckets"] == buckets
    for name in ("water", "concentrate"):
        poured_l = sum(row["count"] * litres(row[name]) for row in went if name in row)
        assert abs(poured_l - totals[f"{name}_l"]) < 1e-9
    machine = folded(page)
    assert machine["open_pours"] == []
    assert machine["recheck"]["pour"] == pour["id"]
    assert machine["since_measured"]["concentrate_l"] == pytest.approx(totals["concentrate_l"])


def test_all_ticked_and_left_is_not_called_unfinished(page: Page) -> None:
    """All buckets were in and only Save was missing: "Pouring is not finished", it said."""
    buckets = start_pouring(page)
    pour_all(page, buckets)
    start_at(page)
    machine = page.get_by_role("link", name="Wheel lathe").first
    expect(machine).to_contain_text(f"{buckets} of {buckets} buckets poured, not saved")
    machine.click()
    expect(page.get_by_role("main")).to_contain_text("Everything is in. The last tick was ")
    press(page, "Save what was poured")
    expect(heading(page)).to_have_text("All in")


def test_a_killed_phone_comes_back_to_its_bucket(phone: Phone, server: Server) -> None:
    page = phone.start()
    page.goto(server.address)
    buckets = start_pouring(page)
    pour_bucket(page, 1)
    pour_bucket(page, 2)
    press(page, "Water is in")
    expect(page.get_by_role("button", name="Concentrate is in")).to_be_visible()
    phone.close()
    page = phone.start()
    page.goto(server.address)
    row = page.get_by_role("link", name="Wheel lathe")
    expect(row).to_contain_text(f"2 of {buckets} buckets poured")
    row.click()
    page.get_by_role("button", name="Go on pouring").click()
    expect(heading(page)).to_have_text("Where you were")
    main = page.get_by_role("main")
    expect(main).to_contain_text(f"You had poured 2 of {buckets} buckets.")
    expect(main).to_contain_text("Water is in")
    press(page, "No, go on from there")
    expect(heading(page)).to_have_text(f"Bucket 3 of {buckets}")
    expect(page.get_by_role("button", name="Concentrate is in")).to_be_visible()


def test_what_was_poured_without_a_tick_is_told_afterwards(phone: Phone, server: Server) -> None:
    page = phone.start()
    page.goto(server.address)
    buckets = start_pouring(page)
    pour_bucket(page, 1)
    page.reload()
    press(page, "Yes, bucket 2 is in")
    pour_all(page, buckets, first=3)
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    (pour,) = entries(page, "pour")
    assert [row["count"] for row in pour["body"]["pours"] if row.get("about")] == [1]
    assert sum(row["count"] for row in pour["body"]["pours"]) == buckets


def test_every_tick_is_undone(page: Page) -> None:
    start_pouring(page)
    press(page, "Water is in")
    press(page, "Concentrate is in")
    expect(page.get_by_role("button", name="Stirred, it looks even")).to_be_visible()
    for state in ("Concentrate is in", "Water is in", "Right drum, gloves on"):
        press(page, "Undo")
        expect(page.get_by_role("button", name=state, exact=True)).to_be_visible()
    expect(page.get_by_role("button", name="Undo")).to_be_disabled()


def test_one_tick_for_each_bucket_and_its_undo(page: Page) -> None:
    buckets = start_pouring(page)
    press(page, "One tick for each bucket")
    press(page, "Bucket 1 is poured")
    expect(heading(page)).to_have_text(f"Bucket 2 of {buckets}")
    press(page, "Undo")
    expect(heading(page)).to_have_text(f"Bucket 1 of {buckets}")
    press(page, "One tick for each step")
    expect(page.get_by_role("button", name="Water is in")).to_be_visible()


def test_stopping_early_logs_what_went_in(page: Page) -> None:
    start_pouring(page)
    pour_bucket(page, 1)
    press(page, "Water is in")
    page.get_by_role("link", name="Stop here").click()
    expect(heading(page)).to_have_text("What went in?")
    press(page, "That is all")
    expect(page.get_by_text("Choose what of this bucket is in the sump.")).to_be_visible()
    # The rest of a recipe is for buckets as it says them.
    later = page.get_by_role("button", name="The rest comes later")
    for chosen, waits in (("Nothing of it", 1), ("Something else", 0), ("Only its water", 0)):
        page.get_by_role("radio", name=chosen).check(force=True)
        expect(later).to_have_count(waits)
        changed = page.get_by_text("its other buckets hold no longer")
        expect(changed).to_have_count(1 - waits)
    press(page, "That is all")
    expect(heading(page)).to_have_text("Saved to the log")
    (check,), (pour,) = entries(page, "check"), entries(page, "pour")
    first = check["shown"]["plan"]["pours"][0]
    mix, water = pour["body"]["pours"]
    assert (mix["count"], mix["kind"]) == (1, "mix")
    assert litres(mix["water"]) == pytest.approx(first["water_l"])
    assert litres(mix["concentrate"]) == pytest.approx(first["concentrate_l"])
    assert water == {"count": 1, "kind": "water", "water": mix["water"]}
    assert pour["body"]["finished"] is True
    assert "recheck_due_at" in pour["body"]
    assert "looked_even" not in pour["body"]
    machine = folded(page)
    assert machine["since_measured"]["water_l"] == pytest.approx(2 * first["water_l"])
    assert machine["since_measured"]["concentrate_l"] == pytest.approx(first["concentrate_l"])


def test_the_rest_comes_later_and_is_not_counted_twice(page: Page) -> None:
    buckets = start_pouring(page)
    pour_bucket(page, 1)
    page.get_by_role("link", name="Stop here").click()
    press(page, "The rest comes later")
    expect(heading(page)).to_have_text("Saved to the log")
    (open_pour,) = folded(page)["open_pours"]
    assert (open_pour["buckets_planned"], open_pour["buckets_poured"]) == (buckets, 1)
    page.get_by_role("link", name="Go on pouring").click()
    pour_all(page, buckets, first=2)
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    first, rest = entries(page, "pour")
    assert (first["body"]["finished"], rest["body"]["finished"]) == (False, True)
    counts = [sum(row["count"] for row in pour["body"]["pours"]) for pour in (first, rest)]
    assert counts == [1, buckets - 1]
    assert folded(page)["open_pours"] == []


def test_a_tick_that_cannot_be_kept_is_not_shown(page: Page) -> None:
    start_pouring(page)
    page.evaluate("() => { Storage.prototype.setItem = () => { throw new Error('full'); }; }")
    press(page, "Water is in")
    expect(page.get_by_role("alert")).to_have_text("Not saved, try again.")
    expect(page.get_by_role("button", name="Water is in")).to_be_visible()
