/** The clock is covered: what is the groundspeed along this course in this wind? */

import { magneticDeg, threeDigits, wrap180 } from "../../earth/index.ts";
import type { Form } from "../form.ts";
import { courseTrue, TRUTH } from "../functions.ts";
import { drawSpot, isReceived, sceneAt, stand } from "../stand.ts";
import { ghostAlong } from "./ghosts-flown.ts";
import { airspeedGiven, drawWind, leanPhrase, truePhrase, windGiven } from "./winds.ts";

const LEAST_ALONG_KT = 8;

export const groundSpeed = {
  id: "ground-speed",
  title: "How fast over the ground?",
  skills: ["read-the-wind"],
  modes: ["choose", "tell"],
  answers: "quantity",
  leastSlipAnswers: 1,
  minutes: 1.2,
  draw(chance, world) {
    const spot = drawSpot(chance, world.beacons, { distanceNm: [10, 45] });
    if (spot === null) return null;
    const inbound = chance.odds(0.6);
    const courseDeg = inbound ? spot.radialDeg + 180 : spot.radialDeg;
    const wind = drawWind(chance);
    const drawn = stand(world, { ...spot, courseDeg, headingDeg: courseDeg, wind });
    const track = courseTrue(drawn.facts);
    const headwindKt = wind.speedKt * Math.cos((wrap180(wind.from - track) * Math.PI) / 180);
    if (Math.abs(headwindKt) < LEAST_ALONG_KT) return null;
    // It flies the heading that holds the line, to the degree.
    const heading = magneticDeg(Math.round(TRUTH.trackHeading(drawn.facts)));
    const facts = { ...drawn.facts, heading };
    const at = { ...drawn, facts };
    const { station } = at;
    const course = threeDigits(facts.course);
    return {
      scene: sceneAt(world, at, {
        title: "How fast over the ground?",
        ask: `You hold course ${course} ${inbound ? "to" : "from"} ${station.name}, ${truePhrase(track)} on the chart. What is your groundspeed?`,
        covers: ["NAV1.dme", "reasons", "signal"],
      }),
      views: ["chart", "panel"],
      given: [windGiven(facts), airspeedGiven(facts), { label: "True course", value: threeDigits(track) }],
      tolerance: { value: 5 },
      answer: (functions) => ({
        kind: "quantity",
        value: functions.groundspeedKt(track, facts),
        unit: "kt",
      }),
      check: ({ groundspeedKt, receivers: [reading] }) =>
        isReceived(reading, station) ? { kind: "quantity", value: groundspeedKt, unit: "kt" } : null,
      steps: () => {
        const leanDeg = TRUTH.windCorrectionDeg(track, facts);
        const size = Math.round(Math.abs(headwindKt));
        return [
          `The wind comes from ${threeDigits(wind.from)}, ${Math.round(Math.abs(wrap180(wind.from - track)))} degrees from your track ${threeDigits(track)}: ${size} kt ${headwindKt > 0 ? "against you" : "behind you"}.`,
          `Leaning ${leanPhrase(leanDeg)} leaves ${Math.round(facts.tasKt * Math.cos((leanDeg * Math.PI) / 180))} of ${facts.tasKt} kt along the track.`,
          `${headwindKt > 0 ? "Less" : "Plus"} ${size} kt: ${Math.round(TRUTH.groundspeedKt(track, facts))} kt over the ground.`,
        ];
      },
      ghost: (answer) => (answer.kind === "quantity" ? ghostAlong(world, at, track, answer.value) : null),
    };
  },
} as const satisfies Form;
