"""Counts in the app's sentences are written like its other numbers: long ones in groups."""

import json
import re
import subprocess
from pathlib import Path

import pytest

from web.build.node import ensure_node
from web.build.paths import ROOT, WEB
from web.build.steps import Steps

_RUN = """
import { readFileSync, writeFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import ts from "typescript";
const [, folder, locale, words] = process.argv;
const options = { module: ts.ModuleKind.ESNext, target: ts.ScriptTarget.ES2022 };
for (const name of ["decimal", "say"]) {
  const source = readFileSync(`src/words/${name}.ts`, "utf8");
  const code = ts.transpileModule(source, { compilerOptions: options }).outputText;
  writeFileSync(`${folder}/${name}.mjs`, code.replaceAll('"./decimal"', '"./decimal.mjs"'));
}
const { speak, sayCount, sayCountPieces } = await import(pathToFileURL(`${folder}/say.mjs`).href);
speak(locale, JSON.parse(readFileSync(words, "utf8")));
const counts = [1, 999, 9999, 19999, 1000000];
const pieces = (n) => sayCountPieces("log.count", n, {}).find((piece) => piece.isFilled)?.text;
process.stdout.write(JSON.stringify(counts.map((n) => [sayCount("log.count", n), pieces(n)])));
"""


@pytest.mark.parametrize("language", ["en", "de"])
def test_long_counts_stand_in_groups(language: str, tmp_path: Path) -> None:
    words = ROOT / "shared" / "words" / f"{language}.json"
    locale = {"en": "en-GB", "de": "de-DE"}[language]
    command = [*ensure_node(Steps()).node, "--input-type=module", "-e", _RUN]
    done = subprocess.run(
        [*command, str(tmp_path), locale, str(words)],
        capture_output=True,
        text=True,
        cwd=WEB,
        check=True,
    )
    told = json.loads(done.stdout)
    # From 10,000 on, parted by a narrow no-break space: a comma or a point could be a decimal sign.
    for written, (sentence, piece) in zip(
        ("9999", "19\u202f999", "1\u202f000\u202f000"), told[2:], strict=True
    ):
        assert re.fullmatch(rf"{written}\s\D+", sentence)
        assert piece == written
