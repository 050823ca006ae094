/** Whatever it is given, reading ends with a scene or with faults that stand inside the text; it never throws. */

import fc from "fast-check";
import { expect, test } from "vitest";
import { magneticDeg } from "../src/earth/index.ts";
import {
  decodeText,
  editScene,
  type Fault,
  readLand,
  readStations,
  resolveScene,
} from "../src/scene/index.ts";
import { FILES, LAND_TEXT, openFrom, read, SCENE_TEXT, STATIONS_TEXT, tableText } from "./scene-files.ts";

function expectFaults(faults: readonly Fault[], texts: Readonly<Record<string, string>>): void {
  expect(faults.length).toBeGreaterThan(0);
  for (const { code, file, line, column, message } of faults) {
    // In a table a carriage return alone ends a line too; what is no text at all has no table's lines.
    const inTable = file.endsWith(".csv") && code !== "binary";
    const lines = (texts[file] ?? "").split(inTable ? /\r\n?|\n/ : "\n");
    expect(line).toBeGreaterThanOrEqual(1);
    expect(line).toBeLessThanOrEqual(lines.length);
    expect(column).toBeGreaterThanOrEqual(1);
    expect(column).toBeLessThanOrEqual((lines[line - 1]?.length ?? 0) + 1);
    expect(message).not.toMatch(/\n|undefined|NaN|object Object|[Zz]od\b/);
    expect(message.length).toBeLessThan(600);
  }
}

/** Reads the text as every kind of file, as the scene and as a file of it. */
function readEveryWay(text: string): void {
  const scene = read(text);
  if (scene.ok) expect(Number.isFinite(resolveScene(scene.scene).variationDeg)).toBe(true);
  else expectFaults(scene.faults, { ...FILES, "s.yaml": text });
  const beside = read(SCENE_TEXT, { "isles.yaml": text });
  if (!beside.ok) expectFaults(beside.faults, { ...FILES, "isles.yaml": text, "s.yaml": SCENE_TEXT });
  const land = readLand(text, { path: "l.yaml" });
  if (!land.ok) expectFaults(land.faults, { "l.yaml": text });
  for (const path of ["x.yaml", "x.csv"]) {
    const stations = readStations(text, { path, open: openFrom(FILES), date: "2026-06-01" });
    if (!stations.ok) expectFaults(stations.faults, { ...FILES, [path]: text });
  }
}

test("any text at all", () => {
  const yamlish = fc
    .array(
      fc.constantFrom(
        ..."scene: |stations: |land: |list:|aircraft:|receivers:|1\n|\n  |\n- |- |{|}|[|]|, |: |? |&a |*a|!x |'|\"|# |>-\n|%YAML|---\n|...\n|\t|\r\n|-0|1e999|at: |TXJ 246/18\n|__proto__: |name: NAV1|\u0000|\uFEFF|é|🛩".split(
          "|",
        ),
      ),
      { maxLength: 60 },
    )
    .map((pieces) => pieces.join(""));
  fc.assert(fc.property(fc.oneof(yamlish, fc.string({ unit: "binary", maxLength: 200 })), readEveryWay), {
    numRuns: 800,
  });
});

test("any bytes at all, and those of good files with a few of them wrong", () => {
  const slip = fc.tuple(fc.nat(2000), fc.nat(255));
  const damaged = fc.array(slip, { minLength: 1, maxLength: 3 }).map((slips) => {
    const bytes = new TextEncoder().encode(SCENE_TEXT + STATIONS_TEXT);
    for (const [where, byte] of slips) bytes[where % bytes.length] = byte;
    return bytes;
  });
  fc.assert(
    fc.property(fc.oneof(fc.uint8Array({ maxLength: 300 }), damaged), (bytes) => {
      const decoded = decodeText(bytes, "f.yaml");
      if (decoded.ok) readEveryWay(decoded.text);
      else expect(decoded.fault.line).toBeGreaterThanOrEqual(1);
    }),
    { numRuns: 800 },
  );
});

test("good files with a few characters wrong", () => {
  const good = [
    SCENE_TEXT,
    STATIONS_TEXT,
    LAND_TEXT,
    tableText("1,AAA,One,VOR,114000,50.5,-20.5,100,,,,,,1"),
  ];
  const slip = fc.record({
    where: fc.nat(2000),
    remove: fc.nat(12),
    insert: fc.oneof(
      fc.constantFrom(
        "",
        " ",
        "\n",
        "\t",
        ":",
        ": ",
        "- ",
        "[",
        "}",
        '"',
        "#",
        "999",
        "-",
        "\n\n",
        "*a",
        "&a ",
        "null",
      ),
      fc.string({ maxLength: 4, unit: "binary" }),
    ),
  });
  const slips = fc.tuple(fc.constantFrom(...good), fc.array(slip, { minLength: 1, maxLength: 4 }));
  fc.assert(
    fc.property(slips, ([text, changes]) => {
      const wrong = changes.reduce((so, { where, remove, insert }) => {
        const at = where % (so.length + 1);
        return so.slice(0, at) + insert + so.slice(at + remove);
      }, text);
      readEveryWay(wrong);
      // An edit either refuses or leaves a text that can be read as well as before.
      const edited = editScene(wrong, [{ kind: "heading", heading: magneticDeg(123) }], { path: "s.yaml" });
      if (edited.ok && read(wrong).ok) {
        const again = read(edited.text);
        expect(again.ok && again.scene.aircraft.heading).toBe(123);
      }
    }),
    { numRuns: 800 },
  );
});

test("texts made to exhaust a parser", () => {
  const aliases = Array.from({ length: 40 }, (_, level) =>
    level === 0 ? "a0: &a0 [1, 1]" : `a${level}: &a${level} [*a${level - 1}, *a${level - 1}]`,
  ).join("\n");
  const deep = Array.from({ length: 300 }, (_, level) => `${" ".repeat(level)}a:`).join("\n");
  const texts = [
    aliases,
    deep,
    "{a: ".repeat(5000),
    "? ".repeat(5000),
    "- - ".repeat(5000),
    "&a ".repeat(50_000),
    "!!x ".repeat(50_000),
    "a: ".repeat(20_000),
    "'".repeat(100_000),
    '"\\'.repeat(50_000),
    ":".repeat(100_000),
    "#".repeat(100_000),
    "\n".repeat(100_000),
    ",".repeat(100_000),
    `scene: ${"9".repeat(100_000)}`,
    `${"k".repeat(100_000)}: 1`,
    "- a\n".repeat(50_000),
  ];
  for (const text of texts) {
    const start = performance.now();
    const result = read(text);
    expect(result.ok).toBe(false);
    if (!result.ok) expectFaults(result.faults, { "s.yaml": text });
    expect(performance.now() - start).toBeLessThan(10_000);
  }
});
