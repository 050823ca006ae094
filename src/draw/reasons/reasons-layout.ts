/**
 * Where each step of the argument stands: in columns, with type as large as lets everything fit. Plain arithmetic in px from the
 * advance widths of the fonts.
 */

import { LINE_HEIGHT, type MeasuredText, measureText, wrapMeasured } from "../plain/text-width.ts";
import type { ChainItem } from "./chain.ts";

export interface PlacedItem {
  readonly item: ChainItem;
  readonly x: number;
  readonly y: number;
  readonly heightPx: number;
  readonly titleLines: readonly string[];
  readonly lines: readonly string[];
  /** Whether the thread runs on to the item below. */
  readonly threadDownPx: number | null;
}

export interface ReasonsLayout {
  readonly textPx: number;
  readonly titlePx: number;
  readonly columnPx: number;
  readonly items: readonly PlacedItem[];
  /** Steps that do not fit at the smallest type. */
  readonly leftOut: number;
  /** Bottom of the longest column, margins included. */
  readonly heightPx: number;
  readonly marginPx: number;
}

export interface ReasonsBox {
  readonly widthPx: number;
  /** Undefined: as high as it takes. */
  readonly heightPx: number | undefined;
  readonly typeScale: number;
  /** Keeps a line free at the foot, whether or not everything fits. */
  readonly noteBelow: boolean;
}

export const SMALLEST_PX = 12;
const TEXT_PX = 14;
const STEP_DOWN_PX = 0.5;
/** Narrowest column, in type sizes: some thirty letters. */
export const NARROWEST_EM = 17;
const MOST_COLUMNS = 4;
const TITLE = 1.07;
/** Left edge of the words, in type sizes: room for the numbered disc. */
export const WORDS_LEFT_EM = 2.5;
const GAP_EM = 0.8;
const MARGIN_EM = 1;
const COLUMN_GAP_EM = 1.8;

/** The layout with the largest type that fits the box, then the fewest columns; without a height, one column at full size. */
export function layoutReasons(items: readonly ChainItem[], box: ReasonsBox): ReasonsLayout {
  const largestPx = Math.max(SMALLEST_PX, TEXT_PX * box.typeScale);
  const texts = items.map(itemTexts);
  if (box.heightPx === undefined) return place(texts, box, largestPx, 1);
  for (let textPx = largestPx; textPx >= SMALLEST_PX; textPx -= STEP_DOWN_PX)
    for (let columns = 1; columns <= mostColumns(box.widthPx, textPx); columns++) {
      const layout = place(texts, box, textPx, columns);
      if (layout.leftOut === 0) return layout;
    }
  const crowded = Array.from({ length: mostColumns(box.widthPx, SMALLEST_PX) }, (_, index) =>
    place(texts, box, SMALLEST_PX, index + 1),
  );
  return crowded.reduce((best, each) => (each.leftOut < best.leftOut ? each : best));
}

function mostColumns(widthPx: number, textPx: number): number {
  const fitting = Math.floor((widthPx - 2 * MARGIN_EM * textPx) / ((NARROWEST_EM + COLUMN_GAP_EM) * textPx));
  return Math.max(1, Math.min(MOST_COLUMNS, fitting));
}

function place(texts: readonly ItemTexts[], box: ReasonsBox, textPx: number, columns: number): ReasonsLayout {
  const marginPx = MARGIN_EM * textPx;
  const gapPx = COLUMN_GAP_EM * textPx;
  const columnPx = (box.widthPx - 2 * marginPx - gapPx * (columns - 1)) / columns;
  const measured = texts.map((each) => measure(each, columnPx, textPx));
  const notePx = box.noteBelow ? LINE_HEIGHT * textPx : 0;
  const bottomPx = box.heightPx === undefined ? Number.POSITIVE_INFINITY : box.heightPx - marginPx - notePx;
  const stepsLeft = (from: number) => texts.slice(from).filter(({ item }) => item.kind === "step").length;
  const placed: PlacedItem[] = [];
  let column = 0;
  let y = marginPx;
  let lowestPx = marginPx;
  let leftOut = 0;
  for (const [index, each] of measured.entries()) {
    const next = keptPx(measured, index, textPx);
    // In the last column the line that says what is left out needs room, unless nothing is.
    const last = column === columns - 1;
    const room = last && index < measured.length - 1 && !restFits(measured.slice(index), y, bottomPx, textPx);
    const floorPx = room ? bottomPx - LINE_HEIGHT * textPx : bottomPx;
    if (y + each.heightPx + next > floorPx) {
      column += 1;
      y = marginPx;
      if (column >= columns || each.heightPx + next > bottomPx - marginPx) {
        leftOut = stepsLeft(index);
        break;
      }
    }
    placed.push({ ...each, x: marginPx + column * (columnPx + gapPx), y, threadDownPx: null });
    y += each.heightPx + GAP_EM * textPx;
    lowestPx = Math.max(lowestPx, y - GAP_EM * textPx);
  }
  const noteRoomPx = leftOut > 0 || box.noteBelow ? LINE_HEIGHT * textPx : 0;
  return {
    textPx,
    titlePx: textPx * TITLE,
    columnPx,
    items: threaded(placed),
    leftOut,
    heightPx: lowestPx + noteRoomPx + marginPx,
    marginPx,
  };
}

/** What must stay below an item in its column: the first step under a receiver's name, the strip under the step before it. */
function keptPx(measured: readonly Measured[], index: number, textPx: number): number {
  const [each, next] = [measured[index], measured[index + 1]];
  const kept = each?.item.kind === "receiver" || next?.item.kind === "withheld";
  if (next === undefined || !kept) return 0;
  return next.heightPx + GAP_EM * textPx + keptPx(measured, index + 1, textPx);
}

type Measured = Omit<PlacedItem, "x" | "y" | "threadDownPx">;

function restFits(rest: readonly Measured[], y: number, bottomPx: number, textPx: number): boolean {
  const heightPx = rest.reduce((sum, each) => sum + each.heightPx + GAP_EM * textPx, -GAP_EM * textPx);
  return y + heightPx <= bottomPx;
}

/** An item with its words measured once for all sizes. */
interface ItemTexts {
  readonly item: ChainItem;
  readonly title: MeasuredText;
  readonly sentence: MeasuredText;
}

function itemTexts(item: ChainItem): ItemTexts {
  const [title, sentence] = item.kind === "step" ? [item.reason.title, item.reason.sentence] : ["", ""];
  return { item, title: measureText(title, "words-bold"), sentence: measureText(held(sentence), "words") };
}

/** A number stays with its unit, and a small sum in one piece: the spaces in them do not break. */
const held = (sentence: string): string =>
  sentence.replace(/ (?=(?:NM|ft|kt|min|ms|MHz|[×÷=−])(?![A-Za-z]))|(?<=[×÷=]) /g, "\u00a0");

function measure({ item, title, sentence }: ItemTexts, columnPx: number, textPx: number): Measured {
  const wordsPx = columnPx - WORDS_LEFT_EM * textPx;
  const linePx = LINE_HEIGHT * textPx;
  if (item.kind === "receiver") return { item, heightPx: linePx * 1.1, titleLines: [], lines: [] };
  if (item.kind === "withheld") return { item, heightPx: textPx * 2.6, titleLines: [], lines: [] };
  const titleLines = wrapMeasured(title, wordsPx, textPx * TITLE);
  const lines = wrapMeasured(sentence, wordsPx, textPx);
  return { item, heightPx: (titleLines.length * TITLE + lines.length) * linePx, titleLines, lines };
}

/** Joins each step to the next one of its receiver in the same column. */
function threaded(placed: readonly PlacedItem[]): PlacedItem[] {
  return placed.map((each, index) => {
    const next = placed[index + 1];
    const joined = each.item.kind === "step" && next !== undefined && next.item.kind !== "receiver";
    return joined && next.x === each.x ? { ...each, threadDownPx: next.y - each.y } : each;
  });
}
