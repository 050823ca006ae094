/** Words that the report of a marked pile has in text and on paper. */

import type {
  PileReport,
  ReportedItem,
  ReportedLearner,
  ReportedOption,
  ReportedSlip,
} from "../practice/index.ts";

export const counted = (count: number, what: string): string => `${count} ${what}${count === 1 ? "" : "s"}`;

/** "14½" of 14.5. */
export const marksText = (marks: number): string =>
  Number.isInteger(marks) ? String(marks) : `${Math.floor(marks) || ""}½`;

/** "likely 5, maybe 2 of 12". */
export const slipCounts = ({ likely, maybe }: ReportedSlip, learnerCount: number): string =>
  `likely ${likely.length}, maybe ${maybe.length} of ${learnerCount}`;

export const namesOrNobody = (names: readonly string[]): string =>
  names.length === 0 ? "Nobody" : names.join(", ");

const quotedList = (names: readonly string[], last: string): string => {
  const quoted = names.map((name) => `“${name}”`);
  return quoted.length < 2 ? quoted.join("") : `${quoted.slice(0, -1).join(", ")} ${last} ${quoted.at(-1)}`;
};

/** Whether the class may go on, and what that goes by; each a line. */
export function readyWords({ readiness, learnerCount }: PileReport): readonly string[] {
  if (readiness === null) return ["Nothing builds on what this set practises"];
  const { skill, ready, isReady, isAskedEnough, practised, notAsked } = readiness;
  const basis = quotedList(practised, "and");
  if (!isAskedEnough) return [`“${skill}”: too little is asked to tell`, `It builds on ${basis}.`];
  return [
    `“${skill}”: ${isReady ? "ready" : "not yet"}, ${ready} of ${learnerCount}`,
    `Counted: who is secure in ${basis}; four in five are wanted.`,
    ...(notAsked.length === 0 ? [] : [`Not asked here: ${quotedList(notAsked, "and")}.`]),
  ];
}

/** What became of the ideas since an earlier pile; none without one. */
export const changeWords = ({ changes }: PileReport): readonly string[] => {
  if (changes === null) return [];
  if (changes.length === 0) return ["Both piles tell no idea that anyone likely holds"];
  return changes.map(
    ({ name, before, beforeOf, after, afterOf }) =>
      `“${name}”: likely ${before} of ${beforeOf}, now ${after} of ${afterOf}`,
  );
};

/** What is not simply right; only what there is. */
export const restOf = ({ wrong, half, dontKnow, unanswered }: ReportedLearner): readonly string[] => [
  ...(wrong > 0 ? [`${wrong} wrong`] : []),
  ...(half > 0 ? [`${half} half right`] : []),
  ...(dontKnow > 0 ? [`${dontKnow} “don't know yet”`] : []),
  ...(unanswered > 0 ? [`${unanswered} unanswered`] : []),
];

export const figuresOf = (item: ReportedItem): readonly string[] => {
  const { answers, right, facility, discrimination, dontKnow, medianTimeS } = item;
  return [
    `${right} of ${answers} right`,
    ...(facility === null
      ? []
      : [`${facility.low} to ${facility.high} %${facility.isTrusted ? "" : " (few answers)"}`]),
    ...(discrimination === null ? [] : [`discrimination ${signed(discrimination, 2)}`]),
    ...(dontKnow > 0 ? [`${dontKnow} “don't know yet”`] : []),
    ...(medianTimeS === null ? [] : [`median ${Math.round(medianTimeS)} s`]),
  ];
};

export const wrongWords = ({ ideas }: ReportedOption): string =>
  ideas.length === 0 ? "by no idea we know of" : quotedList(ideas, "or");

/** Where answers lie that no idea explains. */
export const offsetWords = ({ unexplained, peaks }: ReportedItem): readonly string[] =>
  unexplained === null || unexplained.count === 0
    ? []
    : peaks.map(
        ({ from, low, high, count }) =>
          `${count} unexplained at ${from} ${signed(low, 1)} to ${signed(high, 1)}.`,
      );

const signed = (value: number, places: number): string => {
  const text = String(Number(Math.abs(value).toFixed(places)));
  return `${value < 0 ? "−" : "+"}${text}`;
};
