// @ts-check
// Why: two commands started at once must not install or build over each other. The lock is a file holding its
// owner's process id, touched every second; it counts as abandoned when the owner has gone or stopped touching it.

import { mkdirSync, readFileSync, renameSync, rmSync, statSync, utimesSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";

const TOUCH_EVERY_MS = 1000;
const ABANDONED_AFTER_MS = 60_000;
const RETRY_EVERY_MS = 100;

/** @param {unknown} error @param {string} code */
const hasCode = (error, code) => error instanceof Error && "code" in error && error.code === code;

/**
 * Runs the work while holding the lock, waiting for another owner to finish first.
 * @template T
 * @param {string} path the lock file
 * @param {() => Promise<T>} work
 * @param {() => void} [onWait] called once when the lock is held by someone else
 * @returns {Promise<T>}
 */
export async function withLock(path, work, onWait) {
  mkdirSync(dirname(path), { recursive: true });
  let told = false;
  while (!take(path)) {
    if (isAbandoned(path)) putAside(path);
    else {
      if (!told) onWait?.();
      told = true;
      await sleep(RETRY_EVERY_MS);
    }
  }
  const touching = setInterval(() => touch(path), TOUCH_EVERY_MS);
  touching.unref();
  try {
    return await work();
  } finally {
    clearInterval(touching);
    rmSync(path, { force: true });
  }
}

/** @param {string} path */
function take(path) {
  try {
    writeFileSync(path, String(process.pid), { flag: "wx" });
    return true;
  } catch (error) {
    if (hasCode(error, "EEXIST")) return false;
    throw error;
  }
}

/** @param {string} path */
function touch(path) {
  try {
    utimesSync(path, new Date(), new Date());
  } catch (error) {
    if (!hasCode(error, "ENOENT")) throw error;
  }
}

/** @param {string} path */
function isAbandoned(path) {
  try {
    if (Date.now() - statSync(path).mtimeMs > ABANDONED_AFTER_MS) return true;
    const owner = Number(readFileSync(path, "utf8"));
    return owner > 0 && !isRunning(owner);
  } catch (error) {
    if (hasCode(error, "ENOENT")) return false;
    throw error;
  }
}

/** @param {number} processId */
function isRunning(processId) {
  try {
    process.kill(processId, 0);
    return true;
  } catch (error) {
    return !hasCode(error, "ESRCH");
  }
}

/**
 * Renaming first means that of two who find the lock abandoned only one removes it.
 * @param {string} path
 */
function putAside(path) {
  const aside = `${path}.${process.pid}`;
  try {
    renameSync(path, aside);
    rmSync(aside, { force: true });
  } catch (error) {
    if (!hasCode(error, "ENOENT")) throw error;
  }
}
