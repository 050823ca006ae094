/** An aircraft a little beside its course line, flying along it or against it: the beginning of "which way to the line?". */

import { magneticDeg, turnBetween, turned } from "../../earth/index.ts";
import type { Situation } from "../../scene/index.ts";
import type { Answer } from "../answer.ts";
import type { Chance } from "../chance.ts";
import type { Ghost } from "../form.ts";
import { handOf } from "../functions.ts";
import { drawSpot, type Stand, stand } from "../stand.ts";
import type { World } from "../world.ts";
import { courseOverGround, rightOfCourseNm } from "./geometry.ts";
import { ghostOnHeading } from "./ghosts.ts";

export const TURN_WORDS = ["turn left", "turn right"] as const;
/** How far a ghost has turned, degrees. */
const GHOST_TURN_DEG = 45;

/** Four to eight degrees off the line, TO and FROM alike, within 25 degrees of the course or, in six of ten, of its reciprocal. */
export function drawBesideLine(chance: Chance, world: World): Stand | null {
  const spot = drawSpot(chance, world.beacons);
  if (spot === null) return null;
  const courseDeg = chance.integer(1, 360);
  const radialDeg = courseDeg + chance.integer(4, 8) * chance.pick([-1, 1]) + (chance.odds(0.5) ? 180 : 0);
  const headingDeg = courseDeg + chance.integer(-25, 25) + (chance.odds(0.6) ? 180 : 0);
  return stand(world, { ...spot, radialDeg, courseDeg, headingDeg });
}

/** Which turn leads toward the course line, from where the line lies over the ground and the nose points. */
export function turnTowardLine({ receivers: [reading], headingTrue }: Situation): Answer | null {
  if (reading === undefined) return null;
  const course = courseOverGround(reading);
  const rightNm = rightOfCourseNm(reading);
  if (course === null || rightNm === null) return null;
  const towardLine = turned(course, rightNm > 0 ? -90 : 90);
  return { kind: "word", word: `turn ${handOf(turnBetween(headingTrue, towardLine))}` };
}

/** The aircraft turned as the answer has it. */
export function ghostTurned(world: World, at: Stand, word: string): Ghost {
  const byDeg = word === "turn right" ? GHOST_TURN_DEG : -GHOST_TURN_DEG;
  const heading = magneticDeg(at.facts.heading + byDeg);
  return { ...ghostOnHeading(world, at, heading), says: `By this answer you would ${word}, this way.` };
}
