// node messages.mjs CONTRACT OUT: the types of every message, for the page.
import { readFileSync, writeFileSync } from "node:fs";
import { compile } from "json-schema-to-typescript";
import { format } from "prettier";

const [contractFile, target] = process.argv.slice(2);
const { definitions, operations } = JSON.parse(readFileSync(contractFile, "utf8"));

// The browser has an Error, a Request and a Reply-like Response of its own.
const renamed = { error: "desk_error", request: "desk_request", reply: "desk_reply" };
const rename = (name) => renamed[name] ?? name;
// Without this, a part that may hold anything would become "an object with any keys".
const says = ["type", "$ref", "enum", "const", "oneOf", "anyOf", "allOf"];
const openToAll = (part) =>
  typeof part === "object" && !says.some((word) => word in part)
    ? { ...part, tsType: "unknown" }
    : part;
const withNames = (part) => {
  if (Array.isArray(part)) return part.map(withNames);
  if (part === null || typeof part !== "object") return part;
  return Object.fromEntries(
    Object.entries(part).map(([key, value]) => {
      if (key === "$ref" && typeof value === "string") {
        return [key, `#/definitions/${rename(value.split("/").pop())}`];
      }
      if (key !== "properties") return [key, withNames(value)];
      const fields = Object.entries(value).map(([name, of]) => [name, openToAll(withNames(of))]);
      return [key, Object.fromEntries(fields)];
    }),
  );
};
const object = (properties) => ({
  type: "object",
  properties,
  required: Object.keys(properties),
  additionalProperties: false,
});
const of = (name) => ({ $ref: `#/definitions/${name}` });

const schema = {
  title: "Operations",
  description: "What can be asked: the body of each question and the result of its answer.",
  ...object(
    Object.fromEntries(
      operations.map((op) => [op, object({ body: of(`${op}_body`), result: of(`${op}_result`) })]),
    ),
  ),
  definitions: Object.fromEntries(
    Object.entries(definitions).map(([name, part]) => [rename(name), withNames(part)]),
  ),
};
const types = await compile(schema, "Operations", {
  bannerComment: "// Generated from shared/schema by `python3 -m web contract`. Do not edit.",
  unreachableDefinitions: true,
  additionalProperties: false,
  ignoreMinAndMaxItems: true,
  format: false,
});
// Where a type came from says nothing to a reader of the types.
const remark = /( \* ?\n)? \* This interface was referenced by [^\n]*\n \* via the [^\n]*\n/g;
const plain = types.replace(remark, "").replace(/\/\*\*\n \*\/\n/g, "");
writeFileSync(target, await format(plain, { parser: "typescript", printWidth: 100 }));
