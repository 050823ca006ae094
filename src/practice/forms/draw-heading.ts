/** Headings for problems in which the heading should make no difference. */

import type { Chance } from "../chance.ts";

/**
 * A free heading, or, half of the time, one that points away from the station where the flag will say TO and toward it where it will say
 * FROM. Degrees; well clear of abeam.
 */
export function drawHeading(
  chance: Chance,
  { radialDeg, courseDeg }: { readonly radialDeg: number; readonly courseDeg: number },
  opposed = chance.odds(0.5),
): number {
  if (!opposed) return chance.integer(1, 360);
  const flagIsTo = Math.cos(((courseDeg - radialDeg) * Math.PI) / 180) < 0;
  return (flagIsTo ? radialDeg : radialDeg + 180) + chance.integer(-70, 70);
}
