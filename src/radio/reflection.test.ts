import { expect, test } from "vitest";
import { errorDeg, measured } from "../../test/signal.ts";
import { stationDeg } from "../earth/index.ts";
import { bendDeg } from "./reflection.ts";
import { SIGNAL_KINDS } from "./vor-modulation.ts";

const RADIALS = Array.from({ length: 60 }, (_, index) => ({
  radialDeg: (47 * index) % 360,
  azimuthDeg: (101 * index + 20) % 360,
  extraPathM: 200 + 1.37 * index,
}));

// Derived in docs/model.md; the demodulated signal knows nothing of the formula.
test.each(SIGNAL_KINDS.flatMap((kind) => [0.02, 0.05, 0.1].map((amplitude) => ({ kind, amplitude }))))(
  "a reflector of $amplitude bends a $kind station's radial as the formula says",
  ({ kind, amplitude }) => {
    const rows = RADIALS.map(({ radialDeg, azimuthDeg, extraPathM }) => {
      const azimuth = stationDeg(azimuthDeg);
      const radial = stationDeg(radialDeg);
      const found = measured(
        { radialDeg, modulation: { kind }, echoes: [{ azimuth, extraPathM, amplitude }] },
        { sampleRateHz: 24_000, durationS: 0.3 },
      );
      return {
        foundDeg: errorDeg(found, radialDeg),
        formulaDeg: bendDeg({ kind, radial, azimuth, amplitude, extraPathM, frequencyMhz: 113 }),
      };
    });
    const greatestDeg = Math.max(...rows.map(({ formulaDeg }) => Math.abs(formulaDeg)));
    for (const { foundDeg, formulaDeg } of rows)
      expect(Math.abs(foundDeg - formulaDeg)).toBeLessThan(0.05 * greatestDeg);
  },
);

test("the simplest case: in phase and square across, the bend is the arc tangent of the strength", () => {
  // 22.5 wavelengths longer would oppose; 0 is in phase. k = (r + r^2) / (1 + r) = r.
  const bend = { radial: stationDeg(0), azimuth: stationDeg(90), extraPathM: 0, frequencyMhz: 113 };
  expect(bendDeg({ kind: "conventional", amplitude: 0.1, ...bend })).toBeCloseTo(5.7106, 4);
  // Behind and before, a reflector bends nothing.
  expect(bendDeg({ kind: "conventional", amplitude: 0.1, ...bend, azimuth: stationDeg(180) })).toBeCloseTo(
    0,
    12,
  );
});

test("a Doppler station is bent far less", () => {
  const bend = {
    radial: stationDeg(10),
    azimuth: stationDeg(80),
    extraPathM: 0,
    frequencyMhz: 113,
    amplitude: 0.1,
  };
  const conventional = bendDeg({ kind: "conventional", ...bend });
  const doppler = bendDeg({ kind: "doppler", ...bend });
  expect(Math.abs(doppler)).toBeLessThan(Math.abs(conventional) / 10);
});
