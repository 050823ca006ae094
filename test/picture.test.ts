/** The README's picture is what `figure` draws today, and the README's links lead somewhere. */

import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";

const root = fileURLToPath(new URL("..", import.meta.url));

test("docs/picture.svg is fresh (make it anew with: node scripts/picture.mjs)", () => {
  const folder = mkdtempSync(join(tmpdir(), "picture-"));
  try {
    const fresh = join(folder, "picture.svg");
    const made = spawnSync(process.execPath, ["scripts/picture.mjs", fresh], { cwd: root, encoding: "utf8" });
    expect(made.status, made.stderr).toBe(0);
    expect(readFileSync(fresh, "utf8") === readFileSync(join(root, "docs/picture.svg"), "utf8")).toBe(true);
  } finally {
    rmSync(folder, { recursive: true });
  }
});

test("every link between the pages leads to a file", () => {
  for (const page of [
    "README.md",
    "CONTRIBUTING.md",
    "demo/README.md",
    "docs/model.md",
    "docs/conventions.md",
  ]) {
    const text = readFileSync(join(root, page), "utf8");
    const links = [...text.matchAll(/\]\(([^)#]+)(?:#[^)]*)?\)/g)].map(([, target]) => target ?? "");
    for (const target of links.filter((link) => !link.startsWith("http")))
      expect(existsSync(join(root, dirname(page), target)), `${page} links to ${target}`).toBe(true);
  }
});
