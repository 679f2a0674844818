import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Plugin } from "vite";

interface HeaderList {
  policy: Record<string, string>;
  ignored_in_meta: string[];
}

const list = JSON.parse(
  readFileSync(fileURLToPath(new URL("../headers.json", import.meta.url)), "utf8"),
) as HeaderList;

function policyWithout(leftOut: readonly string[]): string {
  return Object.entries(list.policy)
    .filter(([name]) => !leftOut.includes(name))
    .map(([name, value]) => `${name} ${value}`)
    .join("; ");
}

/** The policy as the server sends it. */
export const policy = policyWithout([]);

/** The policy for hosts that send no headers, as the first element of the page's head. */
export function policyInHead(): Plugin {
  const content = policyWithout(list.ignored_in_meta);
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
