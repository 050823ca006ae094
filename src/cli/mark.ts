/** `needlework mark`: a pile of answers to a problem set, marked; what each learner has in mind, and what the class needs first. */

import { PAPERS, type Paper } from "../draw/index.ts";
import {
  learnerSheet,
  type MarkedPile,
  markPile,
  type PileSummary,
  type ProblemSet,
  pileReport,
  readAnswerSheet,
  readPileSummary,
} from "../practice/index.ts";
import type { Call, Command } from "./command.ts";
import { didYouMean } from "./did-you-mean.ts";
import { CallFault, EXIT_DONE, type ExitCode, InputFault } from "./faults.ts";
import { learnerText } from "./learner-text.ts";
import { markText } from "./mark-text.ts";
import { counted } from "./mark-words.ts";
import { type ProblemSetOperand, problemSetOf, WISH_OPTIONS } from "./problem-set-operand.ts";
import { paperOf } from "./sheet.ts";
import { print, STREAM, tell } from "./streams.ts";
import { operandText } from "./text-files.ts";
import { writeWhole } from "./write-whole.ts";

export const MARK: Command = {
  name: "mark",
  operands: "SET|CODE... ANSWERS.csv",
  operandCount: [2, 201],
  about: [
    "Marks the answers of a class to SET, a problem set or its link, or to problems by their codes, and says what to reteach",
    "first. ANSWERS.csv (- for stdin) has a row for each answer: learner, problem (its number in the set, or its code) and",
    'answer (the letter ticked, or what was written; ? for "I don\'t know yet"). A header may name the columns, and add how',
    "sure (sure, think so, guess), seconds, and accept (why an answer is taken for right anyway); or it names the learner",
    "and then a problem for each column, with one learner a row. Rows that cannot be used are listed with their lines.",
  ].join("\n"),
  options: {
    output: { value: "REPORT.pdf", short: "o", help: "write the report as a PDF; - for stdout" },
    paper: { value: PAPERS.join("|"), help: "of the PDF (a4)" },
    learner: { value: "NAME", help: "only what this learner gets back: own answers, and what to do next" },
    before: {
      value: "EARLIER.json",
      help: "an earlier pile of the class, as --json printed it: did the lesson work?",
    },
    json: { help: "print all that was found as JSON" },
    date: WISH_OPTIONS.date,
  },
  example: "needlework mark demo/sets/reading-the-panel.yaml demo/sets/reading-the-panel.answers.csv",
  run: async (call) => {
    const output = call.text("output");
    if (output !== undefined && call.has("json"))
      throw new CallFault("-o writes the report and --json prints it: ask for one of them");
    const paper = paperOf(call);
    const answersPath = call.operands.at(-1) ?? "";
    const { set, notes, files } = await markedSet(call);
    const sheet = readAnswerSheet(await operandText(answersPath));
    const pile = markPile(set, sheet);
    if (pile.answerCount === 0) {
      const [first] = pile.refused;
      throw new InputFault(
        first === undefined
          ? `${answersPath}: it holds no answers; write learner, problem, answer in each row`
          : `${answersPath}:${first.line}: no row of ${pile.refused.length} could be marked; the first, ${first.reason}`,
      );
    }
    const name = call.text("learner");
    const inputs = [...files, answersPath];
    if (name !== undefined) return oneLearner(call, { set, pile, name, paper, inputs });
    const report = pileReport(pile, await earlierPile(call));
    if (output !== undefined) {
      const { markPdf } = await import("./mark-pdf.ts");
      writeWhole(output, markPdf(report, set, paper), [...inputs, ...given(call.text("before"))]);
      if (output !== STREAM)
        tell(
          `${output} written: ${counted(report.learnerCount, "learner")}, ${counted(report.answers, "answer")}`,
        );
      for (const { line, reason } of report.refused) tell(`${answersPath}:${line} not marked: ${reason}`);
      for (const note of notes) tell(note);
    } else if (call.has("json")) print(JSON.stringify({ ...report, marked: pile.learners }));
    else print(markText(report, notes));
    return EXIT_DONE;
  },
};

/** The set that was handed out: nothing is made anew. */
async function markedSet(call: Call): Promise<ProblemSetOperand> {
  const [first = "", ...others] = call.operands;
  const set = [first, ...others.slice(0, -1)];
  if (first.endsWith(".csv"))
    throw new CallFault(`${first} stands where the problem set belongs: first the set, then the answers`);
  if (first === STREAM && others.at(-1) === STREAM)
    throw new CallFault("only one of set and answers can come from stdin");
  const operand = await problemSetOf({ ...call, operands: set });
  if (operand.stationsPath !== null) throw new InputFault(`${first} is no problem set: it has no problems`);
  return operand;
}

function oneLearner(
  call: Call,
  given: {
    readonly set: ProblemSet;
    readonly pile: MarkedPile;
    readonly name: string;
    readonly paper: Paper;
    readonly inputs: readonly string[];
  },
): Promise<ExitCode> | ExitCode {
  const { set, pile, name, paper, inputs } = given;
  if (call.text("before") !== undefined) throw new CallFault("--before is of the class, --learner of one");
  const sheet = learnerSheet(set, pile, name);
  const output = call.text("output");
  if (sheet === null) {
    const known = pile.learners.map(({ learner }) => learner);
    throw new CallFault(`no learner is called ${name}${didYouMean(name, known)}`);
  }
  if (output === undefined) {
    print(call.has("json") ? JSON.stringify(sheet) : learnerText(sheet));
    return EXIT_DONE;
  }
  return import("./mark-pdf.ts").then(({ learnerPdf }) => {
    writeWhole(output, learnerPdf(sheet, set, paper), inputs);
    if (output !== STREAM) tell(`${output} written, for ${sheet.learner}`);
    return EXIT_DONE;
  });
}

const given = (path: string | undefined): readonly string[] => (path === undefined ? [] : [path]);

async function earlierPile(call: Call): Promise<PileSummary | null> {
  const path = call.text("before");
  if (path === undefined) return null;
  const summary = readPileSummary(await operandText(path));
  if (summary === null)
    throw new InputFault(`${path}: this is no report of a pile; make one with needlework mark ... --json`);
  return summary;
}
