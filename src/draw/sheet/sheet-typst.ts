/**
 * A sheet of problems and its key as documents for the typesetter: one fixed text for each, which reads all words from a data file beside it,
 * so that nothing a title or a question holds is ever taken for markup. Pure: the caller compiles.
 */

import { TRAINING_CAUTION } from "../../scene/index.ts";
import { KEY_TYPST } from "./key-template.ts";
import { SHEET_TYPST } from "./sheet-template.ts";

export const PAPERS = ["a4", "letter"] as const;
export type Paper = (typeof PAPERS)[number];

/** How a problem is answered on paper, as plain data. */
export type PaperAnswer =
  | {
      readonly kind: "options";
      readonly options: readonly { readonly letter: string; readonly text: string }[];
      /** What the figures of an option are; empty where each is one thing. */
      readonly legend: string;
    }
  | { readonly kind: "quantity"; readonly unit: string }
  | { readonly kind: "row"; readonly figures: readonly { readonly label: string; readonly unit: string }[] }
  | { readonly kind: "order"; readonly items: readonly { readonly letter: string; readonly text: string }[] }
  | { readonly kind: "direction" | "panel" | "place" | "wind" | "word" };

export interface PaperProblem {
  readonly number: number;
  readonly code: string;
  readonly title: string;
  readonly question: string;
  readonly given: readonly { readonly label: string; readonly value: string }[];
  readonly pictures: readonly { readonly svg: string; readonly words: string }[];
  readonly answer: PaperAnswer;
}

export interface PaperKey {
  readonly number: number;
  readonly code: string;
  readonly title: string;
  readonly question: string;
  readonly given: readonly { readonly label: string; readonly value: string }[];
  readonly right: string;
  readonly answers: readonly {
    readonly letter: string | null;
    readonly text: string;
    readonly isRight: boolean;
    readonly ideas: readonly string[];
  }[];
  readonly steps: readonly string[];
}

export interface PaperHead {
  readonly title: string;
  /** Empty for none. */
  readonly note: string;
  /** The land and the day the problems are set on, as they shall stand there. */
  readonly place: string;
  readonly date: string;
  readonly paper: Paper;
}

/** A document to compile: its main text, and the files it reads by their paths. */
export interface TypstDocument {
  readonly main: string;
  readonly files: ReadonlyMap<string, string>;
}

/** "I don't know yet" stands under every problem. */
export const sheetDocument = (
  head: PaperHead,
  problems: readonly PaperProblem[],
  dontKnow: string,
): TypstDocument => {
  const files = new Map<string, string>();
  const withPaths = problems.map(({ pictures, ...problem }) => ({
    ...problem,
    pictures: pictures.map(({ svg, words }, at) => {
      const path = `/problem-${problem.number}-${at + 1}.svg`;
      files.set(path, svg);
      return { path, words };
    }),
  }));
  files.set(DATA, JSON.stringify({ ...head, caution: TRAINING_CAUTION, dontKnow, problems: withPaths }));
  return { main: SHEET_TYPST, files };
};

export const keyDocument = (head: PaperHead, problems: readonly PaperKey[]): TypstDocument => ({
  main: KEY_TYPST,
  files: new Map([[DATA, JSON.stringify({ ...head, caution: TRAINING_CAUTION, problems })]]),
});

const DATA = "/data.json";
