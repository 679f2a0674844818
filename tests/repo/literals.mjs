// node tests/repo/literals.mjs FOLDER: prints as JSON every text that a person would see and that stands
// in the code of the page instead of in shared/words. Started in web/, whose TypeScript reads the code.
import { readFileSync, readdirSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";

const typescript = createRequire(join(process.cwd(), "package.json"))("typescript");

const SEEN = new Set(["aria-label", "title", "placeholder", "alt", "label", "summary"]);
// Signs that mean the same everywhere, such as the name of a tool's delete key, have no letters.
const WORD = /\p{L}{2,}/u;
// A sentence of shared/words by its key, which the part that gets it says.
const KEY = /^[a-z_]+(\.[a-z_0-9]+)+$/;

const folder = process.argv[2];
const found = [];

function look(file, node) {
  const text = textOf(node);
  if (text !== undefined && WORD.test(text) && !KEY.test(text)) found.push(`${file}: ${text.trim()}`);
  typescript.forEachChild(node, (child) => look(file, child));
}

function textOf(node) {
  if (typescript.isJsxText(node)) return node.text;
  if (typescript.isJsxAttribute(node) && SEEN.has(node.name.getText())) {
    const value = node.initializer;
    const inside = value && typescript.isJsxExpression(value) ? value.expression : value;
    if (inside && typescript.isStringLiteralLike(inside)) return inside.text;
  }
  // {"words"} between tags.
  if (typescript.isJsxExpression(node) && !typescript.isJsxAttribute(node.parent)) {
    const inside = node.expression;
    if (inside && typescript.isStringLiteralLike(inside)) return inside.text;
  }
  return undefined;
}

for (const name of readdirSync(folder, { recursive: true })) {
  if (!/\.tsx?$/.test(name)) continue;
  const source = readFileSync(join(folder, name), "utf8");
  const kind = name.endsWith("x") ? typescript.ScriptKind.TSX : typescript.ScriptKind.TS;
  const latest = typescript.ScriptTarget.Latest;
  look(name, typescript.createSourceFile(name, source, latest, true, kind));
}
process.stdout.write(JSON.stringify(found));
