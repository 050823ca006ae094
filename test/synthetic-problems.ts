/**
 * Problems without scenes, to try the simulation of learners on: forms on which some slips bear, and draws on which some of those differ
 * from the truth, mostly each in its own way.
 */

import type { Chance, ItemEvidence, SimulatedProblem, SlipOption } from "../src/practice/diagnosis/index.ts";

const FORMS = 20;
const FIRES = 0.7;
const SHARES_AN_OPTION = 0.2;
const MOST_WRONG = 4;

/** A source whose forms each bear on about three slips of the scope. */
export function syntheticSource(slips: readonly string[]) {
  const draw = (luck: Chance, belief: (slip: string) => number, id: string): SimulatedProblem => {
    for (;;) {
      const form = luck.integer(0, FORMS - 1);
      const bearing = slips.filter((_, at) => (at * 7 + form * 3) % FORMS < 4);
      const fired = bearing.filter(() => luck.odds(FIRES));
      if (fired.length === 0) continue;
      const groups: string[][] = [];
      for (const slip of fired)
        if (groups.length > 0 && luck.odds(SHARES_AN_OPTION)) luck.pick(groups).push(slip);
        else groups.push([slip]);
      const weight = (group: readonly string[]) => group.reduce((sum, slip) => sum + belief(slip), 0);
      const kept = groups.sort((a, b) => weight(b) - weight(a)).slice(0, MOST_WRONG);
      const slipOptions: Record<string, SlipOption> = {};
      for (const slip of fired) {
        const at = kept.findIndex((group) => group.includes(slip));
        slipOptions[slip] = at < 0 ? "not-on-offer" : at + 1;
      }
      const item: ItemEvidence = { mode: "choose", optionCount: kept.length + 1, slipOptions };
      const together = luck.pick<SlipOption>(["not-on-offer", 0, luck.integer(1, kept.length)]);
      return {
        problemId: id,
        form: `form-${form}`,
        skills: [],
        place: `place-${luck.integer(0, 40)}`,
        item,
        usualTimeS: null,
        dueForReview: false,
        composedOption: () => together,
      };
    }
  };
  return {
    candidates: (count: number, luck: Chance, belief: (slip: string) => number) =>
      Array.from({ length: count }, (_, at) => draw(luck, belief, `${at}`)),
  };
}
