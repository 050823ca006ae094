// @ts-check
// Why: the built program in dist must be that of the sources at hand. A stamp keeps two marks of the inputs: a quick
// one of sizes and times, and one of contents, so that a checkout which only touches files does not build again.

import { createHash } from "node:crypto";
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { join, relative } from "node:path";
import { runChild, tail, withNote } from "./run-child.mjs";

/** Files and folders that the built program is made from. */
const INPUTS = [
  "package-lock.json",
  "package.json",
  "tsconfig.json",
  "vite.cli.config.ts",
  "vite.web.config.ts",
  "scripts/dist.mjs",
  "scripts/fonts.mjs",
  "src",
  "demo",
];
const TEST_FILE = /\.test\.tsx?$/;

/** @typedef {{ quick: string, contents: string }} Marks */

/**
 * The inputs of the build, as paths from the root in a fixed order; tests are not among them.
 * @param {string} root
 * @returns {string[]}
 */
export function inputFiles(root) {
  const files = INPUTS.flatMap((input) => {
    const path = join(root, input);
    if (!existsSync(path)) return [];
    if (statSync(path).isFile()) return [input];
    return readdirSync(path, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && !TEST_FILE.test(entry.name))
      .map((entry) => relative(root, join(entry.parentPath, entry.name)));
  });
  return files.sort();
}

/** @param {string} root @param {readonly string[]} files */
function quickMark(root, files) {
  const hash = createHash("sha256");
  for (const file of files) {
    const { size, mtimeMs } = statSync(join(root, file));
    hash.update(`${file}\0${size}\0${mtimeMs}\0`);
  }
  return hash.digest("hex");
}

/** @param {string} root @param {readonly string[]} files */
function contentsMark(root, files) {
  const hash = createHash("sha256");
  for (const file of files)
    hash
      .update(`${file}\0`)
      .update(readFileSync(join(root, file)))
      .update("\0");
  return hash.digest("hex");
}

/** @param {string} root */
const stampPath = (root) => join(root, "dist", ".stamp.json");

/** @param {string} root @returns {Marks | null} */
function readStamp(root) {
  try {
    return JSON.parse(readFileSync(stampPath(root), "utf8"));
  } catch {
    // No stamp, or half a stamp: either way nothing is known of dist.
    return null;
  }
}

/**
 * Whether dist was built from the present inputs.
 * @param {string} root the package's folder
 */
export function distIsFresh(root) {
  const stamp = readStamp(root);
  if (stamp === null) return false;
  const files = inputFiles(root);
  const quick = quickMark(root, files);
  if (quick === stamp.quick) return true;
  const contents = contentsMark(root, files);
  if (contents !== stamp.contents) return false;
  try {
    writeFileSync(stampPath(root), JSON.stringify({ quick, contents }));
  } catch {
    // On a disk that cannot be written the next look is only slower.
  }
  return true;
}

/** The parts of dist, each with the program that makes it in a given folder. */
const PARTS = [
  { name: "cli", source: "src/cli/main.ts", command: viteBuild("vite.cli.config.ts") },
  { name: "web", source: "src/web/index.html", command: viteBuild("vite.web.config.ts") },
  {
    name: "fonts",
    source: "scripts/fonts.mjs",
    command: (/** @type {string} */ into) => ["scripts/fonts.mjs", into],
  },
];

/** @param {string} config */
function viteBuild(config) {
  return (/** @type {string} */ into) => [
    "node_modules/vite/bin/vite.js",
    "build",
    "--config",
    config,
    "--outDir",
    into,
    "--emptyOutDir",
    "--logLevel",
    "warn",
  ];
}

/**
 * Builds every part beside dist and then moves it in, so that a failed build leaves the old one whole. Call it while
 * holding the lock.
 * @param {string} root
 */
export async function buildDist(root) {
  await withNote("building", async () => {
    // Marked before building: a file saved meanwhile makes the result stale, as it is.
    const files = inputFiles(root);
    const marks = { quick: quickMark(root, files), contents: contentsMark(root, files) };
    const aside = join(root, ".cache", `build-${process.pid}`);
    try {
      const parts = PARTS.filter((part) => existsSync(join(root, part.source)));
      await Promise.all(parts.map((part) => makePart(root, part, join(aside, part.name))));
      mkdirSync(join(root, "dist"), { recursive: true });
      rmSync(stampPath(root), { force: true });
      for (const part of parts) {
        rmSync(join(root, "dist", part.name), { recursive: true, force: true });
        renameSync(join(aside, part.name), join(root, "dist", part.name));
      }
      writeFileSync(stampPath(root), JSON.stringify(marks));
    } finally {
      rmSync(aside, { recursive: true, force: true });
    }
  });
}

/**
 * @param {string} root
 * @param {(typeof PARTS)[number]} part
 * @param {string} into
 */
async function makePart(root, part, into) {
  const env = { ...process.env, NODE_ENV: "production", NO_COLOR: "1" };
  const ended = await runChild(process.execPath, part.command(into), { cwd: root, env });
  if (ended.code !== 0)
    throw new Error(`building ${part.name} failed:\n${tail(withoutStack(ended.output), 25)}`);
}

/** @param {string} output */
const withoutStack = (output) =>
  output
    .split("\n")
    .filter((line) => !/^\s+at /.test(line))
    .join("\n");
