/** The facts of a published example, for the reference functions: what it does not say is of no account in it. */

import { magneticDeg, stationDeg, trueDeg } from "../../src/earth/index.ts";
import type { Facts } from "../../src/practice/index.ts";

/** An aircraft on a radial, in calm air, where every north is the same. Directions in degrees, distance in NM. */
export const factsOn = (
  radialDeg: number,
  given: { courseDeg?: number; headingDeg?: number; distanceNm?: number; tasKt?: number } = {},
): Facts => ({
  azimuth: trueDeg(radialDeg),
  declinationDeg: 0,
  variationDeg: 0,
  course: stationDeg(given.courseDeg ?? radialDeg),
  heading: magneticDeg(given.headingDeg ?? radialDeg),
  distanceNm: given.distanceNm ?? 20,
  heightNm: 0.5,
  tasKt: given.tasKt ?? 100,
  wind: { from: trueDeg(0), speedKt: 0 },
});
