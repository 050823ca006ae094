/**
 * What a learner may have in mind: every set of at most three slips of those in scope, each twice, for a settled learner, who answers
 * by what he believes, and for an unsettled one, who mostly guesses. Twelve slips give 598 hypotheses, forty 21,402.
 *
 * Everything per set lies in flat arrays in one fixed order: the empty set, the single slips, the pairs, the threes, each in order of
 * the scope. Arrays of both kinds of learner hold all settled ones first.
 */

/** No learner is taken to hold more slips than this at once. */
export const MOST_SLIPS_HELD = 3;
/** Prior of holding 0, 1, 2 and 3 slips, and of being unsettled: our own judgement, to be tuned with classes. */
const PRIOR_BY_COUNT = [0.2, 0.35, 0.28, 0.17] as const;
const PRIOR_UNSETTLED = 0.15;
/** A slip's place in the scope is kept in a byte. */
const MOST_IN_SCOPE = 200;

/** A slip in scope. `base` says how common it is beside the others, over 0: .12 common, .07, .03 rare. */
export interface SlipInScope<Slip extends string = string> {
  readonly id: Slip;
  readonly base: number;
}

export interface HypothesisSpace<Slip extends string = string> {
  readonly slips: readonly Slip[];
  /** Sets of slips; there are twice as many hypotheses. */
  readonly setCount: number;
  /** Places in the scope of every set's members, three a set; `slips.length` where it has fewer. */
  readonly members: Readonly<Uint8Array>;
  /** For two places a < b, at a * slips.length + b: the set {a, b}, and the first set {a, b, c}; the others with c follow it. */
  readonly pairSet: Readonly<Uint32Array>;
  readonly firstThree: Readonly<Uint32Array>;
  /** Prior of every hypothesis, summing to 1. */
  readonly prior: Readonly<Float64Array>;
}

/**
 * All hypotheses over the slips in scope. Throws RangeError when the scope is over 200 slips, names a slip twice, or has a base that
 * is not over 0.
 */
export function hypothesisSpace<Slip extends string>(
  scope: readonly SlipInScope<Slip>[],
): HypothesisSpace<Slip> {
  checkScope(scope);
  const sets = setsOf(scope.length);
  const weights = sets.map((set) => set.reduce((product, slip) => product * (scope[slip]?.base ?? 0), 1));
  const weightByCount = PRIOR_BY_COUNT.map((_, count) =>
    weights.reduce((sum, weight, set) => sum + (sets[set]?.length === count ? weight : 0), 0),
  );
  // A scope of one or two slips has no larger sets: their share of the prior is then spread over the rest.
  const possible = PRIOR_BY_COUNT.reduce((sum, share, count) => sum + (count <= scope.length ? share : 0), 0);
  const setCount = sets.length;
  const members = new Uint8Array(setCount * MOST_SLIPS_HELD).fill(scope.length);
  const pairSet = new Uint32Array(scope.length ** 2);
  const firstThree = new Uint32Array(scope.length ** 2);
  const prior = new Float64Array(2 * setCount);
  sets.forEach((set, at) => {
    members.set(set, at * MOST_SLIPS_HELD);
    const [a = 0, b = 0, c] = set;
    if (set.length === 2) pairSet[a * scope.length + b] = at;
    if (set.length === 3 && c === b + 1) firstThree[a * scope.length + b] = at;
    const share = (PRIOR_BY_COUNT[set.length] ?? 0) / possible;
    const mass = (share * (weights[at] ?? 0)) / (weightByCount[set.length] ?? 1);
    prior[at] = mass * (1 - PRIOR_UNSETTLED);
    prior[setCount + at] = mass * PRIOR_UNSETTLED;
  });
  return { slips: scope.map(({ id }) => id), setCount, members, pairSet, firstThree, prior };
}

function checkScope(scope: readonly SlipInScope[]): void {
  if (scope.length > MOST_IN_SCOPE)
    throw new RangeError(
      `scope has ${scope.length} slips; at most ${MOST_IN_SCOPE} can be told apart at once`,
    );
  const seen = new Set<string>();
  for (const { id, base } of scope) {
    if (seen.has(id)) throw new RangeError(`scope names the slip ${id} twice; name it once`);
    seen.add(id);
    if (!(base > 0 && Number.isFinite(base)))
      throw new RangeError(`slip ${id} has base ${base}; a base is a number over 0`);
  }
}

/** Every set of at most three of the first `slipCount` whole numbers, the smaller sets first. */
function setsOf(slipCount: number): readonly (readonly number[])[] {
  const larger = (sets: readonly (readonly number[])[]): readonly (readonly number[])[] =>
    sets.flatMap((set) => {
      const from = (set.at(-1) ?? -1) + 1;
      return Array.from({ length: slipCount - from }, (_, step) => [...set, from + step]);
    });
  const byCount: (readonly (readonly number[])[])[] = [[[]]];
  for (let count = 1; count <= MOST_SLIPS_HELD; count++) byCount.push(larger(byCount[count - 1] ?? []));
  return byCount.flat();
}

/** The place of a slip in the scope. Throws RangeError for a slip that is not in it. */
export function placeInScope<Slip extends string>(space: HypothesisSpace<Slip>, slip: Slip): number {
  const place = space.slips.indexOf(slip);
  if (place < 0)
    throw new RangeError(`slip ${slip} is not in scope; the scope has ${space.slips.join(", ")}`);
  return place;
}
