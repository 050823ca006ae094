/** Checks rows of published values: one test a row, its source in the test's name, and every row accounted for. */

import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";

export interface Row {
  readonly id: string;
  readonly what: string;
  readonly inputs: Readonly<Record<string, number>>;
  readonly expect: Readonly<Record<string, number>>;
  readonly tolerance: Readonly<Record<string, number>>;
  readonly source: string;
  readonly from: string;
  readonly note: string;
}

export type Solve = (inputs: Readonly<Record<string, number>>) => Readonly<Record<string, number>>;

/** An expected value that is not ours, and why. */
export interface Disagreement {
  readonly key: string;
  readonly reason: string;
}

/** Where a row gives no tolerance the match is exact, up to the rounding of floating point. */
const EXACT = 1e-9;
/** Compared the short way round, so that 360 is 0. Drift, correction, bank and latitude are not directions. */
const ON_CIRCLE =
  /^(lon_|azimuth_|wind_from_)|(heading|bearing|track|radial|magnetic|compass|true|_object|_station)_deg$|^lon_deg$/;

export function checkRows(options: {
  readonly group: string;
  /** By the row's `what`. */
  readonly solve: Readonly<Record<string, Solve>>;
  /** By row id. */
  readonly disagreements?: Readonly<Record<string, Disagreement>>;
}): void {
  const { group, solve, disagreements = {} } = options;
  const file = new URL(`./rows/${group}.json`, import.meta.url);
  const rows = JSON.parse(readFileSync(file, "utf8")) as Row[];
  const valuesInFile = rows.reduce((sum, row) => sum + Object.keys(row.expect).length, 0);
  let valuesChecked = 0;
  let valuesListed = 0;

  describe(group, () => {
    for (const row of rows) {
      const listed = disagreements[row.id];
      const title = `${row.id} ${row.what} | ${row.from === "memory" ? "MEMORY: " : ""}${row.source}`;
      test(listed ? `${title} | not ${listed.key}: ${listed.reason}` : title, () => {
        const solver = solve[row.what];
        if (!solver) throw new Error(`no solver for "${row.what}"`);
        const got = solver(row.inputs);
        for (const [key, want] of Object.entries(row.expect)) {
          const value = got[key];
          if (value === undefined) throw new Error(`no value for ${key}`);
          const apart = Math.abs(ON_CIRCLE.test(key) ? shortWay(value - want) : value - want);
          const allowed = row.tolerance[key] ? row.tolerance[key] : EXACT;
          if (listed?.key === key) {
            // A disagreement that has gone away must leave the list.
            expect(apart, `${key} now agrees`).toBeGreaterThan(allowed);
            valuesListed++;
            continue;
          }
          expect(apart, `${key}: got ${value}, published ${want} ± ${allowed}`).toBeLessThanOrEqual(
            allowed + EXACT,
          );
          valuesChecked++;
        }
      });
    }

    test(`all ${valuesInFile} values of ${rows.length} rows are checked or listed`, () => {
      expect(rows.length).toBeGreaterThan(0);
      expect(new Set(rows.map((row) => row.id)).size).toBe(rows.length);
      expect(valuesChecked + valuesListed).toBe(valuesInFile);
      expect(valuesListed).toBe(Object.keys(disagreements).length);
    });
  });
}

const shortWay = (deg: number) => ((((deg + 180) % 360) + 360) % 360) - 180;
