/**
 * Whether an item's options catch the slips they stand for: of the learners who hold a slip by everything else they answered, the share
 * who pick its option here.
 */

import { answerFactors, slipBeliefs } from "./belief.ts";
import { groupedBy } from "./grouped-by.ts";
import type { HypothesisSpace } from "./hypotheses.ts";
import { firingSlips, type LoggedAnswer, statisticsKey } from "./item-statistics.ts";

/** A learner counts as holding a slip from this probability on. */
const HOLDS_FROM = 0.7;
/** What an item should reach. Our own judgement. */
export const FIDELITY_EXPECTED = 0.6;

export interface SlipFidelity<Slip extends string = string> {
  /** As `statisticsKey` gives it. */
  readonly key: string;
  readonly slip: Slip;
  /** Answers by learners who hold the slip, where its option was on offer. */
  readonly holders: number;
  /** Share of them that picked it, 0..1. */
  readonly share: number;
}

/** Of every kind of item and every slip it tells apart; none where nobody holds the slip. Slips out of scope are left out. */
export function slipFidelity<Slip extends string>(
  space: HypothesisSpace<Slip>,
  log: readonly LoggedAnswer<Slip>[],
): SlipFidelity<Slip>[] {
  const tallies = new Map<string, { key: string; slip: Slip; holders: number; picks: number }>();
  for (const answers of groupedBy(log, ({ learner }) => learner).values()) {
    const ownFactors = answers.map(({ item, answer }) => answerFactors(space, item, answer).map(Math.log));
    const all = space.prior.map(Math.log);
    for (const factors of ownFactors) addTo(all, factors, 1);
    const byKey = groupedBy(answers.keys(), (at) => statisticsKey(answers[at] as LoggedAnswer<Slip>));
    for (const [key, places] of byKey) {
      const without = Float64Array.from(all);
      for (const at of places) addTo(without, ownFactors[at] as Float64Array, -1);
      const beliefs = slipBeliefs({ space, mass: fromLogs(without) });
      for (const at of places) {
        const { item, answer } = answers[at] as LoggedAnswer<Slip>;
        for (const slip of firingSlips(item)) {
          const belief = beliefs[space.slips.indexOf(slip)] ?? 0;
          if (belief < HOLDS_FROM || item.slipOptions[slip] === "not-on-offer") continue;
          const name = `${key}\n${slip}`;
          const tally = tallies.get(name) ?? { key, slip, holders: 0, picks: 0 };
          tally.holders += 1;
          if (answer.pick === item.slipOptions[slip]) tally.picks += 1;
          tallies.set(name, tally);
        }
      }
    }
  }
  return [...tallies.values()].map(({ key, slip, holders, picks }) => ({
    key,
    slip,
    holders,
    share: picks / holders,
  }));
}

function addTo(sums: Float64Array, values: Readonly<Float64Array>, times: 1 | -1): void {
  for (let at = 0; at < sums.length; at++) sums[at] = (sums[at] as number) + times * (values[at] as number);
}

/** Probabilities from their logarithms, which may all be far under what a number can hold. */
function fromLogs(logs: Readonly<Float64Array>): Float64Array {
  const most = logs.reduce((so, one) => Math.max(so, one), Number.NEGATIVE_INFINITY);
  const mass = logs.map((one) => Math.exp(one - most));
  const sum = mass.reduce((so, one) => so + one, 0);
  return mass.map((one) => one / sum);
}
