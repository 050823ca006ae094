// @ts-check
// Why: the tests use a few programs of the machine, which root may install on Debian and Ubuntu without being asked.

import { existsSync } from "node:fs";
import { runChild, tail } from "./run-child.mjs";

/** Whether this is a Debian or one of its kind. */
export const hasApt = () => existsSync("/etc/debian_version") && existsSync("/usr/bin/apt-get");

/** Whether a package may be installed without asking. */
export const mayInstall = () => hasApt() && process.getuid?.() === 0;

/**
 * Installs a package with apt-get. Throws an Error with what apt-get said when it cannot.
 * @param {string} name
 */
export async function installWithApt(name) {
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  await runChild("apt-get", ["update"], { cwd: "/", env });
  const ended = await runChild("apt-get", ["install", "-y", "--no-install-recommends", name], {
    cwd: "/",
    env,
  });
  if (ended.code !== 0)
    throw new Error(
      `${name} could not be installed; apt-get install -y ${name} said:\n${tail(ended.output, 10)}`,
    );
}
