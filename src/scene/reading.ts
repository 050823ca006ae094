/**
 * One file being read: where its lines begin, and the faults found so far. Every fault is collected, so that a person
 * sees all of them at once and never only the first.
 */

import type { LineCounter } from "yaml";
import type { Fault } from "./fault.ts";
import type { FaultCode } from "./fault-codes.ts";

export interface Reading {
  /** The path as the person gave it. */
  readonly file: string;
  readonly lines: LineCounter;
  readonly faults: Fault[];
}

/** Notes a fault at a character offset of the file. The message is one sentence, lower-case start, no full stop. */
export function addFault(reading: Reading, code: FaultCode, offset: number, message: string): void {
  const { line, col } = reading.lines.linePos(offset);
  reading.faults.push({
    code,
    file: reading.file,
    // The counter knows no lines before the first has been read: an empty file begins at 1:1.
    line: Math.max(1, line),
    column: Math.max(1, col),
    message,
  });
}

/** Faults in the order a person walks through the files: file by file as given, then others, each down the page. */
export function inReadingOrder(faults: readonly Fault[], paths: readonly string[]): Fault[] {
  const files = [...new Set([...paths, ...faults.map((fault) => fault.file)])];
  return [...faults].sort(
    (one, other) =>
      files.indexOf(one.file) - files.indexOf(other.file) ||
      one.line - other.line ||
      one.column - other.column,
  );
}

/** A value as a sentence cites it: on one line, shortened past 40 characters. */
export function cited(text: string): string {
  const oneLine = text.replace(/[\s\p{C}]+/gu, " ").trim();
  if (oneLine === "") return '""';
  const letters = [...oneLine];
  return letters.length > 40 ? `${letters.slice(0, 37).join("")}...` : oneLine;
}

/** `a, b and c`, or `a, b or c`. */
export function listed(words: readonly string[], joint: "and" | "or"): string {
  if (words.length < 2) return words.join("");
  return `${words.slice(0, -1).join(", ")} ${joint} ${words.at(-1)}`;
}
