/** A made-up learner who holds some mistaken ideas, and puts answers down as a person would: a letter to choose, or what is typed. */

import { latLonText, threeDigits } from "../src/earth/index.ts";
import {
  type Answer,
  apart,
  functionsWith,
  OPTION_LETTERS,
  type Options,
  type Problem,
  type SlipId,
  shownOrder,
  slipOf,
} from "../src/practice/index.ts";

/** What one who holds these ideas answers; the truth where they lead nowhere. */
export function answerBy(problem: Problem, slips: readonly SlipId[]): Answer {
  const functions = functionsWith(slips.map((slip) => slipOf(slip).patch));
  return problem.case.answer(functions) ?? problem.truth;
}

/** The option that says the answer; the truth where none does. */
export function optionOf(problem: Problem, options: Options, answer: Answer): number {
  const at = options.options.findIndex((option) => apart(answer, option.answer, problem.case.tolerance) <= 1);
  return Math.max(0, at);
}

/** The answer as it is put down: the option's letter, or the text that is typed. */
export function putDown(problem: Problem, options: Options | null, answer: Answer): string {
  if (options !== null)
    return OPTION_LETTERS.charAt(shownOrder(problem, options).indexOf(optionOf(problem, options, answer)));
  switch (answer.kind) {
    case "direction":
      return threeDigits(answer.deg);
    case "quantity":
      return String(Math.round(answer.value * 100) / 100);
    case "word":
      return answer.word;
    case "panel":
      return `${answer.flag === "OFF" ? "no flag" : answer.flag}, ${answer.needle}`;
    case "place":
      return latLonText(answer.position);
    case "wind":
      return `${threeDigits(answer.fromDeg)}/${Math.round(answer.speedKt)}`;
    case "row":
      return Object.entries(answer.figures)
        .map(([name, value]) =>
          name.endsWith("Deg") ? threeDigits(value) : String(Math.round(value * 10) / 10),
        )
        .join("; ");
    case "order":
      return answer.items.join("");
  }
}
