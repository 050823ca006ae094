/** Options that are numbers. */

import type { Call } from "./command.ts";
import { CallFault } from "./faults.ts";

export interface NumberRule {
  readonly name: string;
  readonly least: number;
  readonly most: number;
  /** Such as "words a minute"; empty for a bare count. */
  readonly unit: string;
  readonly whole?: boolean;
}

/** The option's number, both ends allowed, or the default when it is not given. Throws CallFault on anything else. */
export function numberOption(call: Call, rule: NumberRule, byDefault: number): number {
  const text = call.text(rule.name);
  if (text === undefined) return byDefault;
  const value = /^[+-]?(\d+\.?\d*|\.\d+)$/.test(text) ? Number(text) : Number.NaN;
  const fits = value >= rule.least && value <= rule.most && (rule.whole !== true || Number.isInteger(value));
  if (fits) return value;
  const kind = rule.whole === true ? "a whole number" : "a number";
  const unit = rule.unit === "" ? "" : ` ${rule.unit}`;
  throw new CallFault(
    `--${rule.name} must be ${kind} from ${rule.least} to ${rule.most}${unit}, but got "${text}"`,
  );
}
