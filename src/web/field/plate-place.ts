/** Where a plate lies on a chart that has been moved since it was made. */

import { type ChartProjection, chartProjection, type PlatePaper } from "../../draw/index.ts";
/** A turn, a scale and a shift: x' = a x - b y + e, y' = b x + a y + f. Pixels of the plate's paper to pixels of the chart's. */
export interface PaperShift {
  readonly a: number;
  readonly b: number;
  readonly e: number;
  readonly f: number;
}

export const projectionOfPaper = ({ view, widthPx, heightPx }: PlatePaper): ChartProjection =>
  chartProjection(view, widthPx, heightPx);

/**
 * Lays a plate where its places are now. Both papers are conformal, so near its middle one is the other turned, scaled and shifted;
 * toward its edges it may be a few pixels out until the new plate is there.
 */
export function paperShift(made: PlatePaper, now: PlatePaper): PaperShift {
  const from = projectionOfPaper(made);
  const to = projectionOfPaper(now);
  const reachPx = made.widthPx / 4;
  const middle = { x: made.widthPx / 2, y: made.heightPx / 2 };
  const left = to.toPaper(from.toWorld(middle.x - reachPx, middle.y));
  const right = to.toPaper(from.toWorld(middle.x + reachPx, middle.y));
  const a = (right.x - left.x) / (2 * reachPx);
  const b = (right.y - left.y) / (2 * reachPx);
  return {
    a,
    b,
    e: (left.x + right.x) / 2 - (a * middle.x - b * middle.y),
    f: (left.y + right.y) / 2 - (b * middle.x + a * middle.y),
  };
}

/** How much of the chart the plate covers where it lies now, 0 to 1; its turn left out. */
export function coveredPart(made: PlatePaper, now: PlatePaper, { a, b, e, f }: PaperShift): number {
  const scale = Math.hypot(a, b);
  const overlap = (start: number, length: number, most: number): number =>
    Math.max(0, Math.min(most, start + length) - Math.max(0, start)) / most;
  return overlap(e, made.widthPx * scale, now.widthPx) * overlap(f, made.heightPx * scale, now.heightPx);
}

/** As a style's transform, from the top left corner. */
export const shiftStyle = ({ a, b, e, f }: PaperShift): string => `matrix(${a},${b},${-b},${a},${e},${f})`;
