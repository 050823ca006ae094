// @ts-check
// Why: recordings reach the program changed by other tools, so the tests have one of them change ours.

import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";
import { installWithApt, mayInstall } from "./apt.mjs";
import { withNote } from "./run-child.mjs";

const NAME = process.platform === "win32" ? "ffmpeg.exe" : "ffmpeg";

/**
 * Path of an ffmpeg; null when there is none.
 * @param {NodeJS.ProcessEnv} [env]
 * @returns {string | null}
 */
export function findFfmpeg(env = process.env) {
  const folders = (env.PATH ?? "").split(delimiter).filter((folder) => folder !== "");
  return folders.map((folder) => join(folder, NAME)).find((path) => existsSync(path)) ?? null;
}

/** On Debian or Ubuntu as root installs ffmpeg when it is missing; elsewhere the tests that use it are skipped. */
export async function ensureFfmpeg() {
  if (findFfmpeg() === null && mayInstall())
    await withNote("installing ffmpeg with apt-get", () => installWithApt("ffmpeg"));
}
