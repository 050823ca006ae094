/** Words that the report of a marked pile has in text and on paper. */

import type { PileReport, ReportedSlip } from "../practice/index.ts";

export const counted = (count: number, what: string): string => `${count} ${what}${count === 1 ? "" : "s"}`;

/** "14½" of 14.5. */
export const marksText = (marks: number): string =>
  Number.isInteger(marks) ? String(marks) : `${Math.floor(marks) || ""}½`;

/** "likely 5, maybe 2 of 12". */
export const slipCounts = ({ likely, maybe }: ReportedSlip, learnerCount: number): string =>
  `likely ${likely.length}, maybe ${maybe.length} of ${learnerCount}`;

export const guessingWords = (names: readonly string[]): string =>
  names.length === 0 ? "nobody" : names.join(", ");

/** Whether the class may go on, and what that goes by; each a line. */
export function readyWords({ readiness, learnerCount }: PileReport): readonly string[] {
  if (readiness === null) return ["nothing builds on what this set practises"];
  const { skill, ready, isReady, isAskedEnough, practised, notAsked } = readiness;
  const basis = practised.map((title) => `“${title}”`).join(", ");
  if (!isAskedEnough) return [`“${skill}”: this set asks too little of ${basis} to tell`];
  return [
    `“${skill}”: ${isReady ? "ready" : "not yet"}, ${ready} of ${learnerCount} secure in ${basis}`,
    ...(notAsked.length === 0 ? [] : [`not asked here: ${notAsked.map((title) => `“${title}”`).join(", ")}`]),
  ];
}
