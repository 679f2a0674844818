"""The example's year: its balance closes, its log is whole, and it says that it is invented."""

import json

import pytest

from pycore.desk.contract.checked import checked
from pycore.journal.file import OFFICE
from pycore.journal.merge import merged
from tests.demo.__main__ import SHOP, TARGET, text_of_year
from tests.demo.sump import Sump
from tests.demo.year import Year


def test_stored_year_is_the_one_that_the_seed_makes() -> None:
    assert TARGET.read_text(encoding="utf-8") == text_of_year()


def test_balance_of_every_sump_closes() -> None:
    year = Year(json.loads(SHOP.read_text(encoding="utf-8")))
    before = {m.name: (m.sump.water_l, m.sump.concentrate_l) for m in year.machines}
    year.run()
    for machine in year.machines:
        water_l, concentrate_l = before[machine.name]
        sump, account = machine.sump, machine.sump.account
        water_l += account.water_in_l - account.water_out_l - account.evaporated_l
        concentrate_l += account.concentrate_in_l - account.concentrate_out_l
        assert sump.water_l == pytest.approx(water_l, abs=1e-6)
        assert sump.concentrate_l == pytest.approx(concentrate_l, abs=1e-6)
        # A year of a workshop turns the sump over more than once, and none runs dry.
        assert account.water_in_l > machine.facts["full_l"]
        assert sump.volume_l > 0.3 * machine.facts["full_l"]


def test_water_alone_evaporates_and_carry_out_keeps_the_strength() -> None:
    sump = Sump(92.0, 8.0)
    sump.take_out(10)
    assert sump.strength_pct == pytest.approx(8)
    sump.evaporate(10)
    assert sump.concentrate_l == pytest.approx(7.2)
    assert sump.strength_pct == pytest.approx(9)


def test_log_of_the_year_is_whole_and_marked() -> None:
    done = merged([("year", TARGET.read_text(encoding="utf-8"))], checked, OFFICE)
    chains = done.chains
    assert (chains.forks, chains.gaps, chains.breaks, chains.missing_heads) == ((), (), (), ())
    assert done.union.quarantined == ()
    assert {flag.flag for flag in done.flags} == {"zone"}
    assert all('"build":"example, invented"' in line for line in done.union.lines)
    kinds = {entry.kind for entry in done.union.entries}
    assert kinds >= {"check", "recheck", "pour", "clean_out", "note", "machine_state"}
    assert len({entry.machine for entry in done.union.entries if entry.machine}) == 6
