"""The zip for a static host: everything of the site, the page that explains it, nothing else."""

import zipfile
from pathlib import Path

import pytest

from web.build import bundle
from web.build.bundle import INSTRUCTIONS, WITHDRAW, refuse_place, write_bundle
from web.build.server import DEFAULT_PORT
from web.build.trouble import Trouble


@pytest.fixture
def site(tmp_path: Path) -> Path:
    """Two files of a site that nobody has built."""
    folder = tmp_path / "dist"
    (folder / "assets").mkdir(parents=True)
    (folder / "index.html").write_text("<p>page</p>", encoding="utf-8")
    (folder / "assets" / "a.js").write_text("0", encoding="utf-8")
    return folder


def test_bundle_holds_the_site_and_the_instructions(site: Path, tmp_path: Path) -> None:
    target = tmp_path / "out.zip"
    assert write_bundle(target, site) == target.stat().st_size
    with zipfile.ZipFile(target) as written:
        assert sorted(written.namelist()) == [
            "how-to-host.html",
            "site/assets/a.js",
            "site/index.html",
            "withdraw/sw.js",
        ]
        assert written.read("site/index.html") == b"<p>page</p>"
        assert written.read("how-to-host.html") == INSTRUCTIONS.read_bytes()
        assert written.read("withdraw/sw.js") == WITHDRAW.read_bytes()


def test_same_site_gives_the_same_bytes(site: Path, tmp_path: Path) -> None:
    first, second = tmp_path / "a.zip", tmp_path / "b.zip"
    write_bundle(first, site)
    (site / "index.html").touch()
    write_bundle(second, site)
    assert first.read_bytes() == second.read_bytes()


def test_half_a_bundle_never_takes_the_place_of_a_whole_one(
    site: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    target = tmp_path / "out.zip"
    write_bundle(target, site)
    whole = target.read_bytes()
    with pytest.raises(OSError, match="no-such-folder"):
        write_bundle(tmp_path / "no-such-folder" / "out.zip", site)
    monkeypatch.setattr(bundle, "INSTRUCTIONS", tmp_path / "gone")
    with pytest.raises(OSError, match="gone"):
        write_bundle(target, site)
    assert target.read_bytes() == whole


def test_a_place_that_cannot_be_written_to_is_said_before_the_build(tmp_path: Path) -> None:
    refuse_place(tmp_path / "out.zip")
    with pytest.raises(Trouble, match="is a folder"):
        refuse_place(tmp_path)
    with pytest.raises(Trouble, match=r"no folder .*none") as caught:
        refuse_place(tmp_path / "none" / "out.zip")
    assert "-o" in caught.value.way_on
    with pytest.raises(OSError, match="name too long"):
        refuse_place(tmp_path / ("x" * 300))
    assert list(tmp_path.iterdir()) == []


def test_instructions_name_the_port_that_the_server_takes() -> None:
    assert f"tcp:{DEFAULT_PORT} tcp:{DEFAULT_PORT}" in INSTRUCTIONS.read_text(encoding="utf-8")
