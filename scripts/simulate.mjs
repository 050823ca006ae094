// @ts-check
// Why: whether the diagnosis can be trusted is measured, not believed. This tries it on made-up learners and writes docs/diagnosis.md.
// Usage: npm run simulate

import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { prepare, ROOT, runScript } from "./prepare.mjs";
import { runChild, tail } from "./run-child.mjs";

const VITE = join(ROOT, "node_modules/vite/bin/vite.js");
const INTO = join(ROOT, "dist", "simulate");

await runScript(async () => {
  await prepare({ build: false });
  const args = ["build", "--config", "vite.cli.config.ts", "--ssr", "bench/simulate.ts", "--outDir", INTO];
  const built = await runChild(process.execPath, [VITE, ...args, "--logLevel", "warn"], { cwd: ROOT });
  if (built.code !== 0) throw new Error(`building the simulation failed:\n${tail(built.output, 25)}`);
  return spawnSync(process.execPath, [join(INTO, "main.js")], { cwd: ROOT, stdio: "inherit" }).status ?? 1;
});
