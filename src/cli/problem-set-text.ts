/** A problem set as the text of the file it is written to. */

import { dirname, relative, resolve } from "node:path";
import { editProblemSet, writeProblemSet } from "../practice/index.ts";
import { faultsOf } from "./faults.ts";
import type { ProblemSetOperand } from "./problem-set-operand.ts";
import { STREAM } from "./streams.ts";

/** The text of a file of the set, its paths told from where the file will stand. */
export function setFileText(operand: ProblemSetOperand, output: string): string {
  const { set, isles, stationsPath, landPath, source } = operand;
  const folder = output === STREAM ? "." : dirname(output);
  // In the same folder all its paths hold, so the author's own text is kept, comments and all.
  if (source !== null && source.path !== STREAM && resolve(dirname(source.path)) === resolve(folder)) {
    const edited = editProblemSet(source.text, set, { path: source.path });
    if (!edited.ok) throw faultsOf(edited.faults);
    return edited.text;
  }
  const from = (path: string): string => relative(resolve(folder), resolve(path)).replaceAll("\\", "/");
  return writeProblemSet(set, {
    isles,
    ...(stationsPath === null || stationsPath === STREAM ? {} : { stations: from(stationsPath) }),
    ...(landPath === null ? {} : { land: from(landPath) }),
  });
}
