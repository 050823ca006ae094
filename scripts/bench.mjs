// @ts-check
// Why: speed is a promise of this program, so it is measured by one command, beside the libraries it is measured against.
// Usage: npm run bench [-- navaids.csv]

import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { prepare, ROOT, runScript } from "./prepare.mjs";
import { runChild, tail } from "./run-child.mjs";

const VITE = join(ROOT, "node_modules/vite/bin/vite.js");
const INTO = join(ROOT, "dist", "bench");

await runScript(async () => {
  // The pictures it times need the fonts of dist.
  await prepare();
  const args = [
    "build",
    "--config",
    "vite.cli.config.ts",
    "--ssr",
    "bench/main.ts",
    "--outDir",
    INTO,
    "--logLevel",
    "warn",
  ];
  const built = await runChild(process.execPath, [VITE, ...args], { cwd: ROOT });
  if (built.code !== 0) throw new Error(`building the measurements failed:\n${tail(built.output, 25)}`);
  const ended = spawnSync(process.execPath, [join(INTO, "main.js"), ...process.argv.slice(2)], {
    stdio: "inherit",
  });
  return ended.status ?? 1;
});
