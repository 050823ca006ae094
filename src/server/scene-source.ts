/**
 * A scene as text with the texts of the files it names, so that the browser reads it with the same reader. Each file is
 * called by its path from the scene's folder, with `/`, as the browser works it out from what the files say.
 */

import { basename, dirname, isAbsolute, join, posix } from "node:path";
import { type Open, type Opened, readScene } from "../scene/index.ts";
import { Refusal } from "./errors.ts";

export interface SceneSettings {
  /** The scene file on this machine. */
  readonly path: string;
  /** Reads a text file by its path on this machine; a file that cannot be read is a result, never an exception. */
  readonly readText: (path: string) => Opened;
  /** Today's ISO date, for a scene that has none. */
  readonly today: () => string;
}

export interface SceneSource {
  readonly scene: { readonly file: string; readonly text: string };
  /** Station, land and table files that the scene names, and those that these name. */
  readonly files: readonly { readonly path: string; readonly text: string }[];
}

/** Reads the scene and the files it names as they are now. Throws Refusal when the scene file is no text at all. */
export function sceneSource({ path, readText, today }: SceneSettings): SceneSource {
  const file = basename(path);
  const opened = readText(path);
  if ("failure" in opened) throw new Refusal("scene-unreadable", `${file}: ${opened.failure}`);
  if ("fault" in opened) throw new Refusal("scene-unreadable", `${file}: ${opened.fault.message}`);
  const placeByName = new Map([[file, path]]);
  const files = new Map<string, string>();
  const open: Open = (wanted, from) => {
    const name = nameFrom(from, wanted);
    const place = isAbsolute(wanted) ? wanted : join(dirname(placeByName.get(from) ?? path), wanted);
    const named = readText(place);
    if (!("text" in named)) return named;
    placeByName.set(name, place);
    files.set(name, named.text);
    return { path: name, text: named.text };
  };
  // Read for the sake of the files that it opens; its faults are the browser's to show.
  readScene(opened.text, { path: file, open, today: today() });
  return { scene: { file, text: opened.text }, files: [...files].map(([path, text]) => ({ path, text })) };
}

function nameFrom(from: string, wanted: string): string {
  const slashed = wanted.replaceAll("\\", "/");
  return isAbsolute(wanted) ? slashed.replace(/^\/+/, "") : posix.join(posix.dirname(from), slashed);
}
