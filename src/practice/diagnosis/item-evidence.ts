/**
 * What an item can say about slips: how many options it has, and which of them each slip would pick. Option 0 is the truth. In tell
 * mode, where the answer is typed or dialled, the options are the truth, every distinct answer of a slip, and last "other", which
 * stands for all that no slip gives.
 */

/** An option's number, 1 or more; or the slip's answer differs from the truth but is not among the options. */
export type SlipOption = number | "not-on-offer";

export interface ItemEvidence<Slip extends string = string> {
  readonly mode: "choose" | "tell";
  /** 2 or more, the truth counted, and in tell mode "other". */
  readonly optionCount: number;
  /** Only of slips whose answer differs from the truth here; a slip that is not named is silent. */
  readonly slipOptions: Readonly<Partial<Record<Slip, SlipOption>>>;
}

export type Confidence = "sure" | "think-so" | "guess";

export interface ItemAnswer {
  readonly pick: number | "dont-know";
  /** Null where the learner was not asked or did not say. */
  readonly confidence: Confidence | null;
}

export const isRight = ({ pick }: ItemAnswer): boolean => pick === 0;

/** Whether the item discriminates for a slip, that is, holding it would lead to another answer than the truth. */
export const fires = <Slip extends string>({ slipOptions }: ItemEvidence<Slip>, slip: Slip): boolean =>
  slipOptions[slip] !== undefined;

/**
 * The item as slips of the scope answer it: 0 silent, 1 .. optionCount - 1 an option, optionCount for an answer that is not on offer.
 * Throws RangeError on fewer than two options, or an option that the item does not have.
 */
export function optionsOfScope<Slip extends string>(
  slips: readonly Slip[],
  { optionCount, slipOptions }: ItemEvidence<Slip>,
): Uint16Array {
  if (!(Number.isInteger(optionCount) && optionCount >= 2))
    throw new RangeError(`item has ${optionCount} options; it needs two or more`);
  return Uint16Array.from(slips, (slip): number => {
    const option: SlipOption | undefined = slipOptions[slip];
    if (option === undefined) return 0;
    if (option === "not-on-offer") return optionCount;
    if (!(Number.isInteger(option) && option >= 1 && option < optionCount))
      throw new RangeError(`slip ${slip} picks option ${option}; it must be in 1..${optionCount - 1}`);
    return option;
  });
}
