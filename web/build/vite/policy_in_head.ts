import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Plugin } from "vite";

interface HeaderList {
  policy: Record<string, string>;
  ignored_in_meta: string[];
}

const LIST = fileURLToPath(new URL("../headers.json", import.meta.url));

/** The policy for hosts that send no headers, as the first element of the page's head. */
export function policyInHead(): Plugin {
  const list = JSON.parse(readFileSync(LIST, "utf8")) as HeaderList;
  const content = Object.entries(list.policy)
    .filter(([name]) => !list.ignored_in_meta.includes(name))
    .map(([name, value]) => `${name} ${value}`)
    .join("; ");
  return {
    name: "policy-in-head",
    transformIndexHtml: {
      order: "post",
      handler: () => [
        {
          tag: "meta",
          attrs: { "http-equiv": "Content-Security-Policy", content },
          injectTo: "head-prepend",
        },
      ],
    },
  };
}
