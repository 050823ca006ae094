/** The demo's stations and land, which every bench has: links name them and need not carry them. */

import type { LinkWorld, Scene } from "../../scene/index.ts";

/** `first` is the demo's first scene, which has all of the isles' stations under it. */
export const linkWorld = ({ stations, land }: Pick<Scene, "stations" | "land">): LinkWorld => ({
  name: "the Ostrelle Isles",
  stations,
  land,
});
