import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { VIEWS, type View } from "../../scene/index.ts";
import {
  type Arrangement,
  arrangementFrom,
  bringBack,
  isSeen,
  putAway,
  toggleEnlarged,
  toggleShown,
} from "./arrangement.ts";

const ALL: Arrangement = { shown: VIEWS, enlarged: null };
const view = fc.constantFrom(...VIEWS);
const arrangement: fc.Arbitrary<Arrangement> = fc
  .subarray([...VIEWS], { minLength: 1 })
  .chain((shown) => fc.record({ shown: fc.constant(shown), enlarged: fc.constantFrom(null, ...shown) }));
const seen = (of: Arrangement): View[] => VIEWS.filter((each) => isSeen(of, each));

describe("an arrangement", () => {
  it("always shows something, keeps the order, and enlarges only what lies on the table", () => {
    const change = fc.constantFrom(putAway, bringBack, toggleEnlarged, toggleShown);
    fc.assert(
      fc.property(arrangement, fc.array(fc.tuple(change, view)), (start, changes) => {
        const { shown, enlarged } = changes.reduce((now, [by, of]) => by(now, of), start);
        expect(shown.length).toBeGreaterThan(0);
        expect(shown).toEqual(VIEWS.filter((each) => shown.includes(each)));
        expect(enlarged === null || shown.includes(enlarged)).toBe(true);
      }),
    );
  });

  it("brings a view back to where it is seen, whatever was enlarged", () => {
    fc.assert(
      fc.property(arrangement, view, (start, wanted) => {
        const after = bringBack(start, wanted);
        expect(seen(after)).toContain(wanted);
        expect(bringBack(after, wanted)).toBe(after);
      }),
    );
  });

  it("enlarges and shrinks back to what it was", () => {
    fc.assert(
      fc.property(arrangement, view, (start, wanted) => {
        const large = toggleEnlarged({ ...start, enlarged: null }, wanted);
        expect(seen(large)).toEqual([wanted]);
        expect(seen(toggleEnlarged(large, wanted))).toEqual(
          VIEWS.filter((each) => each === wanted || start.shown.includes(each)),
        );
      }),
    );
  });

  it("puts a view away and brings it back, but never the last one away", () => {
    expect(seen(toggleShown(ALL, "signal"))).toEqual(["chart", "panel", "reasons"]);
    expect(toggleShown(toggleShown(ALL, "signal"), "signal")).toEqual(ALL);
    const alone: Arrangement = { shown: ["panel"], enlarged: null };
    expect(putAway(alone, "panel")).toBe(alone);
    expect(putAway({ shown: ["chart", "panel"], enlarged: "panel" }, "panel")).toEqual({
      shown: ["chart"],
      enlarged: null,
    });
  });

  it("is read back from what was stored, and from nothing else", () => {
    fc.assert(
      fc.property(arrangement, (each) => {
        expect(arrangementFrom(JSON.parse(JSON.stringify(each)))).toEqual(each);
      }),
    );
    for (const spoilt of [null, 3, "chart", [], {}, { shown: "chart" }, { shown: [] }, { shown: ["map"] }])
      expect(arrangementFrom(spoilt)).toBeNull();
    expect(arrangementFrom({ shown: ["panel", "x", "chart"], enlarged: "reasons" })).toEqual({
      shown: ["chart", "panel"],
      enlarged: null,
    });
  });
});
