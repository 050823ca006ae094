/** A true track off the chart, today's variation and the wind: which heading by the compass? */

import { magneticDeg, magneticFromTrue, threeDigits, trueDeg } from "../../earth/index.ts";
import type { Form } from "../form.ts";
import { TRUTH } from "../functions.ts";
import { CALM, drawSpot, sceneAt, stand } from "../stand.ts";
import { ghostFlown } from "./ghosts-flown.ts";
import { headingThatTracks } from "./second-way.ts";
import { airspeedGiven, drawWind, leanPhrase, northsGiven, truePhrase, windGiven } from "./winds.ts";

export const planHeading = {
  id: "plan-heading",
  title: "Which heading by the compass?",
  skills: ["north-to-north", "station-north", "plan-a-radio-leg"],
  modes: ["choose", "tell"],
  answers: "direction",
  leastSlipAnswers: 2,
  minutes: 1.2,
  draw(chance, world) {
    const spot = drawSpot(chance, world.beacons, { distanceNm: [6, 20] });
    if (spot === null) return null;
    const wind = chance.odds(0.6) ? drawWind(chance) : CALM;
    const track = trueDeg(chance.integer(1, 360));
    const at = stand(world, { ...spot, courseDeg: spot.radialDeg, headingDeg: track, wind });
    const { facts, station } = at;
    const calm = wind.speedKt === 0;
    const leanDeg = TRUTH.windCorrectionDeg(track, facts);
    return {
      scene: sceneAt(world, at, {
        title: "Which heading by the compass?",
        ask: `Your next track is ${truePhrase(track)} on the chart. Which magnetic heading do you plan?`,
        covers: ["heading", "NAV1", "panel", "reasons", "signal"],
      }),
      views: ["chart"],
      given: [
        { label: "Track", value: truePhrase(track) },
        calm ? { label: "Wind", value: "calm" } : windGiven(facts),
        airspeedGiven(facts),
        ...northsGiven(facts, station.ident),
      ],
      tolerance: { deg: 1 },
      answer: (functions) => ({ kind: "direction", deg: functions.planHeading(track, facts) }),
      check: ({ variationDeg, scene }) => {
        const held = headingThatTracks(track, scene.aircraft.tasKt, scene.wind);
        return held && { kind: "direction", deg: magneticFromTrue(held.heading, variationDeg) };
      },
      steps: () => {
        const size = Math.abs(facts.variationDeg).toFixed(1);
        const west = facts.variationDeg < 0;
        return [
          calm
            ? `Without wind the true heading is the track, ${threeDigits(track)}.`
            : `The wind asks for ${leanPhrase(leanDeg)}: true heading ${threeDigits(track + leanDeg)}.`,
          `The compass follows today's variation, ${size} ${west ? "west: add it" : "east: take it away"}. The station's own figure is for its radials.`,
          `Heading ${threeDigits(TRUTH.planHeading(track, facts))}.`,
        ];
      },
      ghost: (answer) =>
        answer.kind === "direction" ? ghostFlown(world, at, magneticDeg(answer.deg)) : null,
    };
  },
} as const satisfies Form;
