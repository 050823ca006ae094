/**
 * Where the answers lie that no slip gives: a histogram of the answer less the truth, and less each number that stood in the scene, so
 * that a mistaken idea not yet modelled shows as a peak.
 */

import { wrap180 } from "../../earth/index.ts";

export interface UnmodelledAnswer {
  readonly answer: number;
  /** What it may have been taken from, such as truth, heading, course, radial and its reciprocal, in the unit of the answer. */
  readonly references: Readonly<Record<string, number>>;
}

export interface OffsetBin {
  /** The bin holds offsets from here, included, to `toOffset`, excluded. */
  readonly fromOffset: number;
  readonly toOffset: number;
  readonly count: number;
}

/**
 * For each reference the bins that hold an answer, in order. Offsets of directions are the shorter way round, in (-180, 180], in
 * degrees; of quantities the plain difference. Bins are centred on whole multiples of `binWidth`, so that exact agreement falls in the
 * middle of one. Throws RangeError on a width that is not over 0.
 */
export function answerOffsets(
  answers: readonly UnmodelledAnswer[],
  kind: "direction" | "quantity",
  binWidth: number,
): Map<string, OffsetBin[]> {
  if (!(binWidth > 0)) throw new RangeError(`bin width is ${binWidth}; it must be over 0`);
  const countsByReference = new Map<string, Map<number, number>>();
  for (const { answer, references } of answers)
    for (const [name, reference] of Object.entries(references)) {
      const offset = kind === "direction" ? wrap180(answer - reference) : answer - reference;
      const bin = Math.floor(offset / binWidth + 0.5);
      const counts = countsByReference.get(name) ?? new Map<number, number>();
      countsByReference.set(name, counts.set(bin, (counts.get(bin) ?? 0) + 1));
    }
  const inOrder = (counts: ReadonlyMap<number, number>): OffsetBin[] =>
    [...counts]
      .sort(([a], [b]) => a - b)
      .map(([bin, count]) => ({
        fromOffset: (bin - 0.5) * binWidth,
        toOffset: (bin + 0.5) * binWidth,
        count,
      }));
  return new Map([...countsByReference].map(([name, counts]) => [name, inOrder(counts)]));
}
