/** Which column of a table of answers holds what, and what stands between its columns: spreadsheets write commas, semicolons or tabs. */

import { readCsvRows } from "../../radio/index.ts";
import { readProblemCode } from "../problem-code.ts";

const NAMES = {
  learner: ["learner", "name", "student", "pilot", "who"],
  problem: ["problem", "code", "problem code", "number", "no", "question", "item"],
  answer: ["answer", "response", "pick", "choice"],
  confidence: ["confidence", "sure", "how sure"],
  timeS: ["seconds", "time", "time s"],
  accept: ["accept", "accepted", "accept because"],
} as const;

export type Column = keyof typeof NAMES;

export type Layout =
  /** A learner, a problem and an answer in each row; null for a column that is not there. */
  | {
      readonly kind: "list";
      readonly hasHeader: boolean;
      readonly width: number;
      readonly places: Readonly<Record<Column, number | null>>;
    }
  /** A learner in each row, a problem in each of these columns. */
  | {
      readonly kind: "grid";
      readonly learner: number;
      readonly problems: readonly { readonly place: number; readonly problem: string }[];
    };

const WITHOUT_HEADER: Layout = {
  kind: "list",
  hasHeader: false,
  width: 3,
  places: { learner: 0, problem: 1, answer: 2, confidence: null, timeS: null, accept: null },
};

/** Without a header, an answer holds commas oftener than a name holds the others. */
const DELIMITERS = ["\t", ";", ","] as const;
const LEAST_COLUMNS = 3;
export type Delimiter = (typeof DELIMITERS)[number];

/** The one by which the first row makes sense: as a header, or else as a learner and a problem; a comma where none does. */
export function delimiterOf(text: string): Delimiter {
  const line =
    text
      .replace(/^\ufeff/, "")
      .split(/\r\n|\n|\r/)
      .find((one) => one.trim() !== "") ?? "";
  const byIt = (delimiter: Delimiter): readonly string[] =>
    readCsvRows(line, delimiter).rows[0]?.values ?? [];
  return (
    DELIMITERS.find((delimiter) => headerOf(byIt(delimiter)) !== null) ??
    DELIMITERS.find((delimiter) => {
      const values = byIt(delimiter);
      return values.length >= LEAST_COLUMNS && problemNamed(values[1] ?? "") !== null;
    }) ??
    ","
  );
}

/** What the first row says of the columns; without a header they are learner, problem, answer. */
export const layoutOf = (first: readonly string[]): Layout => headerOf(first) ?? WITHOUT_HEADER;

function headerOf(values: readonly string[]): Layout | null {
  const names = values.map((value) =>
    value
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, " ")
      .trim(),
  );
  const place = (column: Column): number | null => {
    const at = names.findIndex((name) => (NAMES[column] as readonly string[]).includes(name));
    return at < 0 ? null : at;
  };
  const learner = place("learner");
  if (learner === null) return null;
  const places = {
    learner,
    problem: place("problem"),
    answer: place("answer"),
    confidence: place("confidence"),
    timeS: place("timeS"),
    accept: place("accept"),
  };
  if (places.problem !== null && places.answer !== null)
    return { kind: "list", hasHeader: true, width: values.length, places };
  const problems = values.flatMap((value, at) => {
    const problem = at === learner ? null : problemNamed(value);
    return problem === null ? [] : [{ place: at, problem }];
  });
  return problems.length === 0 ? null : { kind: "grid", learner, problems };
}

/** A problem's number in the set, "7" of "Q7", "no. 7" or "7."; or its code, as written. Null for anything else. */
export function problemNamed(text: string): string | null {
  const number = /^(?:q|no|nr|problem|question|item|#)?\s*\.?\s*(\d{1,3})\s*\.?$/i.exec(text.trim())?.[1];
  if (number !== undefined) return String(Number(number));
  return readProblemCode(text).kind === "code" ? text.trim() : null;
}
