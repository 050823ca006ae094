import fc from "fast-check";
import { expect, test } from "vitest";
import { spread } from "../../test/spread.ts";
import { compassFromMagnetic, magneticFromCompass } from "./compass.ts";
import { compassDeg, magneticDeg, turnBetween } from "./direction.ts";

test("deviation east lies between compass and a larger magnetic", () => {
  expect(magneticFromCompass(compassDeg(359), 3)).toBe(2);
  expect(compassFromMagnetic(magneticDeg(2), 3)).toBe(359);
});

test("there and back", () => {
  const deg = spread(-720, 720);
  fc.assert(
    fc.property(deg, deg, (direction, deviationDeg) => {
      const magnetic = magneticDeg(direction);
      const back = magneticFromCompass(compassFromMagnetic(magnetic, deviationDeg), deviationDeg);
      expect(Math.abs(turnBetween(back, magnetic))).toBeLessThan(1e-9);
    }),
  );
});
