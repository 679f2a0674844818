"""Words that are torn inside, answers that a list cuts short, and a crowded top bar."""

from __future__ import annotations

from playwright.sync_api import Page

# A word on two lines without a hyphen: a headless Chromium has no dictionary to set one by. What a
# phone's list cannot show whole. A step and a way to the other mode that are not side by side.
_TORN = r"""
() => {
  const torn = [];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
    const block = node.parentElement;
    if (block.closest("svg, script, noscript, .only-spoken, pre, .versions") !== null) continue;
    // What is drawn on one pixel is for a screen reader.
    if (block.getClientRects().length === 0 || block.clientWidth === 1) continue;
    for (const { 0: word, index } of node.data.matchAll(/[\p{L}\p{N}\u00ad]{2,}/gu)) {
      const range = document.createRange();
      range.setStart(node, index);
      range.setEnd(node, index + word.length);
      const tops = new Set([...range.getClientRects()]
        .filter(({ width }) => width > 0).map(({ top }) => Math.round(top)));
      if (tops.size > 1 && !word.includes("\u00ad")) torn.push(`torn: ${word}`);
    }
  }
  const canvas = document.createElement("canvas").getContext("2d");
  for (const list of document.querySelectorAll("main select")) {
    const style = getComputedStyle(list);
    canvas.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
    const arrow = 20;
    const room = list.clientWidth - parseFloat(style.paddingLeft) -
      parseFloat(style.paddingRight) - arrow;
    for (const { text } of list.options)
      if (canvas.measureText(text).width > room) torn.push(`cut in its list: ${text}`);
  }
  const step = document.querySelector(".top-step");
  const way = document.querySelector(".top-switch");
  if (step !== null && way !== null &&
      Math.abs(step.getBoundingClientRect().top - way.getBoundingClientRect().top) > 4)
    torn.push(`a third line in the top bar: ${step.innerText} ${way.innerText}`);
  return [...new Set(torn)];
}
"""


def torn(page: Page) -> list[str]:
    """What is torn or cut at the size that the window has."""
    found: list[str] = page.evaluate(_TORN)
    return found
