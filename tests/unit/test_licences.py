"""web.build.licences: every package that is in the site has its whole licence text."""

import json
import re

import pytest

from web.build import licences as module
from web.build.licences import NOT_SHIPPED, licences
from web.build.paths import LOCKS, WEB
from web.build.phone import MODULE_LIST, WHEELS
from web.build.trouble import Trouble

# The shortest licence in use, ISC, has some 700 characters.
SHORTEST = 600

pytestmark = pytest.mark.skipif(not WHEELS.exists(), reason="needs a site that was built once")


def rows() -> dict[str, dict[str, str]]:
    return {row["name"]: row for row in licences()}


def test_every_npm_package_that_the_page_depends_on_is_there() -> None:
    lock = json.loads((WEB / "package-lock.json").read_text(encoding="utf-8"))["packages"]
    wanted = {
        path.removeprefix("node_modules/")
        for path, facts in lock.items()
        if path and not facts.get("dev")
    }
    assert wanted - NOT_SHIPPED <= rows().keys()


def test_every_python_package_of_the_phone_is_there() -> None:
    names = re.findall(r"^([a-z0-9_-]+)==", (LOCKS / "phone.lock").read_text(), re.MULTILINE)
    assert {*names} - NOT_SHIPPED <= rows().keys()
    assert {"Python", "pyodide", "Pailwright"} <= rows().keys()
    # What is left out is not in the phone's Python.
    modules = json.loads(MODULE_LIST.read_text(encoding="utf-8"))
    assert [name for name in modules if name.split(".")[0] in NOT_SHIPPED] == []


def test_each_text_is_whole_and_names_its_licence() -> None:
    short = [name for name, row in rows().items() if len(row["text"]) < SHORTEST]
    assert short == []
    assert [name for name, row in rows().items() if not row["licence"]] == []
    assert "Mozilla Public License" in rows()["pyodide"]["text"]
    assert "PYTHON SOFTWARE FOUNDATION LICENSE" in rows()["Python"]["text"]
    assert "Redistribution and use" in rows()["segno"]["text"]


def test_a_package_without_a_text_ends_the_build(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(module, "LICENCE_FILE", re.compile("nothing is called like this"))
    with pytest.raises(Trouble, match="preact"):
        licences()
