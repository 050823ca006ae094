/** The report of a marked pile as a document for the typesetter. All words and counts come as data; pure: the caller compiles. */

import { TRAINING_CAUTION } from "../../scene/index.ts";
import { LEARNER_TYPST } from "./learner-template.ts";
import { REPORT_TYPST } from "./report-template.ts";
import type { PaperHead, TypstDocument } from "./sheet-typst.ts";

export interface PaperReportIdea {
  readonly name: string;
  readonly refutation: string;
  readonly remedy: string;
  readonly likely: number;
  readonly maybe: number;
  /** "likely 4, maybe 1 of 12". */
  readonly counts: string;
  /** "problems 4, 9 and 15"; empty where none of the set tells it. */
  readonly problems: string;
}

export interface PaperReport {
  /** "12 learners, 20 problems, 240 answers". */
  readonly counts: string;
  readonly learnerCount: number;
  /** The one to reteach first at the head; three at most. */
  readonly ideas: readonly PaperReportIdea[];
  /** The four other questions, each with its answer in words; `sign` before the answer where it is a matter of yes or no. */
  readonly answers: readonly {
    readonly question: string;
    readonly lines: readonly string[];
    readonly sign: "yes" | "no" | null;
  }[];
  readonly groups: readonly { readonly name: string; readonly learners: string }[];
  readonly cautions: readonly string[];
  readonly learners: readonly {
    readonly learner: string;
    readonly marks: string;
    /** Wrong, half right, don't know yet, unanswered: only what there is. */
    readonly rest: readonly string[];
    readonly likely: readonly string[];
    readonly maybe: readonly string[];
    /** "just guessing", "stuck". */
    readonly state: readonly string[];
    readonly next: string;
  }[];
  readonly items: readonly {
    readonly title: string;
    readonly problems: string;
    readonly figures: readonly string[];
    /** Share right, 0..1, with the range it lies in; null where too few have answered. */
    readonly share: { readonly share: number; readonly low: number; readonly high: number } | null;
    readonly wrong: readonly { readonly picks: number; readonly words: string }[];
    readonly notes: readonly string[];
    readonly doubts: readonly string[];
  }[];
  readonly accepted: readonly { readonly line: number; readonly words: string }[];
  readonly refused: readonly { readonly line: number; readonly words: string }[];
}

export const reportDocument = (head: PaperHead, report: PaperReport): TypstDocument => ({
  main: REPORT_TYPST,
  files: new Map([["/data.json", JSON.stringify({ ...head, ...report, caution: TRAINING_CAUTION })]]),
});

/** What one learner gets back; words as they shall stand there. */
export interface PaperLearner {
  readonly learner: string;
  /** "14½ of 20". */
  readonly marks: string;
  readonly next: string;
  readonly answers: readonly {
    readonly problem: string;
    readonly title: string;
    readonly written: string;
    readonly right: string;
    readonly mark: string;
    readonly isRight: boolean;
    readonly ideas: readonly string[];
  }[];
  /** "3, 7"; empty where all are answered. */
  readonly unanswered: string;
}

export const learnerDocument = (head: PaperHead, learner: PaperLearner): TypstDocument => ({
  main: LEARNER_TYPST,
  files: new Map([["/data.json", JSON.stringify({ ...head, ...learner, caution: TRAINING_CAUTION })]]),
});
