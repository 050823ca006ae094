/** From a scene on the bench to what is remembered of it, and back. */

import {
  type LinkWorld,
  LONGEST_LINK,
  type Scene,
  sceneFromLink,
  sceneToLink,
  writeScene,
} from "../../scene/index.ts";
import { sceneFileName } from "./file-name.ts";
import { type GivenRead, readText } from "./read-given.ts";
import type { RecentEntry, RecentWork } from "./recent-entry.ts";
import { savedText } from "./saved-text.ts";
import type { SceneSource } from "./scene-source.ts";

/** The demo, which every bench has: its files as text, and its stations and land for links. */
export interface AtHand {
  readonly files: ReadonlyMap<string, string>;
  readonly world: LinkWorld;
}

/** More than this, characters, is not remembered with its files: the scene is then written to stand alone. */
const MOST_TEXT = 300_000;
/** Room for the address before the link. */
const LONGEST_KEPT_LINK = LONGEST_LINK - 2_000;

/** What to remember so that the scene comes back as it is: its text where it has one, else a link. */
export function workOf(name: string, scene: Scene, source: SceneSource | null, atHand: AtHand): RecentWork {
  const saved = source === null ? null : savedText(scene, source, atHand.files);
  if (source !== null && saved?.ok) {
    const files = [...source.files];
    const size = files.reduce((sum, [, text]) => sum + text.length, saved.text.length);
    if (size <= MOST_TEXT) return { kind: "text", path: source.path, text: saved.text, files };
  }
  const link = sceneToLink(scene, { world: atHand.world });
  if (link.length <= LONGEST_KEPT_LINK) return { kind: "link", link };
  return { kind: "text", path: sceneFileName(name), text: writeScene(scene), files: [] };
}

/** The scene of an entry, read and checked as any file is. Never throws. */
export function sceneOf({ name, work }: RecentEntry, atHand: AtHand, today: string): GivenRead {
  if (work.kind === "text")
    return readText(
      { path: work.path, text: work.text, files: new Map(work.files) },
      { atHand: atHand.files, today },
    );
  const read = sceneFromLink(work.link, { world: atHand.world });
  return read.ok
    ? { ok: true, name, scene: read.scene, source: null, notes: read.notes }
    : { ok: false, name, lines: read.faults };
}
