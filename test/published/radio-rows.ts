/**
 * Checks the rows of one published group: each row's expected values against ours, within the tolerance the row gives
 * (none: exact). Rows that are not checked must be listed with the reason; checked and listed rows together must be the
 * number the group is known to have, so that none gets lost.
 */

import { describe, expect, test } from "vitest";

export type RowValue = number | string | boolean | null;
export type RowValues = Readonly<Record<string, RowValue>>;

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

export interface RowGroup {
  readonly name: string;
  readonly rows: readonly unknown[];
  readonly knownRows: number;
  /** What we say for a row, under the keys the row expects. */
  readonly ours: (row: PublishedRow) => RowValues;
  /** Reason by row id. */
  readonly notChecked?: Readonly<Record<string, string>>;
}

export function checkRows(group: RowGroup): void {
  const rows = group.rows as readonly PublishedRow[];
  const notChecked = group.notChecked ?? {};
  const checked = rows.filter((row) => !(row.id in notChecked));
  describe(`published values: ${group.name}`, () => {
    test.each(checked.map((row) => [row.id, row.what, sourceOf(row), row] as const))(
      "%s %s (%s)",
      (_id, _what, _source, row) => {
        const said = group.ours(row);
        expect(Object.keys(row.expect).length).toBeGreaterThan(0);
        for (const [key, expected] of Object.entries(row.expect)) {
          const tolerance = row.tolerance[key];
          if (typeof tolerance === "number" && typeof expected === "number")
            // The billionth is the binary rounding of the subtraction itself.
            expect(Math.abs(Number(said[key]) - expected), key).toBeLessThanOrEqual(tolerance + 1e-9);
          else expect(said[key], key).toBe(expected);
        }
      },
    );

    test("every row is checked or listed with its reason", () => {
      expect(rows.length).toBe(group.knownRows);
      expect(new Set(rows.map((row) => row.id)).size).toBe(group.knownRows);
      const listed = rows.filter((row) => row.id in notChecked);
      expect(listed.map((row) => row.id).sort()).toEqual(Object.keys(notChecked).sort());
      expect(checked.length + listed.length).toBe(group.knownRows);
    });
  });
}

const sourceOf = (row: PublishedRow): string =>
  row.from === "memory" ? `from memory: ${row.source}` : row.source;

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
