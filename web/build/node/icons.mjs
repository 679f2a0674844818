// node web/build/node/icons.mjs: draws the icons of the manifest from the one drawing. Run it when
// the drawing changed; the pictures are committed, so a build needs no drawing program.
import { readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";
import { Resvg, initWasm } from "@resvg/resvg-wasm";

const folder = fileURLToPath(new URL("../../public/icons/", import.meta.url));
const drawing = readFileSync(`${folder}icon.svg`, "utf8");
await initWasm(
  readFileSync(createRequire(import.meta.url).resolve("@resvg/resvg-wasm/index_bg.wasm")),
);

// A phone may cut a maskable icon down to a circle of four fifths of its width.
const maskable = drawing.replace(
  '<g fill="none"',
  '<g transform="translate(56 56) scale(0.78125)" fill="none"',
);
if (maskable === drawing) throw new Error("the drawing's group was not found");

for (const [name, svg, width] of [
  ["icon-192.png", drawing, 192],
  ["icon-512.png", drawing, 512],
  ["maskable-512.png", maskable, 512],
]) {
  const picture = new Resvg(svg, { fitTo: { mode: "width", value: width } }).render();
  writeFileSync(folder + name, picture.asPng());
}
