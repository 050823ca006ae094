import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { geodesicDistanceNm } from "../../earth/index.ts";
import { NARROWEST_NM, panned, projectionOf, WIDEST_NM, zoomed } from "./chart-window.ts";

const SIZE = { widthPx: 840, heightPx: 780 };
const VIEW = { centre: { latDeg: -10.3, lonDeg: 1.9 }, widthNm: 120 };
/** Less than the eye sees. */
const NEAR_PX = 0.1;

const onPaper = fc.record({
  x: fc.double({ min: 0, max: SIZE.widthPx, noNaN: true }),
  y: fc.double({ min: 0, max: SIZE.heightPx, noNaN: true }),
});

describe("panned", () => {
  it("brings the place under the hand to where the hand goes", () => {
    fc.assert(
      fc.property(onPaper, onPaper, (from, to) => {
        const held = projectionOf(VIEW, SIZE).toWorld(from.x, from.y);
        const view = panned(VIEW, SIZE, from, to);
        const now = projectionOf(view, SIZE).toPaper(held);
        expect(Math.hypot(now.x - to.x, now.y - to.y)).toBeLessThan(NEAR_PX);
        expect(view.widthNm).toBe(VIEW.widthNm);
      }),
    );
  });

  it("stays where it is when dragged by nothing", () => {
    const { centre } = panned(VIEW, SIZE, { x: 100, y: 700 }, { x: 100, y: 700 });
    expect(geodesicDistanceNm(centre, VIEW.centre)).toBeLessThan((NEAR_PX * VIEW.widthNm) / SIZE.widthPx);
  });
});

describe("zoomed", () => {
  it("keeps the place under the hand where it is", () => {
    fc.assert(
      fc.property(onPaper, fc.double({ min: 0.5, max: 3, noNaN: true }), (about, factor) => {
        const held = projectionOf(VIEW, SIZE).toWorld(about.x, about.y);
        const view = zoomed(VIEW, SIZE, factor, about);
        const now = projectionOf(view, SIZE).toPaper(held);
        expect(Math.hypot(now.x - about.x, now.y - about.y)).toBeLessThan(NEAR_PX);
        expect(view.widthNm).toBeCloseTo(VIEW.widthNm / factor);
      }),
    );
  });

  it("ends at the narrowest and the widest view", () => {
    const middle = { x: 420, y: 390 };
    expect(zoomed(VIEW, SIZE, 1e4, middle).widthNm).toBe(NARROWEST_NM);
    expect(zoomed(VIEW, SIZE, 1e-4, middle).widthNm).toBe(WIDEST_NM);
  });
});
