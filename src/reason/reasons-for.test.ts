import fc from "fast-check";
import { expect, test } from "vitest";
import { CORVANE, HJL, OXK, onRadial, type Setup, situationOf, TXJ } from "../../test/isles.ts";
import type { Reason, ReasonRule } from "./reason.ts";
import { reasonsFor } from "./reasons-for.ts";
import { underCovers } from "./under-covers.ts";

const argue = (setup: Setup): Reason[] => reasonsFor(situationOf(setup));
const rules = (setup: Setup): ReasonRule[] => argue(setup).map((reason) => reason.rule);
const step = (setup: Setup, rule: ReasonRule): Reason | undefined =>
  argue(setup).find((reason) => reason.rule === rule);

const OFF_THE_LINE: Setup = { at: onRadial(TXJ, 246, 18), courseDeg: 70, headingDeg: 90 };

test("a plain scene is argued in the order an instructor asks", () => {
  expect(rules(OFF_THE_LINE)).toEqual([
    "tuned",
    "received",
    "radial",
    "norths",
    "line",
    "to-from",
    "deviation",
    "distance",
    "heading-agrees",
    "fly",
  ]);
  expect(argue(OFF_THE_LINE).map((reason) => reason.number)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
});

test("the sentences carry the numbers of the scene", () => {
  expect(step(OFF_THE_LINE, "tuned")?.sentence).toBe(
    "115.60 is Tamsel, and its ident is heard: TXJ, − −··− ·−−−.",
  );
  expect(step(OFF_THE_LINE, "to-from")?.sentence).toMatch(
    /^Radial 246 lies 176° from course 070, more than 90°: you are on the TO side/,
  );
  expect(step(OFF_THE_LINE, "deviation")).toMatchObject({
    title: "2 dots left",
    sentence: "You are 4° from the line at 2° a dot: facing 070, the line is on your left.",
  });
  // One in sixty: 18 × 4 ÷ 60 = 1.2; exact, 18 sin 4° = 1.256.
  expect(step(OFF_THE_LINE, "distance")?.title).toBe("1.2 NM off");
  expect(step(OFF_THE_LINE, "distance")?.numbers.offCourseNm).toBeCloseTo(1.2556, 3);
});

test("no step is given that the scene does not need", () => {
  // On the line with the nose along it: nothing to say of distance or of reversal.
  const onLine = rules({ ...OFF_THE_LINE, courseDeg: 66 });
  expect(onLine).not.toContain("distance");
  expect(onLine).not.toContain("heading-agrees");
  // Station and compass within a degree of each other.
  const aligned = { ...TXJ, declinationDeg: -7.4 };
  expect(rules({ ...OFF_THE_LINE, stations: [aligned] })).not.toContain("norths");
  expect(rules(OFF_THE_LINE)).not.toContain("service-volume");
  expect(rules({ ...OFF_THE_LINE, face: "rmi" })).toEqual(["tuned", "received", "radial", "norths", "fly"]);
});

test("nothing received stops the argument where it fails", () => {
  const behind: Setup = { at: onRadial(HJL, 223, 30), tune: 113.9, land: CORVANE };
  expect(rules(behind)).toEqual(["tuned", "received"]);
  // 11,700 ft by the worked profile: 3,145 ft over 9.0 NM carried on to 30, and the earth's curve.
  expect(step(behind, "received")?.sentence).toMatch(
    /^Mount Corvane stands between you and Haldrey: near 11,[678]00 ft/,
  );
  expect(rules({ ...OFF_THE_LINE, tune: 108.2 })).toEqual(["tuned"]);
  expect(step({ ...OFF_THE_LINE, tune: 108.1 }, "tuned")?.sentence).toMatch(/localizer/);
});

test("a station on the other side of the world is argued as well as a near one", () => {
  expect(step({ at: { latDeg: 70, lonDeg: 100 } }, "received")?.sentence).toMatch(
    /no altitude you can fly would see it/,
  );
});

test("beyond the published volume the reasons warn, though the needle lives", () => {
  const far: Setup = { at: onRadial(OXK, 348, 45), tune: 117.3, courseDeg: 348, altitudeFt: 3500 };
  expect(step(far, "service-volume")?.sentence).toMatch(
    /class VL station.*promised to 40 NM; you are at 45\.0 NM/,
  );
});

test("reversed sensing is said for a fixed card and not for a card that turns", () => {
  const away: Setup = { ...OFF_THE_LINE, headingDeg: 250 };
  expect(step(away, "heading-agrees")?.sentence).toMatch(/needle is backwards.*turn to 070, or select 250/);
  expect(step({ ...away, face: "hsi" }, "heading-agrees")?.sentence).toMatch(
    /bar still lies where the line is/,
  );
});

test("the turn given leads to the side of the needle", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 359 }), fc.integer({ min: 0, max: 359 }), (radial, course) => {
      const setup: Setup = { at: onRadial(TXJ, radial, 18), courseDeg: course };
      const advice = step(setup, "fly");
      const cut = advice?.numbers.cutDeg;
      if (typeof cut !== "number") return;
      const [reading] = situationOf(setup).receivers;
      expect(advice?.sentence).toContain(`cut to the ${reading?.needleSide} of course`);
      // Inbound the cut must exceed the degrees off, or the line is met behind the station (90 at the most).
      if (reading?.flag === "TO")
        expect(Math.min(cut + 1e-6, 89.9)).toBeGreaterThan(Math.min(Math.abs(reading.deviationDeg ?? 0), 89));
    }),
    { seed: 7, numRuns: 400 },
  );
});

test("every step names its source, and speaks in one sentence", () => {
  const setups: Setup[] = [
    OFF_THE_LINE,
    { ...OFF_THE_LINE, stations: [{ ...TXJ, status: "test" }] },
    { ...OFF_THE_LINE, stations: [{ ...TXJ, status: "silent" }] },
    { ...OFF_THE_LINE, stations: [{ ...TXJ, kind: "DME" }] },
    { ...OFF_THE_LINE, altitudeFt: 9000, at: onRadial(TXJ, 10, 1) },
    { ...OFF_THE_LINE, courseDeg: 156 },
  ];
  for (const reason of setups.flatMap(argue)) {
    expect(reason.source.length).toBeGreaterThan(5);
    expect(reason.sentence).toMatch(/^[A-Z0-9].*\.$/);
    expect(reason.sentence).not.toMatch(/\. [A-Z]/);
    expect(reason.sentence).not.toMatch(/NaN|undefined|null/);
    expect(reason.parts.length).toBeGreaterThan(0);
  }
});

test("a cover withholds the steps that would say what lies under it", () => {
  const reasons = argue(OFF_THE_LINE);
  const spoken = (covers: string[]) =>
    underCovers(reasons, covers).flatMap((each) => (each.kind === "spoken" ? [each.reason.sentence] : []));
  expect(spoken([]).length).toBe(reasons.length);
  expect(spoken(["NAV1.needle"]).join(" ")).not.toMatch(/left|dot|1\.2 NM/);
  expect(spoken(["NAV1.flag"]).join(" ")).not.toMatch(/\bTO\b|FROM/);
  expect(spoken(["aircraft"]).join(" ")).not.toMatch(/246|18\.0 NM|left/);
  expect(spoken(["NAV1.course"]).join(" ")).not.toMatch(/070/);
  expect(spoken(["NAV1.ident"]).join(" ")).not.toMatch(/TXJ|Tamsel/);
  expect(spoken(["NAV1"])).toEqual([]);
  expect(spoken(["NAV2.needle"]).length).toBe(reasons.length);
  // Places are kept, so that lifting a cover fills the gap.
  expect(underCovers(reasons, ["NAV1.needle"]).length).toBe(reasons.length);
});
