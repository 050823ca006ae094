import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { spread } from "../../test/spread.ts";
import { identDurationS, identPeriodS, keying } from "./ident.ts";
import { identKey } from "./ident-key.ts";
import { dotMs } from "./morse.ts";
import type { IdentModulation } from "./vor-modulation.ts";

const DOT_S = dotMs(7) / 1000;
const code = (text: string, shared = false): IdentModulation => ({ kind: "code", text, shared });

describe("the key", () => {
  test("is down in the middle of a stroke, half way at half its edge, up in the gaps", () => {
    const key = identKey(code("A"));
    expect(key(0)).toBe(0);
    expect(key(0.0025)).toBeCloseTo(0.5, 9);
    expect(key(DOT_S / 2)).toBe(1);
    expect(key(1.5 * DOT_S)).toBe(0);
    expect(key(3.5 * DOT_S)).toBe(1);
    expect(key(6 * DOT_S)).toBe(0);
    expect(key(10 + DOT_S / 2)).toBe(1);
  });

  test.each(["E", "TXJ", "TEST", "000"])(
    "keys %s as long as its code says, from its clock's beginning or days on",
    (text) => {
      for (const turn of [0, 3, 100_000]) {
        const key = identKey(code(text));
        const startS = turn * identPeriodS(text);
        let downS = 0;
        let lastS = 0;
        const stepS = 0.001;
        for (let sinceS = stepS / 2; sinceS < identPeriodS(text); sinceS += stepS) {
          const down = key(startS + sinceS);
          downS += down * stepS;
          if (down > 0.5) lastS = sinceS;
        }
        expect(lastS).toBeCloseTo(identDurationS(text) - 0.0025, 2);
        // Each edge of 5 ms is half way down on the average.
        const strokes = keying(text);
        const keyedS = strokes.reduce((sum, { durationS }) => sum + durationS - 0.005, 0);
        expect(downS).toBeCloseTo(keyedS, 3);
      }
    },
  );

  test("leaves every fourth turn to a DME", () => {
    const key = identKey(code("E", true));
    expect([0, 10, 20, 30, 40, 70].map((atS) => key(atS + DOT_S / 2))).toEqual([1, 1, 1, 0, 1, 0]);
  });

  test("says the same whatever was asked before", () => {
    fc.assert(
      fc.property(fc.array(spread(0, 90), { minLength: 2, maxLength: 20 }), (momentsS) => {
        const key = identKey(code("HJL", true));
        for (const atS of momentsS) expect(key(atS)).toBeCloseTo(identKey(code("HJL", true))(atS), 9);
      }),
    );
  });
});
