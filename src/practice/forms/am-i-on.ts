/** A needle in the middle: centred, or parked without a signal? */

import { threeDigits } from "../../earth/index.ts";
import type { Health } from "../facts.ts";
import type { Form } from "../form.ts";
import { physicalNeedleDeg } from "../functions.ts";
import { drawSpot, isReceived, sceneAt, stand } from "../stand.ts";
import { withStatus } from "./altered.ts";
import { dotsPhrase } from "./phrases.ts";

const WORDS = { yes: "on the course", no: "off the course", "cannot tell": "cannot tell" } as const;

export const amIOn = {
  id: "am-i-on",
  title: "Are you on the course?",
  skills: ["signal-health"],
  modes: ["choose", "tell"],
  answers: "word",
  leastSlipAnswers: 0,
  minutes: 0.4,
  draw(chance, world) {
    const spot = drawSpot(chance, world.beacons);
    if (spot === null) return null;
    const signalValid = chance.odds(0.4);
    const offDeg = signalValid && chance.odds(0.5) ? chance.pick([4, 6, 8]) * chance.pick([-1, 1]) : 0;
    const at = stand(world, {
      ...spot,
      courseDeg: (chance.odds(0.5) ? 0 : 180) + spot.radialDeg + offDeg,
      headingDeg: chance.integer(1, 360),
    });
    const { facts, station } = at;
    const course = threeDigits(facts.course);
    const health: Health = {
      signalValid,
      identHeard: signalValid ? station.ident : null,
      identWanted: station.ident,
      needleDeg: signalValid ? physicalNeedleDeg(facts) : 0,
    };
    const scene = sceneAt(world, at, {
      title: "Are you on the course?",
      ask: `You have selected ${course} on ${station.name}. Are you on that course?`,
      covers: ["chart", "NAV1.ident", "NAV1.dme", "reasons", "signal"],
    });
    return {
      scene: signalValid ? scene : { ...scene, stations: withStatus(world, station.ident, "silent") },
      views: ["panel"],
      given: [],
      tolerance: {},
      words: Object.values(WORDS),
      answer: (functions) => ({ kind: "word", word: WORDS[functions.onCourse(health)] }),
      check: ({ receivers: [reading] }) => {
        if (isReceived(reading, station))
          return { kind: "word", word: reading.needleSide === "centre" ? WORDS.yes : WORDS.no };
        // Ground may hide a station that works: then the case is not the one drawn.
        return signalValid ? null : { kind: "word", word: WORDS["cannot tell"] };
      },
      steps: () =>
        signalValid
          ? [
              "First the flag: TO or FROM is up, so the needle lives.",
              `Then the needle: ${dotsPhrase(health.needleDeg)}. ${offDeg === 0 ? "You are on the course." : "You are off the course."}`,
            ]
          : [
              "First the flag: it says OFF, there is no signal.",
              "A needle without a signal parks in the middle: it says nothing about where you are.",
            ],
      ghost: () => null,
    };
  },
} as const satisfies Form;
