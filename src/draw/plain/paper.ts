/**
 * Paper is x right, y down, in pixels; an angle on paper is degrees clockwise from straight up, as a direction is from north.
 * The flip between the two is made here and nowhere else.
 */

import { px } from "./px.ts";

export interface PaperPoint {
  readonly x: number;
  readonly y: number;
}

/** The point so far from another, in a direction clockwise from straight up. */
export function fromPoint(start: PaperPoint, angleDeg: number, lengthPx: number): PaperPoint {
  const step = paperVector(angleDeg);
  return { x: start.x + step.x * lengthPx, y: start.y + step.y * lengthPx };
}

/** The vector of length one in a direction clockwise from straight up. A vector is turned, never translated. */
export function paperVector(angleDeg: number): PaperPoint {
  const rad = (angleDeg * Math.PI) / 180;
  return { x: Math.sin(rad), y: -Math.cos(rad) };
}

/** The direction from one point to another, clockwise from straight up, in [0, 360); 0 when they coincide. */
export function paperAngleDeg(from: PaperPoint, to: PaperPoint): number {
  const deg = (Math.atan2(to.x - from.x, from.y - to.y) * 180) / Math.PI;
  const positive = deg < 0 ? deg + 360 : deg;
  return positive >= 360 ? 0 : positive + 0;
}

export const distancePx = (a: PaperPoint, b: PaperPoint): number => Math.hypot(b.x - a.x, b.y - a.y);

/** The `d` of a path through the points; closed with Z when asked. Empty for no points. */
export function pathThrough(points: readonly PaperPoint[], closed = false): string {
  const steps = points.map((point, index) => `${index === 0 ? "M" : "L"}${px(point.x)} ${px(point.y)}`);
  return steps.join("") + (closed && steps.length > 0 ? "Z" : "");
}

/** The rotation for words along a line of this direction, degrees clockwise from level, in (-90, 90]: never upside down. */
export function readableTurnDeg(angleDeg: number): number {
  const turn = (((angleDeg - 90) % 180) + 180) % 180;
  return turn > 90 ? turn - 180 : turn + 0;
}
