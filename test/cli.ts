/** Runs the command line as a person does: the launcher in a process of its own. */

import { spawn } from "node:child_process";
import { fileURLToPath } from "node:url";
import { prepare } from "../scripts/prepare.mjs";

// Built before the first call, so that no call has anything to say about building.
await prepare();

export const ROOT = fileURLToPath(new URL("../", import.meta.url));
const LAUNCHER = `${ROOT}bin/needlework.mjs`;

export interface Ended {
  readonly code: number | null;
  readonly stdout: string;
  readonly stderr: string;
  readonly bytes: Buffer;
}

export interface Surroundings {
  readonly cwd?: string;
  readonly input?: string | Uint8Array;
  readonly env?: NodeJS.ProcessEnv;
}

/** The end of a call with these arguments. */
export function needlework(
  args: readonly string[],
  { cwd = ROOT, input = "", env }: Surroundings = {},
): Promise<Ended> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [LAUNCHER, ...args], { cwd, env: { ...process.env, ...env } });
    const out: Buffer[] = [];
    const err: Buffer[] = [];
    child.stdout.on("data", (chunk: Buffer) => out.push(chunk));
    child.stderr.on("data", (chunk: Buffer) => err.push(chunk));
    child.on("error", reject);
    child.on("close", (code) => {
      const bytes = Buffer.concat(out);
      resolve({ code, bytes, stdout: bytes.toString(), stderr: Buffer.concat(err).toString() });
    });
    // A command that ends without reading leaves a closed pipe behind.
    child.stdin.on("error", () => undefined);
    child.stdin.end(input);
  });
}

/** The launcher's process itself, for commands that run until they are ended. */
export const startNeedlework = (args: readonly string[]) =>
  spawn(process.execPath, [LAUNCHER, ...args], { cwd: ROOT });

/** Whether a text holds what a person should never see. */
export const hasStack = (text: string): boolean => /^\s+at .+(:\d+:\d+|<anonymous>)/m.test(text);
