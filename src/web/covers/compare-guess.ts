/**
 * A guess beside the truth, in words: what was thought, what is so, and how they differ. No score: whoever has guessed learns which way
 * he went wrong. Says of the situation only what its scene's covers leave in sight besides the thing asked about.
 */

import { faceSentence, identWords, needleWords, panelSentence } from "../../draw/index.ts";
import { threeDigits, turned } from "../../earth/index.ts";
import type { ReceiverReading } from "../../panel/index.ts";
import { frequencyText } from "../../radio/index.ts";
import { miles } from "../../reason/index.ts";
import { type CoverTarget, parseCover, type Situation } from "../../scene/index.ts";
import { compareDirection } from "./compare-direction.ts";
import { compareNeedle } from "./compare-needle.ts";
import { comparePlace, placeWords } from "./compare-place.ts";
import { compareWords } from "./compare-words.ts";
import type { Answer, Guess } from "./guess.ts";

export interface Comparison {
  /** "2 dots left". */
  readonly guessed: string;
  /** "3 dots left"; empty where no few words say it. */
  readonly truth: string;
  /** One sentence: "The right side, 1 dot too few." */
  readonly sentence: string;
}

/** How a guess compares with a situation. Throws RangeError when the situation has no receiver of the guess's cover. */
export function compareGuess(situation: Situation, { cover, answer }: Guess): Comparison {
  const target = parseCover(cover);
  if (target === null) throw new RangeError(`${cover} is nothing that can be covered`);
  const truth = truthWords(situation, target);
  const guessed = answerWords(situation, answer);
  const compared = (sentence: string): Comparison => ({ guessed, truth, sentence });
  switch (answer.kind) {
    case "not-yet":
      return compared("You left it open; the reasons tell how it can be known.");
    case "place":
      return compared(comparePlace(situation, answer.position));
    case "needle":
      return compared(compareNeedle(readingOf(situation, target), answer.dots, situation.scene.covers));
    case "flag":
      return compared(
        truth === answer.flag ? `Right: ${truth}.` : `It says ${truth}; you said ${answer.flag}.`,
      );
    case "direction": {
      const deg = directionUnder(situation, target);
      return compared(
        deg === null ? "There is no signal, and so no pointer." : compareDirection(deg, answer.deg),
      );
    }
    case "words":
      return compared(compareWords(situation, target, answer.text));
  }
}

/** A guess in a few words. */
export function answerWords(situation: Situation, answer: Answer): string {
  switch (answer.kind) {
    case "not-yet":
      return "not yet known";
    case "place":
      return placeWords(situation, answer.position);
    case "needle":
      return dotsWords(answer.dots);
    case "flag":
      return answer.flag;
    case "direction":
      return threeDigits(answer.deg);
    case "words":
      return answer.text;
  }
}

/** Half dots in words, right positive: "2½ dots left", "centred", "full right", "no signal". */
export function dotsWords(dots: number | null): string {
  if (dots === null) return "no signal";
  if (dots === 0) return "centred";
  const side = dots < 0 ? "left" : "right";
  const size = Math.abs(dots);
  if (size >= 5) return `full ${side}`;
  const whole = Math.floor(size);
  const half = size > whole ? "½" : "";
  return `${whole === 0 ? "" : whole}${half} ${size <= 1 ? "dot" : "dots"} ${side}`;
}

/** What lies under a cover, in a few words; empty where no few words say it. */
export function truthWords(situation: Situation, target: CoverTarget): string {
  const { scene } = situation;
  switch (target.kind) {
    case "aircraft":
      return placeWords(situation, scene.aircraft.position);
    case "heading":
      return threeDigits(scene.aircraft.heading);
    case "view":
      if (target.view === "panel") return panelSentence(situation);
      return target.view === "chart" && !scene.covers.includes("aircraft")
        ? placeWords(situation, scene.aircraft.position)
        : "";
    case "receiver":
      return partWords(situation, target, readingOf(situation, target));
  }
}

function partWords(
  situation: Situation,
  target: Extract<CoverTarget, { kind: "receiver" }>,
  reading: ReceiverReading,
): string {
  const { covers } = situation.scene;
  switch (target.part) {
    case null:
      return faceSentence(reading, covers);
    case "needle": {
      if (reading.settings.face !== "rmi") return needleWords(reading, covers);
      const deg = directionUnder(situation, target);
      return deg === null ? "no pointer" : threeDigits(deg);
    }
    case "flag":
      return reading.flag;
    case "course":
      return threeDigits(reading.settings.course);
    case "dme":
      return reading.dme === null ? "no distance" : miles(reading.dme.distanceNm);
    case "ident":
      return identWords(reading.ident);
    case "frequency":
      return frequencyText(reading.settings.frequencyMhz);
  }
}

/** The direction under a cover, degrees; null where a pointer has no signal. */
function directionUnder(situation: Situation, target: CoverTarget): number | null {
  if (target.kind !== "receiver") return situation.scene.aircraft.heading;
  const reading = readingOf(situation, target);
  if (target.part === "course") return reading.settings.course;
  const relative = reading.rmiPointerRelativeDeg;
  return relative === null ? null : turned(reading.heading, relative);
}

function readingOf(situation: Situation, target: CoverTarget): ReceiverReading {
  const name = target.kind === "receiver" ? target.receiver : "";
  const reading = situation.receivers.find(({ settings }) => settings.name === name);
  if (reading === undefined) throw new RangeError(`the scene has no receiver ${name}`);
  return reading;
}
