/** DME and height are shown, the chart is covered: how far is the station on the ground? */

import type { Form } from "../form.ts";
import { TRUTH } from "../functions.ts";
import { sceneAt } from "../stand.ts";
import { ghostAtDistance } from "./ghosts-flown.ts";
import { drawSlantStand, heightStep, heightsGiven } from "./slant-spot.ts";

/** The reading's last figure is a tenth: near overhead that may be more on the ground than an answer is allowed to be out. */
const MOST_BY_ROUNDING_NM = 0.1;

export const groundRange = {
  id: "ground-range",
  title: "How far on the ground?",
  skills: ["slant-to-ground"],
  modes: ["choose", "tell"],
  answers: "quantity",
  leastSlipAnswers: 2,
  minutes: 1.2,
  draw(chance, world) {
    const at = drawSlantStand(chance, world);
    if (at === null) return null;
    const { facts, station } = at;
    const slantNm = TRUTH.slantNm(facts.distanceNm, facts.heightNm);
    const shownNm = Math.round(slantNm * 10) / 10;
    const fromShownNm = TRUTH.groundNm(shownNm, facts.heightNm);
    if (Math.abs(fromShownNm - facts.distanceNm) > MOST_BY_ROUNDING_NM) return null;
    return {
      scene: sceneAt(world, at, {
        title: "How far on the ground?",
        ask: `Your DME on ${station.name} reads ${shownNm.toFixed(1)}. How far is the station along the ground?`,
        covers: ["chart", "reasons", "signal"],
      }),
      views: ["panel"],
      given: [{ label: "DME", value: `${shownNm.toFixed(1)} NM` }, ...heightsGiven(at)],
      tolerance: { value: 0.2 },
      answer: (functions) => ({
        kind: "quantity",
        value: functions.groundNm(slantNm, facts.heightNm),
        unit: "NM",
      }),
      check: ({ receivers: [reading] }) =>
        reading?.geometry && reading.dme !== null && reading.station?.ident === station.ident
          ? { kind: "quantity", value: reading.geometry.distanceNm, unit: "NM" }
          : null,
      steps: () => [
        heightStep(at),
        `Slant, height and ground make a right triangle: ${shownNm.toFixed(1)} squared less ${facts.heightNm.toFixed(2)} squared is ${(shownNm ** 2 - facts.heightNm ** 2).toFixed(2)}.`,
        `Its root is ${fromShownNm.toFixed(1)} NM along the ground.`,
      ],
      ghost: (answer) =>
        answer.kind === "quantity"
          ? ghostAtDistance(world, at, {
              name: station.name,
              azimuth: facts.azimuth,
              distanceNm: answer.value,
            })
          : null,
    };
  },
} as const satisfies Form;
