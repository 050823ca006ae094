/**
 * A table of answers, as an instructor types it in or a form sends it: one answer a row (learner, problem, answer; a header may name the
 * columns and add how sure the learner was, the seconds taken, and why a marker accepts an answer anyway), or one learner a row with a
 * problem in each column.
 */

import { readCsvRows } from "../../radio/index.ts";
import type { Confidence } from "../diagnosis/item-evidence.ts";
import { type Column, delimiterOf, type Layout, layoutOf, problemNamed } from "./answer-columns.ts";

export interface AnswerRow {
  /** Of the file, from 1. */
  readonly line: number;
  readonly learner: string;
  /** A code as written, or a number in the set. */
  readonly problem: string;
  readonly answer: string;
  readonly confidence: Confidence | null;
  readonly timeS: number | null;
  /** Why the marker takes the answer for right whatever it says; null where he does not. */
  readonly acceptedBecause: string | null;
}

/** A row that could not be used, and why: one sentence, no full stop. */
export interface RefusedRow {
  readonly line: number;
  readonly reason: string;
}

export interface AnswerSheet {
  readonly rows: readonly AnswerRow[];
  readonly refused: readonly RefusedRow[];
}

/** Nobody is longer at one problem. */
const DAY_S = 86_400;

/** The rows of a CSV text. None is lost: what cannot be used is listed with its line. Never throws. */
export function readAnswerSheet(text: string): AnswerSheet {
  // What a spreadsheet puts before a table to say what stands between its columns is no row, but a line.
  const said = /^\ufeff?sep=([,;\t])(?=\r|\n|$)/i.exec(text);
  const body = said === null ? text : text.slice(said[0].length);
  const delimiter = said === null ? delimiterOf(body) : (said[1] as "," | ";" | "\t");
  const table = readCsvRows(body, delimiter);
  const layout = layoutOf(table.rows[0]?.values ?? []);
  const hasHeader = layout.kind === "grid" || layout.hasHeader;
  const rows: AnswerRow[] = [];
  const refused: RefusedRow[] = [...table.broken];
  for (const { line, values } of hasHeader ? table.rows.slice(1) : table.rows) {
    const read = layout.kind === "grid" ? readGridRow(line, values, layout) : readRow(line, values, layout);
    if (typeof read === "string") refused.push({ line, reason: read });
    else rows.push(...read);
  }
  return { rows, refused: refused.sort((one, other) => one.line - other.line) };
}

function readGridRow(
  line: number,
  values: readonly string[],
  { learner: at, problems }: Extract<Layout, { kind: "grid" }>,
): readonly AnswerRow[] | string {
  const learner = oneLine(values[at] ?? "");
  const answers = problems.flatMap(({ place, problem }) => {
    const answer = (values[place] ?? "").trim();
    // An empty cell is a problem left out, as on paper.
    return answer === ""
      ? []
      : [{ line, learner, problem, answer, confidence: null, timeS: null, acceptedBecause: null }];
  });
  if (values.every((value) => value.trim() === "")) return [];
  if (learner === "") return "no learner is named in this row";
  return answers.length === 0 ? `${learner}: no answer stands in this row` : answers;
}

function readRow(
  line: number,
  values: readonly string[],
  { places, width }: Extract<Layout, { kind: "list" }>,
): readonly AnswerRow[] | string {
  const cell = (column: Column): string => {
    const place = places[column];
    return place === null ? "" : (values[place] ?? "").trim();
  };
  const learner = oneLine(cell("learner"));
  const answer = cell("answer");
  if (values.every((value) => value.trim() === "")) return [];
  if (learner === "") return "no learner is named; write learner, problem, answer";
  const whose = (reason: string): string => `${learner}: ${reason}`;
  if (values.slice(width).some((value) => value.trim() !== ""))
    return whose(
      `the row has ${values.length} values where ${width} belong; an answer that holds such a mark is written in quotation marks`,
    );
  if (cell("problem") === "") return whose("no problem is named; write its code or its number in the set");
  const confidence = readConfidence(cell("confidence"));
  if (confidence === undefined)
    return whose(
      `“${cell("confidence")}” says nothing of how sure; write sure, think so, guess, or leave it empty`,
    );
  const timeS = cell("timeS") === "" ? null : Number(cell("timeS").replace(",", "."));
  if (timeS !== null && !(timeS >= 0 && timeS < DAY_S))
    return whose(`“${cell("timeS")}” is no number of seconds; write such as 42, or leave it empty`);
  const problem = problemNamed(cell("problem")) ?? cell("problem");
  const acceptedBecause = cell("accept") === "" ? null : oneLine(cell("accept"));
  return [{ line, learner, problem, answer, confidence, timeS, acceptedBecause }];
}

const oneLine = (text: string): string => text.trim().replace(/\s+/g, " ");

/** Undefined when it cannot be read. */
function readConfidence(text: string): Confidence | null | undefined {
  const plain = text
    .toLowerCase()
    .replace(/[^a-z]+/g, " ")
    .trim();
  if (plain === "") return text === "" ? null : undefined;
  if (plain === "sure") return "sure";
  if (plain === "think so" || plain === "think") return "think-so";
  return plain === "guess" ? "guess" : undefined;
}
