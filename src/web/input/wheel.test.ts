import { beforeEach, describe, expect, it, vi } from "vitest";
import { wheelSteps } from "./wheel.ts";

beforeEach(() => {
  // Node has no wheel events; the counter only asks for the name of a unit.
  vi.stubGlobal("WheelEvent", { DOM_DELTA_PIXEL: 0, DOM_DELTA_LINE: 1 });
});

const report = (deltaY: number, deltaMode = 0, deltaX = 0) => ({ deltaX, deltaY, deltaMode }) as WheelEvent;

describe("wheelSteps", () => {
  it("makes one step of each notch, away from the hand up", () => {
    const steps = wheelSteps();
    expect([100, -120, 53, -400].map((px) => steps(report(px)))).toEqual([-1, 1, -1, 1]);
    expect(steps(report(3, 1))).toBe(-1);
  });

  it("gathers the small amounts of a trackpad", () => {
    const steps = wheelSteps();
    const made = Array.from({ length: 16 }, () => steps(report(-8)));
    expect(made.reduce((sum, step) => sum + step, 0)).toBe(4);
    expect(made.every((step) => step === 0 || step === 1)).toBe(true);
  });

  it("takes a wheel that Shift has turned sideways", () => {
    expect(wheelSteps()(report(0, 0, -100))).toBe(1);
  });
});
