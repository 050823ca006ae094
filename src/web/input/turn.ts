/** Turning by hand: from pointer places on the screen to degrees. Paper is x right, y down; turns are clockwise positive. */

import { wrap180, wrap360 } from "../../earth/index.ts";

export interface ScreenPoint {
  readonly x: number;
  readonly y: number;
}

/** Direction on the screen from one point to another, degrees clockwise from straight up, in [0, 360). Up when they coincide. */
export const screenDirectionDeg = (from: ScreenPoint, to: ScreenPoint): number =>
  wrap360((Math.atan2(to.x - from.x, from.y - to.y) * 180) / Math.PI);

/** Closer to the middle of a card than this, a hand has no direction worth following, px. */
const NO_DIRECTION_WITHIN_PX = 8;

/**
 * Follows a hand around a centre: each call takes where the hand is and gives how far it has turned since the start, degrees
 * clockwise positive, counting whole turns. Near the centre the turn stands still.
 */
export function turnFollower(centre: ScreenPoint, start: ScreenPoint): (hand: ScreenPoint) => number {
  let lastDeg = screenDirectionDeg(centre, start);
  let turnedDeg = 0;
  return (hand) => {
    if (Math.hypot(hand.x - centre.x, hand.y - centre.y) < NO_DIRECTION_WITHIN_PX) return turnedDeg;
    const nowDeg = screenDirectionDeg(centre, hand);
    turnedDeg += wrap180(nowDeg - lastDeg);
    lastDeg = nowDeg;
    return turnedDeg;
  };
}
