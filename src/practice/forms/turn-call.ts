/** The chart is covered; the panel and the heading are shown: which way do you turn to reach the line? */

import { threeDigits } from "../../earth/index.ts";
import type { Form } from "../form.ts";
import { handOf, isOpposed, physicalNeedleDeg } from "../functions.ts";
import { isReceived, sceneAt } from "../stand.ts";
import { drawBesideLine, ghostTurned, TURN_WORDS, turnTowardLine } from "./beside-line.ts";
import { dotsPhrase } from "./phrases.ts";

export const turnCall = {
  id: "turn-call",
  title: "Which way to the line?",
  skills: ["backwards-needle", "cut-the-line"],
  modes: ["choose"],
  answers: "word",
  leastSlipAnswers: 1,
  minutes: 0.6,
  draw(chance, world) {
    const at = drawBesideLine(chance, world);
    if (at === null) return null;
    const { facts, station } = at;
    const needleDeg = Math.round(physicalNeedleDeg(facts));
    const opposed = isOpposed(facts);
    return {
      scene: sceneAt(world, at, {
        title: "Which way to the line?",
        ask: `You want to reach the line of course ${threeDigits(facts.course)}. From your present heading, which way do you turn toward it?`,
        covers: ["chart", "reasons", "signal"],
      }),
      views: ["panel"],
      given: [{ label: "Heading", value: threeDigits(facts.heading) }],
      tolerance: {},
      words: TURN_WORDS,
      answer: (functions) => ({ kind: "word", word: `turn ${functions.lineHand(facts)}` }),
      check: (situation) => (isReceived(situation.receivers[0], station) ? turnTowardLine(situation) : null),
      steps: () => [
        `The needle stands ${dotsPhrase(needleDeg)}: facing along ${threeDigits(facts.course)}, the line is to the ${handOf(needleDeg)}.`,
        opposed
          ? `You fly ${threeDigits(facts.heading)}, against the course, so the line is to your ${handOf(-needleDeg)}: turn ${handOf(-needleDeg)}.`
          : `You fly ${threeDigits(facts.heading)}, along the course, so the line is to your ${handOf(needleDeg)}: turn ${handOf(needleDeg)}.`,
      ],
      ghost: (answer) => (answer.kind === "word" ? ghostTurned(world, at, answer.word) : null),
    };
  },
} as const satisfies Form;
