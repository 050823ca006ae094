/** A pile of thirty learners' answers to twenty problems, from its table to the report. */

import { markPdf } from "../src/cli/mark-pdf.ts";
import { buildSet, letteredOptions, markPile, pileReport, readAnswerSheet } from "../src/practice/index.ts";
import { islesWorld } from "./isles-world.ts";
import { quickestMs } from "./rate.ts";

const PROBLEMS = 20;
const LEARNERS = 30;
const RUNS = 3;

/** Lines of the report. */
export function marking(): string[] {
  const wishes = { skills: [], slips: [], count: PROBLEMS, seed: 1, mode: "choose" } as const;
  const built = buildSet(islesWorld(), wishes);
  if (built.kind === "none") throw new Error(built.says);
  const { set } = built;
  // Another option for each learner and problem: over the whole course, whatever can be held comes up.
  const rows = Array.from({ length: LEARNERS }, (_, learner) =>
    set.problems.map((problem, at) => {
      const options = letteredOptions(problem);
      return `Learner ${learner + 1},${at + 1},${options[(learner * 7 + at * 3) % options.length]?.letter ?? "?"}`;
    }),
  );
  const text = rows.flat().join("\n");
  const report = () => pileReport(markPile(set, readAnswerSheet(text)));
  const markedMs = quickestMs(RUNS, report);
  const done = report();
  // Another title each time: the typesetter remembers what it has set.
  let run = 0;
  const typesetMs = quickestMs(RUNS, () => {
    run += 1;
    const learners = done.learners.map((one) => ({ ...one, learner: `${one.learner}, run ${run}` }));
    return markPdf({ ...done, learners }, { ...set, title: `Run ${run}` }, "a4");
  });
  return [
    `a pile of ${LEARNERS} learners and ${PROBLEMS} problems marked, ${done.scope.length} ideas   ${markedMs.toFixed(0)} ms`,
    `its report typeset                                  ${typesetMs.toFixed(0)} ms`,
  ];
}
