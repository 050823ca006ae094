/** The scene that `needlework bench SCENE` was started with, as its server hands it to the page. */

import type { GivenRead } from "./read-given.ts";

interface Served {
  readonly scene: { readonly file: string; readonly text: string };
  readonly files: readonly { readonly path: string; readonly text: string }[];
}

export type ServedScene =
  | (Extract<GivenRead, { ok: true }> & { readonly origin: "file" })
  | Extract<GivenRead, { ok: false }>;

/** Null when the bench was started without a scene, or by no server of ours. */
export async function servedScene(): Promise<ServedScene | null> {
  const answer = await fetch("/api/scene").catch(() => null);
  // 204: the bench was started without one. A page from a folder has no such address, and may answer with itself.
  if (answer === null || answer.status === 204 || !answer.headers.get("content-type")?.includes("json"))
    return null;
  if (!answer.ok) {
    const { message } = (await answer.json()) as { readonly message: string };
    return { ok: false, name: "the scene file", lines: [message] };
  }
  const { scene, files } = (await answer.json()) as Served;
  const { readServed } = await import("./file-work.ts");
  const read = readServed({
    path: scene.file,
    text: scene.text,
    files: new Map(files.map(({ path, text }) => [path, text])),
  });
  return read.ok ? { ...read, origin: "file" } : read;
}
