/**
 * A learner made up to try the diagnosis on: he holds certain slips, and answers by them, by carelessness or by guess. Where two of his
 * slips fire at once he may answer as someone does who holds both in one head, which the model of diagnosis does not know.
 */

import type { Chance } from "../chance.ts";
import type { SlipOption } from "./item-evidence.ts";
import type { Candidate } from "./next-problem.ts";

/** A problem that can also be answered under several slips together. */
export interface SimulatedProblem<Slip extends string = string> extends Candidate<Slip> {
  /** The option of someone who holds all of these at once: 0 when they cancel and he is right. */
  composedOption(slips: readonly Slip[]): SlipOption;
}

export type SimulatedLearner<Slip extends string = string> =
  /** Picks any option. */
  | { readonly kind: "guesser" }
  | {
      readonly kind: "settled";
      readonly slips: readonly Slip[];
      /** Share of items on which he follows a slip that fires, 0..1. */
      readonly followsSlip: number;
      /** Share wrong where none fires, 0..1. */
      readonly careless: number;
      /** Share of blind guesses where a slip fires that he does not follow, 0..1. */
      readonly guesses: number;
      /** Share of the items on which several of his slips fire that he answers by all of them together, 0..1. */
      readonly composes: number;
    };

/** The option that the learner picks, as chance has it. */
export function simulatedPick<Slip extends string>(
  learner: SimulatedLearner<Slip>,
  problem: SimulatedProblem<Slip>,
  luck: Chance,
): number {
  const { optionCount, slipOptions } = problem.item;
  const any = () => luck.integer(0, optionCount - 1);
  if (learner.kind === "guesser") return any();
  const wrong = () => luck.integer(1, optionCount - 1);
  const fired = learner.slips.filter((slip) => slipOptions[slip] !== undefined);
  if (fired.length === 0) return luck.odds(learner.careless) ? wrong() : 0;
  if (!luck.odds(learner.followsSlip)) return luck.odds(learner.guesses) ? any() : 0;
  const composed = fired.length > 1 && luck.odds(learner.composes);
  const option: SlipOption = composed
    ? problem.composedOption(fired)
    : (slipOptions[luck.pick(fired)] ?? "not-on-offer");
  if (option !== "not-on-offer") return option;
  // Nothing he believes is among the options.
  return luck.odds(0.5) ? 0 : wrong();
}
