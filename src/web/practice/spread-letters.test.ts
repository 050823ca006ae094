import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { spread } from "../../../test/spread.ts";
import { spreadLetters } from "./spread-letters.ts";

const apartPx = (one: { x: number; y: number }, other: { x: number; y: number }) =>
  Math.hypot(one.x - other.x, one.y - other.y);

describe("letters on a chart", () => {
  it("stand at their places where there is room", () => {
    const places = [
      { x: 0, y: 0 },
      { x: 40, y: 0 },
    ];
    expect(spreadLetters(places)).toEqual(places);
  });
  it("never lie over one another, however close their places are", () => {
    const place = fc.record({ x: spread(0, 60), y: spread(0, 60) });
    fc.assert(
      fc.property(fc.array(place, { minLength: 2, maxLength: 5 }), (places) => {
        const letters = spreadLetters(places);
        for (const [at, one] of letters.entries())
          for (const other of letters.slice(at + 1)) expect(apartPx(one, other)).toBeGreaterThan(22);
      }),
    );
  });
  it("part on one and the same spot too", () => {
    const [one, other] = spreadLetters([
      { x: 5, y: 5 },
      { x: 5, y: 5 },
    ]);
    expect(apartPx(one!, other!)).toBeGreaterThanOrEqual(26);
  });
});
