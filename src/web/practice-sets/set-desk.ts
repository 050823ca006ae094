/** The instructor's desk: the wishes, the set made of them, every change with its way back. Kept in this browser as it goes. */

import { type ReadonlySignal, signal } from "@preact/signals";
import { buildSet, type ProblemSet, practiceWorld, type World } from "../../practice/index.ts";
import type { LinkWorld, Scene } from "../../scene/index.ts";
import { moved, replaced, withCode, without } from "./set-changes.ts";
import { FIRST_WISHES, readWishForm, type WishForm, wishesOf } from "./wishes.ts";

export const SETS_KEY = "needlework.sets";
const MOST_STEPS_BACK = 100;

/** On which stations a set is made. */
export type Ground = "isles" | "bench";

export interface SetDesk {
  readonly wishes: ReadonlySignal<WishForm>;
  readonly ground: ReadonlySignal<Ground>;
  readonly set: ReadonlySignal<ProblemSet | null>;
  /** What could not be granted, or what went wrong: one sentence each. */
  readonly notes: ReadonlySignal<readonly string[]>;
  /** The problem that is looked at, from 0. */
  readonly at: ReadonlySignal<number>;
  readonly canUndo: ReadonlySignal<boolean>;
  readonly canRedo: ReadonlySignal<boolean>;
  readonly wish: (change: Partial<WishForm>) => void;
  readonly standOn: (ground: Ground) => void;
  readonly look: (at: number) => void;
  readonly make: () => void;
  readonly name: (words: Partial<Pick<ProblemSet, "title" | "note">>) => void;
  readonly another: (at: number) => void;
  readonly remove: (at: number) => void;
  readonly move: (at: number, by: -1 | 1) => void;
  readonly add: (code: string) => void;
  readonly open: (set: ProblemSet, notes: readonly string[]) => void;
  readonly say: (notes: readonly string[]) => void;
  readonly undo: () => void;
  readonly redo: () => void;
}

export interface SetDeskParts {
  readonly isles: World;
  /** The scene on the bench, whose stations a set can stand on. */
  readonly benchScene: () => Scene;
  readonly links: LinkWorld;
  readonly toLink: (set: ProblemSet) => string;
  readonly fromLink: (link: string) => ProblemSet | null;
  /** Null where the browser keeps nothing. */
  readonly store: Pick<Storage, "getItem" | "setItem"> | null;
  /** A whole number that differs from call to call. */
  readonly seed: () => number;
}

export function createSetDesk(parts: SetDeskParts): SetDesk {
  const { isles, benchScene, toLink, fromLink, store, seed } = parts;
  const kept = readKept(store);
  const wishes = signal<WishForm>(readWishForm(kept.wishes));
  const ground = signal<Ground>("isles");
  const set = signal<ProblemSet | null>(kept.link === "" ? null : fromLink(kept.link));
  const notes = signal<readonly string[]>([]);
  const at = signal(0);
  const canUndo = signal(false);
  const canRedo = signal(false);
  let past: readonly (ProblemSet | null)[] = [];
  let future: readonly (ProblemSet | null)[] = [];

  const keep = () => {
    const link = set.value === null ? "" : toLink(set.value);
    try {
      store?.setItem(SETS_KEY, JSON.stringify({ wishes: wishes.value, link }));
    } catch {
      // A browser that keeps nothing: the set is still on the page, and can be saved.
    }
  };
  const show = (next: ProblemSet | null) => {
    set.value = next;
    at.value = Math.max(0, Math.min(at.value, (next?.problems.length ?? 1) - 1));
    canUndo.value = past.length > 0;
    canRedo.value = future.length > 0;
    keep();
  };
  const change = (next: ProblemSet | string, told: readonly string[] = []) => {
    if (typeof next === "string") {
      notes.value = [next];
      return;
    }
    notes.value = told;
    if (next === set.value) return;
    past = [...past, set.value].slice(-MOST_STEPS_BACK);
    future = [];
    show(next);
  };
  const onSet = (work: (now: ProblemSet) => ProblemSet | string) => {
    if (set.value !== null) change(work(set.value));
  };
  const worldWished = (): World | string => {
    if (ground.value === "isles") return isles;
    const { title, stations, land, date } = benchScene();
    try {
      return practiceWorld({ name: title === "" ? "the bench's stations" : title, stations, land, date });
    } catch (error) {
      // The stations cannot serve: the sentence says why.
      if (error instanceof RangeError) return error.message;
      throw error;
    }
  };
  return {
    wishes,
    ground,
    set,
    notes,
    at,
    canUndo,
    canRedo,
    wish: (change) => {
      wishes.value = { ...wishes.value, ...change };
      keep();
    },
    standOn: (wanted) => {
      ground.value = wanted;
    },
    look: (wanted) => {
      at.value = wanted;
    },
    make: () => {
      const wanted = wishesOf(wishes.value);
      const world = worldWished();
      if (typeof wanted === "string" || typeof world === "string") {
        notes.value = [wanted, world].filter((one) => typeof one === "string");
        return;
      }
      const built = buildSet(world, wanted);
      if (built.kind === "none") notes.value = [built.says];
      else {
        at.value = 0;
        change(built.set, built.notes);
      }
    },
    name: (words) => onSet((now) => ({ ...now, ...words })),
    another: (place) => onSet((now) => replaced(now, place, seed())),
    remove: (place) => onSet((now) => without(now, place)),
    move: (place, by) => {
      const before = set.value;
      onSet((now) => moved(now, place, by));
      if (set.value !== before) at.value = place + by;
    },
    add: (code) => {
      const before = set.value?.problems.length ?? 0;
      onSet((now) => withCode(now, code));
      if ((set.value?.problems.length ?? 0) > before) at.value = before;
    },
    open: (opened, told) => {
      at.value = 0;
      change(opened, told);
    },
    say: (told) => {
      notes.value = told;
    },
    undo: () => {
      if (past.length === 0) return;
      future = [set.value, ...future];
      const before = past.at(-1) ?? null;
      past = past.slice(0, -1);
      notes.value = [];
      show(before);
    },
    redo: () => {
      const [next, ...rest] = future;
      if (next === undefined) return;
      past = [...past, set.value];
      future = rest;
      notes.value = [];
      show(next);
    },
  };
}

function readKept(store: SetDeskParts["store"]): { readonly wishes: unknown; readonly link: string } {
  try {
    const kept: unknown = JSON.parse(store?.getItem(SETS_KEY) ?? "{}");
    if (typeof kept !== "object" || kept === null) return { wishes: FIRST_WISHES, link: "" };
    const { wishes = FIRST_WISHES, link = "" } = kept as { wishes?: unknown; link?: unknown };
    return { wishes, link: typeof link === "string" ? link : "" };
  } catch {
    return { wishes: FIRST_WISHES, link: "" };
  }
}
