/** Where the bands of the history plot stand, and how time and values become pixels. Plain arithmetic. */

import { timeTickS } from "./time-words.ts";

export interface HistoryLayout {
  readonly sizePx: number;
  /** Where time runs. */
  readonly left: number;
  readonly right: number;
  readonly needle: Band;
  readonly flag: Band;
  readonly dme: Band;
  readonly axisY: number;
  /** The time at the right end, seconds: a round one, so that the plot is not squeezed anew every second. */
  readonly spanS: number;
  readonly tickS: number;
  readonly xOf: (timeS: number) => number;
}

export interface Band {
  readonly top: number;
  readonly bottom: number;
}

const SPANS_S = [60, 120, 300, 600, 1200, 1800, 3600, 7200, 14_400];

/** The smallest round span that holds a flight. */
export const historySpanS = (lengthS: number): number =>
  SPANS_S.find((spanS) => spanS >= lengthS) ?? Math.ceil(lengthS / 3600) * 3600;

/** `startS` and `endS` are the flight's; every length grows with `scale`. */
export interface HistorySize {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly scale: number;
  readonly startS: number;
  readonly endS: number;
}

/** The time of a place on a history plot of that size, for a hand that points at it; may lie outside the flight. */
export function historyTimeAt(size: HistorySize, x: number): number {
  const { left, right, spanS } = layOutHistory(size);
  return size.startS + ((x - left) / (right - left)) * spanS;
}

export function layOutHistory(given: HistorySize): HistoryLayout {
  const { widthPx, heightPx, scale, startS, endS } = given;
  const sizePx = 12 * scale;
  const left = 58 * scale;
  const right = widthPx - 14 * scale;
  const top = 9 * scale;
  const axisY = heightPx - 18 * scale;
  const flagPx = 17 * scale;
  const gapPx = 6 * scale;
  const rest = axisY - top - flagPx - 2 * gapPx - 4 * scale;
  const needle = { top, bottom: top + rest * 0.55 };
  const flag = { top: needle.bottom + gapPx, bottom: needle.bottom + gapPx + flagPx };
  const dme = { top: flag.bottom + gapPx, bottom: axisY - 4 * scale };
  const spanS = historySpanS(endS - startS);
  const xOf = (timeS: number) => left + ((timeS - startS) / spanS) * (right - left);
  const mostTicks = Math.max(1, Math.floor((right - left) / (70 * scale)));
  return { sizePx, left, right, needle, flag, dme, axisY, spanS, tickS: timeTickS(spanS, mostTicks), xOf };
}

/** The smallest of 1, 2, 5 times a power of ten that is at least so much; 1 for less. */
export function roundTop(value: number): number {
  if (!(value > 1)) return 1;
  const power = 10 ** Math.floor(Math.log10(value));
  return [1, 2, 5, 10].map((step) => step * power).find((step) => step >= value) ?? 10 * power;
}
