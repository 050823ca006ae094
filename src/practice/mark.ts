/** Marking one answer: right, wrong with the ideas that explain it, "I don't know yet", or not yet ready to be marked. */

import { type Answer, apart } from "./answer.ts";
import type { Confidence, ItemEvidence } from "./diagnosis/item-evidence.ts";
import type { Ghost } from "./form.ts";
import { type Options, slipsBehind } from "./options.ts";
import type { Problem } from "./problem.ts";
import type { SlipId } from "./slips.ts";

/** What a learner answered. */
export type Response =
  | { readonly kind: "answer"; readonly answer: Answer; readonly confidence: Confidence | null }
  | { readonly kind: "dont-know" };

export type Verdict = "right" | "wrong" | "dont-know";

export interface Marked {
  readonly verdict: Verdict;
  /** The ideas that explain a wrong answer; empty where none does. */
  readonly slips: readonly SlipId[];
  /** How the truth is reached. */
  readonly steps: readonly string[];
  /** The scene as a wrong answer has it. */
  readonly ghost: Ghost | null;
}

/** Marks a response. */
export function mark(problem: Problem, response: Response): Marked {
  const steps = problem.case.steps();
  if (response.kind === "dont-know") return { verdict: "dont-know", slips: [], steps, ghost: null };
  const { answer } = response;
  if (apart(answer, problem.truth, problem.case.tolerance) <= 1)
    return { verdict: "right", slips: [], steps, ghost: null };
  return {
    verdict: "wrong",
    slips: slipsBehind(problem, answer),
    steps,
    ghost: problem.case.ghost(answer),
  };
}

/** An item as the diagnosis sees it, and how an answer falls on it. */
export interface Evidence {
  readonly item: ItemEvidence<SlipId>;
  /** The number of an answer among the item's options; 0 is the truth. */
  pickOf(answer: Answer): number;
}

/**
 * What a problem can say about slips. `options`: those the learner was shown; null in tell mode, where every distinct answer of a slip
 * counts as an option and the last stands for all others.
 */
export function evidenceOf(problem: Problem, options: Options | null): Evidence {
  const { tolerance } = problem.case;
  const answers: Answer[] = [];
  const slipOptions: Partial<Record<SlipId, number | "not-on-offer">> = {};
  if (options !== null) {
    for (const [at, option] of options.options.entries()) {
      answers.push(option.answer);
      for (const slip of option.slips) slipOptions[slip] = at;
    }
    for (const slip of options.notOffered) slipOptions[slip] = "not-on-offer";
  } else {
    answers.push(problem.truth);
    for (const { slip, answer } of problem.slipAnswers) {
      const known = answers.findIndex((other, at) => at > 0 && apart(answer, other, tolerance) <= 1);
      slipOptions[slip] = known > 0 ? known : answers.push(answer) - 1;
    }
  }
  const other = answers.length;
  return {
    item: {
      mode: options === null ? "tell" : "choose",
      optionCount: options === null ? other + 1 : other,
      slipOptions,
    },
    pickOf: (answer) => {
      const at = answers.findIndex((option) => apart(answer, option, tolerance) <= 1);
      if (at >= 0) return at;
      if (options === null) return other;
      throw new RangeError("an answer that was not among the options");
    },
  };
}
