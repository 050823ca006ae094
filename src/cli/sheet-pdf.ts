/** The sheet of a problem set and its key, each as a PDF. */

import { keyDocument, type Paper, type PaperProblem, sheetDocument, sheetPicture } from "../draw/index.ts";
import {
  DONT_KNOW,
  keyProblems,
  type ProblemSet,
  type SheetProblem,
  sheetProblems,
} from "../practice/index.ts";
import { paperHead } from "./paper-head.ts";
import { progress } from "./progress.ts";
import { typesetPdf } from "./typeset.ts";
import { worldLandFor } from "./world-land.ts";

/** Of pictures in px: two stand beside each other on a page, or one alone. */
const HEIGHT_PX = 250;
const PAIR_PX = 330;
const ALONE_PX = 674;

/** What the learners get. */
export const sheetPdf = (set: ProblemSet, paper: Paper): Uint8Array =>
  typesetPdf(sheetDocument(paperHead(set, paper), paperProblems(sheetProblems(set)), DONT_KNOW));

/** What the instructor keeps. */
export const keyPdf = (set: ProblemSet, paper: Paper): Uint8Array =>
  typesetPdf(keyDocument(paperHead(set, paper), keyProblems(set)));

function paperProblems(problems: readonly SheetProblem[]): readonly PaperProblem[] {
  const shown = progress("drawing");
  const drawn = problems.map((problem, at) => {
    const { situation, drawings, ...words } = problem;
    const world = drawings.some(({ kind }) => kind === "chart") ? worldLandFor(situation.scene) : null;
    const widthPx = drawings.length === 1 ? ALONE_PX : PAIR_PX;
    const pictures = drawings.map((drawing, index) =>
      sheetPicture(
        drawing,
        situation,
        { widthPx, heightPx: HEIGHT_PX, idPrefix: `problem-${problem.number}-${index + 1}` },
        world,
      ),
    );
    shown.show(at / problems.length);
    return { ...words, pictures };
  });
  shown.end();
  return drawn;
}
