/** Course, needle and flag are covered; the chart is shown: which course centres the needle with TO? */

import { stationDeg, threeDigits, trueDeg } from "../../earth/index.ts";
import type { Form } from "../form.ts";
import { physicalRadial } from "../functions.ts";
import { drawSpot, isReceived, sceneAt, stand, tunedTo } from "../stand.ts";
import { ghostOnCourse } from "./ghosts.ts";

/** Reciprocals go wrong by a ten or by a hundred. */
const CARRY_DEG = [20, 100];

export const centreCourse = {
  id: "centre-course",
  title: "Centre it with TO",
  skills: ["reciprocal-at-sight", "centre-and-read"],
  modes: ["choose", "tell"],
  answers: "direction",
  leastSlipAnswers: 1,
  minutes: 0.4,
  draw(chance, world) {
    const spot = drawSpot(chance, world.beacons);
    if (spot === null) return null;
    const at = stand(world, {
      ...spot,
      courseDeg: chance.integer(1, 360),
      headingDeg: chance.integer(1, 360),
    });
    const { facts, station } = at;
    const radial = physicalRadial(facts);
    // The radial is read off the rose: no north is left to be changed.
    const onTheRose = { ...facts, azimuth: trueDeg(radial), declinationDeg: 0, variationDeg: 0 };
    const carryDeg = chance.pick(CARRY_DEG) * chance.pick([-1, 1]);
    return {
      scene: sceneAt(world, at, {
        title: "Centre it with TO",
        ask: `You are on the ${threeDigits(radial)} radial of ${station.name}. Which course centres the needle with the flag at TO?`,
        covers: ["NAV1.course", "NAV1.needle", "NAV1.flag", "reasons", "signal"],
      }),
      views: ["chart", "panel"],
      given: [{ label: "Radial", value: `${threeDigits(radial)} of ${station.ident}` }],
      tolerance: { deg: 2 },
      // Each end of the line with the same slip of the pen, so that none looks the odd one.
      also: [radial + carryDeg, radial + 180 + carryDeg].map((deg) => ({
        kind: "direction",
        deg: stationDeg(deg),
      })),
      answer: (functions) => ({ kind: "direction", deg: functions.bearingTo(onTheRose) }),
      check: ({ scene }) => {
        const [reading] = world.resolve(scene).receivers;
        if (!isReceived(reading, station) || reading.bearingTo === null) return null;
        const set = [tunedTo("NAV1", station, reading.bearingTo)];
        const [centred] = world.resolve({ ...scene, receivers: set }).receivers;
        return centred?.needleSide === "centre" && centred.flag === "TO"
          ? { kind: "direction", deg: reading.bearingTo }
          : null;
      },
      steps: () => [
        `${threeDigits(radial)} selected would centre the needle too, with FROM: it leads away from ${station.name}.`,
        `TO wants the course that leads in, its reciprocal: ${threeDigits(radial + 180)}.`,
      ],
      ghost: (answer) =>
        answer.kind === "direction" ? ghostOnCourse(world, at, stationDeg(answer.deg)) : null,
    };
  },
} as const satisfies Form;
