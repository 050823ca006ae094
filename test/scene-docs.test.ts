/** The documents of the files tell the truth: every example is read, every key and every code is told. */

import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import {
  FAULT_CODES,
  faultLine,
  landJsonSchema,
  readLand,
  readScene,
  readStations,
  sceneJsonSchema,
  stationsJsonSchema,
} from "../src/scene/index.ts";
import { openFrom, STATIONS_TEXT } from "./scene-files.ts";

const document = readFileSync("docs/scene-file.md", "utf8");
const examples = [...document.matchAll(/```yaml\n([\s\S]*?)```/g)].map((found) => found[1] ?? "");

test("every example of the scene file's document is read", () => {
  const open = openFrom(
    Object.fromEntries(
      ["ostrelle", "north", "south"].map((name) => [
        `${name}.stations.yaml`,
        name === "south" ? "stations: 1\n" : STATIONS_TEXT,
      ]),
    ),
  );
  const faults = examples.flatMap((text, index) => {
    const path = `example ${index + 1}`;
    const result = text.startsWith("scene:")
      ? readScene(text, { path, open })
      : text.startsWith("stations:")
        ? readStations(text, { path, open, date: "2026-06-01" })
        : text.startsWith("land:")
          ? readLand(text, { path })
          : { ok: true as const };
    return result.ok ? [] : result.faults.map(faultLine);
  });
  expect(faults).toEqual([]);
  expect(examples.filter((text) => /^(scene|stations|land):/.test(text))).toHaveLength(4);
});

/** Every key that a schema names, however deep. */
function keysOf(schema: unknown): string[] {
  if (Array.isArray(schema)) return schema.flatMap(keysOf);
  if (typeof schema !== "object" || schema === null) return [];
  return Object.entries(schema).flatMap(([key, value]) =>
    key === "properties" ? [...Object.keys(value), ...Object.values(value).flatMap(keysOf)] : keysOf(value),
  );
}

test("every key of the files is told", () => {
  const keys = new Set([sceneJsonSchema(), stationsJsonSchema(), landJsonSchema()].flatMap(keysOf));
  expect(keys.size).toBeGreaterThan(40);
  const told = (key: string) => document.includes(`\`${key}\``) || document.includes(`${key}:`);
  expect([...keys].filter((key) => !told(key))).toEqual([]);
});

test("every code is told once, and no code that is none", () => {
  const told = [...readFileSync("docs/faults.md", "utf8").matchAll(/^\| `([a-z-]+)` \|/gm)].map(
    (found) => found[1],
  );
  expect(told).toEqual([...FAULT_CODES]);
});
