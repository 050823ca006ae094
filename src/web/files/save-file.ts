/** Puts a scene's text where it belongs: back into its file, into one the person picks, or into the downloads. */

import { decodeText } from "../../scene/index.ts";
import { download } from "./download.ts";
import { mayWrite, pickPlace, writeTo } from "./file-system.ts";
import { baseName } from "./open-over.ts";
import type { SceneSource } from "./scene-source.ts";

export type SaveEnd =
  | {
      readonly kind: "saved";
      readonly name: string;
      /** Where the next saving goes; null after a download. */
      readonly handle: FileSystemFileHandle | null;
      /** Why it did not go where it came from; null when it did, or came from nowhere. */
      readonly note: string | null;
    }
  | { readonly kind: "turned-away" }
  | { readonly kind: "failed"; readonly reason: string };

export interface SaveTarget {
  readonly source: SceneSource | null;
  /** What to call a new file. */
  readonly name: string;
}

/** A file that another program changed meanwhile is left as it is, and a new one is made. */
export async function saveFile(text: string, { source, name }: SaveTarget): Promise<SaveEnd> {
  const handle = source?.handle ?? null;
  const sourceName = source === null ? name : baseName(source.path);
  try {
    if (source === null || handle === null) return await saveAnew(text, sourceName, null);
    if (!(await mayWrite(handle)))
      return await saveAnew(text, sourceName, `${handle.name} may not be written to`);
    if (!(await isUnchanged(handle, source.text)))
      return await saveAnew(
        text,
        sourceName,
        `${handle.name} was changed by another program since it was opened, so it was left as it is`,
      );
    await writeTo(handle, text);
    return { kind: "saved", name: handle.name, handle, note: null };
  } catch (error) {
    return { kind: "failed", reason: error instanceof Error ? error.message : String(error) };
  }
}

async function saveAnew(text: string, name: string, note: string | null): Promise<SaveEnd> {
  const place = await pickPlace(name);
  if (place === null) return { kind: "turned-away" };
  if (place === "none") {
    download(new Blob([text], { type: "application/yaml" }), name);
    return { kind: "saved", name, handle: null, note };
  }
  await writeTo(place, text);
  return { kind: "saved", name: place.name, handle: place, note };
}

/** Whether the file still holds what was read from it. A file that is gone or unreadable does not. */
async function isUnchanged(handle: FileSystemFileHandle, text: string): Promise<boolean> {
  try {
    const file = await handle.getFile();
    const decoded = decodeText(new Uint8Array(await file.arrayBuffer()), handle.name);
    return decoded.ok && decoded.text === text;
  } catch {
    return false;
  }
}
