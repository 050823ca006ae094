/**
 * How wide text is in our fonts, from their advance widths: pictures are laid out without a browser to measure in.
 * Pair kerning is left out; in B612 it only draws letters together, so a text is never wider than said here by more than a
 * hundredth (measured against the rasteriser in test/draw-faces-text.test.ts).
 */

import { ADVANCE_WIDTHS } from "./advance-widths.ts";

/** B612, B612 Bold, B612 Mono, B612 Mono Bold. */
export type Typeface = keyof typeof ADVANCE_WIDTHS;

/** Height of capitals and figures, as a part of the type size: 1500 of 2000 units in every B612 font. */
export const CAP_HEIGHT = 0.75;
/** From baseline to baseline, as a part of the type size. */
export const LINE_HEIGHT = 1.36;
/** For a sign that the fonts lack: as wide as the widest letter, so that nothing overflows. */
const UNKNOWN_THOUSANDTHS = 1000;

const tables: Readonly<Record<Typeface, ReadonlyMap<string, number>>> = {
  words: widthByCharacter("words"),
  "words-bold": widthByCharacter("words-bold"),
  numbers: widthByCharacter("numbers"),
  "numbers-bold": widthByCharacter("numbers-bold"),
};

function widthByCharacter(typeface: Typeface): ReadonlyMap<string, number> {
  return new Map(
    ADVANCE_WIDTHS[typeface].flatMap(({ thousandths, characters }) =>
      [...characters].map((character): [string, number] => [character, thousandths]),
    ),
  );
}

/** Whether the fonts have every sign of the text. */
export const fontsHave = (text: string): boolean =>
  [...text].every((character) => tables.words.has(character));

/** Width of one line of text, px. */
export function textWidthPx(text: string, sizePx: number, typeface: Typeface): number {
  const table = tables[typeface];
  let thousandths = 0;
  for (const character of text) thousandths += table.get(character) ?? UNKNOWN_THOUSANDTHS;
  return (thousandths * sizePx) / 1000;
}

/** A text measured once, to be wrapped at many widths and sizes. Widths are at a type size of 1. */
export interface MeasuredText {
  readonly words: readonly { readonly text: string; readonly widthEm: number }[];
  readonly spaceEm: number;
  readonly typeface: Typeface;
}

/** Splits at spaces and measures the words; no-break spaces hold. */
export const measureText = (text: string, typeface: Typeface): MeasuredText => ({
  words: text
    .split(/[ \n\t]+/)
    .filter((word) => word !== "")
    .map((word) => ({ text: word, widthEm: textWidthPx(word, 1, typeface) })),
  spaceEm: textWidthPx(" ", 1, typeface),
  typeface,
});

/**
 * The text in lines no wider than `widthPx`. A word that is wider than a line by itself is broken between letters. Empty text gives
 * no lines.
 */
export function wrapMeasured(measured: MeasuredText, widthPx: number, sizePx: number): string[] {
  const roomEm = widthPx / sizePx;
  const lines: string[] = [];
  let line = "";
  let lineEm = 0;
  for (const word of measured.words) {
    const longerEm = line === "" ? word.widthEm : lineEm + measured.spaceEm + word.widthEm;
    if (longerEm <= roomEm) {
      line = line === "" ? word.text : `${line} ${word.text}`;
      lineEm = longerEm;
      continue;
    }
    if (line !== "") lines.push(line);
    const pieces = word.widthEm <= roomEm ? [word.text] : brokenWord(word.text, roomEm, measured.typeface);
    lines.push(...pieces.slice(0, -1));
    line = pieces.at(-1) ?? "";
    lineEm = textWidthPx(line, 1, measured.typeface);
  }
  if (line !== "") lines.push(line);
  return lines;
}

function brokenWord(word: string, roomEm: number, typeface: Typeface): string[] {
  const pieces: string[] = [];
  let piece = "";
  for (const character of word) {
    if (piece !== "" && textWidthPx(piece + character, 1, typeface) > roomEm) {
      pieces.push(piece);
      piece = "";
    }
    piece += character;
  }
  return [...pieces, piece];
}

/** `wrapMeasured` for a text that is wrapped once. */
export const wrapText = (text: string, widthPx: number, sizePx: number, typeface: Typeface): string[] =>
  wrapMeasured(measureText(text, typeface), widthPx, sizePx);

/** The text itself when it fits the width, otherwise as much of it as fits with an ellipsis. */
export function shortenText(text: string, widthPx: number, sizePx: number, typeface: Typeface): string {
  if (textWidthPx(text, sizePx, typeface) <= widthPx) return text;
  const characters = [...text];
  while (characters.length > 0) {
    characters.pop();
    const shortened = `${characters.join("").trimEnd()}…`;
    if (textWidthPx(shortened, sizePx, typeface) <= widthPx) return shortened;
  }
  return "";
}

/** The largest type size from `largestPx` down at which one line fits the width, never below `smallestPx`. */
export function sizeThatFitsPx(
  text: string,
  widthPx: number,
  typeface: Typeface,
  sizes: { readonly largestPx: number; readonly smallestPx: number },
): number {
  const widthAtOnePx = textWidthPx(text, 1, typeface);
  if (widthAtOnePx === 0) return sizes.largestPx;
  return Math.max(sizes.smallestPx, Math.min(sizes.largestPx, widthPx / widthAtOnePx));
}
