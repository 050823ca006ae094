/** How well each view reads in a box of a given size: quick estimates to choose an arrangement by, not layouts. */

import type { Reason } from "../../reason/index.ts";
import { LINE_HEIGHT, textWidthPx } from "../plain/text-width.ts";
import { NARROWEST_EM, SMALLEST_PX, WORDS_LEFT_EM } from "../reasons/reasons-layout.ts";
import type { Legibility } from "./arrange-views.ts";

export interface FigureContent {
  readonly dials: number;
  readonly reasons: readonly Reason[];
  /** 1 for 14 px text. */
  readonly scale: number;
  /** Of the whole room for views. */
  readonly areaPx2: number;
}

/** Never 0, so that its logarithm is a number. */
const WORST = 0.02;

export function legibilityOf(content: FigureContent): Legibility {
  const sentencesEm = content.reasons.reduce((sum, each) => sum + textWidthPx(each.sentence, 1, "words"), 0);
  const estimate: Legibility = (view, widthPx, heightPx) => {
    switch (view) {
      case "chart":
        return chart(content, widthPx, heightPx);
      case "panel":
        return panel(content, widthPx, heightPx);
      case "signal":
        return Math.min(1, widthPx / (640 * content.scale)) * Math.min(1, heightPx / (140 * content.scale));
      case "reasons":
        return reasons(content, sentencesEm, widthPx, heightPx);
    }
  };
  return (view, widthPx, heightPx) => {
    const legible = widthPx > 0 && heightPx > 0 ? estimate(view, widthPx, heightPx) : 0;
    return Math.max(WORST, Math.min(1, legible));
  };
}

/** A chart wants half the area, room for its labels, and no narrow strip. */
function chart({ areaPx2, scale }: FigureContent, widthPx: number, heightPx: number): number {
  const size = Math.min(1, Math.sqrt((widthPx * heightPx) / (0.5 * areaPx2)));
  const labels = Math.min(1, widthPx / (440 * scale)) * Math.min(1, heightPx / (330 * scale));
  const aspect = widthPx / heightPx;
  return size * labels ** 1.5 * Math.min(1, aspect / 0.9) * Math.min(1, 1.9 / aspect);
}

/** Dials of 240 px at scale 1 read from the back of the room. */
function panel({ dials, scale }: FigureContent, widthPx: number, heightPx: number): number {
  const roomPx = heightPx - 48 * scale;
  let largestPx = 0;
  for (let columns = 1; columns <= dials; columns++) {
    const rows = Math.ceil(dials / columns);
    const slotPx = (widthPx - 28 * scale) / columns - 22 * scale;
    const highPx = (roomPx - 14 * scale * rows) / rows;
    const stacked = slotPx < 140 * scale ? 0 : Math.min(slotPx, highPx - 112 * scale);
    const beside = highPx < 100 * scale ? 0 : Math.min(highPx, slotPx - 175 * scale);
    largestPx = Math.max(largestPx, stacked, beside);
  }
  return largestPx / (240 * scale);
}

/** How much of the argument fits, and how far its type must shrink for it. Type at half size is much less than half as good. */
function reasons(content: FigureContent, sentencesEm: number, widthPx: number, heightPx: number): number {
  const fullPx = 14 * content.scale;
  const smallestPx = Math.min(fullPx, SMALLEST_PX);
  let best = 0;
  for (let columns = 1; columns <= MOST_COLUMNS; columns++) {
    const fits = (textPx: number): number =>
      partThatFits(content.reasons.length, sentencesEm, columns, textPx, widthPx, heightPx);
    if (fits(fullPx) >= 1) return 1;
    let [low, high] = [smallestPx, fullPx];
    for (let step = 0; step < BISECTIONS; step++) {
      const middle = (low + high) / 2;
      if (fits(middle) >= 1) low = middle;
      else high = middle;
    }
    best = Math.max(best, Math.min(1, fits(low)) ** 2 * (low / fullPx) ** 2);
  }
  return best;
}

const MOST_COLUMNS = 4;
const BISECTIONS = 4;

/** Which part of the steps fits in the columns with type of this size; 1 and more: all of them. */
function partThatFits(
  steps: number,
  sentencesEm: number,
  columns: number,
  textPx: number,
  widthPx: number,
  heightPx: number,
): number {
  const columnPx = (widthPx - 2 * textPx - (columns - 1) * 1.8 * textPx) / columns;
  if (columnPx < NARROWEST_EM * textPx) return 0;
  // Beside the disc; and a line ends, on average, short of the edge by the better part of a word.
  const linePx = columnPx - (WORDS_LEFT_EM + 1.6) * textPx;
  const lines = (sentencesEm * textPx) / linePx + 0.5 * steps;
  const neededPx = (lines * LINE_HEIGHT + steps * (1.07 * LINE_HEIGHT + 0.8)) * textPx;
  return (columns * Math.max(0, heightPx - (columns > 1 ? 6 : 4) * textPx)) / neededPx;
}
