import { describe, expect, it } from "vitest";
import { chartProjection } from "../../draw/index.ts";
import { viewThatKeeps } from "./keep-in-sight.ts";

const view = { centre: { latDeg: -10.3, lonDeg: 2 }, widthNm: 60 };
const size = { widthPx: 900, heightPx: 600 };
const paper = chartProjection(view, size.widthPx, size.heightPx);

describe("the chart in flight", () => {
  it.each([
    [450, 300],
    [60, 300],
    [450, 545],
  ])("stays while the aircraft is well on it (%i, %i)", (x, y) => {
    expect(viewThatKeeps({ view, size }, paper.toWorld(x, y))).toBeNull();
  });

  it.each([
    [30, 300],
    [450, 590],
    [890, 20],
    [450, -400],
  ])("goes on to the next sheet when it comes to the edge (%i, %i)", (x, y) => {
    const position = paper.toWorld(x, y);
    expect(viewThatKeeps({ view, size }, position)).toEqual({ ...view, centre: position });
  });
});
