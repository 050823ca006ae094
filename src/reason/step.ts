/** What every rule of the argument gets to argue from, and the small form in which it answers. */

import type { ReceiverReading } from "../panel/index.ts";
import type { Situation } from "../scene/index.ts";
import type { Part, ReasonRule } from "./reason.ts";

export interface Argument {
  readonly situation: Situation;
  readonly reading: ReceiverReading;
}

/** A step before it is numbered and given its receiver's name. */
export interface Step {
  readonly rule: ReasonRule;
  readonly title: string;
  readonly sentence: string;
  readonly numbers: Readonly<Record<string, number | string>>;
  readonly source: string;
  readonly parts: readonly Part[];
}

/** One rule: its step, or null where the scene does not need it. */
export type Rule = (argument: Argument) => Step | null;
