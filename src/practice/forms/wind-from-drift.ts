/** Heading, track and groundspeed are shown: what wind is it? */

import {
  magneticDeg,
  threeDigits,
  trackForHeading,
  trueDeg,
  trueFromMagnetic,
  turnBetween,
  windFromTriangle,
} from "../../earth/index.ts";
import { eastWest } from "../../reason/index.ts";
import { windText } from "../../scene/index.ts";
import type { Form } from "../form.ts";
import { courseTrue, TRUTH } from "../functions.ts";
import { drawSpot, isReceived, sceneAt, stand } from "../stand.ts";
import { ghostFlown } from "./ghosts-flown.ts";
import { airspeedGiven, drawWind, truePhrase } from "./winds.ts";

const LEAST_DRIFT_DEG = 4;
/** A degree of drift is nearly two knots of wind: the answer is asked no closer than whole figures allow. */
const TOLERANCE = { deg: 10, kt: 5 } as const;
const SHARE_FOR_ROUNDING = 0.7;

export const windFromDrift = {
  id: "wind-from-drift",
  title: "What wind is it?",
  skills: ["read-the-wind"],
  modes: ["choose", "tell"],
  answers: "wind",
  leastSlipAnswers: 1,
  minutes: 2,
  draw(chance, world) {
    const spot = drawSpot(chance, world.beacons, { distanceNm: [10, 45] });
    if (spot === null) return null;
    const wind = drawWind(chance);
    const inbound = chance.odds(0.5);
    const courseDeg = inbound ? spot.radialDeg + 180 : spot.radialDeg;
    const drawn = stand(world, { ...spot, courseDeg, headingDeg: courseDeg, wind });
    const heading = magneticDeg(Math.round(TRUTH.trackHeading(drawn.facts)));
    const facts = { ...drawn.facts, heading };
    const at = { ...drawn, facts };
    const { station } = at;
    const { tasKt } = facts;
    const headingTrue = trueFromMagnetic(heading, facts.variationDeg);
    const made = trackForHeading({ heading: headingTrue, tasKt, wind });
    if (made.kind !== "moving" || Math.abs(made.driftDeg) < LEAST_DRIFT_DEG) return null;
    // What the learner is told is in whole figures; the wind worked from them must still be the wind.
    const shown = {
      heading: trueDeg(Math.round(headingTrue)),
      track: trueDeg(Math.round(courseTrue(facts))),
      groundspeedKt: Math.round(made.groundspeedKt),
    };
    const worked = windFromTriangle({ ...shown, tasKt });
    if (Math.abs(turnBetween(worked.from, wind.from)) > SHARE_FOR_ROUNDING * TOLERANCE.deg) return null;
    if (Math.abs(worked.speedKt - wind.speedKt) > SHARE_FOR_ROUNDING * TOLERANCE.kt) return null;
    return {
      scene: sceneAt(world, at, {
        title: "What wind is it?",
        ask: `Heading ${threeDigits(heading)} keeps the needle centred on course ${threeDigits(facts.course)} ${inbound ? "to" : "from"} ${station.name}. Where does the wind come from, and how strong is it?`,
        covers: ["chart", "NAV1.dme", "reasons", "signal"],
      }),
      views: ["panel"],
      given: [
        { label: "Heading", value: `${threeDigits(heading)} magnetic, ${truePhrase(shown.heading)}` },
        { label: "Track", value: truePhrase(shown.track) },
        { label: "Groundspeed", value: `${shown.groundspeedKt} kt` },
        airspeedGiven(facts),
        { label: "Variation", value: eastWest(facts.variationDeg) },
      ],
      tolerance: TOLERANCE,
      answer: (functions) => ({
        kind: "wind",
        fromDeg: functions.windFrom(facts),
        speedKt: wind.speedKt,
      }),
      check: ({ headingTrue, trackTrue, groundspeedKt, receivers: [reading] }) => {
        if (!isReceived(reading, station)) return null;
        const found = windFromTriangle({ heading: headingTrue, tasKt, track: trackTrue, groundspeedKt });
        return { kind: "wind", fromDeg: found.from, speedKt: found.speedKt };
      },
      steps: () => {
        const drift = Math.round(turnBetween(shown.heading, shown.track));
        const slower = tasKt - shown.groundspeedKt;
        return [
          `Nose ${threeDigits(shown.heading)}, track ${threeDigits(shown.track)}: you drift ${Math.abs(drift)} degrees to the ${drift > 0 ? "right" : "left"}, so the wind comes from the ${drift > 0 ? "left" : "right"}.`,
          `${shown.groundspeedKt} kt over the ground from ${tasKt} kt in the air: ${slower >= 0 ? `about ${slower} kt against you` : `about ${-slower} kt behind you`}.`,
          `The side from the nose's ${tasKt} kt to the track's ${shown.groundspeedKt} kt is the wind: ${windText(wind)}.`,
        ];
      },
      ghost: (answer) =>
        answer.kind === "wind"
          ? ghostFlown(world, at, heading, { from: answer.fromDeg, speedKt: answer.speedKt })
          : null,
    };
  },
} as const satisfies Form;
