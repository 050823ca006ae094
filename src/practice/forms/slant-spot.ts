/** Places near and high, where slant and ground distance differ; and how a task tells of them. */

import { reciprocal, stationDeg } from "../../earth/index.ts";
import { feet } from "../../reason/index.ts";
import type { Chance } from "../chance.ts";
import type { Given } from "../form.ts";
import { drawSpot, type Stand, stand } from "../stand.ts";
import type { World } from "../world.ts";

/**
 * Seven in ten high and within 1.5 NM, the rest as high and farther out; tenths of a mile, with the course through the station
 * selected. Null where no station has DME.
 */
export function drawSlantStand(chance: Chance, world: World): Stand | null {
  const spot = drawSpot(chance, world.beaconsWithDme, { heightFt: [4_500, 8_500], distanceNm: [1, 5] });
  if (spot === null) return null;
  const distanceNm = chance.odds(0.7) ? chance.integer(4, 15) / 10 : chance.integer(16, 40) / 10;
  const course = reciprocal(stationDeg(spot.radialDeg));
  return stand(world, { ...spot, distanceNm, courseDeg: course, headingDeg: course });
}

/** Altitude and the station's own height. */
export const heightsGiven = ({ altitudeFt, station }: Stand): readonly Given[] => [
  { label: "Altitude", value: feet(altitudeFt) },
  { label: `${station.ident} stands at`, value: feet(station.elevationFt) },
];

/** "6,200 ft above the station are 1.02 NM." */
export const heightStep = ({ altitudeFt, station, facts }: Stand): string =>
  `${feet(altitudeFt)} less ${feet(station.elevationFt)} is ${feet(altitudeFt - station.elevationFt)} above the station: ${facts.heightNm.toFixed(2)} NM.`;
