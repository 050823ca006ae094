/** What a hand can do to the covers of a scene, and to the question that stands over it. */

import { parseCover, type Scene } from "../../scene/index.ts";

export type CoverAction =
  /** A cover as a scene file writes it: `chart`, `heading`, `NAV1`, `NAV1.needle`. */
  | { readonly kind: "put-cover"; readonly cover: string }
  | { readonly kind: "lift-cover"; readonly cover: string }
  | { readonly kind: "lift-covers" }
  | { readonly kind: "set-ask"; readonly ask: string };

/** As long as a scene file lets a question be, characters. */
export const LONGEST_ASK = 2000;

/** The scene after one action. The very same object when the action changes nothing, or the scene has no such thing to cover. */
export function actOnCovers(scene: Scene, action: CoverAction): Scene {
  const { covers } = scene;
  switch (action.kind) {
    case "put-cover":
      return canBeCovered(scene, action.cover) && !covers.includes(action.cover)
        ? { ...scene, covers: [...covers, action.cover] }
        : scene;
    case "lift-cover":
      return covers.includes(action.cover)
        ? { ...scene, covers: covers.filter((cover) => cover !== action.cover) }
        : scene;
    case "lift-covers":
      return covers.length === 0 ? scene : { ...scene, covers: [] };
    case "set-ask": {
      const ask = action.ask.trim().slice(0, LONGEST_ASK);
      return ask === scene.ask ? scene : { ...scene, ask };
    }
  }
}

function canBeCovered({ receivers }: Scene, cover: string): boolean {
  const target = parseCover(cover);
  if (target === null) return false;
  return target.kind !== "receiver" || receivers.some(({ name }) => name === target.receiver);
}
