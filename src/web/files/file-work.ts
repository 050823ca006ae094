/**
 * All that reads and writes the text of scene files: the reader, its YAML parser, the demo's texts. Loaded with the first file that is
 * opened or saved, and not before.
 */

import { type Scene, sceneFromLink, writeScene } from "../../scene/index.ts";
import { DEMO_FILES } from "../state/demo-files.ts";
import { demoWorld } from "./demo-world.ts";
import { sceneFileName } from "./file-name.ts";
import type { GivenFile } from "./given-files.ts";
import { type GivenRead, readGiven, readText, type SceneText } from "./read-given.ts";
import type { RecentEntry, RecentWork } from "./recent-entry.ts";
import { type SavedText, savedText } from "./saved-text.ts";
import type { SceneSource } from "./scene-source.ts";

/** More than this, characters, is not remembered with its files: the scene is then written to stand alone. */
const MOST_TEXT = 300_000;

/** Stands in where a scene has no date. */
const today = (): string => new Date().toISOString().slice(0, 10);

const options = () => ({ atHand: DEMO_FILES, today: today() });

/** The scene among files a person gave, or that they are a catalogue; null when nothing was given. Never throws. */
export const readFiles = (given: readonly GivenFile[]): Promise<GivenRead | "catalogue" | null> =>
  readGiven(given, options());

/** A scene that lies on this machine's disk, with all the files that it names. Never throws. */
export const readServed = (served: SceneText): GivenRead =>
  readText(served, { ...options(), atHand: new Map() });

/** The scene as the text of a file. Never throws. */
export const sceneText = (scene: Scene, source: SceneSource | null): SavedText =>
  savedText(scene, source, DEMO_FILES);

/** What to remember of a scene by its text, so that a text it came from goes on. */
export function textWork(name: string, scene: Scene, source: SceneSource | null): RecentWork {
  const saved = source === null ? null : sceneText(scene, source);
  if (source !== null && saved?.ok) {
    const files = [...source.files];
    const size = files.reduce((sum, [, text]) => sum + text.length, saved.text.length);
    if (size <= MOST_TEXT) return { kind: "text", path: source.path, text: saved.text, files };
  }
  return { kind: "text", path: sceneFileName(name), text: writeScene(scene), files: [] };
}

/** The scene of an entry of recent work, read and checked as any file is. Never throws. */
export function readRecent({ name, work }: RecentEntry): GivenRead {
  if (work.kind === "text")
    return readText({ path: work.path, text: work.text, files: new Map(work.files) }, options());
  const read = sceneFromLink(work.link, { world: demoWorld() });
  return read.ok
    ? { ok: true, name, scene: read.scene, source: null, notes: read.notes }
    : { ok: false, name, lines: read.faults };
}
