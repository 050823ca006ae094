/** Scopes, items and answers at random, for the laws of diagnosis. */

import fc from "fast-check";
import type { ItemAnswer, ItemEvidence, SlipInScope, SlipOption } from "../src/practice/diagnosis/index.ts";
import { spread } from "./spread.ts";

export const SLIPS = ["slip-a", "slip-b", "slip-c", "slip-d", "slip-e", "slip-f"] as const;

/** One to six slips, with any base from rare to common. */
export const scopes: fc.Arbitrary<SlipInScope[]> = fc
  .subarray([...SLIPS], { minLength: 1 })
  .chain((ids) => fc.tuple(...ids.map((id) => spread(0.01, 0.3).map((base) => ({ id, base })))));

/** Two to six options; every slip silent, on one of them, or not on offer. */
export const items: fc.Arbitrary<ItemEvidence> = fc.integer({ min: 2, max: 6 }).chain((optionCount) => {
  const option = fc.oneof(
    { weight: 3, arbitrary: fc.constant(undefined) },
    { weight: 5, arbitrary: fc.integer({ min: 1, max: optionCount - 1 }) as fc.Arbitrary<SlipOption> },
    { weight: 1, arbitrary: fc.constant("not-on-offer" as const) },
  );
  return fc.tuple(...SLIPS.map(() => option)).map((options) => ({
    mode: "choose" as const,
    optionCount,
    slipOptions: Object.fromEntries(
      SLIPS.flatMap((slip, at) => (options[at] === undefined ? [] : [[slip, options[at]]])),
    ),
  }));
});

export interface Answered {
  readonly item: ItemEvidence;
  readonly answer: ItemAnswer;
}

export const answered: fc.Arbitrary<Answered> = items.chain((item) =>
  fc.record({
    item: fc.constant(item),
    answer: fc.record({
      pick: fc.oneof(
        {
          weight: 6,
          arbitrary: fc.integer({ min: 0, max: item.optionCount - 1 }) as fc.Arbitrary<ItemAnswer["pick"]>,
        },
        { weight: 1, arbitrary: fc.constant("dont-know" as const) },
      ),
      confidence: fc.constantFrom("sure" as const, "think-so" as const, "guess" as const, null),
    }),
  }),
);

export const histories = fc.array(answered, { maxLength: 8 });
