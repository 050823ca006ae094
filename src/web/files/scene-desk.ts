/** Scene files in and out of the bench: opening what a person gives, and saving what stands there. Nothing is lost on the way. */

import type { Notice } from "../frame/fault-notice.tsx";
import type { Said } from "../out/said.ts";
import type { Bench, Opened } from "../state/bench.ts";
import { sceneFileName } from "./file-name.ts";
import { pickFiles } from "./file-system.ts";
import type { GivenFile } from "./given-files.ts";
import type { GivenRead } from "./read-given.ts";
import type { RecentEntry } from "./recent-entry.ts";
import { saveFile } from "./save-file.ts";
import type { SceneSources } from "./scene-source.ts";

export interface SceneDeskParts {
  readonly bench: Bench;
  readonly sources: SceneSources;
  /** What to call a scene. */
  readonly nameOf: (opened: Opened) => string;
  /** Shows what is wrong with a file; null takes an older such notice away. */
  readonly showFault: (notice: Notice | null) => void;
  readonly said: Said;
  /** Takes files that are no scene but a catalogue of stations. */
  readonly onCatalogue: (files: readonly File[]) => Promise<void>;
  /** Called when a scene was opened, so that whatever lies over the bench goes. */
  readonly onOpened?: () => void;
  /** Called with the entry's id when recent work was opened, after `onOpened`. */
  readonly onResumed?: (id: string) => void;
}

export interface SceneDesk {
  /** Lets a person pick files and opens the scene among them. */
  readonly pick: () => Promise<void>;
  /** Opens the scene among files that were given, or the catalogue of stations that they are; the present scene stays when that fails. */
  readonly take: (given: readonly GivenFile[]) => Promise<void>;
  /** Opens recent work; resolves to whether it could be opened. */
  readonly resume: (entry: RecentEntry) => Promise<boolean>;
  /** Saves the present scene to its file, or to one the person picks, or as a download. */
  readonly save: () => Promise<void>;
}

const fileWork = () => import("./file-work.ts");

export function createSceneDesk(parts: SceneDeskParts): SceneDesk {
  const { bench, sources, nameOf, showFault, said } = parts;
  const put = (read: GivenRead): boolean => {
    if (!read.ok) {
      showFault(read);
      return false;
    }
    if (read.source !== null) sources.keep(read.scene, read.source);
    try {
      bench.open({ name: read.name, origin: "file" }, read.scene);
    } catch (error) {
      showFault({ name: read.name, lines: [error instanceof Error ? error.message : String(error)] });
      return false;
    }
    showFault(null);
    said.say(`${read.name} opened`, ...read.notes);
    parts.onOpened?.();
    return true;
  };
  /** The reader may be out of reach, as when the connection is gone before it was ever needed. */
  const tried = async <T>(work: () => Promise<T>, otherwise: T): Promise<T> => {
    try {
      return await work();
    } catch (error) {
      said.say(`that did not work: ${error instanceof Error ? error.message : String(error)}`);
      return otherwise;
    }
  };
  const take = (given: readonly GivenFile[]) =>
    tried(async () => {
      const { readFiles } = await fileWork();
      const read = await readFiles(given);
      if (read === "catalogue") {
        showFault(null);
        await parts.onCatalogue(given.map(({ file }) => file));
      } else if (read !== null) put(read);
    }, undefined);
  const save = async () => {
    const opened = bench.opened.value;
    const { asOpened, scene } = opened;
    const source = sources.of(asOpened);
    const { sceneText } = await fileWork();
    const saved = sceneText(scene, source);
    if (!saved.ok) {
      said.say(`not saved: ${saved.lines.join("; ")}`);
      return;
    }
    const ended = await saveFile(saved.text, { source, name: sceneFileName(nameOf(opened)) });
    if (ended.kind === "turned-away") return;
    if (ended.kind === "failed") {
      said.say(`not saved: ${ended.reason}`);
      return;
    }
    if (ended.handle !== null) {
      const files = source?.files ?? new Map();
      sources.keep(asOpened, { path: ended.name, text: saved.text, scene, files, handle: ended.handle });
    }
    said.say(`${ended.name} saved`, ...(ended.note === null ? [] : [ended.note]), ...saved.notes);
  };
  return {
    take,
    pick: () => tried(async () => take(await pickFiles()), undefined),
    resume: (entry) =>
      tried(async () => {
        const { readRecent } = await fileWork();
        const opened = put(readRecent(entry));
        if (opened) parts.onResumed?.(entry.id);
        return opened;
      }, false),
    save: () => tried(save, undefined),
  };
}
