/** A leg between two stations: how far out is the second to be tuned? */

import { stationDeg } from "../../earth/index.ts";
import { feet, miles } from "../../reason/index.ts";
import type { Leg } from "../facts.ts";
import type { Form } from "../form.ts";
import { protectedNm, sceneAt, tunedTo } from "../stand.ts";
import { ghostAtDistance } from "./ghosts-flown.ts";
import { drawLeg } from "./leg.ts";

/** A changeover by the fading of the signal must come out this far from the right one, in tolerances of 2 NM it is two. */
const TOLERANCE_NM = 2;

export const handOverPoint = {
  id: "hand-over-point",
  title: "Where to change stations?",
  skills: ["hand-over"],
  modes: ["choose", "tell"],
  answers: "quantity",
  leastSlipAnswers: 1,
  minutes: 0.6,
  draw(chance, world) {
    const drawn = drawLeg(chance, world, { lengthNm: [36, 130], altitudeFt: [2_500, 9_500] });
    if (drawn === null) return null;
    const { from, to, at } = drawn;
    const lengthNm = Math.round(drawn.lengthNm * 10) / 10;
    // Four in ten have a point on the chart, told from the station ahead.
    const charted = chance.odds(0.4);
    const aheadNm = Math.round(lengthNm * (chance.integer(30, 45) / 100));
    const leg: Leg = {
      lengthNm,
      classRadiusNm: protectedNm(from, at.altitudeFt),
      changeAtNm: charted ? lengthNm - aheadNm : null,
    };
    return {
      scene: sceneAt(world, at, {
        title: "Where to change stations?",
        ask: `You fly the ${miles(lengthNm)} from ${from.name} to ${to.name} at ${feet(at.altitudeFt)}. How far from ${from.name} do you change over to ${to.name}?`,
        covers: ["panel", "NAV1.course", "NAV2.course", "reasons", "signal"],
        receivers: [
          tunedTo("NAV1", from, stationDeg(at.facts.course)),
          tunedTo("NAV2", to, stationDeg(at.facts.course)),
        ],
      }),
      views: ["chart"],
      given: [
        { label: "Leg", value: `${from.ident} to ${to.ident}, ${miles(lengthNm)}, straight` },
        { label: "Altitude", value: feet(at.altitudeFt) },
        {
          label: `${from.ident} is protected here to`,
          value: miles(leg.classRadiusNm),
        },
        {
          label: "Changeover on the chart",
          value: charted ? `${aheadNm} NM before ${to.ident}` : "none",
        },
      ],
      tolerance: { value: TOLERANCE_NM },
      answer: (functions) => ({ kind: "quantity", value: functions.handOverNm(leg), unit: "NM" }),
      // The two distances that the receivers' stations have from the aircraft on the leg.
      check: ({ receivers: [first, second] }) => {
        if (!first?.geometry || !second?.geometry) return null;
        if (first.station?.ident !== from.ident || second.station?.ident !== to.ident) return null;
        const wholeNm = first.geometry.distanceNm + second.geometry.distanceNm;
        return { kind: "quantity", value: charted ? wholeNm - aheadNm : wholeNm / 2, unit: "NM" };
      },
      steps: () =>
        charted
          ? [
              `The chart puts the change ${aheadNm} NM before ${to.ident}: of ${miles(lengthNm)} that leaves ${miles(lengthNm - aheadNm)} from ${from.ident}.`,
            ]
          : [
              "A straight leg with no point on the chart: change in the middle, where both stations are as near.",
              `Half of ${miles(lengthNm)} is ${miles(lengthNm / 2)}.`,
            ],
      ghost: (answer) =>
        answer.kind === "quantity"
          ? ghostAtDistance(world, at, {
              name: from.name,
              azimuth: drawn.track,
              distanceNm: answer.value,
            })
          : null,
    };
  },
} as const satisfies Form;
