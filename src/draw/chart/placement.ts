/**
 * Where a label goes: of the places offered, the one that hides least. Each place is a rectangle, turned or not; each thing on
 * the chart is an obstacle with a weight. Greedy and deterministic: the caller places the most important label first, and every
 * label placed becomes an obstacle for the next.
 */

import { type PaperPoint, paperVector } from "../plain/paper.ts";

/** A rectangle on the paper, turned clockwise about its middle. */
export interface LabelBox {
  readonly x: number;
  readonly y: number;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly turnDeg: number;
}

/** What a label should not hide. `weight` is the cost of hiding it, for each pixel of area (of length, for a path). */
export type Obstacle =
  | { readonly kind: "box"; readonly box: LabelBox; readonly weight: number }
  | {
      readonly kind: "ring";
      readonly centre: PaperPoint;
      readonly innerPx: number;
      readonly outerPx: number;
      readonly weight: number;
    }
  | {
      readonly kind: "path";
      readonly points: readonly PaperPoint[];
      /** The level box round all the points. */
      readonly bounds: PaperWindow;
      readonly weight: number;
    };

/** The part of the paper that labels must stay in. */
export interface PaperWindow {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export interface Candidate<T> {
  readonly box: LabelBox;
  /** What this place costs by itself: how much less good it is than the best one offered. */
  readonly cost: number;
  readonly value: T;
}

export interface Placed<T> extends Candidate<T> {
  /** Cost with everything it hides. */
  readonly totalCost: number;
}

/** How closely a box is searched for what it covers, px: finely for a word, less so for a block of them. */
const FINEST_GRAIN_PX = 5;
const GRAINS_ACROSS = 12;
/** Leaving the paper is worse than hiding anything. */
const OUTSIDE_WEIGHT = 50;

/** The cheapest place of those offered, the earlier of two equals; null when none was offered. */
export function bestPlace<T>(
  candidates: readonly Candidate<T>[],
  obstacles: readonly Obstacle[],
  within: PaperWindow,
): Placed<T> | null {
  // The best liked first: once one is found, most of the others cost more by themselves.
  const liked = candidates.map((candidate, index) => ({ candidate, index }));
  liked.sort((one, other) => one.candidate.cost - other.candidate.cost);
  let best: { readonly placed: Placed<T>; readonly index: number } | null = null;
  for (const { candidate, index } of liked) {
    const limit: number = best?.placed.totalCost ?? Number.POSITIVE_INFINITY;
    if (candidate.cost > limit) break;
    const totalCost: number =
      candidate.cost + hiddenCost(candidate.box, obstacles, within, limit - candidate.cost);
    if (totalCost < limit || (best !== null && totalCost === limit && index < best.index))
      best = { placed: { ...candidate, totalCost }, index };
  }
  return best?.placed ?? null;
}

/** What a box at that place would cost; stops counting beyond `limit`. */
export function hiddenCost(
  box: LabelBox,
  obstacles: readonly Obstacle[],
  within: PaperWindow,
  limit = Number.POSITIVE_INFINITY,
): number {
  const reachPx = Math.hypot(box.widthPx, box.heightPx) / 2;
  // Most places have nothing near them to be searched for.
  let known: Samples | null = null;
  const weighed = (weight: number, isCounted: (point: PaperPoint) => boolean): number => {
    known ??= samplesOf(box);
    let count = 0;
    for (const point of known.points) if (isCounted(point)) count++;
    return weight * known.areaPx * count;
  };
  let cost = liesWithin(box, reachPx, within)
    ? 0
    : weighed(OUTSIDE_WEIGHT, (point) => !inside(point, within));
  for (const obstacle of obstacles) {
    if (cost > limit) return cost;
    if (obstacle.kind === "path") {
      if (meets(obstacle.bounds, box, reachPx)) cost += obstacle.weight * lengthInside(obstacle.points, box);
    } else if (near(obstacle, box, reachPx)) {
      cost += weighed(obstacle.weight, coveredBy(obstacle));
    }
  }
  return cost;
}

/** A box as an obstacle, grown by a margin on every side. */
export function boxObstacle(box: LabelBox, weight: number, marginPx = 0): Obstacle {
  const grown = { ...box, widthPx: box.widthPx + 2 * marginPx, heightPx: box.heightPx + 2 * marginPx };
  return { kind: "box", box: grown, weight };
}

/** A line as an obstacle. */
export function pathObstacle(points: readonly PaperPoint[], weight: number): Obstacle {
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  const bounds = {
    left: Math.min(...xs),
    right: Math.max(...xs),
    top: Math.min(...ys),
    bottom: Math.max(...ys),
  };
  return { kind: "path", points, bounds, weight };
}

/** A filled disc as an obstacle. */
export const discObstacle = (centre: PaperPoint, radiusPx: number, weight: number): Obstacle => ({
  kind: "ring",
  centre,
  innerPx: 0,
  outerPx: radiusPx,
  weight,
});

/** The four corners, clockwise from the one that is top left before turning. */
export function cornersOf(box: LabelBox): PaperPoint[] {
  const along = paperVector(90 + box.turnDeg);
  const down = paperVector(180 + box.turnDeg);
  const corner = (u: number, v: number): PaperPoint => ({
    x: box.x + (along.x * u * box.widthPx) / 2 + (down.x * v * box.heightPx) / 2,
    y: box.y + (along.y * u * box.widthPx) / 2 + (down.y * v * box.heightPx) / 2,
  });
  return [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)];
}

/** Points spread evenly over the box, edges included, each standing for an equal area. */
interface Samples {
  readonly points: readonly PaperPoint[];
  readonly areaPx: number;
}

function samplesOf(box: LabelBox): Samples {
  const grainPx = Math.max(FINEST_GRAIN_PX, Math.sqrt(box.widthPx * box.heightPx) / GRAINS_ACROSS);
  const columns = Math.max(2, Math.ceil(box.widthPx / grainPx) + 1);
  const rows = Math.max(2, Math.ceil(box.heightPx / grainPx) + 1);
  const along = paperVector(90 + box.turnDeg);
  const down = paperVector(180 + box.turnDeg);
  const points: PaperPoint[] = [];
  for (let row = 0; row < rows; row++) {
    const v = (row / (rows - 1) - 0.5) * box.heightPx;
    for (let column = 0; column < columns; column++) {
      const u = (column / (columns - 1) - 0.5) * box.widthPx;
      points.push({ x: box.x + along.x * u + down.x * v, y: box.y + along.y * u + down.y * v });
    }
  }
  return { points, areaPx: (box.widthPx * box.heightPx) / points.length };
}

/** Whether all of a box surely lies in a window: so does the circle round it. */
function liesWithin({ x, y }: PaperPoint, reachPx: number, within: PaperWindow): boolean {
  return (
    x - reachPx >= within.left &&
    x + reachPx <= within.right &&
    y - reachPx >= within.top &&
    y + reachPx <= within.bottom
  );
}

function meets(bounds: PaperWindow, { x, y }: PaperPoint, reachPx: number): boolean {
  return (
    x + reachPx >= bounds.left &&
    x - reachPx <= bounds.right &&
    y + reachPx >= bounds.top &&
    y - reachPx <= bounds.bottom
  );
}

function inside(point: PaperPoint, within: PaperWindow): boolean {
  return (
    point.x >= within.left && point.x <= within.right && point.y >= within.top && point.y <= within.bottom
  );
}

function near(obstacle: Exclude<Obstacle, { kind: "path" }>, box: LabelBox, reachPx: number): boolean {
  if (obstacle.kind === "ring") {
    const apart = Math.hypot(box.x - obstacle.centre.x, box.y - obstacle.centre.y);
    return apart <= reachPx + obstacle.outerPx;
  }
  const apart = Math.hypot(box.x - obstacle.box.x, box.y - obstacle.box.y);
  return apart <= reachPx + Math.hypot(obstacle.box.widthPx, obstacle.box.heightPx) / 2;
}

function coveredBy(obstacle: Exclude<Obstacle, { kind: "path" }>): (point: PaperPoint) => boolean {
  if (obstacle.kind === "ring") {
    const { centre, innerPx, outerPx } = obstacle;
    return (point) => {
      const apart = Math.hypot(point.x - centre.x, point.y - centre.y);
      return apart >= innerPx && apart <= outerPx;
    };
  }
  const { widthPx, heightPx } = obstacle.box;
  const local = inFrameOf(obstacle.box);
  return (point) => {
    const { x, y } = local(point);
    return Math.abs(x) <= widthPx / 2 && Math.abs(y) <= heightPx / 2;
  };
}

/** A point seen from the middle of the box, along its own sides. */
function inFrameOf(box: LabelBox): (point: PaperPoint) => PaperPoint {
  const { x, y, turnDeg } = box;
  if (turnDeg === 0) return (point) => ({ x: point.x - x, y: point.y - y });
  const along = paperVector(90 + turnDeg);
  const down = paperVector(180 + turnDeg);
  return (point) => {
    const dx = point.x - x;
    const dy = point.y - y;
    return { x: dx * along.x + dy * along.y, y: dx * down.x + dy * down.y };
  };
}

/** How much of a path lies in the box, px. */
function lengthInside(points: readonly PaperPoint[], box: LabelBox): number {
  const half = {
    left: -box.widthPx / 2,
    right: box.widthPx / 2,
    top: -box.heightPx / 2,
    bottom: box.heightPx / 2,
  };
  const inFrame = inFrameOf(box);
  let length = 0;
  let previous: PaperPoint | null = null;
  for (const point of points) {
    const local = inFrame(point);
    if (previous) {
      const part = clipSegment(previous, local, half);
      if (part) length += Math.hypot(part[1].x - part[0].x, part[1].y - part[0].y);
    }
    previous = local;
  }
  return length;
}

/** The part of a straight line inside a window (Liang and Barsky, 1984); null when it passes by. */
export function clipSegment(
  from: PaperPoint,
  to: PaperPoint,
  within: PaperWindow,
): readonly [PaperPoint, PaperPoint] | null {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  let enter = 0;
  let leave = 1;
  const edges: readonly (readonly [number, number])[] = [
    [-dx, from.x - within.left],
    [dx, within.right - from.x],
    [-dy, from.y - within.top],
    [dy, within.bottom - from.y],
  ];
  for (const [toward, room] of edges) {
    if (toward === 0) {
      if (room < 0) return null;
    } else if (toward < 0) enter = Math.max(enter, room / toward);
    else leave = Math.min(leave, room / toward);
  }
  if (enter > leave) return null;
  const at = (t: number): PaperPoint => ({ x: from.x + t * dx, y: from.y + t * dy });
  return [at(enter), at(leave)];
}
