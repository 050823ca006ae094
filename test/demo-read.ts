/** `needlework read --json` run inside the test, on files of the demo or of a temp folder. */

import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { vi } from "vitest";
import { run } from "../src/cli/run.ts";
import type { ReadingJson } from "../src/reason/reading-json.ts";

/** One object a scene, in order. Throws with what was said on stderr when the command fails. */
export async function read(paths: readonly string[]): Promise<ReadingJson[]> {
  const out: string[] = [];
  const err: string[] = [];
  const keep = (into: string[]) => (text: string | Uint8Array) => {
    into.push(String(text));
    return true;
  };
  const stdout = vi.spyOn(process.stdout, "write").mockImplementation(keep(out));
  const stderr = vi.spyOn(process.stderr, "write").mockImplementation(keep(err));
  const code = await run(["read", "--json", ...paths]).finally(() => {
    stdout.mockRestore();
    stderr.mockRestore();
  });
  if (code !== 0) throw new Error(`read ended with ${code}: ${err.join("")}`);
  return out
    .join("")
    .trim()
    .split("\n")
    .map((line) => JSON.parse(line) as ReadingJson);
}

/** Writes the files into a fresh folder, reads the scenes among them in order, and clears the folder away. */
export async function readWritten(
  files: Readonly<Record<string, string>>,
  scenes: readonly string[],
): Promise<ReadingJson[]> {
  const folder = mkdtempSync(join(tmpdir(), "needlework-"));
  try {
    for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
    return await read(scenes.map((name) => join(folder, name)));
  } finally {
    rmSync(folder, { recursive: true });
  }
}
