/** A link as it comes from the address, read into a scene or into what a person is told. */

import type { LinkView, LinkWorld, Scene } from "../../scene/index.ts";

/** What the bench calls a scene that came by link, and its file when it is saved. */
const LINKED_NAME = "linked-scene";

export type LinkRead =
  | {
      readonly ok: true;
      readonly name: string;
      readonly origin: "file";
      readonly scene: Scene;
      readonly view: LinkView | null;
      /** Sentences for the person, though the scene is opened. */
      readonly notes: readonly string[];
    }
  | { readonly ok: false; readonly name: string; readonly lines: readonly string[] };

/** Loads the reader when first asked. Never rejects but where the page's own parts cannot be loaded. */
export async function readLink(text: string, world: LinkWorld): Promise<LinkRead> {
  const { sceneFromLink } = await import("./link-reader.ts");
  const read = sceneFromLink(text, { world });
  return read.ok
    ? { ok: true, name: LINKED_NAME, origin: "file", scene: read.scene, view: read.view, notes: read.notes }
    : { ok: false, name: "The link", lines: read.faults };
}
