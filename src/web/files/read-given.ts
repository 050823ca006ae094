/** The scene among the files a person gave, read with the others beside it and the demo's behind them. */

import { faultLine, isTablePath, readScene, type Scene } from "../../scene/index.ts";
import { type GivenFile, textsOf } from "./given-files.ts";
import { baseName, openOver } from "./open-over.ts";
import type { SceneSource } from "./scene-source.ts";

export type GivenRead =
  | {
      readonly ok: true;
      /** The file's name without its ending. */
      readonly name: string;
      readonly scene: Scene;
      /** Null where it came from no text, but from a link. */
      readonly source: SceneSource | null;
      /** What else a person should know, one sentence each. */
      readonly notes: readonly string[];
    }
  /** `lines`: one sentence each, with file, line and column. */
  | { readonly ok: false; readonly name: string; readonly lines: readonly string[] };

export interface ReadGivenOptions {
  /** Texts that are always at hand, by path. */
  readonly atHand: ReadonlyMap<string, string>;
  /** ISO day that stands in where a scene has none. */
  readonly today: string;
}

/**
 * Reads what was given. Null when nothing was; "catalogue" when there is no scene among it but a table of stations or a station file,
 * which are looked stations up in. Never throws.
 */
export async function readGiven(
  given: readonly GivenFile[],
  options: ReadGivenOptions,
): Promise<GivenRead | "catalogue" | null> {
  const { texts, refused } = await textsOf(given);
  const scenes = [...texts.keys()].filter((path) => isScene(texts.get(path) ?? ""));
  if (scenes.length === 0 && given.some((file) => isCatalogue(file.path, texts.get(file.path) ?? "")))
    return "catalogue";
  const path = scenes[0] ?? [...texts.keys()].find((candidate) => /\.ya?ml$/i.test(candidate));
  if (path === undefined || (scenes.length === 0 && refused.length > 0)) {
    const first = refused[0];
    if (first !== undefined)
      return { ok: false, name: baseName(first.path), lines: refused.map(({ line }) => line) };
    const other = [...texts.keys()][0];
    if (other === undefined) return null;
    return {
      ok: false,
      name: baseName(other),
      lines: [`${other} is no scene file; one begins with scene: 1`],
    };
  }
  const read = readText({ path, text: texts.get(path) ?? "", files: texts }, options);
  if (!read.ok) return { ...read, lines: [...read.lines, ...refused.map(({ line }) => line)] };
  const handle = given.find((file) => file.path === path)?.handle ?? null;
  const several = `of ${scenes.length} scenes given, ${baseName(path)} was opened`;
  return {
    ...read,
    source: read.source === null ? null : { ...read.source, handle },
    notes: [...(scenes.length > 1 ? [several] : []), ...read.notes, ...refused.map(({ line }) => line)],
  };
}

/** Whether a text says that it is a scene. */
const isScene = (text: string): boolean => /^\s*(\{\s*)?["']?scene["']?\s*:/m.test(text);

/** Whether a file is a table of stations, or says that it is a station file: a scene's own `stations` is no number. */
const isCatalogue = (path: string, text: string): boolean =>
  isTablePath(path) || /^\s*(\{\s*)?["']?stations["']?\s*:\s*\d+\s*(#|,|$)/m.test(text);

export interface SceneText {
  readonly path: string;
  readonly text: string;
  readonly files: ReadonlyMap<string, string>;
}

/** Reads one text as a scene. Only the files it truly draws on are kept beside it. */
export function readText({ path, text, files }: SceneText, { atHand, today }: ReadGivenOptions): GivenRead {
  const name = baseName(path);
  const read = readScene(text, { path, open: openOver(files, atHand), today });
  if (!read.ok) return { ok: false, name, lines: read.faults.map(faultLine) };
  const others = read.sources.filter((source) => source.path !== path);
  const used = others.flatMap((source): [string, string][] => {
    const beside = files.get(source.path);
    return beside === undefined ? [] : [[source.path, beside]];
  });
  return {
    ok: true,
    name: name.replace(/\.ya?ml$/i, ""),
    scene: read.scene,
    source: { path, text, scene: read.scene, files: new Map(used), handle: null },
    notes: others
      .filter((source) => !files.has(source.path))
      .map((source) => `${baseName(source.written)} was not given; the demo's is used`),
  };
}
