/** Runs the command line as a person does: the launcher in a process of its own; or, for many small calls, without one. */

import { spawn } from "node:child_process";
import { fileURLToPath } from "node:url";
import { vi } from "vitest";
import { prepare } from "../scripts/prepare.mjs";
import { run } from "../src/cli/run.ts";

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

/**
 * The end of a call that reads no stdin, run in this process: what the launcher comes to, without the start of a process. One at a
 * time, since the streams are the process's own.
 */
export async function needleworkHere(args: readonly string[]): Promise<Omit<Ended, "bytes">> {
  const said = { stdout: "", stderr: "" };
  const spies = (["stdout", "stderr"] as const).map((name) =>
    vi.spyOn(process[name], "write").mockImplementation((text) => {
      said[name] += String(text);
      return true;
    }),
  );
  try {
    const code = await run(args);
    return { code, ...said };
  } finally {
    for (const spy of spies) spy.mockRestore();
  }
}

/** The launcher's process itself, for commands that run until they are ended. */
export const startNeedlework = (args: readonly string[]) =>
  spawn(process.execPath, [LAUNCHER, ...args], { cwd: ROOT });

/** Whether a text holds what a person should never see. */
export const hasStack = (text: string): boolean => /^\s+at .+(:\d+:\d+|<anonymous>)/m.test(text);
