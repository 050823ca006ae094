/** Ways to a truth that do not go through the reference functions, for the forms' checks. */

import { type TrueDeg, trackForHeading, turnBetween, turned, type Wind } from "../../earth/index.ts";

/** Rounds of leaning by what is still missing; each shrinks the rest by the share of wind in airspeed, a third at most. */
const ROUNDS = 30;

/**
 * The heading that makes a track good, found by flying headings and looking where they lead. `wind` weaker than `tasKt`.
 * Null when the wind holds the aircraft still.
 */
export function headingThatTracks(
  track: TrueDeg,
  tasKt: number,
  wind: Wind,
): { readonly heading: TrueDeg; readonly groundspeedKt: number } | null {
  let heading = track;
  for (let round = 0; round < ROUNDS; round += 1) {
    const made = trackForHeading({ heading, tasKt, wind });
    if (made.kind === "standing") return null;
    heading = turned(heading, turnBetween(made.track, track));
  }
  const made = trackForHeading({ heading, tasKt, wind });
  return made.kind === "standing" ? null : { heading, groundspeedKt: made.groundspeedKt };
}
