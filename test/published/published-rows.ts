/**
 * Checks the rows of one published group: each row's expected values against ours, within the tolerance the row gives (none:
 * exact). One test a row, its source in the test's name, memory marked. A value that is not ours is listed with the reason; checked
 * and listed values together must be all that the group is known to have, so that none gets lost.
 */

import { describe, expect, test } from "vitest";

export type RowValue = number | string | boolean | null;
export type RowValues = Readonly<Record<string, RowValue>>;
export type RowNumbers = Readonly<Record<string, number>>;

export interface PublishedRow {
  readonly id: string;
  readonly what: string;
  readonly inputs: RowValues;
  readonly expect: RowValues;
  readonly tolerance: RowValues;
  readonly source: string;
  readonly from: string;
  readonly note: string;
}

/** An expected value that is not ours, and why. */
export interface Disagreement {
  readonly key: string;
  readonly reason: string;
}

export interface RowGroup {
  readonly name: string;
  readonly rows: readonly unknown[];
  readonly knownRows: number;
  /** What we say for a row, under the keys the row expects. */
  readonly ours: (row: PublishedRow) => RowValues;
  /** By row id. */
  readonly disagreements?: Readonly<Record<string, Disagreement>>;
  /** Whole rows that wait for what they speak of: the reason, by row id. */
  readonly notChecked?: Readonly<Record<string, string>>;
}

/** What we say, for groups of numbers alone, by the row's `what`. */
export type Solve = (inputs: RowNumbers) => RowNumbers;

/** The binary rounding of a subtraction, where the match is exact. */
const EXACT = 1e-9;
/** Compared the short way round, so that 360 is 0. Drift, correction, bank and latitude are not directions. */
const ON_CIRCLE =
  /^(lon_|azimuth_|wind_from_)|(heading|bearing|track|radial|magnetic|compass|true|_object|_station)_deg$|^lon_deg$/;

export function checkRows(group: RowGroup): void {
  const all = group.rows as readonly PublishedRow[];
  const disagreements = group.disagreements ?? {};
  const notChecked = group.notChecked ?? {};
  const rows = all.filter((row) => !(row.id in notChecked));
  const valuesKnown = rows.reduce((sum, row) => sum + Object.keys(row.expect).length, 0);
  let checked = 0;
  let listed = 0;
  describe(`published values: ${group.name}`, () => {
    test.each(rows.map((row) => [titleOf(row, disagreements[row.id]), row] as const))("%s", (_title, row) => {
      const said = group.ours(row);
      for (const [key, expected] of Object.entries(row.expect)) {
        const apart = apartFrom(key, said[key], expected);
        const allowed = Number(row.tolerance[key] ?? 0) + EXACT;
        if (disagreements[row.id]?.key === key) {
          // A disagreement that has gone away must leave the list.
          expect(apart, `${key} now agrees`).toBeGreaterThan(allowed);
          listed++;
          continue;
        }
        expect(apart, `${key}: got ${said[key]}, published ${expected}`).toBeLessThanOrEqual(allowed);
        checked++;
      }
    });

    for (const [id, reason] of Object.entries(notChecked))
      test(`${id} is left for later: ${reason}`, () => expect(all.some((row) => row.id === id)).toBe(true));

    test(`all ${valuesKnown} values of ${rows.length} rows are checked or listed`, () => {
      expect(rows.length + Object.keys(notChecked).length).toBe(group.knownRows);
      expect(new Set(all.map((row) => row.id)).size).toBe(group.knownRows);
      expect(checked + listed).toBe(valuesKnown);
      expect(listed).toBe(Object.keys(disagreements).length);
    });
  });
}

/** `ours` from a table of solvers by the row's `what`. */
export const solvedBy =
  (solvers: Readonly<Record<string, Solve>>) =>
  (row: PublishedRow): RowNumbers => {
    const solver = solvers[row.what];
    if (solver === undefined) throw new Error(`no check is written for "${row.what}"`);
    return solver(row.inputs as RowNumbers);
  };

/** How far apart two values are: 0 for equal words, infinitely far for others. */
function apartFrom(key: string, said: RowValue | undefined, expected: RowValue): number {
  if (typeof said !== "number" || typeof expected !== "number")
    return said === expected ? 0 : Number.POSITIVE_INFINITY;
  const difference = said - expected;
  return Math.abs(ON_CIRCLE.test(key) ? ((((difference + 180) % 360) + 360) % 360) - 180 : difference);
}

function titleOf(row: PublishedRow, disagreement: Disagreement | undefined): string {
  const source = row.from === "memory" ? `from memory: ${row.source}` : row.source;
  const title = `${row.id} ${row.what} (${source})`;
  return disagreement === undefined ? title : `${title}, not ${disagreement.key}: ${disagreement.reason}`;
}

export const numberIn = (values: RowValues, key: string): number => {
  const value = values[key];
  if (typeof value !== "number") throw new Error(`${key} is not a number: ${value}`);
  return value;
};

export const textIn = (values: RowValues, key: string): string => {
  const value = values[key];
  if (typeof value !== "string") throw new Error(`${key} is not a text: ${value}`);
  return value;
};
