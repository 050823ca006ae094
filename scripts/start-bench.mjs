// @ts-check
// Why: what looks at the running bench, be it to measure it or to take its picture, starts it as a person would, by its launcher.

import { spawn } from "node:child_process";
import { join } from "node:path";
import { ROOT } from "./prepare.mjs";

/** Starts the bench on the demo; its address, and the way to end it. */
export async function startBench() {
  const bench = spawn(process.execPath, [join(ROOT, "bin/needlework.mjs"), "bench"], { cwd: ROOT });
  const address = await new Promise((resolve, reject) => {
    let said = "";
    const hear = (/** @type {Buffer} */ piece) => {
      said += String(piece);
      const found = /http:\/\/127\.0\.0\.1:\d+/.exec(said);
      if (found) resolve(found[0]);
    };
    bench.stdout.on("data", hear);
    bench.stderr.on("data", hear);
    bench.on("exit", () => reject(new Error(`the bench did not start:\n${said}`)));
  });
  return { address: String(address), end: () => bench.kill() };
}
