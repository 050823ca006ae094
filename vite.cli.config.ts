import { defineConfig } from "vite";

/** The command line, for Node: our sources in a few files, every package left where npm put it. */
export default defineConfig({
  oxc: { jsx: { runtime: "automatic", importSource: "preact" } },
  build: {
    ssr: "src/cli/main.ts",
    target: "node20",
    outDir: "dist/cli",
    copyPublicDir: false,
    minify: false,
    rolldownOptions: {
      output: { entryFileNames: "main.js", chunkFileNames: "[name]-[hash].js" },
    },
  },
});
