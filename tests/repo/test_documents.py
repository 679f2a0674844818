"""Every command and every place that README and DEVELOPERS name is there."""

import importlib.util
import json
import re
import shlex
from pathlib import Path

import pytest

from tests.run import _parser as parser_of_tests
from tests.run import _place
from web.build.command import _parser as web_parser
from web.build.paths import ROOT, WEB

DOCUMENTS = [ROOT / name for name in ("README.md", "DEVELOPERS.md") if (ROOT / name).exists()]
CODE = re.compile(r"```[a-z]*\n(.*?)```|`([^`\n]+)`", re.DOTALL)
PICTURE = re.compile(r"!\[[^\]]+\]\(([^)]+)\)")
WITHIN = re.compile(r"\]\(#([^)]+)\)")
HEADING = re.compile(r"^#+ (.+)$", re.MULTILINE)
PLACE = re.compile(r"^\.?[\w.-]+(/[\w.*<>-]+)+/?$")
MADE = ("web/dist", "web/.build", "web/node_modules", "tests/.output", ".venv", "py-")


def pieces(path: Path) -> list[str]:
    """Lines of code blocks and of code in a sentence."""
    found = CODE.findall(path.read_text(encoding="utf-8"))
    return [
        line.strip()
        for block, inline in found
        for line in (block or inline).splitlines()
        if line.strip()
    ]


def commands(path: Path) -> list[list[str]]:
    """Everything that starts a Python module."""
    lines = [line.split("|")[-1].split("#")[0] for line in pieces(path)]
    return [shlex.split(line) for line in lines if re.match(r"\s*python3? -m ", line)]


@pytest.mark.parametrize("path", DOCUMENTS, ids=lambda path: path.name)
def test_commands_exist(path: Path) -> None:
    found = commands(path)
    assert found
    for _, _, module, *arguments in found:
        assert importlib.util.find_spec(module) is not None, module
        if module == "web":
            web_parser().parse_args(arguments)
        elif module == "tests":
            for part in parser_of_tests().parse_args(arguments).parts:
                assert _place(part)


@pytest.mark.parametrize("path", DOCUMENTS, ids=lambda path: path.name)
def test_npm_scripts_exist(path: Path) -> None:
    scripts = json.loads((WEB / "package.json").read_text(encoding="utf-8"))["scripts"]
    named = [found for line in pieces(path) for found in re.findall(r"npm run ([\w:]+)", line)]
    assert [name for name in named if name not in scripts] == []


@pytest.mark.parametrize("path", DOCUMENTS, ids=lambda path: path.name)
def test_places_exist(path: Path) -> None:
    named = [
        line.rstrip("/") for line in pieces(path) if PLACE.match(line) and not line.startswith(MADE)
    ]
    missing = [name for name in named if "<" not in name and not list(ROOT.glob(name))]
    assert missing == []


@pytest.mark.parametrize("path", DOCUMENTS, ids=lambda path: path.name)
def test_pictures_exist(path: Path) -> None:
    missing = [
        name
        for name in PICTURE.findall(path.read_text(encoding="utf-8"))
        if not (ROOT / name).is_file()
    ]
    assert missing == []


@pytest.mark.parametrize("path", DOCUMENTS, ids=lambda path: path.name)
def test_links_within_the_page_lead_to_a_heading(path: Path) -> None:
    text = path.read_text(encoding="utf-8")
    anchors = {
        re.sub(r"[^\w -]", "", heading.lower()).replace(" ", "-")
        for heading in HEADING.findall(text)
    }
    assert anchors
    assert [name for name in WITHIN.findall(text) if name not in anchors] == []


def test_readme_names_the_two_commands() -> None:
    readme = (ROOT / "README.md").read_text(encoding="utf-8")
    assert "python3 -m web" in readme
    assert "python3 -m tests" in readme


def test_readme_takes_an_entry_out_that_is_in_the_invented_year() -> None:
    readme = (ROOT / "README.md").read_text(encoding="utf-8")
    (entry,) = re.findall(r"pycore tombstone all\.jsonl (\S+)", readme)
    year = (ROOT / "shared" / "demo" / "year.txt").read_text(encoding="utf-8")
    assert f'{{"id":"{entry}",' in year
