import type { Plugin } from "vite";

const MODULE = '<script async type="module" crossorigin ';

/** Signs beyond ASCII stand only in texts and patterns, where an escape says the same. */
const inAscii = (code: string): string =>
  code.replace(
    /[\u0080-\uffff]/g,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );

/**
 * Makes the page's one script a classic one. Browsers of Chromium's family compile a classic script
 * wholly while the service worker stores it and keep that; a module they parse anew at every start.
 * A classic script is read in whatever encoding the host names, so it has ASCII only.
 */
export function classicScript(): Plugin {
  return {
    name: "classic-script",
    generateBundle: {
      order: "post",
      handler(_, bundle) {
        for (const file of Object.values(bundle))
          if (file.type === "chunk") file.code = inAscii(file.code);
      },
    },
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
