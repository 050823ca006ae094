/** From a scene on the bench to what is remembered of it, and back. */

import { type LinkWorld, LONGEST_LINK, type Scene, sceneToLink } from "../../scene/index.ts";
import type { RecentWork } from "./recent-entry.ts";

/** Room for the address before the link. */
const LONGEST_KEPT_LINK = LONGEST_LINK - 2_000;

/** The whole scene in a link; null where it would be too long to be opened again. */
export function linkWork(scene: Scene, world: LinkWorld): RecentWork | null {
  const link = sceneToLink(scene, { world });
  return link.length <= LONGEST_KEPT_LINK ? { kind: "link", link } : null;
}
