"""Small defects in the rooms of pycore, one after the other, and which no test notices.

Each defect meets the module's own tests and doctests first; what they do not notice meets, with
``--wide``, all unit tests, the published tables natively and most of the properties. Tests are
loaded once for the defects inside functions that nothing calls meanwhile, and anew for each of
the others, or for every one with ``--anew``.
"""

import argparse
import sys
import time
from contextlib import ExitStack
from pathlib import Path

from tests.mutants.changes import compiled, mutants
from tests.mutants.collected import collected
from tests.mutants.explained import explained
from tests.mutants.trial import Tests, name_of, passes
from web.build.paths import ROOT

ROOMS = ("quantity", "reading", "recipe", "journal")
# Without a defect a module's own tests take about one second, and the wider set about twenty.
OWN_CPU_S = 6
WIDE_CPU_S = 90
# Left out: the shipped bundle and other processes, which no mutant reaches; random sumps in
# gallons, which walk through the same lines as those in litres; what tries the messages and not
# the numbers; and the longest Monte Carlo run.
LEFT_OUT = (
    "shipped", "agree", "test_command", "US-", "imperial-", "hostile", "same_answer",
    "order_of_keys", "whole_numbers", "rough_is_said",
)  # fmt: skip
WIDE = [
    "tests/unit", "tests/published", "tests/properties",
    "-k", " and ".join(f"not {name}" for name in LEFT_OUT),
]  # fmt: skip


def modules(names: list[str]) -> list[Path]:
    """Files of rooms (``quantity``) and modules (``recipe.marks``), without generated ones."""
    found: list[Path] = []
    for name in names or ROOMS:
        place = ROOT / "pycore" / name.replace(".", "/")
        files = sorted(place.rglob("*.py")) if place.is_dir() else [place.with_suffix(".py")]
        found += [file for file in files if file.stem not in ("__init__", "known", "validators")]
    return found


def own_tests(path: Path) -> list[str]:
    """The unit tests that mirror a module, in one file or more of its room, and its doctests."""
    folder = ROOT / "tests" / "unit" / path.parent.relative_to(ROOT / "pycore")
    names = (f"test_{path.name}", f"test_{path.stem}_*.py")
    mirrored = [file for name in names for file in sorted(folder.rglob(name))]
    return [str(file.relative_to(ROOT)) for file in (*mirrored, path)]


def _check_whole(tests: Tests) -> None:
    if not passes(tests, None):
        raise SystemExit(f"The tests of {tests.name} fail without any defect.")


def _try(path: Path, is_wide: bool, is_anew: bool) -> tuple[str, int]:
    name, source = name_of(path), path.read_text(encoding="utf-8")
    known = explained(name.removeprefix("pycore."))
    tried = list(mutants(source, str(path)))
    codes = [mutant.code for mutant in tried]
    left, noticed = list(range(len(tried))), []
    sets = [(own_tests(path), OWN_CPU_S), *([(WIDE, WIDE_CPU_S)] if is_wide else [])]
    for arguments, most_s in sets:
        tests = Tests(arguments, name, path, most_s)
        _check_whole(tests)
        if passes(tests, compile("raise RuntimeError", str(path), "exec")):
            raise SystemExit(f"The tests of {name} do not meet what takes its place.")
        asked, left = left, []
        with ExitStack() as stack:
            loaded = collected(tests, compiled(source, str(path)), codes)
            waiting = None if is_anew else stack.enter_context(loaded)
            for turn in asked:
                if not (waiting.passes(turn) if waiting else passes(tests, codes[turn])):
                    continue
                left.append(turn)
                # At once, since whoever stops a long run wants to know what it has found.
                if arguments is sets[-1][0] and tried[turn].name not in known:
                    print(f"survived: {name} {tried[turn]}", flush=True)
        # Once more: a package that went meanwhile would have looked like defects noticed.
        _check_whole(tests)
        noticed.append(len(asked) - len(left))
    survivors = {tried[turn].name for turn in left}
    for gone in sorted(known - survivors):
        print(f"explained, but noticed or gone: {name} {gone}", flush=True)
    unexplained = len(survivors - known)
    figures = [len(tried), *noticed, len(left), unexplained]
    return f"{name:<28}" + "".join(f"{count:12}" for count in figures), unexplained


def main() -> int:
    """Prints every unexplained survivor, then a line for each module; 1 if there is any."""
    parser = argparse.ArgumentParser(prog="python3 -m tests.mutants")
    parser.add_argument("names", nargs="*", metavar="MODULE", help="quantity, recipe.marks, ...")
    parser.add_argument("--wide", action="store_true", help="survivors meet more tests")
    parser.add_argument("--anew", action="store_true", help="tests loaded anew for each (slow)")
    wanted = parser.parse_args()
    started_s = time.monotonic()
    tried = [_try(path, wanted.wide, wanted.anew) for path in modules(wanted.names)]
    heads = ["mutants", "own", *(["wide"] if wanted.wide else []), "survived", "unexplained"]
    print(" " * 28 + "".join(f"{head:>12}" for head in heads))
    print("\n".join(line for line, _ in tried))
    print(f"{time.monotonic() - started_s:.0f} s")
    return 1 if any(unexplained for _, unexplained in tried) else 0


if __name__ == "__main__":
    sys.exit(main())
