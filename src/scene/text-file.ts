/**
 * From the bytes of a file to its text, before any of it is read: too big, empty, not text at all, or in another
 * encoding, each said in one sentence.
 */

import type { Fault } from "./fault.ts";
import type { FaultCode } from "./fault-codes.ts";

/** The largest scene, station or land file, bytes. A scene is a few hundred; a station file of a whole continent a few hundred thousand. */
export const LARGEST_FILE_BYTES = 5_000_000;
/** The largest navaid table, bytes. The worldwide one is about 1.5 million. */
export const LARGEST_TABLE_BYTES = 25_000_000;

export type DecodedText =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly fault: Fault };

/** Whether a path names a navaid table (comma-separated) and not one of our own files. */
export const isTablePath = (path: string): boolean => /\.csv$/i.test(path);

/** The largest file of that name we read, bytes; for callers that can ask for the size before reading. */
export const largestBytes = (path: string): number =>
  isTablePath(path) ? LARGEST_TABLE_BYTES : LARGEST_FILE_BYTES;

/** The sentence for a file of that many bytes that is larger than we read. */
export function tooBigFault(path: string, sizeBytes: number): Fault {
  const kind = isTablePath(path) ? "a navaid table" : "a scene, station or land file";
  return at(
    path,
    "too-big",
    `the file is ${megabytes(sizeBytes)} MB; ${kind} is at most ${megabytes(largestBytes(path))} MB, so this is some other file`,
  );
}

/**
 * The text of a file: UTF-8, or UTF-16 that says so by its byte order mark; the mark is taken off. Lines that all end in a
 * carriage return alone, as old editors wrote them, end in a line feed then. Never throws.
 */
export function decodeText(bytes: Uint8Array, path: string): DecodedText {
  if (bytes.length > largestBytes(path)) return { ok: false, fault: tooBigFault(path, bytes.length) };
  const encoding = markedEncoding(bytes);
  const text = new TextDecoder(encoding).decode(bytes);
  const fault = textFault(text, path);
  if (fault) return { ok: false, fault };
  // Not one byte of UTF-8 is replaced in good text, unless the text itself holds the replacement character.
  const replaced = text.indexOf("\uFFFD");
  if (replaced >= 0 && encoding === "utf-8" && !isUtf8(bytes))
    return {
      ok: false,
      fault: at(
        path,
        "encoding",
        "a character here is not UTF-8, as when an accent or degree sign was saved in an older encoding; save the file as UTF-8",
        text.slice(0, replaced),
      ),
    };
  return { ok: true, text: text.includes("\n") ? text : text.replaceAll("\r", "\n") };
}

const isTable = (path: string): boolean => /\.csv$/i.test(path);

/** What keeps a text from being read at all: too big, nothing in it, or not text. Null when nothing does. */
export function textFault(text: string, path: string): Fault | null {
  if (text.length > largestBytes(path)) return tooBigFault(path, text.length);
  // Every control character but tab and line ends; those of the second set (0080 to 009F) occur in mis-saved text.
  const control = text.search(/[^\P{Cc}\t\n\r\u0080-\u009F]/u);
  if (control >= 0)
    return at(
      path,
      "binary",
      `this is not a text file${looksLike(text)}; ${isTable(path) ? "a table is plain text in UTF-8: export it as CSV" : "scene, station and land files are plain text in UTF-8"}`,
      text.slice(0, control),
    );
  if (text.trim() === "")
    return at(
      path,
      "empty",
      isTable(path)
        ? "the file is empty; a table begins with a row that names its columns"
        : "the file is empty; a scene file begins with scene: 1, a station file with stations: 1",
    );
  return null;
}

function markedEncoding(bytes: Uint8Array): "utf-8" | "utf-16le" | "utf-16be" {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return "utf-16le";
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return "utf-16be";
  return "utf-8";
}

function isUtf8(bytes: Uint8Array): boolean {
  try {
    new TextDecoder("utf-8", { fatal: true }).decode(bytes);
    return true;
  } catch {
    return false;
  }
}

/** What the first bytes of common other files say they are. */
function looksLike(text: string): string {
  if (text.startsWith("%PDF")) return " but a PDF";
  if (text.startsWith("PK\x03\x04"))
    return " but a zip archive, as spreadsheets and word-processor files are";
  if (text.startsWith("\x89PNG") || text.startsWith("\uFFFDPNG")) return " but a PNG picture";
  return "";
}

const megabytes = (sizeBytes: number): string => String(Math.ceil(sizeBytes / 1e5) / 10);

function at(path: string, code: FaultCode, message: string, before = ""): Fault {
  const lines = before.split("\n");
  return { code, file: path, line: lines.length, column: (lines.at(-1)?.length ?? 0) + 1, message };
}
