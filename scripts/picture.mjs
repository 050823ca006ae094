// Makes the README's picture with the `figure` command, so that it shows what the program draws today. A test makes it
// again and fails when the committed one differs.

import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));
const out = process.argv[2] ?? "docs/picture.svg";
const made = spawnSync(
  process.execPath,
  [
    "bin/needlework.mjs",
    "figure",
    "demo/scenes/01-which-way-to-the-course.yaml",
    "--views",
    "chart,panel,reasons",
    "--size",
    "16:9",
    "-o",
    out,
  ],
  { cwd: root, stdio: "inherit" },
);
process.exitCode = made.status ?? 1;
