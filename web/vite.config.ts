import { defineConfig } from "vite";
import { VitePWA } from "vite-plugin-pwa";
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
    modulePreload: { polyfill: false },
    target: "es2022",
  },
  worker: { format: "es", plugins: () => [nodeOutside()] },
  plugins: [
    policyInHead(),
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
