// @ts-check
// Why: a wrong answer must say which idea is behind it. This counts how often each idea shows, and which two are hardest to tell apart.
// Usage: npm run slips

import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { ROOT, runScript } from "./prepare.mjs";
import { runChild, tail } from "./run-child.mjs";

const VITE = join(ROOT, "node_modules/vite/bin/vite.js");
const INTO = join(ROOT, "dist", "slips");

await runScript(async () => {
  const args = [
    "build",
    "--config",
    "vite.cli.config.ts",
    "--ssr",
    "bench/slips.ts",
    "--outDir",
    INTO,
    "--logLevel",
    "warn",
  ];
  const built = await runChild(process.execPath, [VITE, ...args], { cwd: ROOT });
  if (built.code !== 0) throw new Error(`building the count failed:\n${tail(built.output, 25)}`);
  const ended = spawnSync(process.execPath, [join(INTO, "main.js")], {
    stdio: "inherit",
  });
  return ended.status ?? 1;
});
