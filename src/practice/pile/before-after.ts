/** Whether the last lesson worked: the ideas held before it and after it, as counts of two piles. */

import { isSlipId, SLIPS, type SlipId, slipOf } from "../slips.ts";
import type { MarkedPile } from "./mark-pile.ts";

/** What is kept of a pile to hold a later one against. */
export interface PileSummary {
  readonly learnerCount: number;
  /** Ideas that its problems told from the truth. */
  readonly scope: readonly SlipId[];
  readonly likely: ReadonlyMap<SlipId, number>;
}

export interface SlipChange {
  readonly slip: SlipId;
  readonly name: string;
  /** Learners who likely held it, of so many. */
  readonly before: number;
  readonly beforeOf: number;
  readonly after: number;
  readonly afterOf: number;
}

export const pileSummary = ({ scope, classView }: MarkedPile): PileSummary => ({
  learnerCount: classView.learnerCount,
  scope,
  likely: new Map(classView.slips.map(({ slip, likely }) => [slip, likely.length])),
});

/** Of every idea that both piles tell and anyone likely held in one of them; those most held before come first. */
export function changesBetween(before: PileSummary, after: PileSummary): readonly SlipChange[] {
  return SLIPS.map(({ id }) => id)
    .filter((id) => before.scope.includes(id) && after.scope.includes(id))
    .map((slip) => ({
      slip,
      name: slipOf(slip).name,
      before: before.likely.get(slip) ?? 0,
      beforeOf: before.learnerCount,
      after: after.likely.get(slip) ?? 0,
      afterOf: after.learnerCount,
    }))
    .filter(({ before: was, after: is }) => was + is > 0)
    .sort((one, other) => other.before - one.before);
}

/** The summary of a report that was printed as JSON; null of anything else. Ideas that this edition does not know are left out. */
export function readPileSummary(text: string): PileSummary | null {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return null;
  }
  if (!isRecord(data)) return null;
  const { learnerCount, scope, slips } = data;
  if (typeof learnerCount !== "number" || !(learnerCount > 0)) return null;
  if (!Array.isArray(scope) || !Array.isArray(slips)) return null;
  const likely = new Map<SlipId, number>();
  for (const one of slips as readonly unknown[]) {
    if (!isRecord(one) || typeof one.id !== "string" || !Array.isArray(one.likely)) return null;
    if (isSlipId(one.id)) likely.set(one.id, one.likely.length);
  }
  const known = (scope as readonly unknown[]).filter(
    (id): id is SlipId => typeof id === "string" && isSlipId(id),
  );
  return { learnerCount, scope: known, likely };
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);
