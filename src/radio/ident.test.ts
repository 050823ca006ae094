import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { DME_IDENT_HZ, identCalls, identDurationS, identPeriodS, keying, VOR_IDENT_HZ } from "./ident.ts";

describe("keying", () => {
  test("of TXJ at 7 words a minute starts with a dash of 0.514 s", () => {
    const [first, second] = keying("TXJ");
    expect(first).toEqual({ startS: 0, durationS: expect.closeTo(0.514286, 6) });
    // T is one dash; three units of silence follow it.
    expect(second?.startS).toBeCloseTo((6 * 1.2) / 7, 12);
  });

  test("is longer the slower it is", () => {
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 24 }), (wpm) => {
        expect(identDurationS("TXJ", wpm)).toBeGreaterThan(identDurationS("TXJ", wpm + 1));
      }),
    );
  });
});

describe("what is on the air", () => {
  test("repeats each 10 s, and no ident runs into the next", () => {
    for (const text of ["E", "TXJ", "TEST", "000", "0000"]) {
      const calls = identCalls({ vorText: text, dmeText: text }, 300);
      const periodS = identPeriodS(text);
      expect(periodS).toBeGreaterThanOrEqual(10);
      expect(identDurationS(text)).toBeLessThan(periodS);
      for (let index = 1; index < calls.length; index++)
        expect(calls[index]!.startS - calls[index - 1]!.startS).toBeCloseTo(periodS, 9);
    }
    expect(identPeriodS("TXJ")).toBe(10);
    // Three noughts: 63 units of 0.171 s and a word gap of 7.
    expect(identPeriodS("000")).toBeCloseTo(12, 9);
  });

  test("is the DME alone once in 40 s when the VOR is silent, the first at once", () => {
    expect(identCalls({ vorText: null, dmeText: "TXJ" }, 100)).toEqual(
      [0, 40, 80].map((startS) => ({ startS, text: "TXJ", toneHz: DME_IDENT_HZ })),
    );
  });

  test("is the VOR in every turn when the DME sends none, and nothing when neither does", () => {
    const vorOnly = identCalls({ vorText: "TXJ", dmeText: null }, 40);
    expect(vorOnly.map((call) => call.toneHz)).toEqual(Array(4).fill(VOR_IDENT_HZ));
    expect(identCalls({ vorText: null, dmeText: null }, 40)).toEqual([]);
  });

  test("holds every call that starts in the time, none that starts at its end", () => {
    expect(identCalls({ vorText: "TXJ", dmeText: null }, 20)).toHaveLength(2);
    expect(identCalls({ vorText: "TXJ", dmeText: null }, 20.001)).toHaveLength(3);
    expect(identCalls({ vorText: "TXJ", dmeText: null }, 0)).toEqual([]);
  });
});
