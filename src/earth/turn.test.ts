import fc from "fast-check";
import { expect, test } from "vitest";
import { spread } from "../../test/spread.ts";
import { bankForRateDeg, rateOfTurnDegPerS, turnRadiusAtRateNm, turnRadiusNm, turnTimeS } from "./turn.ts";

const tas = spread(40, 500);
const bank = spread(1, 80);

test("the bank for the rate that a bank gives is that bank, and both radii agree", () => {
  fc.assert(
    fc.property(tas, bank, (tasKt, bankDeg) => {
      const rateDegPerS = rateOfTurnDegPerS({ tasKt, bankDeg });
      expect(bankForRateDeg({ tasKt, rateDegPerS })).toBeCloseTo(bankDeg, 9);
      expect(turnRadiusAtRateNm({ tasKt, rateDegPerS })).toBeCloseTo(turnRadiusNm({ tasKt, bankDeg }), 9);
    }),
  );
});

test("a circle takes as long as its rim at the airspeed", () => {
  fc.assert(
    fc.property(tas, bank, (tasKt, bankDeg) => {
      const seconds = turnTimeS(360, rateOfTurnDegPerS({ tasKt, bankDeg }));
      const rimNm = 2 * Math.PI * turnRadiusNm({ tasKt, bankDeg });
      expect((rimNm / tasKt) * 3600).toBeCloseTo(seconds, 6);
    }),
  );
});

/** Handbook constants (PHAK ch. 5, from memory): within the 0.3 % and 0.1 % that the module states. */
test("the handbook's rounded relations lie within what is said of them", () => {
  fc.assert(
    fc.property(tas, bank, (tasKt, bankDeg) => {
      const tan = Math.tan((bankDeg * Math.PI) / 180);
      const radiusFt = (turnRadiusNm({ tasKt, bankDeg }) * 1852) / 0.3048;
      expect(Math.abs(tasKt ** 2 / (11.26 * tan) / radiusFt - 1)).toBeLessThan(0.0031);
      expect(Math.abs((1091 * tan) / tasKt / rateOfTurnDegPerS({ tasKt, bankDeg }) - 1)).toBeLessThan(0.0012);
    }),
  );
});

test("level wings turn at nothing, and left turns take as long as right", () => {
  expect(rateOfTurnDegPerS({ tasKt: 100, bankDeg: 0 })).toBe(0);
  expect(turnTimeS(-90)).toBe(30);
});

test.each([
  [() => rateOfTurnDegPerS({ tasKt: 100, bankDeg: 90 }), /bank must lie in \[0, 90\) degrees, got 90/],
  [
    () => rateOfTurnDegPerS({ tasKt: 0, bankDeg: 20 }),
    /true airspeed in knots must be finite and above 0, got 0/,
  ],
  [() => turnRadiusNm({ tasKt: 100, bankDeg: 0 }), /bank in degrees must be finite and above 0/],
  [() => turnRadiusAtRateNm({ tasKt: 100, rateDegPerS: Number.NaN }), /rate of turn/],
  [() => bankForRateDeg({ tasKt: Number.NaN }), /true airspeed/],
  [() => turnTimeS(90, 0), /rate of turn/],
])("refuses %s", (work, message) => {
  expect(work).toThrow(message);
});
