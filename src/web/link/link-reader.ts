/** The reader of links, a part of its own: it brings the reader of scene files with it, which the first load has no need of. */

export { sceneFromLink } from "../../scene/index.ts";
