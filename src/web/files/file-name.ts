/** What to call a scene, and the files of it that leave the bench. */

import type { Opened } from "../state/bench.ts";
import { baseName } from "./open-over.ts";
import type { SceneSource } from "./scene-source.ts";

const LONGEST = 60;

/** A name that every system takes: letters, digits and dashes of any script; "scene" where nothing is left. */
export function fileStem(text: string): string {
  const stem = text
    .normalize("NFC")
    .replace(/[^\p{L}\p{M}\p{N}._-]+/gu, "-")
    .replace(/^[-.]+|[-.]+$/g, "");
  return (
    [...stem]
      .slice(0, LONGEST)
      .join("")
      .replace(/[-.]+$/, "") || "scene"
  );
}

/** The name a scene's file has or gets. */
export const sceneFileName = (name: string): string => `${fileStem(name)}.yaml`;

/** Its file's name without ending, or the demo scene's; for any other its title, where it has one. */
export function sceneName({ name, origin, scene }: Opened, source: SceneSource | null): string {
  if (source !== null) return baseName(source.path).replace(/\.ya?ml$/i, "");
  return origin === "demo" || scene.title.trim() === "" ? name : fileStem(scene.title);
}
