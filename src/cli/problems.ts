/** `needlework problems`: problems made from wishes, as a set, as data, or for a learning platform. */

import { chartDescription, panelSentence } from "../draw/index.ts";
import { keyData, keyProblems, type Problem, problemData, sheetProblems } from "../practice/index.ts";
import type { Command } from "./command.ts";
import { CallFault, EXIT_DONE } from "./faults.ts";
import { type ProblemSetOperand, problemSetOf, WISH_OPTIONS } from "./problem-set-operand.ts";
import { setFileText } from "./problem-set-text.ts";
import { print, STREAM, tell } from "./streams.ts";
import { writeWhole } from "./write-whole.ts";

export const PROBLEMS: Command = {
  name: "problems",
  operands: "[SET|STATIONS|CODE...]",
  operandCount: [0, 200],
  about: [
    "Makes problems that practise skills and tell mistaken ideas apart, on the Ostrelle Isles or on STATIONS (a station file, or",
    "the worldwide table of one region), and prints them; or reads those of a problem set, its link, or codes of problems.",
    "The same wishes give the same problems. Answers are only in what --key and --qti write.",
  ].join("\n"),
  options: {
    ...WISH_OPTIONS,
    output: { value: "SET.yaml", short: "o", help: "write them as a problem set; - for stdout" },
    json: { help: "print the problems as JSON, without answers" },
    key: { help: "print the key in place of the problems: answers, slips, reasons" },
    qti: { value: "DIR|F.zip", help: "write a QTI 3 package for a learning platform" },
  },
  example:
    "needlework problems --skills centre-and-read --slips selector-is-radial --number 20 --seed 7 -o set.yaml",
  run: async (call) => {
    const output = call.text("output");
    const qti = call.text("qti");
    const asData = call.has("json") || call.has("key");
    if ([output !== undefined, qti !== undefined, asData].filter(Boolean).length > 1)
      throw new CallFault(
        "-o, --qti and what --json and --key print are different things: ask for one of them",
      );
    const operand = await problemSetOf(call);
    const { problems } = operand.set;
    if (output !== undefined) {
      writeWhole(output, Buffer.from(setFileText(operand, output)), operand.files);
      if (output !== STREAM) tell(`${problems.length} problems written to ${output}`);
    } else if (qti !== undefined) {
      const { writeQti } = await import("./qti.ts");
      writeQti(qti, operand.set, operand.files);
      tell(`${problems.length} problems written to ${qti} as a QTI 3 package`);
    } else if (call.has("json"))
      print(JSON.stringify(call.has("key") ? { key: keyData(operand.set) } : data(operand)));
    else print(call.has("key") ? keyText(operand) : problemText(operand));
    for (const note of operand.notes) tell(note);
    return EXIT_DONE;
  },
};

const data = ({ set }: ProblemSetOperand) => ({
  title: set.title,
  note: set.note,
  date: set.world.date,
  problems: problemData(set, viewText),
});

/** What a learner who cannot see the picture is told of it. */
const viewText = ({ situation }: Problem, view: "chart" | "panel"): string =>
  view === "chart" ? chartDescription(situation) : panelSentence(situation);

const problemText = ({ set }: ProblemSetOperand): string =>
  sheetProblems(set)
    .map(({ number, code, title, question, given, answer }) =>
      [
        `${String(number).padStart(3)}  ${code}  ${title}`,
        `     ${question}`,
        ...given.map(({ label, value }) => `     ${label}: ${value}`),
        ...(answer.kind === "options"
          ? [`     ${answer.options.map(({ letter, text }) => `${letter} ${text}`).join("   ")}`]
          : []),
      ].join("\n"),
    )
    .join("\n\n");

const keyText = ({ set }: ProblemSetOperand): string =>
  keyProblems(set)
    .map(({ number, code, title, right, answers, steps }) =>
      [
        `${String(number).padStart(3)}  ${code}  ${title}  ${right}`,
        ...answers
          .filter(({ isRight, ideas }) => !isRight && ideas.length > 0)
          .map(
            ({ letter, text, ideas }) =>
              `     ${letter === null ? "" : `${letter} `}${text}: ${ideas.join("; ")}`,
          ),
        ...steps.map((step, at) => `     ${at + 1}. ${step}`),
      ].join("\n"),
    )
    .join("\n\n");
