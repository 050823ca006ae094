/** What the DME measures: the straight line down to the station, not the distance on the chart. */

import { slantErrorIsNegligible } from "../radio/index.ts";
import type { Rule } from "./step.ts";
import { feetAbove, miles } from "./words.ts";

/** Said once the reading itself, to a tenth of a mile, is off by this much, NM. */
const WORTH_SAYING_NM = 0.15;

export const slantRange: Rule = ({ reading }) => {
  const { dme, geometry, station } = reading;
  if (dme === null || geometry === null || station === null) return null;
  const excessNm = dme.distanceNm - geometry.distanceNm;
  // A DME with a site of its own differs for another reason, and the chart shows it.
  if (station.dmeSite !== null || excessNm < WORTH_SAYING_NM) return null;
  if (slantErrorIsNegligible(geometry.distanceNm, geometry.heightAboveFt)) return null;
  return {
    rule: "slant-range",
    title: "Slant range",
    sentence: `The DME reads ${miles(dme.distanceNm)} because it measures the slope from ${feetAbove(geometry.heightAboveFt)} the station; over the ground you are ${miles(geometry.distanceNm)} away.`,
    numbers: {
      dmeNm: dme.distanceNm,
      distanceNm: geometry.distanceNm,
      heightAboveFt: geometry.heightAboveFt,
    },
    source: "FAA Instrument Flying Handbook, FAA-H-8083-15B, ch. 9, DME errors; FAA AIM, para 1-1-7 b",
    parts: ["dme", "aircraft", "station"],
  };
};
