// The requests that decide which modules the phone needs.
import { existsSync, readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";

// Texts that are refused, so that the modules of the error paths are found as well.
const refused = [
  "",
  "not json",
  '{"v": 1, "v": 1}',
  '{"v": 1, "id": "n", "op": "describe", "body": {"x": NaN}}',
  JSON.stringify({ v: 1, id: "u", op: "no_such_operation", body: {} }),
  JSON.stringify({ v: 2, id: "v", op: "describe", body: {} }),
];
const always = [JSON.stringify({ v: 1, id: "first", op: "describe", body: {} })];

/** Every example's request as text, then requests that must be refused. */
export function requestTexts(folder) {
  const names = existsSync(folder) ? readdirSync(folder, { recursive: true }) : [];
  const examples = names
    .filter((name) => name.endsWith(".json"))
    .sort()
    .map((name) => {
      const content = JSON.parse(readFileSync(join(folder, name), "utf8"));
      if (content.request === undefined) throw new Error(`${name} has no "request"`);
      return typeof content.request === "string"
        ? content.request
        : JSON.stringify(content.request);
    });
  return [...always, ...examples, ...refused];
}

/** Asks everything; every answer has to be JSON with "ok" in it. */
export function askAll(handle, texts) {
  return texts.map((text) => {
    const reply = handle(text);
    if (typeof JSON.parse(reply).ok !== "boolean")
      throw new Error(`no answer to ${text}: ${reply}`);
    return reply;
  });
}
