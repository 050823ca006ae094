import { describe, expect, it } from "vitest";
import { afterAnswers, priorBelief, slipBeliefs } from "./belief.ts";
import { hypothesisSpace } from "./hypotheses.ts";
import type { ItemAnswer, ItemEvidence } from "./item-evidence.ts";
import { type AnsweredItem, standing } from "./standing.ts";

const SPACE = hypothesisSpace(["reads", "selector", "needle"].map((id) => ({ id, base: 0.1 })));
const fired = (...slips: readonly string[]): ItemEvidence => ({
  mode: "choose",
  optionCount: 4,
  slipOptions: Object.fromEntries(slips.map((slip, at) => [slip, at + 1])),
});
const answered = (form: string, pick: ItemAnswer["pick"], ...slips: readonly string[]): AnsweredItem => ({
  form,
  item: fired(...slips),
  answer: { pick, confidence: null },
});
const stands = (history: readonly AnsweredItem[]) => {
  const found = standing(afterAnswers(priorBelief(SPACE), history), history);
  return found.kind === "slips"
    ? Object.fromEntries(found.slips.map(({ slip, standing: word }) => [slip, word]))
    : found.kind;
};
const times = (count: number, one: AnsweredItem) => Array.from({ length: count }, () => one);

describe("the standing", () => {
  it("of a learner who has answered nothing is maybe for each of three even slips", () =>
    expect(stands([])).toEqual({ reads: "maybe", selector: "maybe", needle: "maybe" }));

  it("calls a slip likely that is picked twice, and leaves the others open", () => {
    const history = times(3, answered("read-radial", 1, "reads", "selector", "needle"));
    expect(stands(history)).toEqual({ reads: "likely", selector: "open", needle: "open" });
  });

  it("clears a slip after rights in two forms, never in one, however many", () => {
    const one = times(8, answered("read-radial", 0, "reads"));
    expect(stands(one)).toMatchObject({ reads: "open" });
    expect(stands([...one, answered("place-dot", 0, "reads")])).toMatchObject({ reads: "cleared" });
  });

  it("clears no slip that is still likelier than .05, though it was asked enough", () => {
    // Rights that the learner himself calls guesses say less.
    const history = ["read-radial", "place-dot"].map(
      (form): AnsweredItem => ({
        form,
        item: fired("reads"),
        answer: { pick: 0, confidence: "guess" },
      }),
    );
    const belief = slipBeliefs(afterAnswers(priorBelief(SPACE), history))[0]!;
    expect(belief).toBeGreaterThan(0.05);
    expect(belief).toBeLessThan(0.3);
    expect(stands(history)).toMatchObject({ reads: "open" });
  });

  it("clears nothing by rights in which the slip was silent", () => {
    const history = [...times(8, answered("read-radial", 0, "reads")), answered("place-dot", 0, "selector")];
    expect(stands(history)).toMatchObject({ reads: "open", selector: "open" });
  });

  it("names no slip of a learner who clicks about", () => {
    const history = [1, 2, 3, 2, 3, 1, 3, 1, 2, 1, 3, 2].map((pick) =>
      answered("read-radial", pick, "reads", "selector", "needle"),
    );
    const silent = [1, 2, 3, 1].map((pick) => answered("place-dot", pick));
    expect(stands([...history, ...silent])).toBe("just-guessing");
  });
});
