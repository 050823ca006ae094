/** Builds the page from the sources at hand, once for the whole run of the browser tests, which all serve it from that folder. */

import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "vite";
import type { TestProject } from "vitest/node";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));

declare module "vitest" {
  interface ProvidedContext {
    readonly pageFolder: string;
  }
}

export async function setup(project: TestProject): Promise<() => void> {
  const folder = mkdtempSync(join(tmpdir(), "needlework-page-"));
  // As `npm start` builds it; the test runner's own environment would leave parts out, such as what keeps it offline.
  const before = process.env.NODE_ENV;
  process.env.NODE_ENV = "production";
  await build({
    configFile: join(ROOT, "vite.web.config.ts"),
    root: join(ROOT, "src/web"),
    logLevel: "error",
    build: { outDir: folder, emptyOutDir: true },
  });
  process.env.NODE_ENV = before;
  project.provide("pageFolder", folder);
  return () => rmSync(folder, { recursive: true, force: true });
}
