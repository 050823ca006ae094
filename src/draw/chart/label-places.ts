/** The places offered to words on the chart: along a line, beside a point, round a circle. Level or along their line, never upside down. */

import { distancePx, fromPoint, type PaperPoint, paperAngleDeg, readableTurnDeg } from "../plain/paper.ts";
import type { Candidate, LabelBox, PaperWindow } from "./placement.ts";
import { alongRun, runLengthPx, visibleRun } from "./receiver-lines.ts";

export type BoxSize = Pick<LabelBox, "widthPx" | "heightPx">;

/** East, west, and so on round; the earlier the better liked. */
const LIKED_DEG = [90, 270, 45, 135, 315, 225, 0, 180];
const NEXT_COST = 12;

/** Level places round a point, their near edge or corner so far from it. */
export function besidePoint(size: BoxSize, at: PaperPoint, clearPx: number): Candidate<null>[] {
  return LIKED_DEG.map((angleDeg, index) => {
    const toward = fromPoint({ x: 0, y: 0 }, angleDeg, 1);
    const sideX = Math.sign(Math.round(toward.x * 100));
    const y =
      at.y + toward.y * clearPx + (sideX === 0 ? (Math.sign(toward.y) * size.heightPx) / 2 : toward.y * 4);
    const x = at.x + toward.x * clearPx + (sideX * size.widthPx) / 2;
    return { box: { ...size, x, y, turnDeg: 0 }, cost: index * NEXT_COST, value: null };
  });
}

/** As `besidePoint`, with many more directions to choose from. */
export function aroundPoint(size: BoxSize, at: PaperPoint, clearPx: number): Candidate<null>[] {
  return Array.from({ length: 24 }, (_, index) => {
    const angleDeg = 90 + index * 15;
    // Beside is better liked than above or below: a reader looks along the line.
    const cost = NEXT_COST * 4 * Math.abs(Math.cos((angleDeg * Math.PI) / 180));
    return { box: { ...size, ...besideCircle(at, angleDeg, clearPx, size), turnDeg: 0 }, cost, value: null };
  });
}

export interface AlongLine {
  /** Kept free from the line's start (the station), px. */
  readonly clearPx: number;
  /** Kept free before its end. */
  readonly stopPx: number;
  /** Where the words would best begin, px from the start. */
  readonly wishPx: number;
}

const STEP_PX = 14;
const ASIDE_PX = 4;
/** Cost of each pixel away from the wished place. */
const WISH_COST = 0.35;
/** Words under their line are a little less good than words over it. */
const BELOW_COST = 6;

/** Places beside a line, on both sides, from its start outward, turned to read along it. */
export function alongLine(
  line: readonly PaperPoint[],
  window: PaperWindow,
  size: BoxSize,
  { clearPx, stopPx, wishPx }: AlongLine,
): Candidate<null>[] {
  const run = visibleRun(line, window);
  const start = line[0];
  const entry = run[0];
  if (!start || !entry) return [];
  const enteredPx = distancePx(start, entry);
  const firstPx = Math.max(0, clearPx - enteredPx) + size.widthPx / 2;
  const lastPx = runLengthPx(run) - stopPx - size.widthPx / 2;
  const found: Candidate<null>[] = [];
  for (let alongPx = firstPx; alongPx <= lastPx; alongPx += STEP_PX) {
    const place = alongRun(run, alongPx);
    if (!place) break;
    const [at, unit] = place;
    const angleDeg = paperAngleDeg({ x: 0, y: 0 }, unit);
    const turnDeg = readableTurnDeg(angleDeg);
    const wishCost = Math.abs(enteredPx + alongPx - size.widthPx / 2 - wishPx) * WISH_COST;
    for (const side of [-90, 90]) {
      const middle = fromPoint(at, angleDeg + side, size.heightPx / 2 + ASIDE_PX);
      const cost = wishCost + (middle.y > at.y ? BELOW_COST : 0);
      found.push({ box: { ...size, ...middle, turnDeg }, cost, value: null });
    }
  }
  return found;
}

/** The middle of a level box that lies in this direction and just clears a circle of this radius. */
export function besideCircle(at: PaperPoint, angleDeg: number, clearPx: number, size: BoxSize): PaperPoint {
  // The box leans its nearest edge or corner on the circle: move its middle out until the circle no longer reaches in.
  for (let outPx = clearPx; ; outPx += 4) {
    const middle = fromPoint(at, angleDeg, outPx);
    const gapX = Math.max(0, Math.abs(middle.x - at.x) - size.widthPx / 2);
    const gapY = Math.max(0, Math.abs(middle.y - at.y) - size.heightPx / 2);
    if (Math.hypot(gapX, gapY) >= clearPx || outPx > clearPx + size.widthPx + size.heightPx) return middle;
  }
}
