import js from "@eslint/js";
import { defineConfig, globalIgnores } from "eslint/config";
import typescript from "typescript-eslint";

const node = Object.fromEntries(
  ["process", "console", "URL", "Buffer"].map((name) => [name, "readonly"]),
);

export default defineConfig(
  globalIgnores(["node_modules/", "dist/", ".build/", "src/core/messages.ts"]),
  js.configs.recommended,
  {
    files: ["**/*.ts", "**/*.tsx"],
    extends: [typescript.configs.strictTypeChecked],
    languageOptions: {
      parserOptions: {
        project: [
          "./tsconfig.json",
          "./tsconfig.worker.json",
          "./tsconfig.sw.json",
          "./tsconfig.build.json",
        ],
        tsconfigRootDir: import.meta.dirname,
      },
    },
    rules: {
      // Numbers read well inside a text and cannot surprise there.
      "@typescript-eslint/restrict-template-expressions": ["error", { allowNumber: true }],
      "max-lines": ["error", 300],
      "max-lines-per-function": ["error", 50],
      "no-eval": "error",
      "no-implied-eval": "off",
      "no-new-func": "error",
      "no-console": "error",
    },
  },
  { files: ["build/**/*.mjs", "eslint.config.js"], languageOptions: { globals: node } },
  {
    files: ["build/withdraw/sw.js"],
    languageOptions: { globals: { self: "readonly", Response: "readonly" } },
  },
);
