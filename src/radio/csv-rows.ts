/**
 * Rows of a comma-separated table, each with the line of the file it starts on. Quoted values may hold line breaks.
 * A row whose quotes are broken costs that line only: reading goes on with the next one. Reading proper is csv-parse's,
 * in its browser build, which carries its own byte buffer and so is the same in Node, a browser and a worker.
 */

import { CsvError, parse } from "csv-parse/browser/esm/sync";

export interface CsvRow {
  /** From 1; the line the row starts on. */
  readonly line: number;
  readonly values: readonly string[];
}

export interface BrokenRow {
  readonly line: number;
  /** One sentence, lower-case start, no full stop. */
  readonly reason: string;
}

export interface CsvTable {
  readonly rows: readonly CsvRow[];
  readonly broken: readonly BrokenRow[];
}

const LF = 10;
const CR = 13;
const BYTE_ORDER_MARK = "\ufeff";

/** Thrown out of csv-parse's loop when a row runs over lines that are rows of their own. */
class QuoteRanOn extends Error {}

/**
 * The rows of a text, header included as the first, empty lines left out; `delimiter` stands between values. `broken` lists rows
 * that cannot be taken apart, in order. A row with more or fewer values than the first row is given as it is, for the caller to judge, unless
 * it also spans lines: then a quote was left open, and the lines it swallowed are read again.
 */
export function readCsvRows(text: string, delimiter: "," | ";" | "\t" = ","): CsvTable {
  const bytes = new TextEncoder().encode(text.startsWith(BYTE_ORDER_MARK) ? text.slice(1) : text);
  const rows: CsvRow[] = [];
  const broken: BrokenRow[] = [];
  const lines = lineCounter(bytes);
  let from = 0;
  while (from < bytes.length) {
    let rowStart = lines.skipEmpty(from);
    try {
      parse(bytes.subarray(from), {
        delimiter,
        record_delimiter: ["\r\n", "\n", "\r"],
        relax_column_count: true,
        skip_empty_lines: true,
        on_record: (values: string[], context) => {
          const rowEnd = from + context.bytes;
          const expected = rows[0]?.values.length ?? values.length;
          if (values.length !== expected && lines.spansLines(rowStart, rowEnd)) throw new QuoteRanOn();
          rows.push({ line: lines.lineAt(rowStart), values });
          rowStart = lines.skipEmpty(rowEnd);
          return null;
        },
      });
      return { rows, broken };
    } catch (error) {
      if (!(error instanceof CsvError || error instanceof QuoteRanOn)) throw error;
      broken.push({ line: lines.lineAt(rowStart), reason: reasonFor(error) });
      from = lines.nextLine(rowStart);
    }
  }
  return { rows, broken };
}

function reasonFor(error: CsvError | QuoteRanOn): string {
  if (error instanceof QuoteRanOn || error.code === "CSV_QUOTE_NOT_CLOSED")
    return "a quotation mark is opened and not closed before the row ends";
  if (error.code === "CSV_INVALID_CLOSING_QUOTE")
    return "a quotation mark closes before its value ends; a mark inside a value is written twice";
  return "a quotation mark stands inside a value that is not quoted";
}

interface LineCounter {
  /** The offset of the next byte that is no line break. */
  skipEmpty(offset: number): number;
  /** The offset just after the line that holds this one. */
  nextLine(offset: number): number;
  spansLines(from: number, to: number): boolean;
  /** Line number, from 1; offsets must not go backwards from one call to the next. */
  lineAt(offset: number): number;
}

function lineCounter(bytes: Uint8Array): LineCounter {
  const isBreak = (offset: number): boolean => bytes[offset] === LF || bytes[offset] === CR;
  // CR LF ends a line once, at its LF.
  const endsLine = (offset: number): boolean =>
    bytes[offset] === LF || (bytes[offset] === CR && bytes[offset + 1] !== LF);
  let counted = 0;
  let line = 1;
  return {
    skipEmpty(offset) {
      let at = offset;
      while (at < bytes.length && isBreak(at)) at++;
      return at;
    },
    nextLine(offset) {
      let at = offset;
      while (at < bytes.length && !endsLine(at)) at++;
      return at + 1;
    },
    spansLines(from, to) {
      let last = to;
      while (last > from && isBreak(last - 1)) last--;
      for (let at = from; at < last; at++) if (endsLine(at)) return true;
      return false;
    },
    lineAt(offset) {
      for (; counted < offset; counted++) if (endsLine(counted)) line++;
      return line;
    },
  };
}
