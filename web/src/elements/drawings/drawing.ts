// Reads the SVG that pycore draws and makes its nodes one by one. Only what such a drawing is made of
// is let through: the page's policy allows no markup to be set, and so nothing has to be trusted.

const SVG = "http://www.w3.org/2000/svg";
const XML = "http://www.w3.org/XML/1998/namespace";

const ELEMENTS = new Set(["svg", "g", "line", "rect", "path", "polygon", "text"]);
const ATTRIBUTES = new Set([
  "d",
  "data-mark",
  "fill",
  "font-family",
  "font-size",
  "font-weight",
  "height",
  "points",
  "rx",
  "shape-rendering",
  "stroke",
  "stroke-dasharray",
  "stroke-width",
  "text-anchor",
  "transform",
  "viewBox",
  "width",
  "x",
  "x1",
  "x2",
  "xml:space",
  "xmlns",
  "y",
  "y1",
  "y2",
]);

/** A tag with its attributes, or a piece of text; what is neither ends the reading. */
const PIECE = /<(\/?)([a-z]+)((?:\s+[\w:-]+="[^"<]*")*)\s*(\/?)>|([^<]+)/gy;
const ATTRIBUTE = /([\w:-]+)="([^"]*)"/g;

const SIGNS: Readonly<Record<string, string>> = {
  "&amp;": "&",
  "&lt;": "<",
  "&gt;": ">",
  "&quot;": '"',
  "&#39;": "'",
};

function plain(text: string): string {
  return text.replace(/&[a-z#0-9]+;/g, (sign) => SIGNS[sign] ?? "\ufffd");
}

function elementOf(name: string, attributes: string): SVGElement {
  if (!ELEMENTS.has(name)) throw new TypeError(`<${name}> is not part of a drawing`);
  const element = document.createElementNS(SVG, name);
  for (const [, key = "", value = ""] of attributes.matchAll(ATTRIBUTE)) {
    if (!ATTRIBUTES.has(key)) throw new TypeError(`${key} is not part of a drawing`);
    if (key === "xml:space") element.setAttributeNS(XML, key, plain(value));
    // The element lies in the SVG namespace already.
    else if (key !== "xmlns") element.setAttribute(key, plain(value));
  }
  return element;
}

/** The drawing as nodes. Throws TypeError for anything that pycore's drawings do not hold. */
export function readDrawing(markup: string): SVGElement {
  const open: SVGElement[] = [];
  let root: SVGElement | null = null;
  let at = 0;
  for (const piece of markup.matchAll(PIECE)) {
    const [whole, close, name = "", attributes = "", empty, text] = piece;
    at += whole.length;
    const parent = open.at(-1);
    if (text !== undefined) parent?.append(plain(text));
    else if (close === "/") open.pop();
    else {
      const element = elementOf(name, attributes);
      root ??= element;
      parent?.append(element);
      if (empty !== "/") open.push(element);
    }
  }
  if (root === null || at !== markup.length || open.length > 0)
    throw new TypeError("this is not a whole drawing");
  return root;
}
