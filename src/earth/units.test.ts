import fc from "fast-check";
import { expect, test } from "vitest";
import { spread } from "../../test/spread.ts";
import * as units from "./units.ts";

/**
 * International nautical mile 1852 m (1929), foot 0.3048 m and statute mile 5,280 ft (1959), from memory;
 * 6076.1 ft to the NM and 1.15 mph to the knot: FAA Pilot's Handbook of Aeronautical Knowledge, ch. 16 (read).
 */
test.each([
  ["feet in a NM", units.ftFromNm(1), 6076.1155, 5e-5],
  ["feet in a NM as the handbook prints", units.ftFromNm(1), 6076.1, 0.05],
  ["metres in a NM", units.mFromNm(1), 1852, 0],
  ["kilometres in a NM", units.kmFromNm(1), 1.852, 1e-12],
  ["metres in 1,000 ft", units.mFromFt(1000), 304.8, 1e-9],
  ["kilometres in 10,000 ft", units.kmFromFt(10_000), 3.048, 1e-12],
  ["miles an hour in a knot", units.smFromNm(1), 1.15, 0.005],
  ["feet in a statute mile", units.ftFromM(units.M_PER_SM), 5280, 1e-9],
  ["metres a second in 100 kt", units.mPerSFromKt(100), 51.4444, 5e-5],
])("%s", (_name, got, want, within) => {
  expect(Math.abs(got - want)).toBeLessThanOrEqual(within);
});

test("every conversion comes back", () => {
  const pairs = [
    [units.mFromNm, units.nmFromM],
    [units.kmFromNm, units.nmFromKm],
    [units.mFromFt, units.ftFromM],
    [units.kmFromFt, units.ftFromKm],
    [units.ftFromNm, units.nmFromFt],
    [units.smFromNm, units.nmFromSm],
    [units.mPerSFromKt, units.ktFromMPerS],
  ] as const;
  fc.assert(
    fc.property(spread(-1e6, 1e6), (value) => {
      for (const [there, back] of pairs) expect(back(there(value))).toBeCloseTo(value, 6);
    }),
  );
});
