import { readdirSync, readFileSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { layerFaults } from "./layers.ts";

const ROOT = fileURLToPath(new URL("../", import.meta.url));

const sources = readdirSync(join(ROOT, "src"), { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name) && !/\.test\.tsx?$/.test(entry.name))
  .map((entry) => relative(ROOT, join(entry.parentPath, entry.name)).split(sep).join("/"));

describe("the layers", () => {
  it("are kept by every source file", () => {
    expect(sources.length).toBeGreaterThan(20);
    expect(sources.flatMap((path) => layerFaults(path, readFileSync(join(ROOT, path), "utf8")))).toEqual([]);
  });
});

describe("the check itself", () => {
  const fault = (path: string, source: string) => layerFaults(path, source).join("; ");

  it.each([
    [
      "a layer further right",
      "src/earth/a.ts",
      'import { x } from "../radio/index.ts";',
      "earth may not import radio",
    ],
    [
      "a type from further right",
      "src/radio/a.ts",
      'import type { X } from "../scene/index.ts";',
      "radio may not import scene",
    ],
    ["a re-export", "src/panel/a.ts", 'export * from "../reason/index.ts";', "panel may not import reason"],
    [
      "a named re-export",
      "src/panel/a.ts",
      'export { x } from "../reason/index.ts";',
      "panel may not import reason",
    ],
    ["a dynamic import", "src/scene/a.ts", 'await import("../draw/index.ts");', "scene may not import draw"],
    [
      "an import in a type",
      "src/scene/a.ts",
      'type A = import("../draw/index.ts").A;',
      "scene may not import draw",
    ],
    [
      "draw knowing practice",
      "src/draw/a.tsx",
      'import { x } from "../practice/index.ts";',
      "draw may not import practice",
    ],
    [
      "practice knowing draw",
      "src/practice/a.ts",
      'import { x } from "../draw/index.ts";',
      "practice may not import draw",
    ],
    [
      "web knowing server",
      "src/web/a.ts",
      'import { x } from "../server/index.ts";',
      "web may not import server",
    ],
    [
      "server knowing web",
      "src/server/a.ts",
      'import { x } from "../web/index.ts";',
      "server may not import web",
    ],
    [
      "server knowing cli",
      "src/server/a.ts",
      'import { x } from "../cli/index.ts";',
      "server may not import cli",
    ],
    ["web knowing cli", "src/web/a.ts", 'import { x } from "../cli/index.ts";', "web may not import cli"],
    ["cli knowing web", "src/cli/a.ts", 'import { x } from "../web/index.ts";', "cli may not import web"],
    [
      "a file inside another layer",
      "src/radio/a.ts",
      'import { x } from "../earth/position.ts";',
      "import src/earth/index.ts",
    ],
    ["a folder that is no layer", "src/radio/a.ts", 'import { x } from "../utils/x.ts";', "in no layer"],
    ["a file that is in no layer", "src/a.ts", "", "lies in no layer"],
    ["a Node module", "src/scene/a.ts", 'import { readFileSync } from "node:fs";', "the Node module node:fs"],
    ["a Node module by its old name", "src/scene/a.ts", 'import fs from "fs";', "the Node module fs"],
    ["a computed import", "src/scene/a.ts", "await import(name);", "computed"],
    ["the page", "src/draw/a.ts", "const a = document.body;", "uses document"],
    ["the window", "src/draw/a.ts", "export const f = () => window;", "uses window"],
    ["the environment", "src/reason/a.ts", "const a = process.env.A;", "uses process"],
    ["the clock", "src/scene/a.ts", "const a = Date.now();", "uses Date.now"],
    ["the clock by another spelling", "src/scene/a.ts", 'const a = Date["now"]();', "uses Date.now"],
    ["the present date", "src/scene/a.ts", "const a = new Date();", "new Date()"],
    ["the present date as text", "src/scene/a.ts", "const a = Date();", "Date()"],
    ["chance", "src/radio/a.ts", "const a = Math.random() * 2;", "uses Math.random"],
    ["a shorthand of a global", "src/radio/a.ts", "const a = { process };", "uses process"],
    ["a file that does not parse", "src/radio/a.ts", "const = ;", "cannot be parsed"],
  ])("finds %s", (_, path, source, expected) => {
    expect(fault(path, source)).toContain(expected);
  });

  it.each([
    ["a layer further left", "src/scene/a.ts", 'import { x } from "../earth/index.ts";'],
    ["cli starting the server", "src/cli/a.ts", 'import { x } from "../server/index.ts";'],
    ["a file of the same layer", "src/earth/a/b.ts", 'import { x } from "../position.ts";'],
    ["a date made from text", "src/scene/a.ts", "export const f = (iso: string) => new Date(iso);"],
    [
      "a field named like a global",
      "src/scene/a.ts",
      "export const f = (a: { window: number }) => a.window;",
    ],
    [
      "a parameter named like a global",
      "src/scene/a.ts",
      "export const f = (document: string) => document.length;",
    ],
    ["a word in a comment or text", "src/scene/a.ts", '// Math.random()\nexport const a = "document";'],
    ["Node modules in the command line", "src/cli/a.ts", 'import { join } from "node:path";'],
  ])("allows %s", (_, path, source) => {
    expect(fault(path, source)).toBe("");
  });
});
