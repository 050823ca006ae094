/** A pointer on a compass card, and the selector is turned: where does the pointer's head stand then? */

import { stationDeg, threeDigits, wrap180 } from "../../earth/index.ts";
import type { Form } from "../form.ts";
import { physicalRadial } from "../functions.ts";
import { drawSpot, isReceived, sceneAt, stand, tunedTo } from "../stand.ts";
import { ghostOnRadial } from "./ghosts.ts";

export const rmiAfterTwist = {
  id: "rmi-after-twist",
  title: "The pointer after a twist",
  skills: ["pointer-panel"],
  modes: ["choose", "tell"],
  answers: "direction",
  leastSlipAnswers: 1,
  minutes: 0.5,
  draw(chance, world) {
    const spot = drawSpot(chance, world.beacons);
    if (spot === null) return null;
    const before = stationDeg(chance.integer(1, 360));
    const twistDeg = chance.integer(2, 12) * 10 * chance.pick([-1, 1]);
    const after = stationDeg(before + twistDeg);
    const bearingDeg = spot.radialDeg + 180;
    // The pointer must not happen to stand where the selector does, nor at its other end.
    const awayDeg = Math.abs(wrap180(after - bearingDeg));
    if (awayDeg < 10 || awayDeg > 170) return null;
    const at = stand(world, { ...spot, courseDeg: before, headingDeg: chance.integer(1, 360) });
    const twisted = stand(world, { ...spot, courseDeg: after, headingDeg: at.facts.heading });
    const { station } = at;
    const heard = [tunedTo("NAV1", station, after, "rmi")];
    return {
      scene: sceneAt(world, at, {
        title: "The pointer after a twist",
        ask: `The selector of NAV1 stood at ${threeDigits(before)}. You turn it to ${threeDigits(after)}. To which number on the card does the pointer's head point then?`,
        covers: ["chart", "reasons", "signal"],
        receivers: [tunedTo("NAV1", station, before, "rmi")],
      }),
      views: ["panel"],
      given: [{ label: "Selector", value: `from ${threeDigits(before)} to ${threeDigits(after)}` }],
      tolerance: { deg: 2 },
      also: [spot.radialDeg, bearingDeg + twistDeg].map((deg) => ({
        kind: "direction",
        deg: stationDeg(deg),
      })),
      answer: (functions) => ({ kind: "direction", deg: functions.rmiHead(twisted.facts) }),
      check: ({ scene }) => {
        const [reading] = world.resolve({ ...scene, receivers: heard }).receivers;
        return isReceived(reading, station) && reading.rmiPointerRelativeDeg !== null
          ? { kind: "direction", deg: stationDeg(reading.heading + reading.rmiPointerRelativeDeg) }
          : null;
      },
      steps: () => [
        "The pointer is driven by the bearing that the receiver measures; the selector has no part in it.",
        `You have not moved, on the ${threeDigits(physicalRadial(at.facts))} radial: the head stays at ${threeDigits(bearingDeg)}.`,
      ],
      ghost: (answer) => {
        if (answer.kind !== "direction") return null;
        const ghost = ghostOnRadial(world, at, stationDeg(answer.deg + 180));
        return {
          ...ghost,
          says: `The pointer's head would stand at ${threeDigits(answer.deg)} if you were here, on another radial.`,
        };
      },
    };
  },
} as const satisfies Form;
