/** A clearance is spoken and the selector is covered: what is to be selected? */

import { reciprocal, stationDeg, threeDigits } from "../../earth/index.ts";
import { courseForRadial } from "../../panel/index.ts";
import type { Clearance } from "../facts.ts";
import type { Form } from "../form.ts";
import { drawSpot, isReceived, sceneAt, stand } from "../stand.ts";
import { ghostOnCourse } from "./ghosts.ts";

export const clearanceCourse = {
  id: "clearance-course",
  title: "Which course to select?",
  skills: ["in-or-out-course"],
  modes: ["choose", "tell"],
  answers: "direction",
  leastSlipAnswers: 2,
  minutes: 0.7,
  draw(chance, world) {
    const spot = drawSpot(chance, world.beacons, { distanceNm: [10, 45] });
    if (spot === null) return null;
    const offDeg = chance.integer(12, 35);
    const wanted = stationDeg(spot.radialDeg + offDeg * chance.pick([-1, 1]));
    const clearance: Clearance = {
      way: chance.odds(0.7) ? "inbound" : "outbound",
      radial: wanted,
      cutDeg: chance.pick([30, 45, 60].filter((cutDeg) => cutDeg > offDeg)),
    };
    // The selector still stands where it was used last.
    const at = stand(world, {
      ...spot,
      courseDeg: chance.integer(1, 360),
      headingDeg: chance.integer(1, 360),
    });
    const { facts, station } = at;
    return {
      scene: sceneAt(world, at, {
        title: "Which course to select?",
        ask: `You are cleared ${clearance.way} on the ${threeDigits(wanted)} radial of ${station.name}. Which course do you select?`,
        covers: ["NAV1.course", "NAV1.needle", "NAV1.flag", "reasons", "signal"],
      }),
      views: ["chart", "panel"],
      given: [
        {
          label: "Cleared",
          value: `${clearance.way} on the ${threeDigits(wanted)} radial of ${station.ident}`,
        },
        { label: "Planned cut", value: `${clearance.cutDeg} degrees` },
      ],
      tolerance: { deg: 1 },
      answer: (functions) => ({ kind: "direction", deg: functions.selector(clearance, facts) }),
      check: ({ receivers: [reading] }) =>
        isReceived(reading, station)
          ? { kind: "direction", deg: courseForRadial(wanted, clearance.way) }
          : null,
      steps: () =>
        clearance.way === "inbound"
          ? [
              `The ${threeDigits(wanted)} radial leads outward from ${station.name}.`,
              `Inbound along it you fly the other way: select ${threeDigits(reciprocal(wanted))}, and the flag will say TO.`,
            ]
          : [
              `Outbound you fly along the radial as it is numbered: select ${threeDigits(wanted)}, and the flag will say FROM.`,
            ],
      ghost: (answer) =>
        answer.kind === "direction" ? ghostOnCourse(world, at, stationDeg(answer.deg)) : null,
    };
  },
} as const satisfies Form;
