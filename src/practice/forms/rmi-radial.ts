/** A pointer on a compass card is shown: on which radial are you? */

import { reciprocal, stationDeg, threeDigits, wrap180 } from "../../earth/index.ts";
import type { Form } from "../form.ts";
import { physicalRadial } from "../functions.ts";
import { drawSpot, isReceived, sceneAt, stand, tunedTo } from "../stand.ts";
import { ghostOnRadial } from "./ghosts.ts";

export const rmiRadial = {
  id: "rmi-radial",
  title: "Which radial, by the pointer?",
  skills: ["pointer-panel", "reciprocal-at-sight"],
  modes: ["choose", "tell"],
  answers: "direction",
  leastSlipAnswers: 1,
  minutes: 0.5,
  draw(chance, world) {
    const spot = drawSpot(chance, world.beacons);
    if (spot === null) return null;
    const headingDeg = chance.integer(1, 360);
    const noseOffDeg = Math.abs(wrap180(spot.radialDeg - headingDeg));
    // Heading and radial must be told apart, either way round.
    if (Math.min(noseOffDeg, 180 - noseOffDeg) < 15) return null;
    const at = stand(world, { ...spot, courseDeg: chance.integer(1, 360), headingDeg });
    const { facts, station } = at;
    const head = reciprocal(physicalRadial(facts));
    return {
      scene: sceneAt(world, at, {
        title: "Which radial, by the pointer?",
        ask: `The pointer of NAV1 stands as shown. On which radial of ${station.name} are you?`,
        covers: ["chart", "reasons", "signal"],
        receivers: [tunedTo("NAV1", station, facts.course, "rmi")],
      }),
      views: ["panel"],
      given: [],
      tolerance: { deg: 2 },
      also: [facts.heading, facts.heading + 180].map((deg) => ({
        kind: "direction",
        deg: stationDeg(deg),
      })),
      answer: (functions) => ({ kind: "direction", deg: functions.rmiRadial(head, facts) }),
      check: ({ receivers: [reading] }) =>
        isReceived(reading, station) && reading.radial !== null
          ? { kind: "direction", deg: reading.radial }
          : null,
      steps: () => [
        `The pointer's head stands at ${threeDigits(head)}: that is the bearing to ${station.name}.`,
        `Its tail stands at ${threeDigits(head + 180)}: that is the radial, counted outward.`,
      ],
      ghost: (answer) =>
        answer.kind === "direction" ? ghostOnRadial(world, at, stationDeg(answer.deg)) : null,
    };
  },
} as const satisfies Form;
