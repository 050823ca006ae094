import { expect, it } from "vitest";
import { keyedNow, letterNow } from "./keyed-now.ts";

const DOT_S = 60 / 350;
const TXJ = { roundS: 10, firstAtS: 0, calls: [{ startS: 0, text: "TXJ", toneHz: 1020 }] };
const at = (dots: number) => keyedNow({ kind: "ident", text: "TXJ" }, TXJ, dots * DOT_S);

it("names the letter under the key, by hand from ITU-R M.1677-1: T at 0, X at 6, J at 20, the end at 33 dots", () => {
  const named = [0, 5.9, 6.1, 19.9, 20.1, 32.9, 33.1].map((dots) => letterNow(at(dots), true));
  expect(named).toEqual(["T", "T", "X", "X", "J", "J", null]);
  expect(letterNow(at(7), false)).toBe("letter 2 of 3");
  expect(at(33).code.lengthUnits).toBe(33);
});

it("begins anew with each call", () => {
  expect(keyedNow({ kind: "ident", text: "TXJ" }, TXJ, 30 + 7 * DOT_S).sentUnits).toBeCloseTo(7, 6);
  expect(
    letterNow(keyedNow({ kind: "ident", text: "TXJ" }, { ...TXJ, firstAtS: 1.3 }, 0.5), true),
  ).toBeNull();
});

it("runs along a test signal's row of dots, one dot and gap after the other", () => {
  const dots = { roundS: 2 * DOT_S, firstAtS: 0, calls: [{ startS: 0, text: "E", toneHz: 1020 }] };
  const one = keyedNow({ kind: "test-signal" }, dots, 5.5 * 2 * DOT_S);
  expect(one.sentUnits).toBeCloseTo(11, 6);
  expect(one.code.strokes[5]).toEqual({ startUnits: 10, units: 1 });
  expect(keyedNow({ kind: "test-signal" }, dots, 12 * 2 * DOT_S + 0.01).sentUnits).toBeLessThan(0.1);
  expect(letterNow(one, true)).toBeNull();
});
