/** The receiver in noise, beside the least that any receiver could do. */

import { expect, test } from "vitest";
import { errorDeg, measured } from "../../test/signal.ts";
import { leastRadialDeviationDeg } from "./bearing-noise.ts";
import { flagCause, LEAST_CARRIER_TO_NOISE_DB_HZ } from "./signal-monitor.ts";
import { SIGNAL_KINDS, STANDARD_MODULATION } from "./vor-modulation.ts";

const RUNS = 200;
const DURATION_S = 0.6;

// The Cramer-Rao bound (docs/model.md), over 30 dB from the noise at which the flag falls.
test.each([54, 60, 66, 72, 78, 84])("at %i dB-Hz the radial scatters within 1.5 times the bound", (db) => {
  let squares = 0;
  let own = 0;
  for (let run = 0; run < RUNS; run++) {
    const kind = SIGNAL_KINDS[run % 2] as (typeof SIGNAL_KINDS)[number];
    const radialDeg = run * 1.8;
    const found = measured(
      { radialDeg, carrierToNoiseDbHz: db, seed: 1000 * db + run, modulation: { kind } },
      { sampleRateHz: 24_000, durationS: DURATION_S },
    );
    squares += errorDeg(found, radialDeg) ** 2;
    own += found.radialDeviationDeg / RUNS;
  }
  const scatterDeg = Math.sqrt(squares / RUNS);
  const boundDeg = leastRadialDeviationDeg(STANDARD_MODULATION, db, DURATION_S);
  expect(scatterDeg).toBeLessThan(1.5 * boundDeg);
  // 200 runs tell a standard deviation to 5 %; less than the bound would be a fault of the test or of the bound.
  expect(scatterDeg).toBeGreaterThan(0.9 * boundDeg);
  // What it says of itself is true.
  expect(own / scatterDeg).toBeGreaterThan(0.8);
  expect(own / scatterDeg).toBeLessThan(1.3);
});

test("the flag falls before the radial is 3 degrees off", () => {
  let shownBelow = Number.POSITIVE_INFINITY;
  let worstShownDeg = 0;
  let worstDeg = 0;
  for (let db = 60; db >= 42; db -= 1)
    for (let run = 0; run < 20; run++) {
      const found = measured(
        { radialDeg: 60, carrierToNoiseDbHz: db, seed: 100 * db + run },
        { sampleRateHz: 24_000, durationS: 1 },
      );
      const error = Math.abs(errorDeg(found, 60));
      worstDeg = Math.max(worstDeg, error);
      if (flagCause(found) !== null) continue;
      shownBelow = Math.min(shownBelow, db);
      worstShownDeg = Math.max(worstShownDeg, error);
    }
  expect(worstShownDeg).toBeLessThan(3);
  // So that the above says something: it does show down to its limit, and without the flag it would have gone beyond 3 degrees.
  expect(shownBelow).toBeLessThan(LEAST_CARRIER_TO_NOISE_DB_HZ + 1);
  expect(worstDeg).toBeGreaterThan(3);
});
