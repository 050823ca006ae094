// @ts-check
// Why: node_modules must be what package-lock.json says before anything else runs. A stamp with the lock file's
// hash makes the check cost one small file; npm's own record lets a hand-run `npm ci` count as done.

import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { runChild, tail, withNote } from "./run-child.mjs";

/** @param {string} root */
const stampPath = (root) => join(root, "node_modules", ".needlework-lock");
/** @param {string} root */
const lockHash = (root) =>
  createHash("sha256")
    .update(readFileSync(join(root, "package-lock.json")))
    .digest("hex");
/** @param {string} path */
const readIfThere = (path) => (existsSync(path) ? readFileSync(path, "utf8") : "");

/**
 * Whether node_modules was installed from the present lock file.
 * @param {string} root the package's folder
 */
export const modulesAreFresh = (root) => readIfThere(stampPath(root)) === lockHash(root);

/**
 * Makes node_modules match the lock file; call it while holding the lock.
 * @param {string} root
 */
export async function installModules(root) {
  if (!npmInstalledTheSame(root)) await withNote("installing packages", () => npmCi(root));
  writeFileSync(stampPath(root), lockHash(root));
}

/**
 * Compares the lock file with the record npm leaves of what it installed. A package missing from the record is
 * in order only when it is optional (made for another system).
 * @param {string} root
 */
export function npmInstalledTheSame(root) {
  const record = readIfThere(join(root, "node_modules", ".package-lock.json"));
  if (record === "") return false;
  const installed = JSON.parse(record).packages;
  const locked = JSON.parse(readFileSync(join(root, "package-lock.json"), "utf8")).packages;
  const differs = Object.entries(locked).some(([path, wanted]) => {
    if (path === "") return false;
    const found = installed[path];
    return found === undefined
      ? wanted.optional !== true
      : found.version !== wanted.version || found.integrity !== wanted.integrity;
  });
  return !differs && Object.keys(installed).every((path) => locked[path] !== undefined);
}

/** @param {string} root */
async function npmCi(root) {
  // A NODE_ENV of production would leave out the build tools.
  const args = ["ci", "--include=dev", "--no-audit", "--no-fund", "--prefer-offline"];
  const npm = process.env.npm_execpath;
  const ended =
    npm?.endsWith("npm-cli.js") === true
      ? await runChild(process.execPath, [npm, ...args], { cwd: root })
      : await runChild("npm", args, { cwd: root, shell: process.platform === "win32" });
  if (ended.code !== 0)
    throw new Error(`the packages could not be installed; npm ci said:\n${tail(ended.output, 15)}`);
}
