import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { spread } from "../../test/spread.ts";
import { type TrueDeg, trueDeg, turnBetween, turned } from "./direction.ts";
import {
  headingAndTasForTrack,
  headingForCourse,
  trackForHeading,
  windAlong,
  windFromTriangle,
} from "./wind-triangle.ts";

const direction = spread(0, 360).map(trueDeg);
const speed = (min: number, max: number) => spread(min, max);
const near = (a: TrueDeg, b: TrueDeg, withinDeg = 1e-6) =>
  expect(Math.abs(turnBetween(a, b))).toBeLessThan(withinDeg);

/** The second route: plain vectors, east and north. */
const vector = (towardDeg: number, kt: number) => [
  kt * Math.sin((towardDeg * Math.PI) / 180),
  kt * Math.cos((towardDeg * Math.PI) / 180),
];

describe("signs", () => {
  test("a wind from the right asks for a right correction and gives a left drift", () => {
    const wind = { from: trueDeg(90), speedKt: 20 };
    const held = headingForCourse({ course: trueDeg(0), tasKt: 100, wind });
    const made = trackForHeading({ heading: trueDeg(0), tasKt: 100, wind });
    if (held.kind !== "held" || made.kind !== "moving") throw new Error("must fly");
    expect(held.correctionDeg).toBeGreaterThan(0);
    expect(made.driftDeg).toBeLessThan(0);
    expect(made.track).toBeGreaterThan(180);
  });

  test("windAlong counts headwind and wind from the right positive", () => {
    const wind = { from: trueDeg(30), speedKt: 20 };
    expect(windAlong(trueDeg(0), wind).headwindKt).toBeCloseTo(17.3205, 4);
    expect(windAlong(trueDeg(0), wind).crosswindKt).toBeCloseTo(10, 9);
    expect(windAlong(trueDeg(210), wind).headwindKt).toBeCloseTo(-20, 9);
    expect(windAlong(trueDeg(120), wind).crosswindKt).toBeCloseTo(-20, 9);
  });
});

/** pedagogy of the demo isles, lane table: TAS 100, wind 140 true at 18; whole knots, magnetic headings taken back to true. */
test.each([
  [77.9, 90],
  [154.7, 82],
  [254.5, 106],
  [345.4, 116],
  [245.9, 103],
  [160.4, 83],
  [300.8, 117],
])("on a track of %d at TAS 100 in 140/18 the groundspeed is %d", (course, groundspeedKt) => {
  const held = headingForCourse({
    course: trueDeg(course),
    tasKt: 100,
    wind: { from: trueDeg(140), speedKt: 18 },
  });
  if (held.kind !== "held") throw new Error("must be held");
  expect(Math.abs(held.groundspeedKt - groundspeedKt)).toBeLessThan(1);
});

describe("a wind too strong", () => {
  test.each([
    ["across", 90, 101, "crosswind"],
    ["head on", 0, 100, "headwind"],
    ["head on, stronger", 0, 130, "headwind"],
    ["ahead and across", 50, 125, "headwind"],
  ] as const)("%s is said so", (_name, fromDeg, speedKt, why) => {
    const answer = headingForCourse({
      course: trueDeg(0),
      tasKt: 100,
      wind: { from: trueDeg(fromDeg), speedKt },
    });
    expect(answer).toMatchObject({ kind: "wind-too-strong", why });
  });

  test("a tailwind is never too strong, nor a crosswind just short of the airspeed with a tail component", () => {
    const tail = headingForCourse({
      course: trueDeg(0),
      tasKt: 100,
      wind: { from: trueDeg(180), speedKt: 300 },
    });
    expect(tail).toMatchObject({ kind: "held", groundspeedKt: 400 });
    const quartering = headingForCourse({
      course: trueDeg(0),
      tasKt: 100,
      wind: { from: trueDeg(100), speedKt: 100 },
    });
    expect(quartering.kind).toBe("held");
  });

  test("an aircraft standing in its headwind has no track", () => {
    const answer = trackForHeading({
      heading: trueDeg(30),
      tasKt: 60,
      wind: { from: trueDeg(30), speedKt: 60 },
    });
    expect(answer).toEqual({ kind: "standing", groundspeedKt: 0 });
  });

  test("flying slower than the headwind goes backward", () => {
    const answer = trackForHeading({
      heading: trueDeg(0),
      tasKt: 60,
      wind: { from: trueDeg(0), speedKt: 80 },
    });
    expect(answer).toMatchObject({ kind: "moving", track: 180, driftDeg: 180 });
  });
});

describe("calm", () => {
  test("changes nothing and has no minus zero", () => {
    const wind = { from: trueDeg(270), speedKt: 0 };
    const held = headingForCourse({ course: trueDeg(45), tasKt: 90, wind });
    expect(held).toEqual({ kind: "held", heading: 45, correctionDeg: 0, groundspeedKt: 90 });
    const made = trackForHeading({ heading: trueDeg(45), tasKt: 90, wind });
    expect(made).toMatchObject({ kind: "moving", track: 45, driftDeg: 0 });
    for (const value of [...Object.values(held), ...Object.values(made)])
      expect(Object.is(value, -0)).toBe(false);
  });

  test("is found as from 0 at 0", () => {
    const found = windFromTriangle({
      heading: trueDeg(7),
      tasKt: 100,
      track: trueDeg(7),
      groundspeedKt: 100,
    });
    expect(found).toEqual({ from: 0, speedKt: 0 });
  });
});

describe("laws", () => {
  const flight = fc.record({
    heading: direction,
    tasKt: speed(40, 500),
    from: direction,
    windKt: speed(0, 39),
  });

  test("track and groundspeed are the vector sum", () => {
    fc.assert(
      fc.property(flight, ({ heading, tasKt, from, windKt }) => {
        const made = trackForHeading({ heading, tasKt, wind: { from, speedKt: windKt } });
        if (made.kind !== "moving") throw new Error("must move");
        const [airE, airN] = vector(heading, tasKt);
        const [windE, windN] = vector(from + 180, windKt);
        const [overE, overN] = vector(made.track, made.groundspeedKt);
        expect(overE).toBeCloseTo(airE! + windE!, 6);
        expect(overN).toBeCloseTo(airN! + windN!, 6);
        near(turned(heading, made.driftDeg), made.track);
      }),
    );
  });

  test("the heading that holds a course makes that course good, with the same speed", () => {
    fc.assert(
      fc.property(flight, ({ heading: course, tasKt, from, windKt }) => {
        const wind = { from, speedKt: windKt };
        const held = headingForCourse({ course, tasKt, wind });
        if (held.kind !== "held") throw new Error("must be held");
        const made = trackForHeading({ heading: held.heading, tasKt, wind });
        if (made.kind !== "moving") throw new Error("must move");
        near(made.track, course);
        expect(made.groundspeedKt).toBeCloseTo(held.groundspeedKt, 6);
        expect(made.driftDeg).toBeCloseTo(-held.correctionDeg, 6);
      }),
    );
  });

  test("the wind is found again, and the heading and airspeed for the track made", () => {
    fc.assert(
      fc.property(flight, ({ heading, tasKt, from, windKt }) => {
        const wind = { from, speedKt: windKt };
        const made = trackForHeading({ heading, tasKt, wind });
        if (made.kind !== "moving") throw new Error("must move");
        const found = windFromTriangle({
          heading,
          tasKt,
          track: made.track,
          groundspeedKt: made.groundspeedKt,
        });
        expect(found.speedKt).toBeCloseTo(windKt, 5);
        if (windKt > 0.01) near(found.from, from, 1e-4);
        const needed = headingAndTasForTrack({ track: made.track, groundspeedKt: made.groundspeedKt, wind });
        near(needed.heading, heading);
        expect(needed.tasKt).toBeCloseTo(tasKt, 6);
        expect(needed.correctionDeg).toBeCloseTo(-made.driftDeg, 6);
      }),
    );
  });

  test("turning the whole triangle turns the answer and changes no speed", () => {
    fc.assert(
      fc.property(flight, speed(-720, 720), ({ heading, tasKt, from, windKt }, by) => {
        const made = trackForHeading({ heading, tasKt, wind: { from, speedKt: windKt } });
        const other = trackForHeading({
          heading: turned(heading, by),
          tasKt,
          wind: { from: turned(from, by), speedKt: windKt },
        });
        if (made.kind !== "moving" || other.kind !== "moving") throw new Error("must move");
        near(turned(made.track, by), other.track);
        expect(other.groundspeedKt).toBeCloseTo(made.groundspeedKt, 6);
        expect(other.driftDeg).toBeCloseTo(made.driftDeg, 6);
      }),
    );
  });
});

test("needs no airspeed where the wind alone makes the track", () => {
  const needed = headingAndTasForTrack({
    track: trueDeg(90),
    groundspeedKt: 20,
    wind: { from: trueDeg(270), speedKt: 20 },
  });
  expect(needed).toEqual({ heading: 90, tasKt: 0, correctionDeg: 0 });
});

test.each([-1, Number.NaN, Number.POSITIVE_INFINITY])("refuses a speed of %d", (kt) => {
  const heading = trueDeg(0);
  const wind = { from: heading, speedKt: 5 };
  expect(() => headingForCourse({ course: heading, tasKt: kt, wind })).toThrow(
    /true airspeed must be a finite/,
  );
  expect(() => trackForHeading({ heading, tasKt: 90, wind: { from: heading, speedKt: kt } })).toThrow(
    /wind speed/,
  );
  expect(() => windFromTriangle({ heading, tasKt: 90, track: heading, groundspeedKt: kt })).toThrow(
    /groundspeed/,
  );
});
