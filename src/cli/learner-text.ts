/** What one learner gets back of a marked pile, for a terminal. */

import type { LearnerSheet } from "../practice/index.ts";
import { marksText } from "./mark-words.ts";

export function learnerText({ title, learner, marks, of, answers, unanswered, next }: LearnerSheet): string {
  const cells = answers.map((one) => [one.problem, marksText(one.marks), one.title, one.written, one.right]);
  const rows = [["no.", "mark", "problem", "your answer", "right"], ...cells];
  const widths = [0, 1, 2, 3].map((column) => Math.max(...rows.map((row) => (row[column] ?? "").length)));
  const line = (row: readonly string[]): string =>
    row
      .map((cell, column) =>
        column < 2 ? cell.padStart(widths[column] ?? 0) : cell.padEnd(widths[column] ?? 0),
      )
      .join("  ")
      .trimEnd();
  return [
    `${learner}: ${title}, ${marksText(marks)} of ${of}`,
    `next: ${next}`,
    "",
    ...rows.map(line),
    ...(unanswered.length === 0 ? [] : ["", `Not answered: ${unanswered.join(", ")}`]),
  ].join("\n");
}
