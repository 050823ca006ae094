/** Scenes out of files: the one the bench was started with, and those a person opens. Their reader is loaded when one is. */

import type { Scene } from "../../scene/index.ts";
import type { Origin } from "./bench.ts";

export type SceneRead =
  | { readonly ok: true; readonly name: string; readonly origin: Origin; readonly scene: Scene }
  | {
      readonly ok: false;
      readonly name: string /** One sentence each, with file, line and column. */;
      readonly lines: readonly string[];
    };

interface ServedScene {
  readonly scene: { readonly file: string; readonly text: string };
  readonly files: readonly { readonly path: string; readonly text: string }[];
}

/** The scene that the bench was started with; null when there is none, or no server of ours. */
export async function servedScene(): Promise<SceneRead | null> {
  const answer = await fetch("/api/scene").catch(() => null);
  // 204: the bench was started without one. A page from a folder has no such address, and may answer with itself.
  if (answer === null || answer.status === 204 || !answer.headers.get("content-type")?.includes("json"))
    return null;
  if (!answer.ok) {
    const { message } = (await answer.json()) as { readonly message: string };
    return { ok: false, name: "the scene file", lines: [message] };
  }
  const served = (await answer.json()) as ServedScene;
  const files = new Map(served.files.map(({ path, text }) => [path, text]));
  files.set(served.scene.file, served.scene.text);
  const { readFrom } = await import("./scene-reader.ts");
  return readFrom(files, served.scene.file, "file");
}

/** The scene among the files a person picked: the first that says it is one, else the first. Null when none was picked. */
export const pickedScene = async (picked: readonly File[]): Promise<SceneRead | null> =>
  (await import("./scene-reader.ts")).readPicked(picked);
