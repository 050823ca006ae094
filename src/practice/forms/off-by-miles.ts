/** The chart is covered; the panel and the distance are shown: how many miles off the course line are you? Or the other way, on an arc. */

import { stationDeg, threeDigits } from "../../earth/index.ts";
import type { Form } from "../form.ts";
import { handOf, panelShown } from "../functions.ts";
import { drawSpot, isReceived, sceneAt, stand } from "../stand.ts";
import { drawArcLead } from "./arc-lead.ts";
import { toCourseLineNm } from "./geometry.ts";
import { ghostOnRadial } from "./ghosts.ts";
import { dotsPhrase } from "./phrases.ts";

/** Share of cases that are about the lead off an arc. */
const ARCS = 0.2;
/** The one-in-sixty rule counts a radian as sixty degrees, in place of 57.3: so much of the distance itself does it give. */
const RULE_OF_DISTANCE = 180 / Math.PI / 60;

export const offByMiles = {
  id: "off-by-miles",
  title: "Degrees and miles",
  skills: ["degrees-to-miles", "dots-to-degrees", "hold-the-arc"],
  modes: ["choose", "tell"],
  answers: "quantity",
  leastSlipAnswers: 2,
  minutes: 0.8,
  draw(chance, world) {
    if (chance.odds(ARCS)) return drawArcLead(chance, world);
    const spot = drawSpot(chance, world.beacons, { distanceNm: [9, 44] });
    if (spot === null) return null;
    const needleDeg = chance.pick([3, 4, 5, 6, 7, 8]) * chance.pick([-1, 1]);
    const to = chance.odds(0.5);
    const courseDeg = to ? spot.radialDeg + 180 - needleDeg : spot.radialDeg + needleDeg;
    const at = stand(world, { ...spot, courseDeg, headingDeg: chance.integer(1, 360) });
    const { facts, station } = at;
    const panel = panelShown(facts);
    return {
      scene: sceneAt(world, at, {
        title: "Degrees and miles",
        ask: `You are ${spot.distanceNm} NM from ${station.name}. How many miles are you off the line of course ${threeDigits(facts.course)}?`,
        covers: ["chart", "reasons", "signal"],
      }),
      views: ["panel"],
      given: [{ label: `Distance from ${station.ident}`, value: `${spot.distanceNm} NM` }],
      tolerance: { value: 0.2, share: 0.1 },
      skills: ["degrees-to-miles", "dots-to-degrees"],
      answer: (functions) => ({
        kind: "quantity",
        value: functions.offNm(facts.distanceNm, functions.readNeedleDeg(panel)),
        unit: "NM",
      }),
      check: ({ receivers: [reading], scene }) => {
        if (!isReceived(reading, station)) return null;
        const offNm = toCourseLineNm(reading, scene.aircraft.position);
        return offNm === null ? null : { kind: "quantity", value: offNm * RULE_OF_DISTANCE, unit: "NM" };
      },
      steps: () => [
        `The needle stands ${dotsPhrase(needleDeg)}: two degrees to a dot.`,
        `One degree is one mile at 60 NM, so ${Math.abs(needleDeg)} degrees at ${spot.distanceNm} NM are ${spot.distanceNm} × ${Math.abs(needleDeg)} / 60 = ${((spot.distanceNm * Math.abs(needleDeg)) / 60).toFixed(1)} NM.`,
      ],
      ghost: (answer) => {
        if (answer.kind !== "quantity") return null;
        const sine = Math.min(1, answer.value / facts.distanceNm);
        const offDeg = (Math.asin(sine) * 180) / Math.PI;
        const side = handOf(needleDeg) === "right" ? 1 : -1;
        const radial = to ? facts.course + 180 + side * offDeg : facts.course - side * offDeg;
        return {
          ...ghostOnRadial(world, at, stationDeg(radial)),
          says: `By this answer you would be here, ${answer.value.toFixed(1)} NM off the line.`,
        };
      },
    };
  },
} as const satisfies Form;
