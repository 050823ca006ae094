import { describe, expect, it } from "vitest";
import { screenDirectionDeg, turnFollower } from "./turn.ts";

const CENTRE = { x: 100, y: 100 };
const at = (deg: number, radius = 50) => ({
  x: CENTRE.x + radius * Math.sin((deg * Math.PI) / 180),
  y: CENTRE.y - radius * Math.cos((deg * Math.PI) / 180),
});

describe("turning by hand", () => {
  it("counts directions clockwise from straight up", () => {
    expect(screenDirectionDeg(CENTRE, at(0))).toBeCloseTo(0);
    expect(screenDirectionDeg(CENTRE, at(90))).toBeCloseTo(90);
    expect(screenDirectionDeg(CENTRE, at(225))).toBeCloseTo(225);
    expect(screenDirectionDeg(CENTRE, CENTRE)).toBe(0);
  });

  it("counts on through straight up, either way round, and past a whole turn", () => {
    const clockwise = turnFollower(CENTRE, at(350));
    expect(clockwise(at(10))).toBeCloseTo(20);
    const anticlockwise = turnFollower(CENTRE, at(10));
    expect(anticlockwise(at(350))).toBeCloseTo(-20);
    const round = turnFollower(CENTRE, at(0));
    for (const deg of [90, 180, 270, 0]) round(at(deg));
    expect(round(at(45))).toBeCloseTo(405);
  });

  it("stands still while the hand crosses the middle", () => {
    const turned = turnFollower(CENTRE, at(0));
    expect(turned(at(30))).toBeCloseTo(30);
    expect(turned(at(200, 3))).toBeCloseTo(30);
  });
});
