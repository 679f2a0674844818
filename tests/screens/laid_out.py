"""How a page is laid out: what parts, is cut, too close, hidden, or too faint to be seen."""

from __future__ import annotations

from playwright.sync_api import Page, ViewportSize

from tests.screens.measure import TARGETS

WIDTHS_PX = (320, 360, 412, 600, 768, 1024, 1280)
PHONE: ViewportSize = {"width": 360, "height": 640}
NARROW: ViewportSize = {"width": 320, "height": 568}
ACROSS: ViewportSize = {"width": 640, "height": 360}
LEAST_GAP_PX, MAIN_PX = 6, 72
# WCAG 2.2, 1.4.11 asks 3:1 of what is needed to see a control; the house asks more.
LINE_RATIO = 4.5

# Numbers that stand on another line than their unit, also where each is an element of its own.
_PARTED = r"""
() => {
  const unit = /\d\u00a0?(?:L|mL|mm|cm|kg|%|Brix|°C|US\u00a0gal|imp\u00a0gal)(?![\w/])/g;
  const blocks = new Map();
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
    let block = node.parentElement;
    if (block.closest("svg, script, noscript, .only-spoken") !== null) continue;
    if (block.getClientRects().length === 0) continue;
    while (getComputedStyle(block).display === "inline") block = block.parentElement;
    blocks.set(block, [...(blocks.get(block) ?? []), node]);
  }
  const isBeside = (one, other) => one.top < other.bottom && other.top < one.bottom;
  const parted = [];
  for (const nodes of blocks.values()) {
    const text = nodes.map((node) => node.data).join("");
    const place = (at) => {
      let left = at;
      for (const node of nodes) {
        if (left <= node.length) return [node, left];
        left -= node.length;
      }
    };
    for (const { 0: found, index } of text.matchAll(unit)) {
      const range = document.createRange();
      range.setStart(...place(index));
      range.setEnd(...place(index + found.length));
      const boxes = [...range.getClientRects()].filter(({ width }) => width > 0);
      if (boxes.some((box) => !isBeside(box, boxes[0]))) parted.push(found);
    }
  }
  for (const row of document.querySelectorAll(".number-field, .text-row")) {
    const sign = row.querySelector(".number-unit, .text-unit");
    const box = row.querySelector("input");
    if (sign === null || box === null) continue;
    if (!isBeside(sign.getBoundingClientRect(), box.getBoundingClientRect()))
      parted.push(sign.textContent);
  }
  return parted;
}
"""
# What is wider than the window, and words that end at an edge.
_CUT = """
() => {
  const cut = [];
  const over = document.documentElement.scrollWidth - innerWidth;
  if (over > 0) {
    const out = [...document.querySelectorAll("body *")].filter((one) =>
      one.closest(".only-spoken, .patterns") === null &&
      one.getBoundingClientRect().right > innerWidth + 0.5);
    const deepest = out.filter((one) => !out.some((other) => one !== other && one.contains(other)));
    const names = deepest.map((one) => `${one.tagName}.${one.getAttribute("class")}`);
    cut.push(`${over} px wider than the window: ${names.slice(0, 3).join(", ")}`);
  }
  for (const one of document.querySelectorAll("main *, header *, footer *")) {
    if (one.closest("svg, .only-spoken, .sheet, h1") !== null || one.clientWidth === 0) continue;
    const style = getComputedStyle(one);
    const isClipped = style.overflowX === "hidden" || one.tagName === "BUTTON";
    if (isClipped && one.scrollWidth > one.clientWidth + 1) cut.push(`cut: ${one.innerText}`);
  }
  for (const word of document.querySelectorAll("main svg text")) {
    const drawing = word.ownerSVGElement.getBoundingClientRect();
    const box = word.getBoundingClientRect();
    if (box.right > drawing.right + 1 || box.left < drawing.left - 1)
      cut.push(`cut: ${word.textContent}`);
  }
  return cut;
}
"""
_CLOSE = """
([targets, least]) => {
  const close = [];
  targets.forEach((one, i) => {
    for (const other of targets.slice(i + 1)) {
      const across = Math.max(one.x - other.x - other.width, other.x - one.x - one.width);
      const down = Math.max(one.y - other.y - other.height, other.y - one.y - one.height);
      if (Math.max(across, down) < least - 0.5)
        close.push(`${one.name} / ${other.name}: ${Math.round(Math.max(across, down))}`);
    }
  });
  return close;
}
"""
_MAIN = """
() => [...document.querySelectorAll(".main-action")].map((one) => {
  const { width, height, bottom } = one.getBoundingClientRect();
  const beside = one.closest(".tick-row") === null ? 0 : 120;
  return { width: width + beside, height, bottom, inner: one.closest("main, footer").clientWidth };
})
"""
# Edges of controls, and lines of drawings, against what lies behind them. A line in the colour of
# its ground parts others: the level bar's edge does so, and the body of a wall clears its inside.
# The eyepiece's rim and line are seen by what they part: field and page, dark and light. The mark
# in the bucket is brass on brass where it ends and stands out from the panel.
_LINES = r"""
(least) => {
  const light = (text) => {
    const [r, g, b] = text.match(/[\d.]+/g).map(Number).map((part) => {
      const share = part / 255;
      return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const isClear = (text) => text === "none" || /rgba\(.*, 0\)/.test(text);
  const behind = (one) => {
    for (let at = one; at !== null; at = at.parentElement) {
      const colour = getComputedStyle(at).backgroundColor;
      if (!isClear(colour)) return colour;
    }
    return getComputedStyle(document.documentElement).backgroundColor;
  };
  const ratio = (one, other) => {
    const [low, high] = [light(one), light(other)].sort((a, b) => a - b);
    return (high + 0.05) / (low + 0.05);
  };
  const faint = [];
  // What was drawn before it and lies under a place of its line, else the ground of the drawing.
  const under = (one, shapes, share) => {
    const at = one.getPointAtLength(share * one.getTotalLength());
    const seen = at.matrixTransform(one.getScreenCTM());
    const fills = shapes.slice(0, shapes.indexOf(one)).filter((other) => {
      const { fill, fillOpacity } = getComputedStyle(other);
      return fill.startsWith("rgb(") && fillOpacity === "1" &&
        other.isPointInFill(seen.matrixTransform(other.getScreenCTM().inverse()));
    });
    const last = fills.at(-1);
    return last === undefined ? behind(one.ownerSVGElement) : getComputedStyle(last).fill;
  };
  // A line may cross several grounds: the middle one counts.
  const middleGround = (one, shapes, stroke) =>
    [0.1, 0.3, 0.5, 0.7, 0.9].map((share) => under(one, shapes, share))
      .sort((a, b) => ratio(stroke, a) - ratio(stroke, b))[2];
  const note = (one, colour, ground, fill = "none") => {
    const isFilled = fill.startsWith("url") ||
      (fill.startsWith("rgb(") && ratio(fill, ground) >= least);
    const found = ratio(colour, ground);
    if (found < least && !isFilled)
      faint.push(`${one.tagName} ${one.getAttribute("class")} ${found.toFixed(1)}:1`);
  };
  for (const one of document.querySelectorAll("main :is(button, input, select), footer button")) {
    const style = getComputedStyle(one);
    if (one.getClientRects().length === 0 || style.opacity === "0") continue;
    if (parseFloat(style.borderTopWidth) === 0) continue;
    note(one, style.borderTopColor, behind(one.parentElement));
  }
  const kinds = "path, rect, circle, ellipse, line, polyline";
  const parting = "pattern, clipPath, mask, defs, " +
    ".level-bar-edge, .eye-rim, .eye-line, .eye-blur, .wall-body, .pour-mark";
  for (const drawing of document.querySelectorAll("svg:not(.sheet svg)")) {
    const shapes = [...drawing.querySelectorAll(kinds)].filter((one) =>
      one.closest(parting) === null && one.getClientRects().length > 0);
    for (const one of shapes) {
      const { stroke, strokeWidth, fill } = getComputedStyle(one);
      if (isClear(stroke) || !stroke.startsWith("rgb") || parseFloat(strokeWidth) === 0) continue;
      note(one, stroke, middleGround(one, shapes, stroke), fill);
    }
  }
  return [...new Set(faint)];
}
"""
# In the order of the keys, each is where the eye expects it, and nothing lies over it.
_FOCUS = """
() => {
  const all = [...document.querySelectorAll("a[href], button, input, select, summary")]
    .filter((one) => one.getClientRects().length > 0);
  const wrong = all.filter((one) => one.tabIndex > 0).map((one) => `tabindex: ${one.outerHTML}`);
  let last = { top: 0, right: 0 };
  for (const one of all) {
    one.focus();
    const named = one.getAttribute("aria-label") ?? one.innerText ?? one.name;
    const { x, y, width, height } = (one.closest("label") ?? one).getBoundingClientRect();
    const met = document.elementFromPoint(x + width / 2, y + height / 2);
    const isMet = met !== null && (one === met || one.contains(met) || met.contains(one) ||
      one.closest("label")?.contains(met) || met.closest("label")?.contains(one));
    if (!isMet) wrong.push(`hidden with the focus: ${named}`);
    const top = y + scrollY;
    const isFoot = one.closest("footer") !== null;
    // A column beside another one begins at the top again.
    if (!isFoot && top + height < last.top && x < last.right)
      wrong.push(`before the one above it: ${named}`);
    if (!isFoot) last = { top, right: x + width };
  }
  scrollTo(0, 0);
  return wrong;
}
"""


def parted(page: Page) -> list[str]:
    """Numbers on another line than their unit, at every width; the size is put back."""
    found = []
    for width in WIDTHS_PX:
        _resize(page, {"width": width, "height": PHONE["height"]})
        found += [f"parted at {width} px: {one!r}" for one in page.evaluate(_PARTED)]
    _resize(page, PHONE)
    return found


def _resize(page: Page, size: ViewportSize) -> None:
    """Another window, and two frames for what measures itself by it."""
    page.set_viewport_size(size)
    page.evaluate("new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)))")


def cut(page: Page) -> list[str]:
    """What does not fit: at 320 and 360 px, across, and with text twice as large."""
    found = []
    for size in (NARROW, ACROSS, PHONE):
        _resize(page, size)
        found += [f"at {size['width']} px: {one}" for one in page.evaluate(_CUT)]
    page.evaluate("() => { document.documentElement.style.fontSize = '200%'; }")
    found += [f"at 200 %: {one}" for one in page.evaluate(_CUT) if "wider" in one]
    page.evaluate("() => { document.documentElement.style.fontSize = ''; }")
    return found


def close(page: Page) -> list[str]:
    """Targets with less than 6 px between them, the page scrolled to its end."""
    page.evaluate("scrollTo(0, document.documentElement.scrollHeight)")
    targets = page.evaluate(TARGETS)
    page.evaluate("scrollTo(0, 0)")
    return [f"close: {one}" for one in page.evaluate(_CLOSE, [targets, LEAST_GAP_PX])]


def main_action(page: Page) -> list[str]:
    """A main action that is low, narrow, or out of sight without scrolling."""
    found = []
    for one in page.evaluate(_MAIN):
        if one["height"] < MAIN_PX - 0.5:
            found.append(f"main action {one['height']:.0f} px high")
        if one["width"] < one["inner"] - 30:
            found.append(f"main action {one['width']:.0f} px wide of {one['inner']}")
        if one["bottom"] > PHONE["height"]:
            found.append(f"main action ends at {one['bottom']:.0f} px")
    return found


def faint_lines(page: Page) -> list[str]:
    """Edges and drawn lines under 4.5:1 in the theme that stands there."""
    return [f"faint line: {one}" for one in page.evaluate(_LINES, LINE_RATIO)]


def focus(page: Page) -> list[str]:
    """What the keys reach out of order, or behind something else."""
    found: list[str] = page.evaluate(_FOCUS)
    return found
