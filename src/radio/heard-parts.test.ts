import { describe, expect, it } from "vitest";
import { stationDeg } from "../earth/index.ts";
import { loweredSubcarrier, raisedTones } from "./heard-parts.ts";

const RATE_HZ = 22_050;

/** Cosine and sine part at a frequency. */
function partAt(samples: Float32Array, hz: number): { readonly size: number; readonly phaseDeg: number } {
  let cos = 0;
  let sin = 0;
  samples.forEach((sample, at) => {
    cos += sample * Math.cos((2 * Math.PI * hz * at) / RATE_HZ);
    sin += sample * Math.sin((2 * Math.PI * hz * at) / RATE_HZ);
  });
  return {
    size: (2 * Math.hypot(cos, sin)) / samples.length,
    phaseDeg: (Math.atan2(sin, cos) * 180) / Math.PI,
  };
}

describe("the raised tones", () => {
  it.each([0, 60, 179])("are 480 Hz, the right one %s degrees later", (radialDeg) => {
    const { left, right } = raisedTones(stationDeg(radialDeg), RATE_HZ);
    expect(partAt(left, 480).size).toBeCloseTo(0.5, 4);
    expect(partAt(left, 480).phaseDeg).toBeCloseTo(0, 3);
    expect(partAt(right, 480).phaseDeg).toBeCloseTo(radialDeg, 3);
  });
});

describe("the lowered sub-carrier", () => {
  it("is 622.5 Hz with sidebands 30 Hz apart, of ratio 1, and goes round without a click", () => {
    const samples = loweredSubcarrier(RATE_HZ);
    // Bessel functions of 1: J0 0.7652, J1 0.4401 (Abramowitz and Stegun, table 9.1).
    expect(partAt(samples, 622.5).size).toBeCloseTo(0.5 * 0.7652, 3);
    expect(partAt(samples, 652.5).size).toBeCloseTo(0.5 * 0.4401, 3);
    expect(partAt(samples, 592.5).size).toBeCloseTo(0.5 * 0.4401, 3);
    expect(samples[0]).toBeCloseTo(0.5, 4);
  });
});
