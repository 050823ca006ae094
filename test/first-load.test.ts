/** How much script the browser must fetch before the bench stands on the page: what index.html loads, compressed as it is served. */

import { fileURLToPath } from "node:url";
import { brotliCompressSync } from "node:zlib";
import { build, type Rolldown } from "vite";
import { beforeAll, describe, expect, it, vi } from "vitest";

const ROOT = fileURLToPath(new URL("..", import.meta.url));
const MOST_BYTES = 150_000;

let chunks: ReadonlyMap<string, Rolldown.OutputChunk>;
let html: string;

beforeAll(async () => {
  // As the page is built that is served: with the tests' own setting each element would carry its file and line.
  vi.stubEnv("NODE_ENV", "production");
  const built = await build({
    configFile: `${ROOT}vite.web.config.ts`,
    root: `${ROOT}src/web`,
    logLevel: "error",
    build: { write: false },
  }).finally(() => vi.unstubAllEnvs());
  if (!("output" in built)) throw new Error("the page was not built at once");
  chunks = new Map(
    built.output.flatMap((part) => (part.type === "chunk" ? [[part.fileName, part] as const] : [])),
  );
  const page = built.output.find((part) => part.fileName === "index.html");
  html = page?.type === "asset" ? String(page.source) : "";
});

/** The chunks that the page loads by itself, and what those import before they run. */
function firstLoad(): Rolldown.OutputChunk[] {
  const wanted = [...html.matchAll(/(?:src|href)="\/?([^"]+\.js)"/g)].map((match) => match[1]!);
  const loaded = new Set<string>();
  for (let name = wanted.pop(); name !== undefined; name = wanted.pop()) {
    if (loaded.has(name)) continue;
    loaded.add(name);
    wanted.push(...(chunks.get(name)?.imports ?? []));
  }
  return [...loaded].map((name) => chunks.get(name)!);
}

const modulesOf = (parts: Iterable<Rolldown.OutputChunk>): string[] =>
  [...parts].flatMap((part) => Object.entries(part.modules).flatMap(([id, { code }]) => (code ? [id] : [])));

describe("the first load", () => {
  it(`is at most ${MOST_BYTES / 1000} kB of script, compressed`, () => {
    const sizes = firstLoad().map(
      ({ fileName, code }) => [fileName, brotliCompressSync(code).length] as const,
    );
    expect(sizes.length).toBeGreaterThan(0);
    const bytes = sizes.reduce((sum, [, size]) => sum + size, 0);
    expect(bytes, sizes.map(([name, size]) => `${name} ${size}`).join(", ")).toBeLessThanOrEqual(MOST_BYTES);
  });

  it("holds the chart and the demo, and leaves for later what a first look does not need", () => {
    const first = modulesOf(firstLoad());
    const all = modulesOf(chunks.values());
    const has = (modules: readonly string[], part: string) => modules.some((id) => id.includes(part));
    expect(has(first, "src/draw/chart/chart.tsx")).toBe(true);
    expect(has(first, "virtual:demo-scenes")).toBe(true);
    const later = [
      ...["/yaml/", "/zod/", "/csv-parse/", "/preact-render-to-string/", "/world-atlas/", "/pdfkit/"],
      ...[
        "draw/figure/figure.tsx",
        "web/home/home.tsx",
        "web/frame/help-sheet.tsx",
        "web/out/share-menu.tsx",
        "web/signal/signal-sheet.tsx",
        "draw/signal/spectrum-picture.tsx",
        "draw/signal/lighthouse.tsx",
        "draw/plots/needle-history.tsx",
        "/fft.js/",
      ],
    ];
    for (const part of later) {
      expect(has(all, part), `${part} is part of the bench`).toBe(true);
      expect(has(first, part), `${part} in the first load`).toBe(false);
    }
  });
});
