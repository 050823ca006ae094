/** The same question on a compass-card face: which way do you turn to reach the line? */

import { threeDigits } from "../../earth/index.ts";
import type { Form } from "../form.ts";
import { handOf, isOpposed, physicalNeedleDeg } from "../functions.ts";
import { isReceived, sceneAt, tunedTo } from "../stand.ts";
import { drawBesideLine, ghostTurned, TURN_WORDS, turnTowardLine } from "./beside-line.ts";

export const hsiTurn = {
  id: "hsi-turn",
  title: "Which way to the line, on an HSI?",
  skills: ["compass-card-panel"],
  modes: ["choose"],
  answers: "word",
  leastSlipAnswers: 1,
  minutes: 0.6,
  draw(chance, world) {
    const at = drawBesideLine(chance, world);
    if (at === null) return null;
    const { facts, station } = at;
    const opposed = isOpposed(facts);
    const needleHand = handOf(physicalNeedleDeg(facts));
    const hand = opposed ? handOf(-physicalNeedleDeg(facts)) : needleHand;
    return {
      scene: sceneAt(world, at, {
        title: "Which way to the line, on an HSI?",
        ask: `You want to reach the line of course ${threeDigits(facts.course)}. From your present heading, which way do you turn toward it?`,
        covers: ["chart", "reasons", "signal"],
        receivers: [tunedTo("NAV1", station, facts.course, "hsi")],
      }),
      views: ["panel"],
      given: [],
      tolerance: {},
      words: TURN_WORDS,
      answer: (functions) => ({ kind: "word", word: `turn ${functions.hsiHand(facts)}` }),
      check: (situation) => (isReceived(situation.receivers[0], station) ? turnTowardLine(situation) : null),
      steps: () => [
        `The pointer stands at ${threeDigits(facts.course)} on a card turned to heading ${threeDigits(facts.heading)}, and its middle part lies ${needleHand} of it, facing along the pointer.`,
        opposed
          ? `The pointer points back, so on the face the line lies to the ${hand} of the aircraft: turn ${hand}.`
          : `The pointer points ahead, so on the face the line lies to the ${hand} of the aircraft: turn ${hand}.`,
      ],
      ghost: (answer) => (answer.kind === "word" ? ghostTurned(world, at, answer.word) : null),
    };
  },
} as const satisfies Form;
