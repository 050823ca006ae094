/** `needlework sheet`: a problem set on paper, and its key apart. */

import { PAPERS, type Paper } from "../draw/index.ts";
import type { ProblemSet } from "../practice/index.ts";
import type { Call, Command } from "./command.ts";
import { didYouMean } from "./did-you-mean.ts";
import { CallFault, EXIT_DONE } from "./faults.ts";
import { problemSetOf, WISH_OPTIONS } from "./problem-set-operand.ts";
import { STREAM, tell } from "./streams.ts";
import { writeWhole } from "./write-whole.ts";

export const SHEET: Command = {
  name: "sheet",
  operands: "[SET|STATIONS|CODE...]",
  operandCount: [0, 200],
  about: [
    "Sets problems on paper, two to a page, and their key on pages of its own. SET is a problem set as `needlework problems`",
    "writes it, or its link; CODE is the code of a problem. Without either, problems are made from the wishes below, on the",
    "Ostrelle Isles or on STATIONS. What is to be found is printed as an empty instrument. Black and white is enough.",
  ].join("\n"),
  options: {
    output: { value: "SHEET.pdf", short: "o", help: "the sheet for the learners; - for stdout" },
    key: {
      value: "KEY.pdf",
      help: "the key for the instructor: answers, what each wrong one tells, reasons",
    },
    paper: { value: PAPERS.join("|"), help: "(a4)" },
    ...WISH_OPTIONS,
  },
  example: "needlework sheet --skills centre-and-read,cut-the-line --number 20 -o sheet.pdf --key key.pdf",
  run: async (call) => {
    const output = call.text("output");
    const keyOutput = call.text("key");
    if (output === undefined && keyOutput === undefined)
      throw new CallFault("say where the sheet goes: -o SHEET.pdf, and its key: --key KEY.pdf");
    if (output !== undefined && output === keyOutput)
      throw new CallFault("sheet and key are two files: give them two names");
    const paper = paperOf(call);
    const { set, notes, files } = await problemSetOf(call);
    const { keyPdf, sheetPdf } = await import("./sheet-pdf.ts");
    const write = (path: string, pdf: Uint8Array, what: string): void => {
      writeWhole(path, pdf, files);
      if (path !== STREAM) tell(`${path} written, ${what} of ${countText(set)}`);
    };
    // Both made before either is written: a sheet without its key helps nobody.
    const sheet = output === undefined ? null : sheetPdf(set, paper);
    const key = keyOutput === undefined ? null : keyPdf(set, paper);
    if (output !== undefined && sheet !== null) write(output, sheet, "the sheet");
    if (keyOutput !== undefined && key !== null) write(keyOutput, key, "the key");
    for (const note of notes) tell(note);
    return EXIT_DONE;
  },
};

const countText = ({ problems }: ProblemSet): string =>
  problems.length === 1 ? "one problem" : `${problems.length} problems`;

/** The paper a call asks for. */
export function paperOf(call: Call): Paper {
  const text = call.text("paper") ?? "a4";
  const paper = PAPERS.find((known) => known === text);
  if (paper === undefined)
    throw new CallFault(
      `--paper must be ${PAPERS.join(" or ")}, but got "${text}"${didYouMean(text, PAPERS)}`,
    );
  return paper;
}
