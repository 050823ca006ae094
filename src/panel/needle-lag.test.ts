import fc from "fast-check";
import { expect, test } from "vitest";
import { spread } from "../../test/spread.ts";
import { NEEDLE_TIME_CONSTANT_S, stepNeedle } from "./needle-lag.ts";

test("covers 63 % of the way in one time constant", () => {
  expect(stepNeedle(0, 5, NEEDLE_TIME_CONSTANT_S)).toBeCloseTo(5 * (1 - Math.exp(-1)), 12);
});

test("many short steps end where one long step ends, never past the target", () => {
  fc.assert(
    fc.property(spread(-5, 5), spread(-5, 5), fc.integer({ min: 1, max: 200 }), (shown, target, steps) => {
      let needle = shown;
      for (let i = 0; i < steps; i++) needle = stepNeedle(needle, target, 1 / steps);
      expect(needle).toBeCloseTo(stepNeedle(shown, target, 1), 9);
      expect(Math.abs(needle - target)).toBeLessThanOrEqual(Math.abs(shown - target) + 1e-12);
    }),
    { seed: 1 },
  );
});

test("refuses a step back in time", () => {
  expect(() => stepNeedle(0, 1, -0.1)).toThrow(/0 s or more/);
  expect(() => stepNeedle(0, 1, Number.NaN)).toThrow(/0 s or more/);
});
