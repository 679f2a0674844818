"""The shipped worker in the real page, under the real policy, answers as pycore does here."""

import json
from typing import Any

import pytest
from playwright.sync_api import Page

from pycore.desk import handle
from tests.examples.files import examples, request_text
from tests.published.checks import files, rows
from tests.unit.desk.lathe import WHEEL_LATHE, check
from web.build.paths import DIST

# The page may make its policy "app" only once, so the test borrows that one.
KEEP_POLICY = """
const make = TrustedTypePolicyFactory.prototype.createPolicy;
TrustedTypePolicyFactory.prototype.createPolicy = function (...rest) {
  const policy = make.apply(this, rest);
  if (rest[0] === "app") globalThis.borrowed = policy;
  return policy;
};
"""
# The page makes its policy when it starts its own worker, which may be after it has loaded. A wait
# of the driver's own would ask by eval, which the policy refuses.
UNTIL_BORROWED = """
async () => {
  while (globalThis.borrowed === undefined) await new Promise((done) => setTimeout(done, 20));
}
"""
# One call in the form that the page's own client sends (comlink's messages).
ASK = """
([path, name, texts]) => new Promise((resolve, reject) => {
  const address = globalThis.borrowed.createScriptURL(new URL(path, document.baseURI).href);
  const worker = new Worker(address, { type: "module", name });
  const call = (id, method, given) => worker.postMessage({
    id, type: "APPLY", path: [method], argumentList: given.map((value) => ({ type: "RAW", value })),
  });
  const replies = [];
  worker.onerror = (event) => reject(new Error(`worker: ${event.message}`));
  worker.onmessage = ({ data }) => {
    if (data.type !== "RAW") return reject(new Error(JSON.stringify(data)));
    if (data.id !== "start") replies.push(data.value);
    const next = texts[replies.length];
    if (next !== undefined) call(String(replies.length), "handle", [next]);
    else { worker.terminate(); resolve(replies); }
  };
  call("start", "started", []);
})
"""


def worker_file() -> str:
    """The one worker script of the build."""
    (found,) = (DIST / "assets").glob("worker-*.js")
    return found.relative_to(DIST).as_posix()


def check_texts() -> list[str]:
    """Every row of shared/checks that goes through the door, and every example."""
    bodies: list[tuple[str, dict[str, Any]]] = []
    for file, row in rows():
        if row["kind"] == "unit":
            bodies.append(
                (
                    "read_quantity",
                    {"text": row["number"], "unit": row["unit"], "quantity": row["quantity"]},
                )
            )
        if row["kind"] == "tank":
            sump = {**files()[file]["sumps"][row["sump"]], "volume_known_by": "poured"}
            bodies.append(("assess_sump", {"sump": sump, "dip": {"depth": row["dip"]}}))
    asked = [json.dumps({"v": 1, "id": "p", "op": op, "body": body}) for op, body in bodies]
    return [*asked, *(request_text(example["request"]) for example in examples().values())]


def assert_alike(one: Any, two: Any, place: str) -> None:
    """Equal, numbers to a relative 1e-12: two C libraries may differ in the last digit."""
    if isinstance(one, dict):
        assert one.keys() == two.keys(), place
        for name in one:
            if name != "python":
                assert_alike(one[name], two[name], f"{place}.{name}")
    elif isinstance(one, list):
        assert len(one) == len(two), place
        for i, (a, b) in enumerate(zip(one, two, strict=True)):
            assert_alike(a, b, f"{place}[{i}]")
    elif isinstance(one, float) and isinstance(two, int | float):
        assert two == pytest.approx(one, rel=1e-12, abs=1e-15), place
    else:
        assert one == two, place


def asked_in_page(page: Page, texts: list[str], start: str = "image") -> list[Any]:
    """Replies of the shipped worker to these texts, Python started in this way."""
    page.add_init_script(KEEP_POLICY)
    page.reload()
    page.evaluate(UNTIL_BORROWED)
    replies: list[Any] = page.evaluate(ASK, [worker_file(), start, texts])
    return replies


@pytest.mark.parametrize("start", ["image", "plain"])
def test_every_row_and_example_through_the_shipped_worker(page: Page, start: str) -> None:
    texts = check_texts()
    replies = asked_in_page(page, texts, start)
    assert len(replies) == len(texts) > 80
    for text, reply in zip(texts, replies, strict=True):
        assert_alike(json.loads(handle(text)), reply, text[:90])


def test_many_checks_through_the_shipped_worker(page: Page) -> None:
    texts = [
        json.dumps(
            {"v": 1, "id": "c", "op": "plan_check", "body": check(WHEEL_LATHE, str(depth), shows)}
        )
        for depth in range(0, 481, 24)
        for shows in ("1.5", "4.0", "5.3", "8.0")
    ]
    for text, reply in zip(texts, asked_in_page(page, texts), strict=True):
        assert reply["ok"]
        assert_alike(json.loads(handle(text)), reply, text[-90:])
