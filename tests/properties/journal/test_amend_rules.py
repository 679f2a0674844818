"""The page's corrections beside pycore's: the same lines stand the same way on both sides."""

import json
import random
import subprocess
from typing import Any

from pycore.journal.amend import Standing
from tests.phones import Phone, check
from tests.unit.journal.reading import standing_of
from web.build.node import ensure_node
from web.build.paths import WEB
from web.build.steps import Steps

SEED, CASES, MOST_AMENDMENTS = 20261126, 300, 7
_RUN = """
import { readFileSync } from "node:fs";
import ts from "typescript";
const source = readFileSync(process.argv[1], "utf8");
const options = { module: ts.ModuleKind.ESNext, target: ts.ScriptTarget.ES2022 };
const { outputText } = ts.transpileModule(source, { compilerOptions: options });
const code = `data:text/javascript,${encodeURIComponent(outputText)}`;
const { amendmentOf, amendedBy, standingBy } = await import(code);
const cases = JSON.parse(readFileSync(0, "utf8"));
const found = cases.map(({ lines, targets }) => {
  const all = lines.flatMap((line) => {
    const found = amendmentOf(line);
    return found === null ? [] : [{ ...found, isDisputed: false }];
  });
  const groups = amendedBy(all);
  return targets.map((id) => {
    const plain = { standing: "as_written", by: [] };
    const { standing, by, said } = standingBy(groups, id, "check") ?? plain;
    const depth = said?.content.dip.depth.text ?? "";
    return [standing, by.map((one) => one.id).sort(), depth];
  });
});
process.stdout.write(JSON.stringify(found));
"""


def _amend(chance: random.Random, phones: list[Phone], targets: list[str]) -> None:
    """Corrections and withdrawals of entries and of each other, some of which settle others."""
    ids: list[str] = []
    for at in range(chance.randint(0, MOST_AMENDMENTS)):
        phone, target = chance.choice(phones), chance.choice(targets + ids)
        settles = chance.sample(ids, chance.randint(0, len(ids))) if chance.random() < 0.3 else []
        more = {"settles": settles} if settles else {}
        if chance.random() < 0.6:
            kind = "note" if chance.random() < 0.1 else "check"
            content = {"text": "x"} if kind == "note" else check(str(100 + at))
            body = {"corrects": target, "kind": kind, "content": content}
            name = "correction"
        else:
            body, name = {"retracts": target}, "withdrawal"
        ids.append(phone.save(name, {**body, "reason": "r", **more}, 1000 + at))


def _case(chance: random.Random) -> tuple[dict[str, Any], list[Any]]:
    phones = [Phone(title) for title in "abc"]
    targets = [phones[0].save("check", check(), 0), phones[1].save("check", check(), 60)]
    _amend(chance, phones, targets)
    lines = [json.loads(line) for phone in phones for line in phone.lines]
    chance.shuffle(lines)
    standings = {one.id: one for one in standing_of(*phones).values()}
    wanted = [_told(standings[one]) for one in targets]
    return {"lines": lines, "targets": targets}, wanted


def _told(one: Standing) -> list[Any]:
    """How it stands, by which amendments, and the depth of the correction that it reads with."""
    depth = one.content["dip"]["depth"]["text"]
    return [one.standing, sorted(one.by), "" if one.content == one.entry.body else depth]


def test_page_and_pycore_agree_about_what_an_entry_says_now() -> None:
    chance = random.Random(SEED)
    cases = [_case(chance) for _ in range(CASES)]
    command = [*ensure_node(Steps()).node, "--input-type=module", "-e", _RUN]
    done = subprocess.run(
        [*command, str(WEB / "src" / "store" / "log" / "amend.ts")],
        input=json.dumps([given for given, _ in cases]),
        capture_output=True,
        text=True,
        cwd=WEB,
        check=True,
    )
    found = json.loads(done.stdout)
    assert found == [wanted for _, wanted in cases]
    told = [one for wanted in found for one in wanted]
    seen = {standing for standing, _, _ in told}
    assert seen == {"as_written", "corrected", "withdrawn", "conflict"}
    assert any(standing == "withdrawn" and depth for standing, _, depth in told)
