import type { Plugin } from "vite";

const MODULE = '<script async type="module" crossorigin ';

/**
 * Makes the page's one script a classic one. Browsers of Chromium's family compile a classic script
 * wholly while the service worker stores it and keep that; a module they parse anew at every start.
 */
export function classicScript(): Plugin {
  return {
    name: "classic-script",
    transformIndexHtml: {
      order: "post",
      handler(html) {
        const [before, after, more] = html.split(MODULE);
        if (before === undefined || after === undefined || more !== undefined)
          throw new Error(`expected one ${MODULE} in the page`);
        return `${before}<script async ${after}`;
      },
    },
  };
}
