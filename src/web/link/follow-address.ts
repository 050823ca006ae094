/**
 * The bench's state lives in its address, so that a reload, a bookmark or a copied address finds the scene again. Written at most a few
 * times a second, for browsers refuse more; and followed where a person puts another mark there.
 */

import { effect } from "@preact/signals";
import { type LinkView, type LinkWorld, LONGEST_LINK, sceneToLink } from "../../scene/index.ts";
import type { Bench, Opened } from "../state/bench.ts";
import { type Asked, askedBy, markFor } from "./address-mark.ts";

/** Browsers take a hundred changes of the address in half a minute. */
const WRITE_EVERY_MS = 500;

export interface AddressParts {
  readonly bench: Bench;
  readonly world: LinkWorld;
  /** The scene that a bare address opens. */
  readonly home: Opened["asOpened"];
  /** The piece of the chart shown, where a hand chose it. */
  readonly view?: () => LinkView | null;
  /** Whether something else than the bench fills the page, with a mark of its own. */
  readonly isAway?: () => boolean;
  /** A person has put another mark into the address of the open page. */
  readonly onAsked: (asked: Asked) => void;
}

/** What the address asks for now. */
export const askedNow = (): Asked => askedBy(location.hash);

/** The link of the present scene; null when it is too long to be opened again. */
export function presentLink({
  bench,
  world,
  view,
}: Pick<AddressParts, "bench" | "world" | "view">): string | null {
  const link = sceneToLink(bench.scene.value, { world, view: view?.() ?? null });
  return link.length < LONGEST_LINK ? link : null;
}

/** Keeps the address in step until the given clean-up is called. */
export function followAddress(parts: AddressParts): () => void {
  const { bench, home, onAsked } = parts;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let written = location.hash;
  const write = () => {
    clearTimeout(timer);
    timer = undefined;
    if (parts.isAway?.() === true) return;
    const mark = markFor(bench.opened.value, { home, hash: location.hash, link: () => presentLink(parts) });
    if (location.hash === mark) return;
    history.replaceState(history.state, "", location.pathname + location.search + mark);
    written = mark;
  };
  const unfollow = effect(() => {
    const { scene, asOpened } = bench.opened.value;
    parts.view?.();
    parts.isAway?.();
    // A scene just opened is named at once; one that is being changed waits for its turn.
    if (scene === asOpened) write();
    else timer ??= setTimeout(write, WRITE_EVERY_MS);
  });
  const flush = () => {
    if (timer !== undefined) write();
  };
  const onHash = () => {
    // Back from elsewhere to the bench as it stands is no wish for another scene.
    if (location.hash === written || parts.isAway?.() === true) return;
    written = location.hash;
    onAsked(askedNow());
  };
  addEventListener("pagehide", flush);
  document.addEventListener("visibilitychange", flush);
  addEventListener("hashchange", onHash);
  return () => {
    unfollow();
    clearTimeout(timer);
    removeEventListener("pagehide", flush);
    document.removeEventListener("visibilitychange", flush);
    removeEventListener("hashchange", onHash);
  };
}
