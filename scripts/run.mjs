// @ts-check
// Why: `npm run format` and its like need the packages installed first, on a fresh clone too.
// Usage: node scripts/run.mjs biome check --write .

import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { prepare, ROOT, runScript } from "./prepare.mjs";

await runScript(async () => {
  const [program, ...args] = process.argv.slice(2);
  if (program === undefined) throw new Error("say which program to run, such as biome");
  await prepare({ build: false });
  const path = join(ROOT, "node_modules", ".bin", program);
  const ended = spawnSync(path, args, { cwd: ROOT, stdio: "inherit", shell: process.platform === "win32" });
  if (ended.error) throw ended.error;
  return ended.status ?? 1;
});
