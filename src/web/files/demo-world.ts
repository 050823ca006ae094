/** The demo's stations and land, which every bench has, for links. */

import type { LinkWorld } from "../../scene/index.ts";
import { linkWorld } from "../link/demo-world.ts";
import { demoScene } from "../state/demo-scenes.ts";

/** The first scene has all of the isles' stations under it. */
export const demoWorld = (): LinkWorld => linkWorld(demoScene("").scene);
