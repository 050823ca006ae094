/** All that a bench needs to let scenes in and out: where they came from, recent work, what went wrong, and the line that tells. */

import { type Signal, signal } from "@preact/signals";
import { sceneName } from "../files/file-name.ts";
import { followWork } from "../files/follow-work.ts";
import { createRecent, type Recent } from "../files/recent.ts";
import { createSceneDesk, type SceneDesk } from "../files/scene-desk.ts";
import { createSources, type SceneSource, type SceneSources } from "../files/scene-source.ts";
import type { Notice } from "../frame/fault-notice.tsx";
import type { Bench, Opened } from "../state/bench.ts";
import { createSaid, type Said } from "./said.ts";

export interface OutState {
  readonly sources: SceneSources;
  readonly recent: Recent;
  readonly said: Said;
  readonly desk: SceneDesk;
  /** What is wrong with the file that was opened last; null when nothing. */
  readonly notice: Signal<Notice | null>;
  /** What files of the present scene are called, without their endings. */
  readonly name: () => string;
}

export interface OutSettings {
  /** Called with files that are a catalogue of stations. */
  readonly onCatalogue: (files: readonly File[]) => Promise<void>;
  /** Called when a scene was opened from a file or from recent work. */
  readonly onOpened?: () => void;
  /** The text of the scene that the bench begins with; null where it came from none. */
  readonly firstSource?: SceneSource | null;
}

/** One for the life of the page. */
export function createOut(
  bench: Bench,
  { onCatalogue, onOpened, firstSource = null }: OutSettings,
): OutState {
  const sources = createSources();
  if (firstSource !== null) sources.keep(bench.opened.value.asOpened, firstSource);
  const recent = createRecent();
  const said = createSaid();
  const notice = signal<Notice | null>(null);
  const nameOf = (opened: Opened): string => sceneName(opened, sources.of(opened.asOpened));
  const followed = followWork({ bench, sources, recent, nameOf });
  const desk = createSceneDesk({
    bench,
    sources,
    nameOf,
    said,
    showFault: (next) => {
      notice.value = next;
    },
    onCatalogue,
    onOpened: () => onOpened?.(),
    onResumed: followed.goesOnAs,
  });
  return { sources, recent, said, desk, notice, name: () => nameOf(bench.opened.value) };
}
