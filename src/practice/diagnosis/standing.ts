/** What may be said of a slip in words. Percentages stay inside. The limits are our own judgement. */

import { type Belief, slipBeliefs, unsettledBelief } from "./belief.ts";
import { fires, type ItemAnswer, type ItemEvidence, isRight } from "./item-evidence.ts";

const LIKELY_FROM = 0.7;
const MAYBE_FROM = 0.35;
const GUESSING_FROM = 0.5;
const CLEARED_TO = 0.05;
const CLEARED_RIGHTS = 2;
const CLEARED_FORMS = 2;

/** "open": too little is known, or too little has been asked to call it cleared. */
export type SlipStanding = "likely" | "maybe" | "open" | "cleared";

export interface AnsweredItem<Slip extends string = string> {
  readonly form: string;
  /** As it was shown. */
  readonly item: ItemEvidence<Slip>;
  readonly answer: ItemAnswer;
}

export type Standing<Slip extends string = string> =
  /** Name no slip; go back one skill. */
  | { readonly kind: "just-guessing" }
  /** In the scope's order. */
  | {
      readonly kind: "slips";
      readonly slips: readonly { readonly slip: Slip; readonly standing: SlipStanding }[];
    };

/** Where the learner stands with every slip of the scope, or that he is just guessing. `history`: all he has answered. */
export function standing<Slip extends string>(
  belief: Belief<Slip>,
  history: readonly AnsweredItem<Slip>[],
): Standing<Slip> {
  if (unsettledBelief(belief) >= GUESSING_FROM) return { kind: "just-guessing" };
  const beliefs = slipBeliefs(belief);
  const slips = belief.space.slips.map((slip, place) => {
    const held = beliefs[place] ?? 0;
    return { slip, standing: inWords(held, () => isAskedEnough(slip, history)) };
  });
  return { kind: "slips", slips };
}

function inWords(held: number, askedEnough: () => boolean): SlipStanding {
  if (held >= LIKELY_FROM) return "likely";
  if (held >= MAYBE_FROM) return "maybe";
  return held <= CLEARED_TO && askedEnough() ? "cleared" : "open";
}

/** Two rights in two forms, on items on which the slip would have been wrong. */
function isAskedEnough<Slip extends string>(slip: Slip, history: readonly AnsweredItem<Slip>[]): boolean {
  const rights = history.filter(({ item, answer }) => isRight(answer) && fires(item, slip));
  return rights.length >= CLEARED_RIGHTS && new Set(rights.map(({ form }) => form)).size >= CLEARED_FORMS;
}
