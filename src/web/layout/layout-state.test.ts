import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { firstLayout, isPhone, layoutFrom, projectedScale } from "./layout-state.ts";

const FIRST = firstLayout({ widthPx: 1440, heightPx: 900 });

describe("the layout", () => {
  it("begins with all four views, and leaves the signal away where there is little height", () => {
    expect(FIRST.prepare.shown).toEqual(["chart", "panel", "signal", "reasons"]);
    expect(firstLayout({ widthPx: 1024, heightPx: 768 }).prepare.shown).toEqual([
      "chart",
      "panel",
      "reasons",
    ]);
    expect(FIRST.project.shown).not.toContain("reasons");
  });

  it("is read back as it was stored", () => {
    const layout = {
      preset: "project",
      prepare: { shown: ["panel", "reasons"], enlarged: "reasons" },
      project: { shown: ["chart"], enlarged: null },
    } as const;
    expect(layoutFrom(JSON.stringify(layout), FIRST)).toEqual(layout);
  });

  it("survives whatever is in the store, and keeps what is sound in it", () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
        expect(layoutFrom(text, FIRST).prepare.shown.length).toBeGreaterThan(0);
      }),
    );
    const half = JSON.stringify({ preset: "prepare", prepare: { shown: ["chart"] }, project: 7 });
    expect(layoutFrom(half, FIRST)).toEqual({ ...FIRST, prepare: { shown: ["chart"], enlarged: null } });
    expect(layoutFrom('{"preset":"pro', FIRST)).toEqual(FIRST);
  });

  it("projects in type that grows with the screen, up to twice", () => {
    expect(projectedScale({ widthPx: 3840, heightPx: 2160 })).toBe(2);
    expect(projectedScale({ widthPx: 1920, heightPx: 1080 })).toBeCloseTo(1.93, 2);
    expect(projectedScale({ widthPx: 1440, heightPx: 900 })).toBe(1.5);
    expect(projectedScale({ widthPx: 1024, heightPx: 768 })).toBe(1.25);
  });

  it("is that of a phone in a small window, held either way", () => {
    const sizes = [
      [390, 844],
      [844, 390],
      [690, 900],
      [768, 1024],
      [1024, 768],
      [1280, 600],
    ] as const;
    expect(sizes.map(([widthPx, heightPx]) => isPhone({ widthPx, heightPx }))).toEqual([
      true,
      true,
      true,
      true,
      false,
      false,
    ]);
  });
});
