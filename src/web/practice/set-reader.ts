/** The reader of problem sets, a part of its own: it brings the reader of scene files with it. */

export { problemSetFromLink, problemSetToLink, readProblemSet } from "../../practice/index.ts";
export { faultLine, openNothing } from "../../scene/index.ts";
