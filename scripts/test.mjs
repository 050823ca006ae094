// @ts-check
// Why: one command says whether the checkout is sound. It runs every check, those that are no tests at once, stops at the first that
// fails and shows its cause, and ends a good run with one line of totals.

import { rmSync } from "node:fs";
import { join, relative } from "node:path";
import { ensureChromium } from "./chromium.mjs";
import { ensureFfmpeg } from "./ffmpeg.mjs";
import { prepare, ROOT, runScript } from "./prepare.mjs";
import { head, runChild, tail } from "./run-child.mjs";
import { firstFailure, groupsOf, readReport, totalsOf } from "./vitest-report.mjs";

/** @typedef {import("./vitest-report.mjs").FileResult} FileResult */

/** @param {string} path */
const inModules = (path) => join(ROOT, "node_modules", path);
const BIOME = inModules("@biomejs/biome/bin/biome");
const TSC = inModules("typescript/bin/tsc");
const VITEST = inModules("vitest/vitest.mjs");
const FAILURE_LINES = 40;

/** Raised with the cause as its message when a check fails. */
class CheckFailed extends Error {}

/** @param {string} program @param {readonly string[]} args */
async function check(program, args) {
  const ended = await runChild(process.execPath, [program, ...args], { cwd: ROOT });
  // These tools tell one fault after the other, so the first cause comes first.
  if (ended.code !== 0) throw new CheckFailed(head(ended.output, FAILURE_LINES));
}

/**
 * Runs the tests of a project, or one file of them, and gives what each file came to.
 * @param {"unit" | "browser"} project
 * @param {{ only?: string, env?: NodeJS.ProcessEnv }} [selection]
 * @returns {Promise<readonly FileResult[]>}
 */
async function tests(project, { only, env } = {}) {
  const reportPath = join(ROOT, ".cache", `tests-${project}-${process.pid}.json`);
  const args = ["run", "--project", project, "--bail", "1", "--reporter", "default", "--reporter", "json"];
  args.push(`--outputFile.json=${relative(ROOT, reportPath)}`);
  if (only !== undefined) args.push(only);
  try {
    const ended = await runChild(process.execPath, [VITEST, ...args], {
      cwd: ROOT,
      env: { ...process.env, NO_COLOR: "1", ...env },
    });
    const results = readReport(reportPath);
    if (ended.code !== 0) {
      const cause = firstFailure(results, ROOT) ?? tail(ended.output, FAILURE_LINES);
      throw new CheckFailed(head(cause, FAILURE_LINES));
    }
    if (totalsOf(results).passed === 0) throw new CheckFailed(`no ${only ?? project} test was found`);
    return results;
  } finally {
    rmSync(reportPath, { force: true });
  }
}

/** @typedef {{ name: string, run: () => Promise<readonly FileResult[] | void> }} Stage */
const LAYERS_TEST = "test/layers.test.ts";

/**
 * The stages of one row run at once and are told in this order; a row begins when the one before it has passed.
 * @type {readonly (readonly Stage[])[]}
 */
const ROWS = [
  [
    { name: "format", run: () => check(BIOME, ["format", "."]) },
    {
      name: "lint",
      run: () => check(BIOME, ["check", "--formatter-enabled=false", "--error-on-warnings", "."]),
    },
    { name: "types", run: () => check(TSC, ["-p", "."]) },
    // Before the rest, since a wrong arrow between layers explains much of what may follow.
    { name: "layers", run: async () => void (await tests("unit", { only: LAYERS_TEST })) },
    { name: "build", run: () => prepare() },
  ],
  [
    {
      name: "unit",
      run: async () => {
        await ensureFfmpeg();
        return tests("unit");
      },
    },
  ],
  [
    {
      name: "browser",
      run: async () => tests("browser", { env: { NEEDLEWORK_CHROMIUM: await ensureChromium() } }),
    },
  ],
];

/**
 * Runs a stage to its end, whatever that is, so that none is left running when another of its row has failed.
 * @param {Stage} stage
 */
async function ended({ name, run }) {
  const began = performance.now();
  try {
    const results = await run();
    return { name, seconds: secondsSince(began), results: results ?? [], cause: null };
  } catch (error) {
    const cause = error instanceof Error ? error.message : String(error);
    return { name, seconds: secondsSince(began), results: [], cause };
  }
}

/** @param {number} sinceMs */
const secondsSince = (sinceMs) => (performance.now() - sinceMs) / 1000;

/** @param {string} word @param {string} name @param {number} seconds */
const stageLine = (word, name, seconds) =>
  `  ${word.padEnd(6)}${name.padEnd(10)}${seconds.toFixed(1).padStart(6)} s`;

/** @param {readonly FileResult[]} results */
function inWords(results) {
  const groups = groupsOf(results, ROOT).map(({ name, passed }) => `${name} ${passed}`);
  return `  ${totalsOf(results).passed} tests${groups.length > 1 ? ` (${groups.join(", ")})` : ""}`;
}

await runScript(async () => {
  const began = performance.now();
  await prepare({ build: false });
  /** @type {FileResult[]} */
  const all = [];
  for (const row of ROWS) {
    // On a terminal what runs is shown, and its line written over when it ends.
    if (process.stdout.isTTY) process.stdout.write(`  ...   ${row.map(({ name }) => name).join(", ")}\r`);
    const ends = await Promise.all(row.map(ended));
    if (process.stdout.isTTY) process.stdout.write("\x1b[K");
    for (const { name, seconds, results, cause } of ends) {
      if (cause !== null) {
        console.log(stageLine("FAIL", name, seconds));
        console.log(`\n${cause}\n`);
        console.log(`needlework: failed at ${name}`);
        return 1;
      }
      console.log(stageLine("ok", name, seconds) + (results.length > 0 ? inWords(results) : ""));
      all.push(...results);
    }
  }
  const { passed, skipped, files } = totalsOf(all);
  const left = skipped > 0 ? `, ${skipped} skipped` : "";
  const seconds = secondsSince(began).toFixed(0);
  console.log(
    `needlework: ${passed} tests in ${files} files passed${left} · format, lint, types, layers clean · ${seconds} s`,
  );
  return 0;
});
