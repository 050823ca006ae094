/** Catalogue files as people hand them over: several at once, of either kind, whole or broken. */

import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type CatalogueFile, readCatalogue } from "../src/web/catalogue/read-catalogue.ts";

const DATE = "2026-07-01";

const file = (name: string, content: string | Uint8Array): CatalogueFile => {
  const bytes = typeof content === "string" ? new TextEncoder().encode(content) : content;
  return { name, bytes: bytes.slice().buffer };
};

const OWN = `stations: 1
include: more.yaml
list:
  - { ident: QAA, kind: VOR, frequency: 113.90, at: 45°N 008°E, elevation: 100, declination: 2E }
`;
const MORE = `stations: 1
list:
  - { ident: QBB, kind: VOR, frequency: 114.30, at: 46°N 008°E, elevation: 100, declination: 2E }
`;
const EXCERPT = readFileSync(new URL("data/navaids-excerpt.csv", import.meta.url));

const identsOf = (...files: CatalogueFile[]): string[] => {
  const read = readCatalogue(files, DATE);
  if (!read.ok) throw new Error(read.lines.join("; "));
  return read.catalogue.stations.map(({ ident }) => ident);
};
const linesOf = (...files: CatalogueFile[]): readonly string[] => {
  const read = readCatalogue(files, DATE);
  return read.ok ? [] : read.lines;
};

describe("a catalogue out of files", () => {
  it("takes a worldwide table, and keeps what was left out", () => {
    const read = readCatalogue([file("navaids.csv", EXCERPT)], DATE);
    if (!read.ok) throw new Error(read.lines.join("; "));
    const rows = EXCERPT.toString("utf8").trim().split("\n").length - 1;
    expect(read.catalogue.stations.length).toBeGreaterThan(10);
    expect(read.catalogue.stations.length + read.catalogue.skipped.length).toBeLessThanOrEqual(rows);
  });

  it("finds the station file among others, and what it includes by name", () => {
    const files = [file("notes.yaml", "scene: 1\n"), file("a.yaml", OWN), file("more.yaml", MORE)];
    expect(identsOf(...files).sort()).toEqual(["QAA", "QBB"]);
    expect(identsOf(...files.reverse()).sort()).toEqual(["QAA", "QBB"]);
    expect(linesOf(file("a.yaml", OWN))).toEqual([
      expect.stringContaining("it was not given together with this file"),
    ]);
  });

  it("tells every fault with file, line and column", () => {
    const broken = MORE.replace("114.30", "114.31").replace("46°N", "95°N");
    const lines = linesOf(file("b.yaml", broken));
    expect(lines).toHaveLength(2);
    for (const line of lines) expect(line).toMatch(/^b\.yaml:3:\d+ \S/);
  });

  it("says of a scene, a picture or an empty file what it is", () => {
    expect(linesOf(file("s.yaml", "scene: 1\ntitle: x\n"))[0]).toMatch(/^s\.yaml:1:1 .*scene/);
    expect(linesOf(file("p.csv", Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0, 1, 2])))[0]).toMatch(/^p\.csv:/);
    expect(linesOf(file("e.csv", ""))[0]).toMatch(/^e\.csv:1:1 /);
  });

  it("never throws, and always either reads or explains", () => {
    const name = fc.constantFrom("x.csv", "x.yaml", "x.yml", "x");
    const mangled = fc
      .tuple(fc.constantFrom(OWN, MORE, EXCERPT.toString("utf8").slice(0, 4000)), fc.nat(), fc.string())
      .map(([text, at, put]) => {
        const place = at % (text.length + 1);
        return new TextEncoder().encode(text.slice(0, place) + put + text.slice(place + put.length));
      });
    fc.assert(
      fc.property(name, fc.oneof(mangled, fc.uint8Array({ maxLength: 400 })), (called, bytes) => {
        const read = readCatalogue([file(called, bytes)], DATE);
        expect(read.ok || read.lines.length > 0).toBe(true);
      }),
      { numRuns: 500, seed: 20260701 },
    );
  });
});
