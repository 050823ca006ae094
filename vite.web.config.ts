import { defineConfig } from "vite";

/** The bench, for browsers: file names carry their content's hash, so that they may be kept for ever. */
export default defineConfig({
  root: "src/web",
  oxc: { jsx: { runtime: "automatic", importSource: "preact" } },
  build: {
    target: "es2022",
    outDir: "../../dist/web",
    emptyOutDir: true,
    assetsDir: "assets",
    // The content security policy takes no data: addresses for scripts, styles and fonts.
    assetsInlineLimit: 0,
    reportCompressedSize: false,
  },
});
