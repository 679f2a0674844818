import { defineConfig } from "vite";
import { VitePWA } from "vite-plugin-pwa";
import { classicScript } from "./build/vite/classic_script";
import { fromEnvironment } from "./build/vite/environment";
import { listFiles } from "./build/vite/list_files";
import { nodeOutside } from "./build/vite/node_outside";
import { licences } from "./build/vite/licences";
import { languages } from "./build/vite/languages";
import { policy, policyInHead } from "./build/vite/policy_in_head";
import { pythonFiles } from "./build/vite/python_files";

const { buildId, phoneFolder, licencesFile, siteFolder } = fromEnvironment();
const python = pythonFiles(phoneFolder);

export default defineConfig({
  base: "./",
  // One classic script has no place of its own to look from once it has run: the page's is the same.
  experimental: {
    renderBuiltUrl: (name, { hostType }) =>
      hostType === "js"
        ? { runtime: `new URL(${JSON.stringify(name)},document.baseURI).href` }
        : { relative: true },
  },
  define: {
    __BUILD_ID__: JSON.stringify(buildId),
    __POLICY__: JSON.stringify(policy),
    __PYTHON__: JSON.stringify(python.description),
  },
  // The policy refuses data: addresses, so nothing may become one.
  build: {
    outDir: siteFolder,
    emptyOutDir: true,
    assetsInlineLimit: 0,
    modulePreload: false,
    target: "es2022",
    cssCodeSplit: false,
    rolldownOptions: { output: { format: "iife", codeSplitting: false, strict: true } },
  },
  worker: { format: "es", plugins: () => [nodeOutside()] },
  plugins: [
    policyInHead(),
    classicScript(),
    languages(),
    licences(licencesFile),
    python.plugin,
    VitePWA({
      strategies: "injectManifest",
      srcDir: "src",
      filename: "sw.ts",
      registerType: "prompt",
      injectRegister: false,
      manifest: false,
      injectManifest: {
        globPatterns: ["**/*"],
        globIgnores: ["sw.js"],
        maximumFileSizeToCacheInBytes: 64e6,
        dontCacheBustURLsMatching: /^(assets\/|py-)/,
        manifestTransforms: [listFiles(siteFolder)],
      },
    }),
  ],
});
