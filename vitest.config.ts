import { defineConfig } from "vitest/config";

export default defineConfig({
  oxc: { jsx: { runtime: "automatic", importSource: "preact" } },
  test: {
    projects: [
      {
        extends: true,
        test: {
          name: "unit",
          setupFiles: ["test/pinned-chance.ts"],
          include: ["src/**/*.test.{ts,tsx}", "test/**/*.test.{ts,tsx}"],
          exclude: ["test/browser/**"],
          testTimeout: 60_000,
          // A process serves many files, since starting one costs more than most files do: no test may leave anything behind.
          isolate: false,
          unstubGlobals: true,
          restoreMocks: true,
        },
      },
      {
        extends: true,
        test: {
          name: "browser",
          // A machine that is busy with others can starve a browser; a real fault fails twice.
          retry: 1,
          include: ["test/browser/**/*.test.ts"],
          testTimeout: 120_000,
          hookTimeout: 120_000,
          globalSetup: ["test/browser/build-page.ts"],
          // These tests wait for a browser most of their time; each file has a browser and a server of its own.
          maxWorkers: 2,
        },
      },
    ],
  },
});
