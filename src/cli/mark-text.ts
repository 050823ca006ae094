/** The report of a marked pile for a terminal: what the class needs first, then learners, questions, and rows that could not be marked. */

import type { PileReport, ReportedItem, ReportedLearner } from "../practice/index.ts";
import { counted, guessingWords, marksText, readyWords, slipCounts } from "./mark-words.ts";

const LABEL_WIDTH = 15;

/** `notes`: what the set's own reading had to say. */
export function markText(report: PileReport, notes: readonly string[] = []): string {
  const { title, learnerCount, problems, answers, refused, accepted } = report;
  return [
    `${title}: ${counted(learnerCount, "learner")}, ${counted(problems, "problem")}, ${counted(answers, "answer")}`,
    "",
    ...classLines(report),
    ...section("Groups", groupLines(report)),
    ...section("Learners", learnerLines(report.learners)),
    ...section("Questions", report.items.flatMap(itemLines)),
    ...section(
      "Accepted by hand",
      accepted.map(
        ({ line, learner, problem, written, because }) =>
          `line ${line}: ${learner}, problem ${problem}, “${written}”: ${because}`,
      ),
    ),
    ...section(
      "Not marked",
      refused.map(({ line, reason }) => `line ${line}: ${reason}`),
    ),
    ...section("Keep in mind", [...report.cautions, ...notes]),
  ].join("\n");
}

const section = (title: string, lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : ["", title, ...lines.map((line) => `  ${line}`)];

const labelled = (label: string, ...lines: readonly string[]): readonly string[] =>
  lines.map((line, at) => `${(at === 0 ? label : "").padEnd(LABEL_WIDTH)}  ${line}`);

const REST_SHOWN = 2;

function classLines(report: PileReport): readonly string[] {
  const { slips, learnerCount, doubts, stuck } = report;
  const [first, ...rest] = slips;
  return [
    ...(first === undefined
      ? labelled("Reteach first", "no mistaken idea stands out")
      : labelled(
          "Reteach first",
          `“${first.name}”: ${slipCounts(first, learnerCount)}`,
          first.refutation,
          `Show: ${first.remedy}`,
          ...(first.problems.length === 0 ? [] : [`On problems ${first.problems.join(", ")}`]),
        )),
    ...labelled(
      "Then",
      ...rest.slice(0, REST_SHOWN).map((slip) => `“${slip.name}”: ${slipCounts(slip, learnerCount)}`),
    ),
    ...labelled("Just guessing", guessingWords(report.guessing)),
    ...labelled("Stuck", guessingWords(stuck)),
    ...labelled("Ready to go on", ...readyWords(report)),
    ...labelled(
      "In doubt",
      ...(doubts.length === 0
        ? ["no question"]
        : doubts.map(({ title, problems, says }) => `${title} (${problems.join(", ")}): ${says}`)),
    ),
  ];
}

const groupLines = ({ groups }: PileReport): readonly string[] =>
  groups.flatMap(({ name, learners }) => [`“${name}”`, `  ${learners.join(", ")}`]);

function learnerLines(learners: readonly ReportedLearner[]): readonly string[] {
  const width = Math.max(...learners.map(({ learner }) => learner.length));
  const indent = " ".repeat(width + 2);
  return learners.flatMap((one) => {
    const named = [
      ...one.likely.map((name) => `likely “${name}”`),
      ...one.maybe.map((name) => `maybe “${name}”`),
      ...(one.isGuessing ? ["just guessing"] : []),
      ...(one.isStuck ? ["stuck"] : []),
    ];
    return [
      `${one.learner.padEnd(width)}  ${tally(one)}`,
      ...named.map((words) => `${indent}${words}`),
      `${indent}next: ${one.next}`,
    ];
  });
}

function tally({ marks, of, wrong, half, dontKnow, unanswered }: ReportedLearner): string {
  return [
    `${marksText(marks).padStart(4)} of ${of}`,
    ...(wrong > 0 ? [`${wrong} wrong`] : []),
    ...(half > 0 ? [`${half} half right`] : []),
    ...(dontKnow > 0 ? [`${dontKnow} “don't know yet”`] : []),
    ...(unanswered > 0 ? [`${unanswered} unanswered`] : []),
  ].join(", ");
}

function itemLines(item: ReportedItem): readonly string[] {
  const { title, problems, answers, right, facility, discrimination, dontKnow, medianTimeS } = item;
  const figures = [
    `${right} of ${answers} right`,
    ...(facility === null
      ? []
      : [`${facility.low} to ${facility.high} %${facility.isTrusted ? "" : ", not yet to be trusted"}`]),
    ...(discrimination === null ? [] : [`discrimination ${discrimination.toFixed(2)}`]),
    ...(dontKnow > 0 ? [`${dontKnow} “don't know yet”`] : []),
    ...(medianTimeS === null ? [] : [`median ${Math.round(medianTimeS)} s`]),
  ];
  return [
    `${title} (${problems.join(", ")}): ${figures.join(", ")}`,
    ...item.wrongOptions
      .filter(({ picks }) => picks > 0)
      .map(
        ({ ideas, picks }) =>
          `  ${String(picks).padStart(3)} × ${ideas.length === 0 ? "by no idea we know of" : ideas.map((idea) => `“${idea}”`).join(" or ")}`,
      ),
    ...item.fidelity.map(
      ({ idea, took, of }) =>
        `      of ${of} who hold “${idea}” by their other answers ${took} took its answer`,
    ),
    ...(item.unexplained === null || item.unexplained.count === 0
      ? []
      : item.peaks.map(
          ({ from, low, high, count }) =>
            `      ${count} unexplained ${signed(low)} to ${signed(high)} from ${from}`,
        )),
  ];
}

const signed = (value: number): string => `${value < 0 ? "−" : "+"}${Math.abs(Math.round(value * 10) / 10)}`;
