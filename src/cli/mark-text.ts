/** The report of a marked pile for a terminal: what the class needs first, then learners, questions, and rows that could not be marked. */

import type { PileReport, ReportedItem, ReportedLearner } from "../practice/index.ts";
import {
  changeWords,
  counted,
  figuresOf,
  marksText,
  namesOrNobody,
  offsetWords,
  readyWords,
  restOf,
  slipCounts,
  wrongWords,
} from "./mark-words.ts";

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
      ? labelled("Reteach first", "No mistaken idea stands out")
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
    ...labelled("Just guessing", namesOrNobody(report.guessing)),
    ...labelled("Stuck", namesOrNobody(stuck)),
    ...labelled("Ready to go on", ...readyWords(report)),
    ...labelled("Last lesson", ...changeWords(report)),
    ...labelled(
      "In doubt",
      ...(doubts.length === 0
        ? ["No question"]
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
      `${one.learner.padEnd(width)}  ${[`${marksText(one.marks).padStart(4)} of ${one.of}`, ...restOf(one)].join(", ")}`,
      ...named.map((words) => `${indent}${words}`),
      `${indent}next: ${one.next}`,
    ];
  });
}

function itemLines(item: ReportedItem): readonly string[] {
  const { title, problems, wrongOptions, fidelity } = item;
  return [
    `${title} (${problems.join(", ")}): ${figuresOf(item).join(", ")}`,
    ...wrongOptions
      .filter(({ picks }) => picks > 0)
      .map((option) => `  ${String(option.picks).padStart(3)} × ${wrongWords(option)}`),
    ...fidelity.map(
      ({ idea, took, of }) =>
        `      of ${of} who hold “${idea}” by their other answers ${took} took its answer`,
    ),
    ...offsetWords(item).map((words) => `      ${words}`),
  ];
}
