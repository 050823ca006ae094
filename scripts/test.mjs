// @ts-check
// Why: one command says whether the checkout is sound. It runs every check in order, stops at the first that fails
// and shows its cause, and ends a good run with one line of totals.

import { rmSync } from "node:fs";
import { join, relative } from "node:path";
import { ensureChromium } from "./chromium.mjs";
import { prepare, ROOT, runScript } from "./prepare.mjs";
import { runChild, tail } from "./run-child.mjs";
import { firstFailure, readReport, totalsOf } from "./vitest-report.mjs";

/** @typedef {import("./vitest-report.mjs").Totals} Totals */

/** @param {string} path */
const inModules = (path) => join(ROOT, "node_modules", path);
const BIOME = inModules("@biomejs/biome/bin/biome");
const TSC = inModules("typescript/bin/tsc");
const VITEST = inModules("vitest/vitest.mjs");
const FAILURE_LINES = 60;

/** Raised with the cause as its message when a check fails. */
class CheckFailed extends Error {}

/** @param {string} program @param {readonly string[]} args */
async function check(program, args) {
  const ended = await runChild(process.execPath, [program, ...args], { cwd: ROOT });
  if (ended.code !== 0) throw new CheckFailed(tail(ended.output, FAILURE_LINES));
}

/**
 * Runs tests and gives their totals.
 * @param {"unit" | "browser"} project
 * @param {{ only?: string, exclude?: string, env?: NodeJS.ProcessEnv }} [selection]
 * @returns {Promise<Totals>}
 */
async function tests(project, { only, exclude, env } = {}) {
  const reportPath = join(ROOT, ".cache", `tests-${project}-${process.pid}.json`);
  const args = ["run", "--project", project, "--bail", "1", "--reporter", "default", "--reporter", "json"];
  args.push(`--outputFile.json=${relative(ROOT, reportPath)}`);
  if (exclude !== undefined) args.push("--exclude", exclude);
  if (only !== undefined) args.push(only);
  try {
    const ended = await runChild(process.execPath, [VITEST, ...args], {
      cwd: ROOT,
      env: { ...process.env, NO_COLOR: "1", ...env },
    });
    const results = readReport(reportPath);
    if (ended.code !== 0) {
      const cause = firstFailure(results, ROOT) ?? tail(ended.output, FAILURE_LINES);
      throw new CheckFailed(cause.trim().split("\n").slice(0, FAILURE_LINES).join("\n"));
    }
    const totals = totalsOf(results);
    if (totals.passed === 0) throw new CheckFailed(`no ${only ?? project} test was found`);
    return totals;
  } finally {
    rmSync(reportPath, { force: true });
  }
}

/** @typedef {{ name: string, run: () => Promise<Totals | void> }} Stage */
const LAYERS_TEST = "test/layers.test.ts";

/** @type {readonly Stage[]} */
const STAGES = [
  { name: "format", run: () => check(BIOME, ["format", "."]) },
  {
    name: "lint",
    run: () => check(BIOME, ["check", "--formatter-enabled=false", "--error-on-warnings", "."]),
  },
  { name: "types", run: () => check(TSC, ["-p", "."]) },
  { name: "layers", run: () => tests("unit", { only: LAYERS_TEST }) },
  { name: "set-up", run: () => prepare() },
  { name: "published values", run: () => tests("unit", { only: "test/published/" }) },
  { name: "unit and property", run: () => tests("unit", { exclude: `{${LAYERS_TEST},test/published/**}` }) },
  {
    name: "browser",
    run: async () => tests("browser", { env: { NEEDLEWORK_CHROMIUM: await ensureChromium() } }),
  },
];

/** @param {number} sinceMs */
const secondsSince = (sinceMs) => (performance.now() - sinceMs) / 1000;

/** @param {Totals | void} totals */
const inWords = (totals) =>
  totals ? `  ${totals.passed} tests${totals.skipped > 0 ? `, ${totals.skipped} skipped` : ""}` : "";

await runScript(async () => {
  const began = performance.now();
  const sum = { passed: 0, skipped: 0, files: 0 };
  await prepare({ build: false });
  for (const stage of STAGES) {
    const stageBegan = performance.now();
    try {
      const totals = await stage.run();
      if (totals) {
        sum.passed += totals.passed;
        sum.skipped += totals.skipped;
        sum.files += totals.files;
      }
      console.log(
        `  ok    ${stage.name.padEnd(18)}${secondsSince(stageBegan).toFixed(1).padStart(6)} s${inWords(totals)}`,
      );
    } catch (error) {
      console.log(`  FAIL  ${stage.name.padEnd(18)}${secondsSince(stageBegan).toFixed(1).padStart(6)} s`);
      console.log(`\n${error instanceof Error ? error.message : String(error)}\n`);
      console.log(`needlework: failed at ${stage.name}`);
      return 1;
    }
  }
  const skipped = sum.skipped > 0 ? `, ${sum.skipped} skipped` : "";
  console.log(
    `needlework: ${sum.passed} tests in ${sum.files} files passed${skipped} · format, lint, types, layers clean · ${secondsSince(began).toFixed(0)} s`,
  );
  return 0;
});
