/** The report of a marked pile as a PDF. */

import { learnerDocument, type Paper, type PaperReport, reportDocument } from "../draw/index.ts";
import type {
  LearnerSheet,
  PileReport,
  ProblemSet,
  ReportedItem,
  ReportedLearner,
} from "../practice/index.ts";
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
import { paperHead } from "./paper-head.ts";
import { typesetPdf } from "./typeset.ts";

/** A report leaves the instructor's desk: figures from fewer learners than this would point at one of them. */
const LEAST_SHOWN = 3;
const IDEAS_SHOWN = 3;
const DOUBTS_SHOWN = 2;
const CHANGES_SHOWN = 5;

export const markPdf = (report: PileReport, set: ProblemSet, paper: Paper): Uint8Array =>
  typesetPdf(reportDocument(paperHead(set, paper), paperReport(report)));

/** What one learner gets back, as a PDF. */
export const learnerPdf = (sheet: LearnerSheet, set: ProblemSet, paper: Paper): Uint8Array =>
  typesetPdf(
    learnerDocument(paperHead(set, paper), {
      learner: sheet.learner,
      marks: `${marksText(sheet.marks)} of ${sheet.of}`,
      next: sheet.next,
      answers: sheet.answers.map(({ marks, isDontKnow: _, ...answer }) => ({
        ...answer,
        mark: marksText(marks),
        isRight: marks === 1,
      })),
      unanswered: sheet.unanswered.join(", "),
    }),
  );

function paperReport(report: PileReport): PaperReport {
  const { learnerCount, problems, answers, slips, readiness } = report;
  return {
    counts: [counted(learnerCount, "learner"), counted(problems, "problem"), counted(answers, "answer")].join(
      ", ",
    ),
    learnerCount,
    ideas: slips.slice(0, IDEAS_SHOWN).map((slip) => ({
      name: slip.name,
      refutation: slip.refutation,
      remedy: slip.remedy,
      likely: slip.likely.length,
      maybe: slip.maybe.length,
      counts: slipCounts(slip, learnerCount),
      problems: slip.problems.length === 0 ? "" : problemsText(slip.problems.map(String)),
    })),
    answers: [
      { question: "Who is just guessing?", lines: [namesOrNobody(report.guessing)], sign: null },
      { question: "Who is stuck?", lines: [namesOrNobody(report.stuck)], sign: null },
      {
        question: "Is the class ready to go on?",
        lines: readyWords(report),
        sign: readiness?.isAskedEnough === true ? (readiness.isReady ? "yes" : "no") : null,
      },
      ...(report.changes === null
        ? []
        : [
            {
              question: "Did the last lesson work?",
              lines: changeWords(report).slice(0, CHANGES_SHOWN),
              sign: null,
            },
          ]),
      {
        question: "Is a question bad?",
        lines: doubtLines(report),
        sign: null,
      },
    ],
    groups: report.groups.map(({ name, learners }) => ({ name, learners: learners.join(", ") })),
    cautions: report.cautions,
    learners: report.learners.map(paperLearner),
    items: report.items.map(paperItem),
    accepted: report.accepted.map(({ line, learner, problem, written, because }) => ({
      line,
      words: `${learner}, problem ${problem}, “${written}”: ${because}`,
    })),
    refused: report.refused.map(({ line, reason }) => ({ line, words: reason })),
  };
}

/** How many, and the first of them; each stands with its question too. */
function doubtLines({ items }: PileReport): readonly string[] {
  const doubted = items.filter(({ doubts }) => doubts.length > 0);
  if (doubted.length === 0) return ["None stands out"];
  const shown = doubted.slice(0, DOUBTS_SHOWN);
  const left = doubted.length - shown.length;
  return [
    `${counted(doubted.length, "question")} to look at`,
    ...shown.map(({ title, problems, doubts }) => `${title} (${problems.join(", ")}): ${doubts.join(" ")}`),
    ...(left > 0 ? [`And ${left} more, among the questions.`] : []),
  ];
}

const problemsText = (problems: readonly string[]): string =>
  `${problems.length === 1 ? "problem" : "problems"} ${problems.join(", ")}`;

const paperLearner = (one: ReportedLearner): PaperReport["learners"][number] => ({
  learner: one.learner,
  marks: `${marksText(one.marks)} of ${one.of}`,
  rest: restOf(one),
  likely: one.likely,
  maybe: one.maybe,
  state: [...(one.isGuessing ? ["just guessing"] : []), ...(one.isStuck ? ["stuck"] : [])],
  next: one.next,
});

function paperItem(item: ReportedItem): PaperReport["items"][number] {
  const { title, problems, answers, facility, fidelity, doubts } = item;
  const common = { title, problems: problemsText(problems) };
  if (answers < LEAST_SHOWN)
    return { ...common, figures: ["fewer than three"], share: null, wrong: [], notes: [], doubts: [] };
  return {
    ...common,
    figures: figuresOf(item),
    share:
      facility === null
        ? null
        : { share: facility.percent / 100, low: facility.low / 100, high: facility.high / 100 },
    wrong: item.wrongOptions
      .filter(({ picks }) => picks > 0)
      .map((option) => ({ picks: option.picks, words: wrongWords(option) })),
    notes: [
      ...fidelity
        .filter(({ of }) => of >= LEAST_SHOWN)
        .map(
          ({ idea, took, of }) =>
            `Of ${of} who hold “${idea}” by their other answers ${took} took its answer.`,
        ),
      ...offsetWords(item),
    ],
    doubts,
  };
}
