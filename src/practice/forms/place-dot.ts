/** The aircraft is covered; the panel is shown, with DME or without: where on the chart are you? */

import { direct, threeDigits } from "../../earth/index.ts";
import { givesDistance } from "../../radio/index.ts";
import type { Tolerance } from "../answer.ts";
import type { Facts } from "../facts.ts";
import type { Form } from "../form.ts";
import { panelShown, physicalRadial } from "../functions.ts";
import { drawSpot, isReceived, sceneAt, stand } from "../stand.ts";
import { ghostAt } from "./ghosts.ts";
import { degreesEastWest } from "./norths.ts";
import { dotsPhrase } from "./phrases.ts";

/** Off-centre, it is by four dots: two degrees on the chart are what a hand can mark, and one idea is half of four dots out. */
const OFF_CENTRE_DEG = 8;
const LINE_TOLERANCE_DEG = 5;
const FIX_TOLERANCE_NM = 2;
/** Just under a quarter and a half: an idea out by exactly twice the tolerance counts as plainly wrong, in spite of rounding. */
const [QUARTER, HALF] = [0.2475, 0.495];

export const placeDot = {
  id: "place-dot",
  title: "Where on the chart?",
  skills: ["one-line-position", "line-and-distance-fix"],
  modes: ["choose", "tell"],
  answers: "place",
  leastSlipAnswers: 2,
  minutes: 0.9,
  draw(chance, world) {
    const spot = drawSpot(chance, world.beacons, { distanceNm: [10, 45] });
    if (spot === null) return null;
    const needleDeg = chance.odds(0.6) ? OFF_CENTRE_DEG * chance.pick([-1, 1]) : 0;
    const courseDeg = chance.odds(0.5) ? spot.radialDeg + needleDeg : spot.radialDeg + 180 - needleDeg;
    const at = stand(world, { ...spot, courseDeg, headingDeg: chance.integer(1, 360) });
    const { facts, station } = at;
    const hasDme = givesDistance(station);
    const panel = panelShown(facts);
    const slantNm = Math.hypot(facts.distanceNm, facts.heightNm);
    const radial = physicalRadial(facts);
    const known = hasDme
      ? "The DME gives the distance."
      : `It has no DME: you know that you are ${spot.distanceNm} NM away.`;
    return {
      scene: sceneAt(world, at, {
        title: "Where on the chart?",
        ask: `NAV1 receives ${station.name}. ${known} Where are you?`,
        covers: ["aircraft", "reasons", "signal"],
      }),
      views: ["chart", "panel"],
      given: [
        { label: `${station.ident} aligned with declination`, value: degreesEastWest(facts.declinationDeg) },
        ...(hasDme ? [] : [{ label: `Distance from ${station.ident}`, value: `${spot.distanceNm} NM` }]),
      ],
      tolerance: toleranceOf(facts, needleDeg, hasDme),
      answer: (functions) => {
        const azimuth = functions.plotTrue(functions.readRadial(panel, facts), facts);
        const distanceNm = hasDme ? functions.groundNm(slantNm, facts.heightNm) : facts.distanceNm;
        const position = direct(station.position, azimuth, distanceNm);
        return { kind: "place", position, station: station.position };
      },
      check: ({ receivers: [reading], scene }) =>
        isReceived(reading, station)
          ? { kind: "place", position: scene.aircraft.position, station: station.position }
          : null,
      steps: () => [
        panel.needleDeg === 0
          ? `Course ${threeDigits(facts.course)}, ${panel.flag}, needle centred: you are on radial ${threeDigits(radial)}.`
          : `Course ${threeDigits(facts.course)}, ${panel.flag}, needle ${dotsPhrase(needleDeg)}: you are on radial ${threeDigits(radial)}.`,
        `Its line leaves ${station.name} at ${threeDigits(facts.azimuth)} true: the station's north lies ${degreesEastWest(facts.declinationDeg)} of true north.`,
        `You are on it, ${spot.distanceNm} NM out.`,
      ],
      ghost: (answer) =>
        answer.kind === "place"
          ? ghostAt(world, at, answer.position, "By this answer you would be here.")
          : null,
    };
  },
} as const satisfies Form;

/** As fine as it takes to tell ideas apart that move the line by the declination, or read the needle wrong. */
function toleranceOf({ declinationDeg }: Facts, needleDeg: number, hasDme: boolean): Tolerance {
  const declination = Math.abs(declinationDeg);
  const deg =
    needleDeg !== 0
      ? Math.abs(needleDeg) * QUARTER
      : declination < LINE_TOLERANCE_DEG * HALF
        ? LINE_TOLERANCE_DEG
        : Math.min(LINE_TOLERANCE_DEG, declination * HALF);
  return hasDme ? { deg, nm: FIX_TOLERANCE_NM } : { deg };
}
