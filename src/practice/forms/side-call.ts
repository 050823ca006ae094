/** The chart is covered; needle, flag and course are shown: on which side of the course are you? */

import { threeDigits } from "../../earth/index.ts";
import type { Form } from "../form.ts";
import { handOf, physicalNeedleDeg } from "../functions.ts";
import { drawSpot, isReceived, sceneAt, stand } from "../stand.ts";
import { rightOfCourseNm } from "./geometry.ts";
import { ghostAcrossLine } from "./ghosts.ts";
import { dotsPhrase } from "./phrases.ts";

const WORDS = ["left of course", "right of course"] as const;

export const sideCall = {
  id: "side-call",
  title: "Which side of the course?",
  skills: ["side-of-line"],
  modes: ["choose"],
  answers: "word",
  leastSlipAnswers: 1,
  minutes: 0.5,
  draw(chance, world) {
    const spot = drawSpot(chance, world.beacons);
    if (spot === null) return null;
    // Southbound in seven of ten: there left of course lies right on the page.
    const courseDeg = chance.odds(0.7) ? 180 + chance.integer(-60, 60) : chance.integer(1, 360);
    const offDeg = (chance.odds(0.8) ? chance.integer(2, 9) : chance.integer(12, 60)) * chance.pick([-1, 1]);
    const radialDeg = courseDeg + offDeg + (chance.odds(0.5) ? 180 : 0);
    const at = stand(world, { ...spot, radialDeg, courseDeg, headingDeg: chance.integer(1, 360) });
    const { facts, station } = at;
    const needleDeg = Math.round(physicalNeedleDeg(facts));
    return {
      scene: sceneAt(world, at, {
        title: "Which side of the course?",
        ask: `Face along course ${threeDigits(facts.course)}. On which side of the course line are you?`,
        covers: ["chart", "reasons", "signal"],
      }),
      views: ["panel"],
      given: [],
      tolerance: {},
      words: WORDS,
      answer: (functions) => ({ kind: "word", word: `${functions.side(facts)} of course` }),
      check: ({ receivers: [reading] }) => {
        if (!isReceived(reading, station)) return null;
        const rightNm = rightOfCourseNm(reading);
        return rightNm === null ? null : { kind: "word", word: `${handOf(rightNm)} of course` };
      },
      steps: () => [
        `The needle is the line, and it stands ${dotsPhrase(needleDeg)}: facing along ${threeDigits(facts.course)}, the line is to the ${handOf(needleDeg)}.`,
        `So you are ${handOf(-needleDeg)} of course.`,
      ],
      ghost: (answer) =>
        answer.kind === "word"
          ? ghostAcrossLine(world, at, `By this answer you would be here, ${answer.word}.`)
          : null,
    };
  },
} as const satisfies Form;
