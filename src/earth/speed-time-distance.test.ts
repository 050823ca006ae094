import fc from "fast-check";
import { expect, test } from "vitest";
import { spread } from "../../test/spread.ts";
import {
  enduranceMin,
  fuelPerHourFromUse,
  fuelUsed,
  legDistanceNm,
  legGroundspeedKt,
  legTimeMin,
  offCourseCorrectionDeg,
  oneInSixtyDeg,
} from "./speed-time-distance.ts";

const positive = spread(0.1, 1000);

test("speed, time and distance undo one another", () => {
  fc.assert(
    fc.property(positive, positive, (groundspeedKt, timeMin) => {
      const distanceNm = legDistanceNm({ groundspeedKt, timeMin });
      expect(legTimeMin({ distanceNm, groundspeedKt })).toBeCloseTo(timeMin, 8);
      expect(legGroundspeedKt({ distanceNm, timeMin })).toBeCloseTo(groundspeedKt, 8);
    }),
  );
});

test("fuel, rate and endurance undo one another", () => {
  fc.assert(
    fc.property(positive, positive, (fuelPerHour, timeMin) => {
      const fuel = fuelUsed({ fuelPerHour, timeMin });
      expect(enduranceMin({ fuel, fuelPerHour })).toBeCloseTo(timeMin, 8);
      expect(fuelPerHourFromUse({ fuel, timeMin })).toBeCloseTo(fuelPerHour, 8);
    }),
  );
});

test("one in sixty lies within 0.543 degree of the true angle up to 20 degrees, and keeps its side", () => {
  fc.assert(
    fc.property(spread(-20, 20), positive, (angleDeg, flownNm) => {
      // The rule counts the miles flown, so the distance off is by the sine.
      const offNm = flownNm * Math.sin((angleDeg * Math.PI) / 180);
      const byRuleDeg = oneInSixtyDeg({ offNm, alongNm: flownNm });
      expect(Math.abs(byRuleDeg - angleDeg)).toBeLessThan(0.5431);
      expect(byRuleDeg * offNm).toBeGreaterThanOrEqual(0);
    }),
  );
});

test("off to the right is corrected to the left, by the angle opened and the angle that closes", () => {
  expect(offCourseCorrectionDeg({ offNm: 2, flownNm: 30, toFlyNm: 60 })).toBe(-6);
  expect(offCourseCorrectionDeg({ offNm: -2, flownNm: 30, toFlyNm: 60 })).toBe(6);
  expect(Object.is(offCourseCorrectionDeg({ offNm: 0, flownNm: 30, toFlyNm: 60 }), 0)).toBe(true);
});

test.each([
  [
    () => legTimeMin({ distanceNm: 10, groundspeedKt: 0 }),
    /groundspeed in knots must be finite and above 0, got 0/,
  ],
  [() => legTimeMin({ distanceNm: -1, groundspeedKt: 90 }), /distance in NM must be finite and 0 or more/],
  [() => legGroundspeedKt({ distanceNm: 10, timeMin: 0 }), /time in minutes/],
  [() => legDistanceNm({ groundspeedKt: Number.NaN, timeMin: 1 }), /groundspeed/],
  [() => fuelUsed({ fuelPerHour: -1, timeMin: 1 }), /fuel rate/],
  [() => enduranceMin({ fuel: 10, fuelPerHour: 0 }), /fuel rate/],
  [() => fuelPerHourFromUse({ fuel: Number.NaN, timeMin: 1 }), /fuel quantity/],
  [() => oneInSixtyDeg({ offNm: 1, alongNm: 0 }), /distance along/],
])("refuses %s", (work, message) => {
  expect(work).toThrow(message);
});
