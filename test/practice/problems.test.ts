/** Every form of problem over the demo isles: both routes agree, the ground rules hold, and codes lead back. */

import { describe, expect, it } from "vitest";
import {
  apart,
  FORMS,
  makeProblem,
  optionsOf,
  type Problem,
  readProblemCode,
  shownOrder,
} from "../../src/practice/index.ts";
import { PRACTICE_ISLES } from "../practice-world.ts";

const SEEDS = Array.from({ length: 40 }, (_, seed) => seed);

const problems: readonly Problem[] = FORMS.flatMap((form) =>
  SEEDS.map((seed) => {
    const mode = form.modes[seed % form.modes.length] ?? "choose";
    const made = makeProblem(PRACTICE_ISLES, form.id, mode, seed);
    if (made.kind === "none") throw new Error(made.says);
    return made.problem;
  }),
);

describe("a problem", () => {
  it.each(FORMS.map((form) => form.id))("of the form %s obeys the ground rules", (id) => {
    for (const problem of problems.filter(({ form }) => form.id === id)) {
      const { tolerance } = problem.case;
      for (const { answer } of problem.slipAnswers)
        expect(apart(answer, problem.truth, tolerance)).toBeGreaterThanOrEqual(2);
      const options = optionsOf(problem);
      expect(options.options.length).toBeGreaterThan(
        problem.case.leastSlipAnswers ?? problem.form.leastSlipAnswers,
      );
      expect(options.options.length).toBeLessThanOrEqual(6);
      for (const [at, option] of options.options.entries())
        for (const other of options.options.slice(0, at))
          expect(apart(option.answer, other.answer, tolerance)).toBeGreaterThanOrEqual(2);
      expect([...shownOrder(problem, options)].sort()).toEqual(options.options.map((_, at) => at));
      expect(problem.case.steps().length).toBeGreaterThan(0);
    }
  });

  it("is the same again from its code", () => {
    for (const problem of problems) {
      const read = readProblemCode(problem.code.toLowerCase());
      if (read.kind === "fault") throw new Error(read.says);
      const made = makeProblem(PRACTICE_ISLES, read.form, read.mode, read.seed);
      if (made.kind === "none") throw new Error(made.says);
      expect(made.problem.case.scene).toEqual(problem.case.scene);
      expect(made.problem.truth).toEqual(problem.truth);
    }
  });
});
