/** The flag is covered; the chart and the course are shown: TO or FROM? */

import { wrap180 } from "../../earth/index.ts";
import type { Form } from "../form.ts";
import { physicalNeedleDeg, physicalRadial } from "../functions.ts";
import { drawCourse, drawSpot, isClearCut, isReceived, sceneAt, stand } from "../stand.ts";
import { drawHeading } from "./draw-heading.ts";
import { ghostPanel } from "./ghosts.ts";
import { needleOf } from "./panel-answer.ts";
import { flagStep } from "./phrases.ts";

const WORDS = ["TO", "FROM"] as const;
/** The heading must be neither helpful nor misleading by a hair, degrees. */
const CLEAR_OF_WING_DEG = 12;

export const flagForecast = {
  id: "flag-forecast",
  title: "TO or FROM?",
  skills: ["to-from-halves"],
  modes: ["choose"],
  answers: "word",
  // Were every heading misleading, "the other of what the nose says" would be right each time.
  leastSlipAnswers: 0,
  minutes: 0.4,
  draw(chance, world) {
    const spot = drawSpot(chance, world.beacons);
    if (spot === null) return null;
    const courseDeg = chance.odds(0.5) ? drawCourse(chance, spot.radialDeg, 60) : chance.integer(1, 360);
    const headingDeg = drawHeading(chance, { radialDeg: spot.radialDeg, courseDeg }, chance.odds(0.4));
    const at = stand(world, { ...spot, courseDeg, headingDeg });
    const { facts, station } = at;
    const noseDeg = Math.abs(wrap180(physicalRadial(facts) - facts.heading));
    if (!isClearCut(facts) || Math.abs(noseDeg - 90) < CLEAR_OF_WING_DEG) return null;
    return {
      scene: sceneAt(world, at, {
        title: "TO or FROM?",
        ask: `NAV1 receives ${station.name}. Which flag shows?`,
        covers: ["NAV1.needle", "NAV1.flag", "reasons", "signal"],
      }),
      views: ["chart", "panel"],
      given: [],
      tolerance: {},
      words: WORDS,
      answer: (functions) => ({ kind: "word", word: functions.flag(facts) }),
      check: ({ receivers: [reading] }) =>
        isReceived(reading, station) && reading.flag !== "OFF" ? { kind: "word", word: reading.flag } : null,
      steps: () => [flagStep(facts), "The heading has no part in it."],
      ghost: (answer) =>
        answer.kind === "word" && (answer.word === "TO" || answer.word === "FROM")
          ? ghostPanel(world, at, {
              kind: "panel",
              flag: answer.word,
              needle: needleOf(physicalNeedleDeg(facts)),
            })
          : null,
    };
  },
} as const satisfies Form;
