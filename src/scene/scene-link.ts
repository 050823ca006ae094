/**
 * A scene as a link: the whole of it stands in the address after the `#`, which browsers keep to themselves. The stations and the land of
 * a world that both ends have are named, everything else is written out. Read back by scene-link-read.ts, which needs the reader of
 * scene files; this does not.
 */

import type { Scene } from "./scene.ts";
import { sealLink } from "./scene-link-envelope.ts";
import { type LinkView, type LinkWorld, packScene } from "./scene-link-pack.ts";

export interface SceneLinkOptions {
  /** What need not be written out, for the other end has it too. */
  readonly world: LinkWorld;
  /** The piece of the chart to open on. */
  readonly view?: LinkView | null;
}

/**
 * The link of a scene, `s1.…`, to stand after the `#` of the bench's address. It gives back the very same scene where the scene came from
 * our files or the bench (numbers keep 30 decimals, and a wind of more than 20 characters keeps four). Longer than
 * `LONGEST_LINK`, it cannot be opened again: then save a file.
 */
export const sceneToLink = (scene: Scene, { world, view = null }: SceneLinkOptions): string =>
  sealLink(JSON.stringify(packScene(scene, world, view)));
