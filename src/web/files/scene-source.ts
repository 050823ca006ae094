/** The text a scene on the bench was read from, so that saving changes that text and loses nothing of it. */

import type { Scene } from "../../scene/index.ts";

export interface SceneSource {
  /** As the person named it, with `/`; the last part is the file's name. */
  readonly path: string;
  readonly text: string;
  /** As the text reads: what a later scene is compared with. */
  readonly scene: Scene;
  /** The other files given together with it, text by path. */
  readonly files: ReadonlyMap<string, string>;
  /** Where the file can be written back to; null where the browser gave only its contents. */
  readonly handle: FileSystemFileHandle | null;
}

/** Which scenes on the bench came from which text. A scene is known by itself: going back in history finds its text again. */
export interface SceneSources {
  readonly of: (asOpened: Scene) => SceneSource | null;
  readonly keep: (asOpened: Scene, source: SceneSource) => void;
}

export function createSources(): SceneSources {
  const sources = new WeakMap<Scene, SceneSource>();
  return {
    of: (asOpened) => sources.get(asOpened) ?? null,
    keep: (asOpened, source) => sources.set(asOpened, source),
  };
}
