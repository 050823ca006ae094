#!/usr/bin/env node
// The launcher: in a checkout it installs and builds what is stale first; in an installed package it only runs.

import { existsSync } from "node:fs";

const here = (path) => new URL(path, import.meta.url);

async function start() {
  const { nodeComplaint } = await import("../scripts/node-version.mjs");
  const complaint = nodeComplaint(process.versions.node);
  if (complaint !== null) throw new Error(complaint);
  if (existsSync(here("../src/cli/main.ts")) && existsSync(here("../vite.cli.config.ts"))) {
    const { prepare } = await import("../scripts/prepare.mjs");
    await prepare();
  }
  await import("../dist/cli/main.js");
}

start().catch((error) => {
  process.stderr.write(`needlework: ${error instanceof Error ? error.message : error}\n`);
  process.exitCode = 1;
});
