/** Keeps the scene on the bench among recent work while it is worked on, so that closing the page loses nothing. */

import { effect } from "@preact/signals";
import { type Scene, sceneToLink } from "../../scene/index.ts";
import type { Bench, Opened } from "../state/bench.ts";
import { demoWorld } from "./demo-world.ts";
import { pageWorkBefore, rememberPageWork } from "./page-work.ts";
import type { Recent } from "./recent.ts";
import type { RecentWork } from "./recent-entry.ts";
import { linkWork } from "./recent-work.ts";
import type { SceneSources } from "./scene-source.ts";

/** After this much rest what was changed is kept. */
const REST_MS = 1_200;

export interface FollowParts {
  /** What to call the scene. */
  readonly nameOf: (opened: Opened) => string;
  readonly bench: Bench;
  readonly sources: SceneSources;
  readonly recent: Recent;
}

export interface FollowedWork {
  /** From now on the scene on the bench is kept under that entry's id: it was opened from there. */
  readonly goesOnAs: (id: string) => void;
  readonly stop: () => void;
}

/** A person's own scenes are kept from the start, those of the demo once they are changed. */
export function followWork({ bench, sources, recent, nameOf }: FollowParts): FollowedWork {
  const ids = new WeakMap<Scene, string>();
  let texts: typeof import("./file-work.ts") | null = null;
  let due: Opened | null = null;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let takingUp = false;
  /** Null while what it takes is not loaded yet. */
  const workNow = ({ name, scene, asOpened }: Opened): RecentWork | null => {
    const source = sources.of(asOpened);
    const link = source === null ? linkWork(scene, demoWorld()) : null;
    return link ?? texts?.textWork(name, scene, source) ?? null;
  };
  const keep = () => {
    clearTimeout(timer);
    if (due === null || takingUp) return;
    const { asOpened, scene } = due;
    const work = workNow(due);
    if (work === null) {
      void load();
      return;
    }
    const id = ids.get(asOpened) ?? newId();
    ids.set(asOpened, id);
    recent.keep({ id, name: nameOf(due), title: scene.title, when: new Date().toISOString(), work });
    rememberPageWork({ id, link: sceneToLink(scene, { world: demoWorld() }) });
    due = null;
  };
  const load = async () => {
    if (texts !== null) return;
    // Where it cannot be had the work is not remembered, which costs nothing else.
    texts = await import("./file-work.ts").catch(() => null);
    if (texts !== null) keep();
  };
  /** After a reload the scene came out of the address, and goes on as the work it was before. */
  const takeUp = async ({ asOpened, scene }: Opened) => {
    const before = pageWorkBefore();
    if (before === null || before.link !== sceneToLink(scene, { world: demoWorld() })) return;
    ids.set(asOpened, before.id);
    const entry = recent.entries.value.find(({ id }) => id === before.id);
    if (entry?.work.kind !== "text" || sources.of(asOpened) !== null) return;
    takingUp = true;
    try {
      const { readRecent } = await import("./file-work.ts");
      const read = readRecent(entry);
      if (read.ok && read.source !== null) sources.keep(asOpened, read.source);
    } catch {
      // Its text cannot be had: the scene itself is all there.
    } finally {
      takingUp = false;
      if (due !== null) timer = setTimeout(keep, REST_MS);
    }
  };
  if (bench.opened.value.origin === "file") void takeUp(bench.opened.value);
  const unfollow = effect(() => {
    const opened = bench.opened.value;
    if (opened.origin === "demo" && opened.scene === opened.asOpened) return;
    // Another scene takes the place of one that is still due.
    if (due !== null && due.asOpened !== opened.asOpened) keep();
    due = opened;
    clearTimeout(timer);
    timer = setTimeout(keep, REST_MS);
    // A scene out of a file needs its text to be remembered; a page that goes away waits for nothing.
    if (sources.of(opened.asOpened) !== null) void load();
  });
  // A page that goes away gets no more turns: what is due is kept at once.
  addEventListener("pagehide", keep);
  document.addEventListener("visibilitychange", keep);
  return {
    goesOnAs: (id) => ids.set(bench.opened.value.asOpened, id),
    stop: () => {
      unfollow();
      clearTimeout(timer);
      removeEventListener("pagehide", keep);
      document.removeEventListener("visibilitychange", keep);
    },
  };
}

let count = 0;
function newId(): string {
  count += 1;
  return `${Date.now().toString(36)}-${Math.floor(performance.now()).toString(36)}-${count}`;
}
