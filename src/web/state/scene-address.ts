/** The demo scene on the bench stands in the address (`#scene=12-in-the-cone`), so that a reload or a bookmark finds it again. */

import { effect } from "@preact/signals";
import type { Bench } from "./bench.ts";

/** The key that the address names; null when it names none. */
export const sceneInAddress = (): string | null => new URLSearchParams(location.hash.slice(1)).get("scene");

/** Keeps the address in step with the scene on the bench. A scene that is not of the demo leaves it empty. */
export function keepSceneInAddress(bench: Bench): void {
  const first = bench.opened.value.name;
  effect(() => {
    const { name, origin } = bench.opened.value;
    const named = origin === "demo" && (name !== first || location.hash !== "");
    const hash = named ? `#${new URLSearchParams({ scene: name })}` : "";
    if (location.hash !== hash) history.replaceState(null, "", location.pathname + location.search + hash);
  });
}
