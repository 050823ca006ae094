import fc from "fast-check";
import { expect, test } from "vitest";
import {
  defaultEirpW,
  fieldMicrovoltPerM,
  fieldVerdict,
  freeSpaceLossDb,
  powerFluxDbwPerM2,
} from "./field-strength.ts";

test("the field halves when the distance doubles, and doubles with four times the power", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.2, max: 400, noNaN: true }),
      fc.double({ min: 1, max: 500, noNaN: true }),
      (distanceNm, eirpW) => {
        const field = fieldMicrovoltPerM(eirpW, distanceNm);
        expect(fieldMicrovoltPerM(eirpW, 2 * distanceNm) / field).toBeCloseTo(0.5, 9);
        expect(fieldMicrovoltPerM(4 * eirpW, distanceNm) / field).toBeCloseTo(2, 9);
        expect(freeSpaceLossDb(113, 2 * distanceNm) - freeSpaceLossDb(113, distanceNm)).toBeCloseTo(
          6.0206,
          4,
        );
      },
    ),
  );
});

test("power flux is the power spread over the sphere (second route: P / 4 pi d squared)", () => {
  const distanceM = 40 * 1852;
  const spreadDb = 10 * Math.log10(100 / (4 * Math.PI * distanceM ** 2));
  expect(powerFluxDbwPerM2(fieldMicrovoltPerM(100, 40))).toBeCloseTo(spreadDb, 9);
});

test("is finite at the antenna", () => {
  expect(fieldMicrovoltPerM(200, 0)).toBe(fieldMicrovoltPerM(200, 100 / 1852));
});

test.each([
  [90, "good"],
  [89.9, "weak"],
  [28.5, "weak"],
  [28.4, "too-weak"],
  [0, "too-weak"],
] as const)("a field of %d uV/m is %s", (field, verdict) => {
  expect(fieldVerdict(field)).toBe(verdict);
});

test("a typical 200 W station keeps the published minimum beyond every service volume", () => {
  // So in free space it is the horizon that ends reception: 90 uV/m lie 465 NM out.
  expect(fieldVerdict(fieldMicrovoltPerM(defaultEirpW("VH"), 130))).toBe("good");
  expect(fieldVerdict(fieldMicrovoltPerM(200, 464))).toBe("good");
  expect(fieldVerdict(fieldMicrovoltPerM(200, 466))).toBe("weak");
  expect(defaultEirpW("T")).toBeLessThan(defaultEirpW(null));
});
