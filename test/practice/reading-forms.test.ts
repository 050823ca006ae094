/** What is special in the forms of reading and position: what they show, what they keep hidden, and which scenes they allow. */

import { describe, expect, it } from "vitest";
import { chartDescription } from "../../src/draw/chart/index.ts";
import { geodesicDistanceNm, turnBetween, wrap180 } from "../../src/earth/index.ts";
import { type FormId, type Mode, makeProblem, type Problem } from "../../src/practice/index.ts";
import { PRACTICE_ISLES } from "../practice-world.ts";

const problemsOf = (form: FormId, mode: Mode = "choose", count = 80): readonly Problem[] =>
  Array.from({ length: count }, (_, seed) => {
    const made = makeProblem(PRACTICE_ISLES, form, mode, seed);
    if (made.kind === "none") throw new Error(made.says);
    return made.problem;
  });

const first = ({ situation }: Problem) => situation.receivers[0]!;

describe("needle and flag", () => {
  it.each(["needle-forecast", "flag-forecast", "side-call", "turn-call", "hsi-turn"] as const)(
    "of %s are never within five degrees of abeam, nor nearly centred",
    (form) => {
      for (const problem of problemsOf(form)) {
        const { radial, settings, deviationDeg } = first(problem);
        expect(Math.abs(Math.abs(turnBetween(settings.course, radial!)) - 90)).toBeGreaterThanOrEqual(5);
        const off = Math.abs(deviationDeg!);
        expect(off < 1e-3 || off >= 1.69).toBe(true);
      }
    },
  );

  it.each(["flag-forecast", "overhead-or-abeam"] as const)(
    "of %s leave a mistaken idea right now and then, so that its opposite is no rule",
    (form) => {
      const fooled = problemsOf(form).filter(({ slipAnswers }) => slipAnswers.length > 0).length;
      expect(fooled).toBeGreaterThanOrEqual(32);
      expect(fooled).toBeLessThanOrEqual(72);
    },
  );
});

describe("the chart", () => {
  it.each(["place-dot", "two-line-fix"] as const)("of %s says nothing of place, radial or course", (form) => {
    for (const { situation, truth } of problemsOf(form, "choose", 20)) {
      expect(chartDescription(situation)).not.toMatch(/bears|course \d/);
      expect(truth.kind).toBe("place");
    }
  });

  it("of measure-radial does not write the radial", () => {
    for (const { situation } of problemsOf("measure-radial", "choose", 20))
      expect(chartDescription(situation)).not.toMatch(/bears/);
  });
});

describe("two-line-fix", () => {
  it("cuts at 30 to 150 degrees, 8 NM or more from both, with TO and with FROM", () => {
    const flags = new Set<string>();
    for (const { situation } of problemsOf("two-line-fix")) {
      const [one, two] = situation.receivers;
      const cut = Math.abs(wrap180(one!.geometry!.azimuthFromStation - two!.geometry!.azimuthFromStation));
      expect(cut).toBeGreaterThan(29);
      expect(cut).toBeLessThan(151);
      for (const { geometry, needleSide, flag } of [one!, two!]) {
        expect(geometry!.distanceNm).toBeGreaterThanOrEqual(8);
        expect(needleSide).toBe("centre");
        flags.add(flag);
      }
    }
    expect([...flags].sort()).toEqual(["FROM", "TO"]);
  });

  it("puts who exchanges the receivers at the mirror of the place, through the middle between the stations", () => {
    for (const { situation, slipAnswers } of problemsOf("two-line-fix", "tell", 40)) {
      const crossed = slipAnswers.find(({ slip }) => slip === "receivers-crossed")?.answer;
      if (crossed?.kind !== "place") continue;
      const [one, two] = situation.receivers.map(({ station }) => station!.position);
      // In the plane the opposite corner of a parallelogram: as far from the one station as the place is from the other.
      const here = situation.scene.aircraft.position;
      expect(geodesicDistanceNm(crossed.position, one!)).toBeCloseTo(geodesicDistanceNm(here, two!), -1);
    }
  });
});

describe("next-panel", () => {
  it("asks for legs in wind, legs of an arc and turns onto the line, begun too soon, too late and just right", () => {
    const problems = problemsOf("next-panel", "choose", 120);
    const asks = (words: RegExp) => problems.filter((problem) => words.test(problem.case.scene.ask));
    expect(asks(/hold heading and speed/).length).toBeGreaterThan(30);
    expect(asks(/NM arc/).length).toBeGreaterThan(10);
    const turns = asks(/standard-rate turn/);
    const ends = turns.map((problem) => problem.case.steps().join(" "));
    for (const end of ["short of it", "beyond it", "on the line"])
      expect(
        ends.some((steps) => steps.includes(end)),
        end,
      ).toBe(true);
  });
});

it("near-station-act is asked within a mile of a live needle, or before a hold", () => {
  const problems = problemsOf("near-station-act", "choose", 60);
  const holds = problems.filter(({ case: { skills } }) => skills?.includes("racetrack"));
  const asks = (words: RegExp) => holds.filter((problem) => words.test(problem.case.scene.ask));
  expect(asks(/Which entry/).length).toBeGreaterThan(5);
  expect(asks(/teardrop entry is right/).length).toBeGreaterThan(1);
  expect(asks(/correct outbound/).length).toBeGreaterThan(1);
  for (const problem of problems.filter((one) => !holds.includes(one))) {
    expect(first(problem).geometry!.distanceNm).toBeLessThanOrEqual(1.01);
    expect(first(problem).flag).toBe("TO");
  }
});
