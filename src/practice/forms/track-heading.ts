/** On the line in a wind, the heading covered: which heading holds it? */

import { magneticDeg, magneticFromTrue, reciprocal, threeDigits } from "../../earth/index.ts";
import type { Form } from "../form.ts";
import { courseTrue, TRUTH } from "../functions.ts";
import { drawSpot, isReceived, sceneAt, stand } from "../stand.ts";
import { ghostFlown } from "./ghosts-flown.ts";
import { headingThatTracks } from "./second-way.ts";
import { airspeedGiven, drawWind, leanPhrase, northsGiven, truePhrase, windGiven } from "./winds.ts";

const LEAST_CORRECTION_DEG = 4;

export const trackHeading = {
  id: "track-heading",
  title: "Which heading holds the line?",
  skills: ["bracket-the-wind", "read-the-wind"],
  modes: ["choose", "tell"],
  answers: "direction",
  leastSlipAnswers: 2,
  minutes: 1.5,
  draw(chance, world) {
    const spot = drawSpot(chance, world.beacons, { distanceNm: [10, 45] });
    if (spot === null) return null;
    const inbound = chance.odds(0.6);
    const courseDeg = inbound ? spot.radialDeg + 180 : spot.radialDeg;
    const wind = drawWind(chance);
    const at = stand(world, { ...spot, courseDeg, headingDeg: courseDeg, wind });
    const { facts, station } = at;
    const track = courseTrue(facts);
    const correctionDeg = TRUTH.windCorrectionDeg(track, facts);
    if (Math.abs(correctionDeg) < LEAST_CORRECTION_DEG) return null;
    const course = threeDigits(facts.course);
    return {
      scene: sceneAt(world, at, {
        title: "Which heading holds the line?",
        ask: `You are on course ${course} ${inbound ? "to" : "from"} ${station.name}, the needle centred. Which magnetic heading holds the line in this wind?`,
        covers: ["heading", "NAV1.dme", "reasons", "signal"],
      }),
      views: ["chart", "panel"],
      given: [windGiven(facts), airspeedGiven(facts), ...northsGiven(facts, station.ident)],
      tolerance: { deg: 3 },
      answer: (functions) => ({ kind: "direction", deg: functions.trackHeading(facts) }),
      check: ({ variationDeg, scene, receivers: [reading] }) => {
        if (!isReceived(reading, station) || reading.geometry === null) return null;
        // The line through the aircraft as the engine has it, not as the course was dialled.
        const { azimuthFromStation } = reading.geometry;
        const along = inbound ? reciprocal(azimuthFromStation) : azimuthFromStation;
        const held = headingThatTracks(along, scene.aircraft.tasKt, scene.wind);
        return held && { kind: "direction", deg: magneticFromTrue(held.heading, variationDeg) };
      },
      steps: () => [
        `Course ${course} on ${station.ident}'s north is ${truePhrase(track)} on the ground.`,
        `The wind asks for ${leanPhrase(correctionDeg)}, into it: ${truePhrase(track + correctionDeg)}.`,
        `By today's compass that is heading ${threeDigits(TRUTH.trackHeading(facts))}.`,
      ],
      ghost: (answer) =>
        answer.kind === "direction" ? ghostFlown(world, at, magneticDeg(answer.deg)) : null,
    };
  },
} as const satisfies Form;
