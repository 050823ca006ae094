// @ts-check
// Why: the closing line of `npm test` gives totals, and its failure the first cause; both are read from the report
// that the test runner writes as JSON.

import { existsSync, readFileSync } from "node:fs";
import { relative } from "node:path";

/** @typedef {{ fullName: string, status: string, failureMessages?: string[] }} Assertion */
/** @typedef {{ name: string, status: string, message?: string, assertionResults: Assertion[] }} FileResult */
/**
 * @typedef {object} Totals
 * @property {number} passed tests
 * @property {number} skipped tests
 * @property {number} files test files that ran
 */

/** @param {string} path @returns {readonly FileResult[]} */
export function readReport(path) {
  return existsSync(path) ? JSON.parse(readFileSync(path, "utf8")).testResults : [];
}

/**
 * @param {readonly FileResult[]} results
 * @returns {Totals}
 */
export function totalsOf(results) {
  const tests = results.flatMap((file) => file.assertionResults);
  return {
    passed: tests.filter((test) => test.status === "passed").length,
    skipped: tests.filter((test) => test.status !== "passed" && test.status !== "failed").length,
    files: results.length,
  };
}

/**
 * Passed tests by kind: checks against published values, property tests (those that draw cases with fast-check), browser
 * tests, and the rest.
 * @param {readonly FileResult[]} results
 * @param {string} root
 */
export function groupsOf(results, root) {
  /** @type {Map<string, number>} */
  const passedByKind = new Map();
  for (const file of results) {
    const kind = kindOf(file.name, root);
    passedByKind.set(kind, (passedByKind.get(kind) ?? 0) + totalsOf([file]).passed);
  }
  return [...passedByKind].map(([name, passed]) => ({ name, passed }));
}

/** @param {string} path @param {string} root */
function kindOf(path, root) {
  const name = relative(root, path).replaceAll("\\", "/");
  if (name.startsWith("test/published/")) return "published values";
  if (name.startsWith("test/browser/")) return "browser";
  return readFileSync(path, "utf8").includes('from "fast-check"') ? "property" : "unit";
}

/**
 * The first test that failed, or the first file that could not be run, with its reason; null when all is well.
 * @param {readonly FileResult[]} results
 * @param {string} root
 */
export function firstFailure(results, root) {
  for (const file of results) {
    const where = relative(root, file.name);
    const failed = file.assertionResults.find((test) => test.status === "failed");
    if (failed) return `${where}: ${failed.fullName}\n${(failed.failureMessages ?? []).join("\n")}`;
    if (file.status === "failed") return `${where}\n${file.message ?? ""}`;
  }
  return null;
}
