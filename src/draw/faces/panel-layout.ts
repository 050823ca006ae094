/**
 * Where everything on a panel stands: dials in as many columns and rows as make them largest, each with its readouts above and
 * below it or, in a low box, beside it. Plain arithmetic in px.
 */

import { courseReadoutPx } from "./course-readout.tsx";
import { distanceReadoutPx } from "./distance-readout.tsx";
import { frequencyReadoutPx } from "./frequency-readout.tsx";

export interface PanelRequest {
  /** How many receivers each dial serves: 1, or 2 where a magnetic indicator has both pointers; 0 for the heading dial. */
  readonly receiversOnDial: readonly number[];
  readonly widthPx: number;
  readonly heightPx: number;
  readonly scale: number;
}

export interface PanelLayout {
  /** Whether nothing is cut or overlaps. */
  readonly fits: boolean;
  readonly dialPx: number;
  /** Readouts beside the dial rather than above and below it. */
  readonly beside: boolean;
  /** Scale of the readouts: larger dials have larger type. */
  readonly scale: number;
  /** Top left corner of each slot. */
  readonly slots: readonly { readonly x: number; readonly y: number }[];
  /** Width of a slot's readouts. */
  readonly readoutPx: number;
  readonly slotHeightPx: number;
  /** Top of the row with heading and altitude. */
  readonly footY: number;
  readonly marginPx: number;
  readonly gapPx: number;
}

const MARGIN_PX = 14;
const GAP_PX = 22;
const ROW_GAP_PX = 14;
const FOOT_PX = 34;
/** Between dial and readouts. */
export const DIAL_GAP_PX = 6;
/** Narrowest readouts that nothing has to be cut from. */
const LEAST_READOUT_PX = 132;
/** Readouts beside a dial. */
const BESIDE_PX = 164;
/** Readouts spread no wider than this, unless their dial is wider. */
const MOST_READOUT_PX = 250;
/** Dials this large carry type larger than asked; smaller ones than the second have it smaller. */
const LARGE_DIAL_PX = 185;
const SMALL_DIAL_PX = 150;
const FACTORS = [1.5, 1.3, 1.15, 1, 0.9, 0.8, 0.7, 0.6, 0.5];

/** Height of the readouts above and below a dial that serves so many receivers. */
export const readoutsPx = (receivers: number, widthPx: number, scale: number): number =>
  Math.max(1, receivers) * (frequencyReadoutPx(scale) + distanceReadoutPx(widthPx, scale)) +
  courseReadoutPx(scale) +
  2 * DIAL_GAP_PX * scale;

/** The layout with the largest dials, and type in proportion to them: never below the size of scale 1, if that was asked. */
export function layoutPanel(request: PanelRequest): PanelLayout {
  const smallest = Math.min(1, request.scale);
  const scales = FACTORS.map((factor) => request.scale * factor).filter((scale) => scale > smallest);
  for (const scale of scales) {
    const layout = largestDials({ ...request, scale });
    const wanted = scale > request.scale ? LARGE_DIAL_PX : SMALL_DIAL_PX;
    if (layout.fits && layout.dialPx >= wanted * scale) return layout;
  }
  return largestDials({ ...request, scale: smallest });
}

function largestDials(request: PanelRequest): PanelLayout {
  const columns = request.receiversOnDial.map((_, index) => index + 1);
  const layouts = columns.flatMap((count) => [
    arranged(request, count, false),
    arranged(request, count, true),
  ]);
  const [first, ...others] = layouts;
  if (first === undefined) throw new RangeError("a panel needs at least one dial");
  const better = (a: PanelLayout, b: PanelLayout): boolean =>
    a.fits === b.fits ? a.dialPx > b.dialPx * 1.02 : a.fits;
  return others.reduce((best, each) => (better(each, best) ? each : best), first);
}

function arranged(request: PanelRequest, columns: number, beside: boolean): PanelLayout {
  const { receiversOnDial, widthPx, heightPx, scale } = request;
  const [marginPx, gapPx, rowGapPx] = [MARGIN_PX * scale, GAP_PX * scale, ROW_GAP_PX * scale];
  const count = receiversOnDial.length;
  const rows = Math.ceil(count / columns);
  const roomPx = heightPx - FOOT_PX * scale - marginPx * 1.5;
  const widestPx = (widthPx - 2 * marginPx - gapPx * (columns - 1)) / columns;
  const highestPx = (roomPx - rowGapPx * (rows - 1)) / rows;
  const narrowPx = beside ? BESIDE_PX * scale : Math.min(widestPx, MOST_READOUT_PX * scale);
  const textHighPx = readoutsPx(Math.max(...receiversOnDial), narrowPx, scale);
  const sidePx = beside
    ? Math.min(highestPx, widestPx - narrowPx - gapPx / 2)
    : Math.min(widestPx, highestPx - textHighPx);
  const dialPx = Math.max(1, sidePx);
  const fits =
    sidePx >= 60 &&
    (beside ? textHighPx - DIAL_GAP_PX * scale <= highestPx : narrowPx >= LEAST_READOUT_PX * scale);
  const readoutPx = beside ? narrowPx : Math.max(dialPx, narrowPx);
  const slotWidthPx = beside ? dialPx + gapPx / 2 + readoutPx : readoutPx;
  const slotHeightPx = beside ? Math.max(dialPx, textHighPx) : dialPx + textHighPx;
  const topPx = marginPx + Math.max(0, (roomPx - slotHeightPx * rows - rowGapPx * (rows - 1)) / 2);
  const slots = receiversOnDial.map((_, index) => {
    const row = Math.floor(index / columns);
    const inRow = row === rows - 1 ? count - row * columns : columns;
    const leftPx = (widthPx - slotWidthPx * inRow - gapPx * (inRow - 1)) / 2;
    return {
      x: leftPx + (index % columns) * (slotWidthPx + gapPx),
      y: topPx + row * (slotHeightPx + rowGapPx),
    };
  });
  const footY = heightPx - FOOT_PX * scale;
  return { fits, dialPx, beside, scale, slots, readoutPx, slotHeightPx, footY, marginPx, gapPx };
}
