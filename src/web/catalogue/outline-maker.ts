/** What makes outlines of a topology's rings: a part of its own, so that the whole of the drawing code need not be one. */

export { worldOutlines } from "../../draw/index.ts";
