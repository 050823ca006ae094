/** What stands after the `#` of the bench's address: nothing, a scene of the demo by its key, or a whole scene. Pure. */

import { isSceneLink } from "../../scene/index.ts";
import type { Opened } from "../state/bench.ts";

export type Asked =
  | { readonly kind: "nothing" }
  /** A scene of the demo, by its key or its number. */
  | { readonly kind: "demo"; readonly key: string }
  /** A whole scene, yet to be read. */
  | { readonly kind: "link"; readonly text: string };

/** What an address asks for; `hash` begins with `#` or is empty. */
export function askedBy(hash: string): Asked {
  if (isSceneLink(hash)) return { kind: "link", text: hash };
  const key = new URLSearchParams(hash.slice(1)).get("scene");
  return key === null ? { kind: "nothing" } : { kind: "demo", key };
}

/**
 * The mark for what is on the bench, with its `#`; empty for none. A scene of the demo as it was opened is named; `home`, which the bench
 * opens on by itself, needs no name while the address has none; everything else is written out by `link`.
 */
export function markFor(
  opened: Opened,
  given: { readonly home: Opened["asOpened"]; readonly hash: string; readonly link: () => string | null },
): string {
  const { asOpened, scene, origin, name } = opened;
  const untouched = scene === asOpened;
  if (untouched && asOpened === given.home && (given.hash === "" || origin !== "demo")) return "";
  if (untouched && origin === "demo") return `#${new URLSearchParams({ scene: name })}`;
  const link = given.link();
  return link === null ? "" : `#${link}`;
}
