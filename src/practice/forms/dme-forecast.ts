/** Place and height are shown, the DME is covered: what does it read? */

import type { Form } from "../form.ts";
import { TRUTH } from "../functions.ts";
import { sceneAt } from "../stand.ts";
import { drawSlantStand, heightStep, heightsGiven } from "./slant-spot.ts";

export const dmeForecast = {
  id: "dme-forecast",
  title: "What does the DME read?",
  skills: ["slant-to-ground"],
  modes: ["choose", "tell"],
  answers: "quantity",
  leastSlipAnswers: 2,
  minutes: 1,
  draw(chance, world) {
    const at = drawSlantStand(chance, world);
    if (at === null) return null;
    const { facts, station } = at;
    const groundText = facts.distanceNm.toFixed(1);
    return {
      scene: sceneAt(world, at, {
        title: "What does the DME read?",
        ask: `You are ${groundText} NM from ${station.name} on the chart. What does the DME read?`,
        covers: ["NAV1.dme", "reasons", "signal"],
      }),
      views: ["chart", "panel"],
      given: [{ label: "On the chart", value: `${groundText} NM` }, ...heightsGiven(at)],
      tolerance: { value: 0.2 },
      answer: (functions) => ({
        kind: "quantity",
        value: functions.slantNm(facts.distanceNm, facts.heightNm),
        unit: "NM",
      }),
      check: ({ receivers: [reading] }) =>
        reading?.dme && reading.station?.ident === station.ident
          ? { kind: "quantity", value: reading.dme.distanceNm, unit: "NM" }
          : null,
      steps: () => [
        heightStep(at),
        `The DME measures the slant: ${groundText} squared and ${facts.heightNm.toFixed(2)} squared make ${(facts.distanceNm ** 2 + facts.heightNm ** 2).toFixed(2)}.`,
        `Its root is ${TRUTH.slantNm(facts.distanceNm, facts.heightNm).toFixed(1)} NM.`,
      ],
      ghost: () => null,
    };
  },
} as const satisfies Form;
