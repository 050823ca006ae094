/**
 * The committed JSON Schemas are those that the readers' shapes make. After a change of shape, write them anew with
 * UPDATE_SCHEMA=1 npx vitest run --project unit test/scene-schema.test.ts
 */

import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { expect, test } from "vitest";
import { parse } from "yaml";
import * as z from "zod";
import { problemSetJsonSchema } from "../src/practice/index.ts";
import { landJsonSchema, sceneJsonSchema, stationsJsonSchema } from "../src/scene/index.ts";
import { changed, LAND_TEXT, SCENE_TEXT, STATIONS_TEXT } from "./scene-files.ts";

const SCHEMAS = {
  "schema/scene.schema.json": sceneJsonSchema,
  "schema/stations.schema.json": stationsJsonSchema,
  "schema/land.schema.json": landJsonSchema,
  "schema/problems.schema.json": problemSetJsonSchema,
};

test.each(Object.entries(SCHEMAS))("%s is fresh", (path, make) => {
  const made = `${JSON.stringify(make(), null, 2)}\n`;
  if (process.env.UPDATE_SCHEMA === "1") writeFileSync(path, made);
  expect(readFileSync(path, "utf8")).toBe(made);
});

/** Whether a text fits a committed schema, told by the schema alone: the shapes that made it take no part. */
function fits(path: keyof typeof SCHEMAS, text: string): boolean {
  const schema = z.fromJSONSchema(JSON.parse(readFileSync(path, "utf8")));
  return schema.safeParse(parse(text, { version: "1.2" })).success;
}

test("good files fit their schemas", () => {
  expect(fits("schema/scene.schema.json", SCENE_TEXT)).toBe(true);
  expect(fits("schema/stations.schema.json", STATIONS_TEXT)).toBe(true);
  expect(fits("schema/land.schema.json", LAND_TEXT)).toBe(true);
  expect(fits("schema/stations.schema.json", readFileSync("demo/ostrelle.stations.yaml", "utf8"))).toBe(true);
  expect(fits("schema/land.schema.json", readFileSync("demo/ostrelle.land.yaml", "utf8"))).toBe(true);
  for (const name of readdirSync("demo/scenes").filter((file) => file.endsWith(".yaml")))
    expect([name, fits("schema/scene.schema.json", readFileSync(`demo/scenes/${name}`, "utf8"))]).toEqual([
      name,
      true,
    ]);
});

test.each([
  ["heading: 090", "heading: 361"],
  ["heading: 090", "heading: east"],
  ["course: 070", "coarse: 070"],
  ["scene: 1", "scene: 2"],
  ["140/18", "140-18"],
  ["face: hsi", "face: hs1"],
  ["  altitude: 3500\n", ""],
])("a scene with %s changed to %s does not", (from, to) => {
  expect(fits("schema/scene.schema.json", changed(SCENE_TEXT, from, to))).toBe(false);
});

test("what YAML alone would misread still fits: the schema allows what the reader allows", () => {
  for (const ident of ["TRUE", "123", "NO", "0123"])
    expect(fits("schema/stations.schema.json", changed(STATIONS_TEXT, "HJL", ident))).toBe(true);
  expect(fits("schema/scene.schema.json", changed(SCENE_TEXT, "115.60", '"115.60"'))).toBe(true);
});
