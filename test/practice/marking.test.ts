/** Marking: what was written is read, the right answer is right, a slip's own answer is traced back to the slip. */

import { describe, expect, it } from "vitest";
import {
  answerText,
  evidenceOf,
  FORMS,
  howToWrite,
  makeProblem,
  mark,
  OPTION_LETTERS,
  optionsOf,
  type Problem,
  readTypedAnswer,
  shownOrder,
} from "../../src/practice/index.ts";
import { PRACTICE_ISLES } from "../practice-world.ts";

function made(form: (typeof FORMS)[number], seed: number): Problem {
  const mode = form.modes[seed % form.modes.length] ?? "choose";
  const result = makeProblem(PRACTICE_ISLES, form.id, mode, seed);
  if (result.kind === "none") throw new Error(result.says);
  return result.problem;
}

describe.each(FORMS.map((form) => ({ id: form.id, form })))("the form $id", ({ form }) => {
  const problems = Array.from({ length: 12 }, (_, seed) => made(form, 500 + seed));

  it("marks the truth right and each slip's answer wrong, by that slip", () => {
    for (const problem of problems) {
      const right = mark(problem, { kind: "answer", answer: problem.truth, confidence: null });
      expect(right).toMatchObject({ verdict: "right", slips: [], ghost: null });
      for (const { slip, answer } of problem.slipAnswers) {
        const wrong = mark(problem, { kind: "answer", answer, confidence: null });
        expect(wrong.verdict).toBe("wrong");
        expect(wrong.slips).toContain(slip);
      }
      expect(mark(problem, { kind: "dont-know" }).verdict).toBe("dont-know");
    }
  });

  it("reads its own answers as they are written", () => {
    for (const problem of problems)
      for (const answer of [problem.truth, ...problem.slipAnswers.map((slip) => slip.answer)]) {
        const written = readTypedAnswer(problem, null, answerText(answer));
        if (written.kind !== "answer") throw new Error(`${problem.code}: ${JSON.stringify(written)}`);
        const verdict = mark(problem, { kind: "answer", answer: written.answer, confidence: null }).verdict;
        expect(verdict).toBe(answer === problem.truth ? "right" : "wrong");
      }
  });

  it("tells the diagnosis where each slip's answer falls", () => {
    for (const problem of problems) {
      for (const options of [optionsOf(problem), null]) {
        const { item, pickOf } = evidenceOf(problem, options);
        expect(pickOf(problem.truth)).toBe(0);
        for (const { slip, answer } of problem.slipAnswers) {
          const option = item.slipOptions[slip];
          expect(option).toBeDefined();
          if (typeof option !== "number") continue;
          expect(option).toBeGreaterThan(0);
          expect(option).toBeLessThan(item.optionCount);
          if (options === null) expect(pickOf(answer)).toBe(option);
        }
      }
    }
  });

  it("takes the letter of an option shown", () => {
    for (const problem of problems) {
      const options = optionsOf(problem);
      const order = shownOrder(problem, options);
      order.forEach((option, place) => {
        expect(readTypedAnswer(problem, options, `(${OPTION_LETTERS.charAt(place).toLowerCase()})`)).toEqual({
          kind: "answer",
          answer: options.options[option]?.answer,
        });
      });
    }
  });

  it("says how to write what it cannot read, and takes a don't-know", () => {
    for (const problem of problems) {
      expect(readTypedAnswer(problem, null, "?")).toEqual({ kind: "dont-know" });
      expect(readTypedAnswer(problem, null, "I don’t know yet")).toEqual({ kind: "dont-know" });
      const unread = readTypedAnswer(problem, null, "over there 9/9/9/9");
      expect(unread).toEqual({
        kind: "unready",
        says: `“over there 9/9/9/9” cannot be read; ${howToWrite(problem)}.`,
      });
      expect(readTypedAnswer(problem, null, " ").kind).toBe("unready");
    }
  });
});
