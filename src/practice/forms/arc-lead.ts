/** On an arc by DME: how many degrees before a radial does the turn onto it begin? */

import { direct, geodesicDistanceNm, stationDeg, threeDigits, trueFromStation } from "../../earth/index.ts";
import type { Chance } from "../chance.ts";
import { arcLeadNm } from "../dme-arc.ts";
import type { Case } from "../form.ts";
import { drawSpot, isReceived, sceneAt, stand } from "../stand.ts";
import type { World } from "../world.ts";

/** The rule of sixty counts a radian as sixty degrees, in place of 57.3. */
const RULE_OF_ANGLE = 60 / (180 / Math.PI);
/** Whole degrees before the radial at which the aircraft still is when asked. */
const ASKED_BEFORE_DEG = [15, 20, 25] as const;

/** A case of it; null where no station gives distance or the draw came out unfit. */
export function drawArcLead(chance: Chance, world: World): Case | null {
  const spot = drawSpot(chance, world.beaconsWithDme, { distanceNm: [7, 20], heightFt: [1_500, 4_000] });
  if (spot === null) return null;
  const arcNm = spot.distanceNm;
  const groundspeedKt = chance.integer(9, 15) * 10;
  const leadNm = arcLeadNm(groundspeedKt);
  // Clockwise round the station the radials rise.
  const way = chance.pick([-1, 1]);
  const wanted = stationDeg(spot.radialDeg + way * chance.pick(ASKED_BEFORE_DEG));
  const at = stand(world, {
    ...spot,
    courseDeg: wanted + 180,
    headingDeg: spot.radialDeg + way * 90,
    tasKt: groundspeedKt,
  });
  const { station } = at;
  const leadDeg = leadNm / (arcNm / 60);
  const text = (value: number): string => `${Number(value.toFixed(3))}`;
  return {
    scene: sceneAt(world, at, {
      title: "Degrees and miles",
      ask: `You fly the ${arcNm} NM arc round ${station.name} at ${groundspeedKt} knots over the ground, to turn inbound on the ${threeDigits(wanted)} radial at standard rate. By the rules of thumb, how many degrees before that radial do you begin the turn?`,
      covers: ["reasons", "signal"],
    }),
    views: ["chart", "panel"],
    given: [
      { label: "Arc", value: `${arcNm} NM` },
      { label: "Groundspeed", value: `${groundspeedKt} kt` },
    ],
    tolerance: { value: 0.3, share: 0.1 },
    skills: ["hold-the-arc"],
    leastSlipAnswers: 1,
    also: [leadDeg * 2, 60 / arcNm, 10].map((value) => ({ kind: "quantity", value, unit: "degrees" })),
    answer: (functions) => ({ kind: "quantity", value: leadNm / functions.offNm(arcNm, 1), unit: "degrees" }),
    // How long a degree of this arc is on the earth itself.
    check: ({ receivers: [reading] }) => {
      if (!isReceived(reading, station) || reading.geometry === null) return null;
      const { declinationDeg, position } = station;
      const [one, other] = [0, 1].map((byDeg) =>
        direct(
          position,
          trueFromStation(stationDeg(wanted + byDeg), declinationDeg),
          reading.geometry?.distanceNm ?? arcNm,
        ),
      );
      if (one === undefined || other === undefined) return null;
      const degreeNm = geodesicDistanceNm(one, other);
      return { kind: "quantity", value: (leadNm / degreeNm) * RULE_OF_ANGLE, unit: "degrees" };
    },
    steps: () => [
      `A standard-rate turn of 90 degrees needs half of one percent of the groundspeed, in miles: ${text(leadNm)} NM.`,
      `One degree at ${arcNm} NM is ${arcNm} / 60 = ${text(arcNm / 60)} NM.`,
      `${text(leadNm)} / ${text(arcNm / 60)} is ${leadDeg.toFixed(1)} degrees before the ${threeDigits(wanted)} radial.`,
    ],
    ghost: () => null,
  };
}
