import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { spread } from "../../test/spread.ts";
import {
  magneticDeg,
  magneticFromTrue,
  reciprocal,
  stationDeg,
  stationFromTrue,
  threeDigits,
  trueDeg,
  trueFromMagnetic,
  trueFromStation,
  turnBetween,
  turned,
  wrap180,
  wrap360,
} from "./direction.ts";

const anyDeg = spread(-1e6, 1e6);
const variationDeg = spread(-180, 180);
const apart = (a: number, b: number) => Math.abs(wrap180(a - b));

describe("wrapping", () => {
  test.each([
    [0, 0, 0],
    [-0, 0, 0],
    [360, 0, 0],
    [-360, 0, 0],
    [180, 180, 180],
    [-180, 180, 180],
    [180.5, 180.5, -179.5],
    [359.9, 359.9, -0.1],
    [-0.1, 359.9, -0.1],
    [720.25, 0.25, 0.25],
    [-1e-20, 0, 0],
  ])("%d is %d on the circle and %d as a turn", (deg, circle, turn) => {
    expect(wrap360(deg)).toBeCloseTo(circle, 9);
    expect(wrap180(deg)).toBeCloseTo(turn, 9);
    expect(Object.is(wrap360(deg), -0)).toBe(false);
    expect(Object.is(wrap180(deg), -0)).toBe(false);
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])("refuses %d", (deg) => {
    expect(() => trueDeg(deg)).toThrow(/finite number of degrees/);
    expect(() => wrap180(deg)).toThrow(RangeError);
  });

  test("keeps every number in [0, 360) and (-180, 180], the same direction", () => {
    fc.assert(
      fc.property(anyDeg, (deg) => {
        const circle = wrap360(deg);
        const turn = wrap180(deg);
        expect(circle >= 0 && circle < 360 && turn > -180 && turn <= 180).toBe(true);
        expect(Object.is(circle, -0) || Object.is(turn, -0)).toBe(false);
        expect(Math.cos((circle * Math.PI) / 180)).toBeCloseTo(Math.cos((turn * Math.PI) / 180), 9);
        expect(Math.sin((circle * Math.PI) / 180)).toBeCloseTo(Math.sin((turn * Math.PI) / 180), 9);
      }),
    );
  });
});

describe("the three norths", () => {
  test.each([
    [360, 10, 350],
    [5, 10, 355],
    [355, -10, 5],
    [70, -10, 80],
  ])("true %d with variation %d east is magnetic %d", (trueHeading, variation, magnetic) => {
    expect(magneticFromTrue(trueDeg(trueHeading), variation)).toBe(magnetic);
    expect(stationFromTrue(trueDeg(trueHeading), variation)).toBe(magnetic);
  });

  test("there and back is the same direction", () => {
    fc.assert(
      fc.property(anyDeg, variationDeg, (deg, variation) => {
        const direction = trueDeg(deg);
        const viaMagnetic = trueFromMagnetic(magneticFromTrue(direction, variation), variation);
        const viaStation = trueFromStation(stationFromTrue(direction, variation), variation);
        expect(apart(viaMagnetic, direction)).toBeLessThan(1e-9);
        expect(apart(viaStation, direction)).toBeLessThan(1e-9);
      }),
    );
  });
});

describe("turns", () => {
  test.each([
    [350, 10, 20],
    [10, 350, -20],
    [0, 180, 180],
    [180, 0, 180],
    [90, 90, 0],
  ])("from %d to %d is %d", (from, to, turn) => {
    expect(turnBetween(magneticDeg(from), magneticDeg(to))).toBe(turn);
  });

  test("turning by the turn between arrives, and the way back is its opposite", () => {
    fc.assert(
      fc.property(anyDeg, anyDeg, (a, b) => {
        const from = stationDeg(a);
        const to = stationDeg(b);
        const turn = turnBetween(from, to);
        expect(apart(turned(from, turn), to)).toBeLessThan(1e-9);
        if (Math.abs(turn) < 180) expect(turnBetween(to, from)).toBeCloseTo(-turn, 9);
      }),
    );
  });

  test("the reciprocal lies 180 away and its reciprocal is the direction itself", () => {
    fc.assert(
      fc.property(anyDeg, (deg) => {
        const direction = trueDeg(deg);
        expect(Math.abs(turnBetween(direction, reciprocal(direction)))).toBeCloseTo(180, 9);
        expect(apart(reciprocal(reciprocal(direction)), direction)).toBeLessThan(1e-9);
      }),
    );
  });

  test("a small turn stays small through north", () => {
    fc.assert(
      fc.property(spread(-1, 1), spread(-1, 1), (a, b) => {
        expect(turnBetween(trueDeg(a), trueDeg(b))).toBeCloseTo(b - a, 9);
      }),
    );
  });
});

test.each([
  [0, "360"],
  [360, "360"],
  [359.5, "360"],
  [0.4, "360"],
  [-0, "360"],
  [0.5, "001"],
  [60, "060"],
  [7.49, "007"],
  [-90, "270"],
])("%d is written %s", (deg, text) => {
  expect(threeDigits(deg)).toBe(text);
});
