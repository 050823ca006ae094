// @ts-check
// Why: each command works on a fresh clone with nothing done first. It installs packages when the lock file changed,
// builds when the sources changed, and takes a few milliseconds when neither did.

import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { buildDist, distIsFresh } from "./dist.mjs";
import { withLock } from "./lock.mjs";
import { installModules, modulesAreFresh } from "./modules.mjs";
import { nodeComplaint } from "./node-version.mjs";

/** The package's own folder. */
export const ROOT = dirname(dirname(fileURLToPath(import.meta.url)));

/**
 * Makes packages and build fit the checkout. Throws an Error whose message is fit for a person.
 * @param {{ build?: boolean, force?: boolean, root?: string }} [wanted] `build: false` stops after the packages;
 *   `force` builds even when fresh
 */
export async function prepare({ build = true, force = false, root = ROOT } = {}) {
  const complaint = nodeComplaint(process.versions.node);
  if (complaint !== null) throw new Error(complaint);
  const isReady = () => modulesAreFresh(root) && !force && (!build || distIsFresh(root));
  if (isReady()) return;
  const lock = join(root, ".cache", "prepare.lock");
  await withLock(
    lock,
    async () => {
      // Another process may have done it while this one waited.
      if (!modulesAreFresh(root)) await installModules(root);
      if (build && (force || !distIsFresh(root))) await buildDist(root);
    },
    () => process.stderr.write("needlework: waiting for another command to finish setting up ...\n"),
  );
}

/**
 * Runs a script's work after setting up; a fault ends it with its message alone and exit code 1.
 * @param {() => Promise<number>} work gives the exit code
 */
export async function runScript(work) {
  try {
    process.exitCode = await work();
  } catch (error) {
    process.stderr.write(`needlework: ${error instanceof Error ? error.message : String(error)}\n`);
    process.exitCode = 1;
  }
}
