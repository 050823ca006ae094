/** The needle has centred on the first correction, the heading of the next is asked. */

import {
  magneticDeg,
  stationDeg,
  threeDigits,
  trueDeg,
  trueFromStation,
  turnBetween,
  turned,
  type Wind,
} from "../../earth/index.ts";
import type { Form } from "../form.ts";
import { TRUTH } from "../functions.ts";
import { drawSpot, isReceived, sceneAt, stand, TAS_KT } from "../stand.ts";
import { ghostFlown } from "./ghosts-flown.ts";
import { headingThatTracks } from "./second-way.ts";
import { northsAgree } from "./winds.ts";

const RAD = Math.PI / 180;

export const nextCut = {
  id: "next-cut",
  title: "Which heading next?",
  skills: ["bracket-the-wind"],
  modes: ["choose", "tell"],
  answers: "direction",
  leastSlipAnswers: 2,
  minutes: 0.7,
  draw(chance, world) {
    const spot = drawSpot(chance, world.beacons, { distanceNm: [10, 45] });
    if (spot === null) return null;
    const inbound = chance.odds(0.6);
    const side = chance.pick([-1, 1] as const);
    const cutDeg = chance.pick([20, 30]);
    const courseDeg = inbound ? spot.radialDeg + 180 : spot.radialDeg;
    // A wind that half the cut holds against, as the bracket supposes; the learner is not told of it.
    const along = trueFromStation(stationDeg(courseDeg), spot.station.declinationDeg);
    const wind: Wind = {
      from: trueDeg(Math.round(along + side * 90)),
      speedKt: Math.round(TAS_KT * Math.sin((cutDeg / 2) * RAD)),
    };
    const at = stand(world, { ...spot, courseDeg, headingDeg: courseDeg + side * cutDeg, wind });
    const { facts, station } = at;
    if (!northsAgree(facts)) return null;
    const course = threeDigits(facts.course);
    const cut = { side, deg: cutDeg };
    return {
      scene: sceneAt(world, at, {
        title: "Which heading next?",
        ask: `You drifted off course ${course} ${inbound ? "to" : "from"} ${station.name} and turned to ${threeDigits(facts.heading)} to get back. Now the needle is centred again. Which heading do you try next?`,
        covers: ["NAV1.dme", "reasons", "signal"],
      }),
      views: ["panel"],
      given: [
        { label: "Course", value: course },
        { label: "First correction", value: `${cutDeg} degrees ${side > 0 ? "right" : "left"}` },
      ],
      tolerance: { deg: 5 },
      answer: (functions) => ({ kind: "direction", deg: functions.nextCut(cut, facts) }),
      // The lean that holds the line in the scene's own wind, laid on the course as the card has it.
      check: ({ scene, receivers: [reading] }) => {
        if (!isReceived(reading, station) || reading.needleSide !== "centre") return null;
        const held = headingThatTracks(along, scene.aircraft.tasKt, scene.wind);
        return (
          held && {
            kind: "direction",
            deg: turned(reading.settings.course, turnBetween(along, held.heading)),
          }
        );
      },
      steps: () => [
        `${threeDigits(facts.heading)} is ${cutDeg} degrees ${side > 0 ? "right" : "left"} of the course and brought you back: kept, it would carry you through to the other side.`,
        `The course itself, ${course}, let you drift off. Take half: ${cutDeg / 2} degrees, heading ${threeDigits(TRUTH.nextCut(cut, facts))}.`,
      ],
      ghost: (answer) =>
        answer.kind === "direction" ? ghostFlown(world, at, magneticDeg(answer.deg)) : null,
    };
  },
} as const satisfies Form;
