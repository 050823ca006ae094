/** Where waves and legend of the signal view stand. Plain arithmetic in px. */

import { LINE_HEIGHT, textWidthPx, wrapText } from "../plain/text-width.ts";

export interface LegendRow {
  readonly wave: "reference" | "variable";
  readonly lines: readonly string[];
  /** Left end of the piece of line. */
  readonly x: number;
  /** Middle of the first line of words. */
  readonly middleY: number;
}

export interface WavesLayout {
  readonly marginPx: number;
  readonly titleY: number;
  readonly rows: readonly LegendRow[];
  readonly samplePx: number;
  readonly wordsLeftPx: number;
  readonly sizePx: number;
  /** Where there is room for it. */
  readonly note: { readonly text: string; readonly y: number } | null;
  readonly plot: {
    readonly left: number;
    readonly right: number;
    readonly middleY: number;
    readonly amplitudePx: number;
    /** Height of the mark from peak to peak. */
    readonly markY: number;
  };
}

const ROWS = [
  { wave: "reference", words: "reference: alike everywhere" },
  { wave: "variable", words: "variable: later by your radial" },
] as const;
const NOTE = "30 turns a second, 33.3 ms each";
/** Wider than this, at scale 1, the legend stands beside the waves. */
const BESIDE_FROM_PX = 540;
const BESIDE_PX = 214;
/** A wave much higher than long is no easier to compare. */
const MOST_HIGH_FOR_A_TURN = 0.42;

/**
 * @param turns how many turns of the pattern are drawn across
 * @param wordsAbove whether a line of words stands above the waves
 */
export function layoutWaves(
  widthPx: number,
  heightPx: number,
  scale: number,
  turns: number,
  wordsAbove = false,
): WavesLayout {
  const marginPx = 14 * scale;
  const sizePx = 12 * scale;
  const linePx = sizePx * LINE_HEIGHT;
  const samplePx = 26 * scale;
  const wordsLeftPx = samplePx + 8 * scale;
  const rowGapPx = 5 * scale;
  const titlePx = 22 * scale;
  const beside = widthPx > BESIDE_FROM_PX * scale;
  const insidePx = widthPx - 2 * marginPx;
  const legendPx = beside ? BESIDE_PX * scale : insidePx;
  const widestPx = Math.max(...ROWS.map(({ words }) => textWidthPx(words, sizePx, "words")));
  const inOneLine = !beside && 2 * (wordsLeftPx + widestPx) + 16 * scale <= insidePx;

  const wrapped = ROWS.map(({ wave, words }) => ({
    wave,
    lines: wrapText(words, legendPx - wordsLeftPx, sizePx, "words"),
  }));
  const heights = wrapped.map(({ lines }) => lines.length * linePx + rowGapPx);
  const rowsPx = inOneLine ? linePx + rowGapPx : heights.reduce((sum, each) => sum + each, 0);
  const legendHighPx = titlePx + rowsPx + (beside ? linePx : 0);
  const top = beside ? Math.max(marginPx * 0.8, (heightPx - legendHighPx) / 2) : marginPx * 0.8;
  const rows = wrapped.map((row, index) => ({
    ...row,
    x: inOneLine ? marginPx + (index * insidePx) / 2 : marginPx,
    middleY: top + titlePx + linePx / 2 + (inOneLine || index === 0 ? 0 : (heights[0] ?? 0)),
  }));

  const left = beside ? marginPx * 2 + legendPx : marginPx;
  const right = widthPx - marginPx;
  const wordsPx = wordsAbove ? 18 * scale : 0;
  const plotTop = beside ? Math.max(marginPx, wordsPx + 8 * scale) : top + legendHighPx + wordsPx + 4 * scale;
  const plotBottom = heightPx - marginPx * 0.8 - 30 * scale;
  const middleY = (plotTop + plotBottom) / 2;
  const highestPx = Math.min(
    (plotBottom - plotTop) / 2 - 3 * scale,
    (MOST_HIGH_FOR_A_TURN * (right - left)) / turns,
  );
  const amplitudePx = Math.max(6, highestPx);
  return {
    marginPx,
    titleY: top + 13 * scale,
    rows,
    samplePx,
    wordsLeftPx,
    sizePx,
    note: beside ? { text: NOTE, y: top + titlePx + rowsPx + linePx * 0.85 } : null,
    plot: { left, right, middleY, amplitudePx, markY: middleY + amplitudePx + 12 * scale },
  };
}
